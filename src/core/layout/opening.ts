/**
 * Head and opening. Frame: the elevation of layout/flight.
 *
 * Headroom is vertical, from the line through the nosings up to whatever is above. The tightest
 * place is under the finished edge of the opening at the low end. One going in front of the first
 * nosing that line meets the floor, and a head there stands on the floor.
 */
import type { StairJob } from '../job/stairJob';
import { add, compare, divide, type Exact, multiply, sign, subtract, times, toMm, ZERO } from '../units/exact';
import type { Flight, LayoutLimits } from './flight';
import { headerFace } from './slope';

export interface Opening {
  /** x of the finished edge of the opening at the low end; null without an opening length. */
  readonly edgeX: number | null;
  readonly headroomExact: Exact | null;
  readonly headroom: number | null;
  /** Framing opening that gives the least headroom of the rules; null where no opening can. */
  readonly needed: number | null;
}

export function checkOpening(flight: Flight, stair: StairJob, limits: LayoutLimits): Opening {
  const { floorDepth, openingFraming, headerLining } = stair.survey;
  const headerX = headerFace(stair, flight.risers, flight.exact.run);
  const edge = openingFraming === null ? null : add(subtract(headerX, openingFraming), headerLining);
  const headroomExact = edge === null || floorDepth === null ? null : headroomAt(flight, edge, floorDepth);
  return {
    edgeX: edge === null ? null : toMm(edge),
    headroomExact,
    headroom: headroomExact === null ? null : toMm(headroomExact),
    needed: openingNeeded(flight, stair, headerX, limits.headroomMin),
  };
}

/** H − Df − max(0, R + (R/G)(x + n)), exact, so that a headroom on its limit meets it. */
function headroomAt(flight: Flight, x: Exact, floorDepth: Exact): Exact {
  const { totalRise, unitRise, run, nosing } = flight.exact;
  const line = add(unitRise, divide(multiply(unitRise, add(x, nosing)), run));
  return subtract(subtract(totalRise, floorDepth), sign(line) > 0 ? line : ZERO);
}

/** O = (headroom + floor depth) G/R + n, finished; the header's setback and the low header's lining on top. */
function openingNeeded(flight: Flight, stair: StairJob, headerX: Exact, headroomMin: Exact | null): number | null {
  const { floorDepth, headerLining } = stair.survey;
  if (floorDepth === null || headroomMin === null) return null;
  const { totalRise, unitRise, run, nosing } = flight.exact;
  if (compare(subtract(totalRise, floorDepth), headroomMin) < 0) return null;
  const finished = add(divide(multiply(add(headroomMin, floorDepth), run), unitRise), nosing);
  const setback = subtract(headerX, times(run, flight.risers - 1));
  return toMm(add(add(finished, setback), headerLining));
}
