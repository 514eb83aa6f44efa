/**
 * The corners of the cut stringer, in the elevation frame of layout/flight, going up the notches
 * from the toe, down the plumb end and back along the lower edge and the seat. Counted so that
 * the first corner is not repeated at the end.
 */
import { type Point, point } from '../geometry/point';
import type { Flight } from '../layout/flight';
import type { Heel } from './heel';
import type { TopEnd } from './topEnd';

export interface KickerNotch {
  readonly width: number;
  readonly height: number;
}

/** Tip of notch i (1-based): the front end of level cut i. */
export function tip(flight: Flight, i: number): Point {
  return point((i - 1) * flight.run + flight.riserThickness, i * flight.unitRise - flight.treadThickness);
}

/** Inner corner of notch i (1-based): where level cut i meets the plumb cut behind it. */
export function innerCorner(flight: Flight, i: number): Point {
  return point(i * flight.run + flight.riserThickness, i * flight.unitRise - flight.treadThickness);
}

export function outlineOf(flight: Flight, heel: Heel, top: TopEnd, kicker: KickerNotch | null): readonly Point[] {
  const toeX = flight.riserThickness;
  const floor = flight.seatHeight;
  const corners: Point[] = [point(toeX, kicker === null ? floor : floor + kicker.height)];
  for (let i = 1; i <= flight.treads; i += 1) {
    corners.push(tip(flight, i));
    if (i < flight.treads) corners.push(innerCorner(flight, i));
  }
  corners.push(point(top.endX, top.topY), point(top.endX, top.topY - top.plumbCut), point(heel.heelX, floor));
  if (kicker !== null)
    corners.push(point(toeX + kicker.width, floor), point(toeX + kicker.width, floor + kicker.height));
  return corners;
}
