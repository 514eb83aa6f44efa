/**
 * The bottom end: how high the first plumb cut is, how long the stringer sits on the floor,
 * and what a kicker leaves of both. Frame: the elevation of layout/flight.
 *
 * Every interior notch is R by G whatever the tread weighs; the tread's thickness shows up only
 * here. The first cut is lower than a riser by tread + seat height ("the drop"): with the floor
 * still to come the seat height is negative and gives some of it back.
 */
import type { Flight } from '../layout/flight';
import { type Exact, sign, subtract, toMm } from '../units/exact';

export interface Heel {
  /** h1 = R − t − zs, exact, because it goes one to one into the first riser. */
  readonly firstRiserCutExact: Exact;
  readonly firstRiserCut: number;
  /** R − h1 = t + zs. */
  readonly drop: number;
  /** Length of the whole level heel, before a kicker is notched. */
  readonly seat: number;
  /** x of the heel's back corner, on the board's lower edge. */
  readonly heelX: number;
}

/** @param depth board depth left under the tips: stock depth − tip inset */
export function cutHeel(flight: Flight, depth: number): Heel {
  const { exact } = flight;
  const firstRiserCutExact = subtract(subtract(exact.unitRise, exact.treadThickness), exact.seatHeight);
  const firstRiserCut = toMm(firstRiserCutExact);
  const seat = depth / flight.sin - (firstRiserCut * flight.run) / flight.unitRise;
  return {
    firstRiserCutExact,
    firstRiserCut,
    drop: flight.treadThickness + flight.seatHeight,
    seat,
    heelX: flight.riserThickness + seat,
  };
}

/** True if there is a first plumb cut at all: the tread and the seat leave some of the first riser. */
export function hasFirstCut(heel: Heel): boolean {
  return sign(heel.firstRiserCutExact) > 0;
}
