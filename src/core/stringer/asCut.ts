/**
 * The as-cut forecast: which risers come out when the stringer is cut to the ROUNDED pencil marks.
 *
 * The stringer stands on its seat, so the first level cut is as high as the rounded toe height over the
 * floor under it, and riser 1 is what the floor in front of it, at the same place across, leaves of that;
 * tick i moves its level cut, against the first, by the difference of the ticks' errors × sin θ
 * (a tick that is δ too far along the edge lifts its cut by δ sin θ). The riser at the top of a
 * hung stair takes what is left; level with the floor, the stringer carries its own last tread.
 */
import type { Flight } from '../layout/flight';
import { roundTo } from '../units/rounding';
import type { Heel } from './heel';

export interface AsCut {
  readonly step: number;
  readonly risers: readonly number[];
  /** Greatest less smallest. */
  readonly spread: number;
}

/**
 * @param ticks exact distances of the tips from the board's end (first mark + running marks)
 * @param step what marks and the toe height are rounded to
 * @param across where the stringer stands: from the stair's centre line, to the right
 */
export function forecastAsCut(
  flight: Flight,
  heel: Heel,
  ticks: readonly number[],
  step: number,
  across: number,
): AsCut {
  const errors = ticks.map((tick) => roundTo(tick, step) - tick);
  const toe = roundTo(heel.firstRiserCut, step);
  const fallsAcross = flight.slopeAcross * across;
  const risers = [toe + flight.treadThickness + heel.toeY - fallsAcross];
  for (let i = 1; i < ticks.length; i += 1) {
    risers.push(flight.unitRise + ((errors[i] as number) - (errors[i - 1] as number)) * flight.sin);
  }
  const rise = flight.totalRise - fallsAcross;
  if (flight.treads < flight.risers) risers.push(rise - risers.reduce((sum, riser) => sum + riser, 0));
  return { step, risers, spread: Math.max(...risers) - Math.min(...risers) };
}

/** Greatest less smallest over all stringers of a flight. */
export function spreadAsCut(feet: readonly { readonly asCut: AsCut }[]): number {
  const risers = feet.flatMap(({ asCut }) => asCut.risers);
  return Math.max(...risers) - Math.min(...risers);
}
