/**
 * The bottom end: how high the first plumb cut is, how long the stringer sits on the floor,
 * and what a kicker leaves of both. Frame: the elevation of layout/flight; on a floor that is not level,
 * layout/slope has its plane.
 *
 * Every interior notch is R by G whatever the tread weighs; the tread's thickness shows up only
 * here. The first cut is lower than a riser by tread + seat height ("the drop"): with the floor
 * still to come the seat height is negative and gives some of it back. A sloping floor stands higher or
 * lower under the toe: h1 = R − t − zs − px tr − py y. The seat follows it until it meets the lower edge,
 * which climbs by R/G where the floor climbs by px:
 *     level length of the seat = ((d − e) / sin θ − h1 G/R) / (1 − px G/R)
 */
import { type Flight, floorHeight } from '../layout/flight';
import { add, type Exact, multiply, sign, subtract, toMm } from '../units/exact';

export interface Heel {
  /** h1, exact, because it goes one to one into the first riser. */
  readonly firstRiserCutExact: Exact;
  readonly firstRiserCut: number;
  /** R − h1. */
  readonly drop: number;
  /** Length of the whole heel along the floor, before a kicker is notched. */
  readonly seat: number;
  /** x of the heel's back corner, on the board's lower edge. */
  readonly heelX: number;
  /** Heights of the toe's lower corner and of the back corner. */
  readonly toeY: number;
  readonly heelY: number;
}

/**
 * @param depth board depth left under the tips: stock depth − tip inset
 * @param across where the stringer stands: from the stair's centre line, to the right
 */
export function cutHeel(flight: Flight, depth: number, across: Exact): Heel {
  const { exact } = flight;
  const floor = add(
    exact.seatHeight,
    add(multiply(exact.slopeAlong, exact.riserThickness), multiply(exact.slopeAcross, across)),
  );
  const firstRiserCutExact = subtract(subtract(exact.unitRise, exact.treadThickness), floor);
  const firstRiserCut = toMm(firstRiserCutExact);
  const level = depth / flight.sin - (firstRiserCut * flight.run) / flight.unitRise;
  const reach = level / (1 - (flight.slopeAlong * flight.run) / flight.unitRise);
  const heelX = flight.riserThickness + reach;
  return {
    firstRiserCutExact,
    firstRiserCut,
    drop: flight.treadThickness + toMm(floor),
    seat: reach * Math.hypot(1, flight.slopeAlong),
    heelX,
    toeY: toMm(floor),
    heelY: floorHeight(flight, heelX, toMm(across)),
  };
}

/** True if there is a first plumb cut at all: the tread and the seat leave some of the first riser. */
export function hasFirstCut(heel: Heel): boolean {
  return sign(heel.firstRiserCutExact) > 0;
}
