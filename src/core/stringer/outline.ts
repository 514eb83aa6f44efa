/**
 * The corners of the cut stringer, in the elevation frame of layout/flight, going up the notches
 * from the toe, down the plumb end and back along the lower edge and the seat. Counted so that
 * the first corner is not repeated at the end.
 */
import { type Point, point } from '../geometry/point';
import { type Flight, floorHeight } from '../layout/flight';
import type { Heel } from './heel';
import type { TopEnd } from './topEnd';

/** On the floor and along it: the height is plumb, the width level. */
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

/** @param across where it stands: from the stair's centre line, to the right */
export function outlineOf(
  flight: Flight,
  heel: Heel,
  top: TopEnd,
  kicker: KickerNotch | null,
  across: number,
): readonly Point[] {
  const toeX = flight.riserThickness;
  const corners: Point[] = [point(toeX, kicker === null ? heel.toeY : heel.toeY + kicker.height)];
  for (let i = 1; i <= flight.treads; i += 1) {
    corners.push(tip(flight, i));
    if (i < flight.treads) corners.push(innerCorner(flight, i));
  }
  corners.push(point(top.endX, top.topY), point(top.endX, top.topY - top.plumbCut), point(heel.heelX, heel.heelY));
  if (kicker === null) return corners;
  const back = toeX + kicker.width;
  const under = floorHeight(flight, back, across);
  corners.push(point(back, under), point(back, under + kicker.height));
  return corners;
}
