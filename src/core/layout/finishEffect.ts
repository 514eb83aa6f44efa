/**
 * What a floor or a tread of another thickness does to a stair that is already laid out and cut.
 * Frame: the elevation of layout/flight; heights are compared with where the layout had them.
 *
 * Method: three things can move against the cut stringer: the finished floor at its foot, the finished
 * floor at its head, and the tops of its treads. Only risers with one end on what moved change, so
 * riser 1 and riser N take all of it, and each window is a sum of the limits and no search:
 *     riser 1 = R − foot + treads        riser N = R + head − treads
 * On a floor that falls across, riser 1 is that on the centre line, and at the edges as much taller and shorter
 * as without any change.
 *
 * A lower floor that is laid before the stair carries the stringer with it: there it is the head that
 * moves, by as much the other way. A stringer level with the floor has both ends of riser N on itself;
 * what the head moves there is a lip between the top tread and the floor, a step of its own that no
 * window allows.
 */
import { atLeast, atMost, isPositive } from '../geometry/tolerance';
import { inchMm, toMm } from '../units/exact';
import { acrossFlight } from './acrossFlight';
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
  const aside = halfAcross(layout);
  const ends = [firstRiser + aside, firstRiser - aside, lastRiser];
  const all = risers > 2 ? [...ends, unitRise] : ends;
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

/** So much for each millimetre of finish must stay within that room. */
type Bound = readonly [perMm: number, room: number];

/** @returns the amounts that keep every riser within the limits, the rest as laid out; null if none does */
export function finishWindow(layout: StairLayout, surface: FinishSurface, limits: RiserLimits): FinishWindow | null {
  const laidOut = laidOutAmount(layout, surface);
  const one = movedBy(layout, { ...AS_LAID_OUT, [surface]: 1 });
  const atHead = one.head - one.treads;
  const { hung } = layout.stringer.top;
  const bounds = boundsOf(layout, limits, one.treads - one.foot, hung ? atHead : 0);
  // A top tread level with the floor must stay so: nothing may move there.
  const isFixed = !hung && atHead !== 0;
  if (bounds.some(([perMm, room]) => (isFixed || perMm === 0) && !atLeast(room, 0))) return null;
  if (isFixed) return { low: laidOut, high: laidOut };
  // A limit that is just met leaves nothing on its side, and not less by a float's dust.
  const ends = bounds.map(([perMm, room]): Bound => [perMm, atLeast(room, 0) ? Math.max(0, room) : room]);
  const low = Math.max(...ends.map(([perMm, room]) => (perMm < 0 ? room / perMm : Number.NEGATIVE_INFINITY)));
  const high = Math.min(...ends.map(([perMm, room]) => (perMm > 0 ? room / perMm : Number.POSITIVE_INFINITY)));
  return low > high ? null : { low: closed(laidOut + low), high: closed(laidOut + high) };
}

/**
 * What the limits leave to riser 1 at both edges, to riser N and to those between.
 * @param first what riser 1 gains for each millimetre of finish
 * @param last the same of riser N; each is −1, 0 or 1, and never both the same but 0
 */
function boundsOf(layout: StairLayout, limits: RiserLimits, first: number, last: number): readonly Bound[] {
  const { unitRise } = layout.flight;
  const aside = halfAcross(layout);
  const most = limits.riserMax === null ? Number.POSITIVE_INFINITY : limits.riserMax - unitRise;
  const apart = limits.variation ?? Number.POSITIVE_INFINITY;
  return [
    [0, most],
    [first, most - aside],
    [last, most],
    [0, apart - 2 * aside],
    ...([1, -1] as const).flatMap((way): Bound[] => [
      [way * first, apart - aside],
      [way * last, apart],
      [way * (first - last), apart - aside],
    ]),
  ];
}

/** How much taller riser 1 is at the lower edge of a floor that falls across than on the centre line. */
function halfAcross(layout: StairLayout): number {
  const across = acrossFlight(layout);
  return across === null ? 0 : toMm(across.spread) / 2;
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
