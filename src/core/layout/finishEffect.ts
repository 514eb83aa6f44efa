/**
 * What a floor or a tread of another thickness does to a stair that is already laid out and cut.
 * Frame: the elevation of layout/flight; heights are compared with where the layout had them.
 *
 * Method: three things can move against the cut stringer: the finished floor at its foot, the finished
 * floor at its head, and the tops of its treads. Only risers with one end on what moved change, so
 * riser 1 and riser N take all of it, and each window is a sum of the limits and no search:
 *     riser 1 = R − foot + treads        riser N = R + head − treads
 * A lower floor that is laid before the stair carries the stringer with it: there it is the head that
 * moves, by as much the other way. A stringer level with the floor has both ends of riser N on itself;
 * what the head moves there is a lip between the top tread and the floor, a step of its own that no
 * window allows.
 */
import { atMost, isPositive } from '../geometry/tolerance';
import { inchMm } from '../units/exact';
import type { StairLayout } from './layoutStair';

/** The surfaces whose finish can still change; at `tread` the amount is the whole tread thickness. */
export type FinishSurface = 'lower' | 'upper' | 'tread';

/** Millimetres, as the job's own keys hold them; a surface left out stays as it was laid out. */
export type FinishAmounts = { readonly [Surface in FinishSurface]?: number };

/** In millimetres; null where the rules in force set none. */
export interface RiserLimits {
  readonly riserMax: number | null;
  readonly variation: number | null;
}

export interface FinishEffect {
  readonly firstRiser: number;
  readonly lastRiser: number;
  /** Every riser between the two: as laid out. */
  readonly otherRisers: number;
  /** Floor over the top tread of a stringer level with the floor; 0 for a hung one. */
  readonly lip: number;
  readonly tallest: number;
  readonly spread: number;
  /** Null without that limit. */
  readonly keepsRiserMax: boolean | null;
  readonly keepsVariation: boolean | null;
  /** False for a lip too; null where there is neither limit nor lip. */
  readonly keeps: boolean | null;
}

/** Amounts, ends included; a null end is one that no limit closes. */
export interface FinishWindow {
  readonly low: number | null;
  readonly high: number | null;
}

/** Usual thicknesses of floors and coverings. Common practice, no source. */
const LIKELY = {
  imperial: [0, 1 / 4, 3 / 8, 1 / 2, 3 / 4, 1].map(inchMm),
  metric: [0, 6, 9, 12, 18, 25],
};

export function finishEffect(layout: StairLayout, amounts: FinishAmounts, limits: RiserLimits): FinishEffect {
  const { risers, unitRise } = layout.flight;
  const { hung } = layout.stringer.top;
  const thicker = (surface: FinishSurface) =>
    (amounts[surface] ?? laidOutAmount(layout, surface)) - laidOutAmount(layout, surface);
  const { foot, head, treads } = movedBy(layout, {
    lower: thicker('lower'),
    upper: thicker('upper'),
    tread: thicker('tread'),
  });
  const firstRiser = unitRise - foot + treads;
  const lastRiser = hung ? unitRise + head - treads : unitRise;
  const lip = hung ? 0 : head - treads;
  const all = risers > 2 ? [firstRiser, unitRise, lastRiser] : [firstRiser, lastRiser];
  const tallest = Math.max(...all);
  const spread = tallest - Math.min(...all);
  const keepsRiserMax = limits.riserMax === null ? null : atMost(tallest, limits.riserMax);
  const keepsVariation = limits.variation === null ? null : atMost(spread, limits.variation);
  const answers = [isPositive(Math.abs(lip)) ? false : null, keepsRiserMax, keepsVariation].filter(
    (answer) => answer !== null,
  );
  const keeps = answers.length === 0 ? null : answers.every((answer) => answer);
  return { firstRiser, lastRiser, otherRisers: unitRise, lip, tallest, spread, keepsRiserMax, keepsVariation, keeps };
}

/** @returns the amounts that keep every riser within the limits, the rest as laid out; null if none does */
export function finishWindow(layout: StairLayout, surface: FinishSurface, limits: RiserLimits): FinishWindow | null {
  const { unitRise } = layout.flight;
  const laidOut = laidOutAmount(layout, surface);
  if (limits.riserMax !== null && !atMost(unitRise, limits.riserMax)) return null;
  const one = movedBy(layout, { ...AS_LAID_OUT, [surface]: 1 });
  const atHead = one.head - one.treads;
  if (!layout.stringer.top.hung && atHead !== 0) return { low: laidOut, high: laidOut };
  // Riser 1 and riser N per millimetre of finish: each is −1, 0 or 1, and never both the same but 0.
  const slopes = [one.treads - one.foot, layout.stringer.top.hung ? atHead : 0];
  const room = limits.riserMax === null ? Number.POSITIVE_INFINITY : Math.max(0, limits.riserMax - unitRise);
  const swing = (limits.variation ?? Number.POSITIVE_INFINITY) / slopes.filter((slope) => slope !== 0).length;
  return {
    low: closed(laidOut - Math.min(swing, slopes.includes(-1) ? room : Number.POSITIVE_INFINITY)),
    high: closed(laidOut + Math.min(swing, slopes.includes(1) ? room : Number.POSITIVE_INFINITY)),
  };
}

/** The usual thicknesses at one surface, thinnest first: on a floor as such, on the treads on top of them. */
export function likelyFinishes(
  layout: StairLayout,
  surface: FinishSurface,
  limits: RiserLimits,
): readonly { readonly thickness: number; readonly amount: number; readonly effect: FinishEffect }[] {
  const under = surface === 'tread' ? layout.flight.treadThickness : 0;
  return LIKELY[layout.job.units].map((thickness) => {
    const amount = under + thickness;
    return { thickness, amount, effect: finishEffect(layout, { [surface]: amount }, limits) };
  });
}

function laidOutAmount({ flight }: StairLayout, surface: FinishSurface): number {
  if (surface === 'tread') return flight.treadThickness;
  return surface === 'lower' ? flight.lowerToAdd : flight.upperToAdd;
}

interface Thicker {
  readonly lower: number;
  readonly upper: number;
  readonly tread: number;
}

const AS_LAID_OUT: Thicker = { lower: 0, upper: 0, tread: 0 };

/** How far foot, head and tread tops rise against the cut stringer when the surfaces get thicker. */
function movedBy(layout: StairLayout, { lower, upper, tread }: Thicker) {
  const floorFirst = layout.job.survey.lowerLaid === 'before-stairs';
  return { foot: floorFirst ? 0 : lower, head: upper - (floorFirst ? lower : 0), treads: tread };
}

function closed(amount: number): number | null {
  return Number.isFinite(amount) ? amount : null;
}
