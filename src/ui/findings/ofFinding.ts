/** Of a finding: where on the stair it is, that is what of the elevation lights up for it, and whether it wants help. */
import type { Finding } from '../../core/codes/findings';

/** By the first words of a field, the longer ones first. */
const PLACES: readonly (readonly [words: string, about: string])[] = [
  ['riser.slope', 'steps.riserThickness'],
  ['riser', 'unitRise'],
  ['tread.overRun', 'steps.nosing'],
  ['treadBoard', 'steps.treadThickness'],
  ['tread', 'run'],
  ['twoRPlusG', 'twoRisePlusRun'],
  ['pitch', 'pitch'],
  ['nosing', 'steps.nosing'],
  ['openRiser.overlap', 'steps.nosing'],
  ['openRiser', 'unitRise'],
  ['variation.riser', 'unitRise'],
  ['variation.tread', 'run'],
  ['variation.nosing', 'steps.nosing'],
  ['asCut', 'unitRise'],
  ['flight.maxVerticalRise', 'totalRise'],
  ['flight', 'risers'],
  ['headroom', 'headroom'],
  ['handrail.requiredAboveRise', 'totalRise'],
  ['handrail.requiredFromRisers', 'risers'],
  ['handrail.height', 'steps.nosing'],
  ['guard.requiredAboveDrop', 'totalRise'],
  ['guard.height.stair', 'steps.nosing'],
  ['stringer', 'stringer.stockDepth'],
  ['throat', 'stringer.stockDepth'],
  ['headerContact', 'headerContact'],
  ['kicker', 'stringer.kicker'],
  ['taste', 'twoRisePlusRun'],
];

/** @returns what lights up, or null for what is in no drawing of the stair */
export function placeOf(field: string): string | null {
  return PLACES.find(([words]) => field === words || field.startsWith(`${words}.`))?.[1] ?? null;
}

/** A matter of taste needs no cure. */
export function isTrouble({ kind, status }: Finding): boolean {
  return kind !== 'taste' && (status === 'breaks' || status === 'close');
}
