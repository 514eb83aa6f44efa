/**
 * A lower floor that is not level, as a plane. Frame: layout/flight, with y across the stair: 0 on its
 * centre line, growing to the right when climbing. Over the finished lower floor at the landing line
 *     z(x, y) = px x + py y
 * so px > 0 is a floor that gets lower away from the header, and py < 0 one that gets lower to the right.
 *
 * Where the tape stood out from the header by r, the floor at the landing line lies px (X − r) lower than
 * there, X being the header's face. X depends on the count of risers and not on their height, so the
 * total rise is one sum, and the fewest risers one division.
 */
import { isHung, type StairJob, type Survey } from '../job/stairJob';
import { add, ceiling, divide, type Exact, multiply, negate, sign, subtract, times, ZERO } from '../units/exact';

/** px: rise of the floor for each length toward the header. */
export function slopeAlong({ fallAlong }: Survey): Exact {
  return divide(fallAlong.fall, fallAlong.over);
}

/** py: rise of the floor for each length to the right. */
export function slopeAcross({ fallAcross }: Survey): Exact {
  return negate(divide(fallAcross.fall, fallAcross.over));
}

/** x of the header's face, exact: the same sum as in stringer/topEnd, where it is a float. */
export function headerFace(stair: StairJob, risers: number, run: Exact): Exact {
  return add(times(run, risers - 1), headerSetback(stair, run));
}

/** From the finished face of the top riser to the header's. */
function headerSetback({ steps, stringer }: StairJob, run: Exact): Exact {
  const { top, hanger, topTreadRun } = stringer;
  const behindRiser = top === 'hanger-is-riser' ? ZERO : steps.riserThickness;
  const topTread = isHung(top) ? ZERO : (topTreadRun ?? run);
  return add(add(behindRiser, topTread), hanger);
}

/** H = M + foot below the reading + upper finish − lower finish + px (X − r), exactly. */
export function sumRise(stair: StairJob, risers: number, run: Exact): Exact {
  return add(riseAtReading(stair.survey), fallSinceReading(stair, risers, run));
}

/** How much lower the floor is where the flight lands than where the tape stood, by the slope alone. */
export function fallSinceReading(stair: StairJob, risers: number, run: Exact): Exact {
  const { survey } = stair;
  if (survey.readingFromHeader === null) return ZERO;
  return multiply(slopeAlong(survey), subtract(headerFace(stair, risers, run), survey.readingFromHeader));
}

/** The fewest risers for which N × riser.max ≥ H, decided exactly; at least two make a stair. */
export function fewestRisers(totalRise: Exact, riserMax: Exact): number {
  return Math.max(2, Number(ceiling(divide(totalRise, riserMax))));
}

/**
 * The same where H itself grows with the count: one riser more lowers the foot by px G, so that only
 * riser.max − px G of it is gained.
 * @returns null where the floor falls as fast as the steepest stair climbs: no count catches up with it
 */
export function fewestOnFloor(stair: StairJob, run: Exact, riserMax: Exact): number | null {
  const perRiser = subtract(sumRise(stair, 2, run), sumRise(stair, 1, run));
  const gained = subtract(riserMax, perRiser);
  if (sign(gained) <= 0) return null;
  const without = subtract(sumRise(stair, 1, run), perRiser);
  return fewestRisers(without, gained);
}

/** The total rise as if the flight landed where the tape stood. */
export function riseAtReading({ rise, footBelowReading, upperToAdd, lowerToAdd }: Survey): Exact {
  return add(add(rise, footBelowReading), subtract(upperToAdd.amount, lowerToAdd.amount));
}
