/**
 * What hangs over the flight beside the floor above: beams, ducts, sloping ceilings. Frame: layout/flight.
 *
 * Clearance is plumb, from where a person stands up to the underside. They stand on the line through the
 * nosings; beyond its foot on the lower floor, and behind the landing nosing on the upper one. Under a straight
 * underside the tightest place of a straight line is at one of its ends, so only the obstacle's two ends are
 * looked at, and the landing nosing where it lies between them.
 */
import type { Obstacle, StairJob } from '../job/stairJob';
import { add, compare, divide, type Exact, multiply, sign, subtract, times, toMm, ZERO } from '../units/exact';
import type { Flight } from './flight';
import { headerFace } from './slope';

export interface Clearance {
  readonly obstacle: Obstacle;
  /** Its ends, and the heights of its underside there. */
  readonly nearX: number;
  readonly farX: number;
  readonly nearY: number;
  readonly farY: number;
  /** Where it is tightest: at one of its ends, or over the landing nosing between them. */
  readonly at: 'near' | 'far' | 'landing';
  readonly worstX: number;
  /** What a person stands on there, and the underside over it. */
  readonly stands: Exact;
  readonly standsOn: 'lower' | 'flight' | 'upper';
  readonly under: Exact;
  readonly exact: Exact;
  readonly clearance: number;
  /** False where nothing of it is over the flight. */
  readonly overFlight: boolean;
}

interface Place {
  readonly at: Clearance['at'];
  readonly x: Exact;
  readonly under: Exact;
}

export function clearObstacles(flight: Flight, stair: StairJob): readonly Clearance[] {
  return stair.survey.obstacles.map((obstacle) => clearUnder(obstacle, flight, stair));
}

function clearUnder(obstacle: Obstacle, flight: Flight, stair: StairJob): Clearance {
  const { run, nosing } = flight.exact;
  const headerX = headerFace(stair, flight.risers, run);
  const over = (height: Exact) => subtract(height, stair.survey.lowerToAdd.amount);
  const near: Place = { at: 'near', x: subtract(headerX, obstacle.near), under: over(obstacle.height) };
  const far: Place = { at: 'far', x: subtract(headerX, obstacle.far), under: over(obstacle.heightFar) };
  const landing = subtract(times(run, flight.risers - 1), nosing);
  const places = [near, far, ...between(near, far, landing)].map((place) => {
    const stands = standsAt(flight, place.x);
    return { ...place, ...stands, exact: subtract(place.under, stands.height) };
  });
  const worst = places.reduce((least, place) => (compare(place.exact, least.exact) < 0 ? place : least));
  return {
    obstacle,
    nearX: toMm(near.x),
    farX: toMm(far.x),
    nearY: toMm(near.under),
    farY: toMm(far.under),
    at: worst.at,
    worstX: toMm(worst.x),
    stands: worst.height,
    standsOn: worst.on,
    under: worst.under,
    exact: worst.exact,
    clearance: toMm(worst.exact),
    overFlight: standsAt(flight, near.x).on !== 'lower',
  };
}

/** The underside over the landing nosing, where that lies between the ends. */
function between(near: Place, far: Place, landing: Exact): Place[] {
  if (compare(landing, far.x) <= 0 || compare(landing, near.x) >= 0) return [];
  const share = divide(subtract(landing, far.x), subtract(near.x, far.x));
  const under = add(far.under, multiply(share, subtract(near.under, far.under)));
  return [{ at: 'landing', x: landing, under }];
}

/** The nosing line, from the lower floor at its foot to the upper one behind the landing nosing. */
function standsAt({ exact }: Flight, x: Exact): { readonly height: Exact; readonly on: Clearance['standsOn'] } {
  const line = add(exact.unitRise, divide(multiply(exact.unitRise, add(x, exact.nosing)), exact.run));
  if (sign(line) <= 0) return { height: ZERO, on: 'lower' };
  const above = compare(line, exact.totalRise) > 0;
  return above ? { height: exact.totalRise, on: 'upper' } : { height: line, on: 'flight' };
}
