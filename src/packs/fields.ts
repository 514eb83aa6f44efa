/**
 * Every field that a pack may have a row for, with what its figure is. It is a closed list, so that a
 * mistyped name is refused and does not stand among the rules that nobody checks.
 */
import type { RuleUnit } from '../core/codes/rulePack';

const LENGTHS = `
  riser.min riser.max tread.min tread.max tread.overRun.max twoRPlusG.min twoRPlusG.max
  nosing.min nosing.max nosing.notRequiredFromTread nosing.radius.max nosing.bevel.max nosing.edge.min nosing.edge.max
  openRiser.maxSphere openRiser.freeBelowHeight openRiser.overlap.min
  variation.riser.max variation.riser.adjacent.max variation.riser.nominal.max
  variation.tread.max variation.tread.adjacent.max variation.tread.nominal.max
  variation.nosing.max variation.winder.max
  headroom.min headroom.floorOpeningProjection.max headroom.reduced.centre.min headroom.reduced.side.min
  width.min width.atHandrail.one.min width.atHandrail.two.min flight.maxVerticalRise
  landing.minDepth landing.minWidth landing.depth.cap landing.doorClear.min
  winder.minAtWalkline winder.walklineOffset winder.minNarrow
  handrail.requiredAboveRise handrail.bothSidesFromWidth handrail.height.min handrail.height.max
  handrail.projection.max handrail.clearance.min handrail.grip.diameter.min handrail.grip.diameter.max
  handrail.grip.perimeter.min handrail.grip.perimeter.max handrail.grip.crossSection.max
  handrail.extension.top.min handrail.extension.bottom.min
  guard.requiredAboveDrop guard.requiredWithin guard.height.min guard.height.stair.min guard.height.stairHandrail.max
  guard.opening.maxSphere guard.opening.stair.maxSphere guard.opening.triangle.maxSphere
  spiral.width.min spiral.walklineRadius.max spiral.tread.min spiral.riser.max spiral.headroom.min
  stringer.effectiveDepth.min stringer.depth.min stringer.thickness.min stringer.spacing.max treadBoard.thickness.min
`;

const OTHERS: readonly (readonly [units: readonly RuleUnit[], fields: string])[] = [
  [['deg'], 'riser.slope.max pitch.min pitch.max winder.anglePerTread winder.turn.max'],
  [
    ['count'],
    `flight.minRisers flight.maxRisers flight.maxRisersBeforeTurn winder.sets.max winder.max.quarter winder.max.half
     handrail.requiredFromRisers handrail.sides`,
  ],
  [['bool'], 'openRiser.allowed winder.allowed'],
  [['1:n'], 'walkingSurface.slope.max landing.slope.max'],
  [['psf', 'kPa', 'lbf', 'kN'], 'load.uniform load.concentrated load.guard load.handrail load.infill'],
  [['fc'], 'illumination.min'],
  [[], 'scope measure.reference handrail.continuity handrail.end guard.climbable alternating ship other'],
];

/** Any rule may be words, or say that it sets no figure. */
const WORDS: readonly RuleUnit[] = ['text', 'rule', 'none'];

const UNITS = new Map<string, readonly RuleUnit[]>(
  [[['in', 'mm'] as const, LENGTHS] as const, ...OTHERS].flatMap(([units, fields]) =>
    fields
      .trim()
      .split(/\s+/)
      .map((field) => [field, [...units, ...WORDS]] as const),
  ),
);

/** @returns the units that a row of this field may have; undefined for a field that there is not */
export function unitsOfField(field: string): readonly RuleUnit[] | undefined {
  return UNITS.get(field);
}
