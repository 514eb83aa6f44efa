/**
 * What a floor that falls across does to riser 1. Treads are level, so the floor's whole fall between the
 * skirts goes into it: at y across, riser 1 is R − py y, and every other riser R.
 */
import { add, compare, divide, type Exact, multiply, negate, sign, subtract, whole } from '../units/exact';
import type { StairLayout } from './layoutStair';

export type Edge = 'left' | 'right';

export interface AcrossFlight {
  /** From skirt to skirt. */
  readonly between: Exact;
  /** Riser 1 where the tread ends at the skirt, exact. */
  readonly left: Exact;
  readonly right: Exact;
  /** Tallest less shortest of all risers. */
  readonly spread: Exact;
  /** Where the floor lies lower, and riser 1 is the tallest of the flight. */
  readonly low: Edge;
  readonly tallest: Exact;
  readonly shortest: Exact;
}

/** @returns null on a floor that is level across, or where nobody has measured how wide the stair is */
export function acrossFlight({ flight, width }: Pick<StairLayout, 'flight' | 'width'>): AcrossFlight | null {
  const { slopeAcross, unitRise } = flight.exact;
  if (width === null || sign(slopeAcross) === 0) return null;
  const half = divide(multiply(slopeAcross, width.betweenSkirtsExact), whole(2));
  const left = add(unitRise, half);
  const right = subtract(unitRise, half);
  const low = compare(left, right) > 0 ? 'left' : 'right';
  const [tallest, shortest] = low === 'left' ? [left, right] : [right, left];
  return {
    between: width.betweenSkirtsExact,
    left,
    right,
    spread: subtract(tallest, shortest),
    low,
    tallest,
    shortest,
  };
}

/** py without its sign. */
export function steepness({ flight }: Pick<StairLayout, 'flight'>): Exact {
  const { slopeAcross } = flight.exact;
  return sign(slopeAcross) < 0 ? negate(slopeAcross) : slopeAcross;
}

/** What a rule leaves of room, and at which edge it is used up. */
export interface Tightest {
  readonly field: 'riser.max' | 'riser.min' | 'variation.riser.max';
  /** `both`: it compares one edge with the other. */
  readonly edge: Edge | 'both';
  readonly actual: Exact;
  readonly limit: Exact;
  /** Limit less actual, or actual less limit: negative where it is broken. */
  readonly margin: Exact;
}

/** @returns the rule that riser 1 comes nearest to breaking, and where; null where no rule in force has a figure */
export function tightestAcross(
  { tallest, shortest, spread, low }: AcrossFlight,
  limits: { readonly [Field in Tightest['field']]: Exact | null },
): Tightest | null {
  const high: Edge = low === 'left' ? 'right' : 'left';
  const at = (field: Tightest['field'], edge: Tightest['edge'], actual: Exact): Tightest[] => {
    const limit = limits[field];
    if (limit === null) return [];
    const room = subtract(limit, actual);
    return [{ field, edge, actual, limit, margin: field === 'riser.min' ? negate(room) : room }];
  };
  const all = [
    ...at('riser.max', low, tallest),
    ...at('riser.min', high, shortest),
    ...at('variation.riser.max', 'both', spread),
  ];
  return [...all].sort((a, b) => compare(a.margin, b.margin))[0] ?? null;
}
