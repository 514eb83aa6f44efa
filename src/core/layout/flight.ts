/**
 * The flight itself: how many risers, how high, how deep, before anything is cut.
 *
 * Frame (all of layout/ and stringer/): the side elevation. x = 0 is the finished face of
 * riser 1 and grows in the direction of climbing; y (height) = 0 is the FINISHED lower floor
 * at the landing line and grows upward. Millimetres.
 *
 * Method: the total finished rise is summed exactly from the reading and its finishes, and the
 * unit rise is that sum divided by the riser count, never rounded before it is used.
 */
import { isHung, type StairJob } from '../job/stairJob';
import { failure, type Problem, problem, type Result, success } from '../result';
import {
  add,
  ceiling,
  compare,
  divide,
  type Exact,
  negate,
  sign,
  subtract,
  times,
  toMm,
  whole,
  ZERO,
} from '../units/exact';

/** What the chosen rules contribute to a layout; null where they have no such limit. */
export interface LayoutLimits {
  readonly riserMax: Exact | null;
  readonly treadMin: Exact | null;
  readonly headroomMin: Exact | null;
}

/** The same figures as exact fractions, for everything that is decided at a limit. */
export interface ExactFlight {
  /** H = M + foot below the reading + upper finish − lower finish. */
  readonly totalRise: Exact;
  /** R = H / N. */
  readonly unitRise: Exact;
  /** G, nosing to nosing. */
  readonly run: Exact;
  readonly nosing: Exact;
  readonly treadThickness: Exact;
  /** tr, zero for open risers. */
  readonly riserThickness: Exact;
  /** zs: height of the surface that the stringer stands on. */
  readonly seatHeight: Exact;
}

export interface Flight {
  readonly exact: ExactFlight;
  /** N: counts the riser up to the upper floor. */
  readonly risers: number;
  /** Treads that the stringer carries: N − 1 hung, N level with the floor. */
  readonly treads: number;
  readonly totalRise: number;
  readonly unitRise: number;
  readonly run: number;
  /** To the finished face of the top riser. */
  readonly runToTopRiser: number;
  readonly nosing: number;
  readonly treadThickness: number;
  readonly riserThickness: number;
  readonly seatHeight: number;
  readonly lowerToAdd: number;
  readonly upperToAdd: number;
  readonly upperSubfloor: number;
  /** U = √(R² + G²): one step along the pitch. */
  readonly stepLength: number;
  /** θ in radians, and its parts, so that nobody goes through an angle who need not. */
  readonly pitch: number;
  readonly sin: number;
  readonly cos: number;
  /** Heights of floor, treads and upper floor, finished: 0 … N. */
  readonly finishedTops: readonly number[];
}

const MOST_RISERS = 200;

/**
 * @returns the flight, or every choice that leaves no geometry
 */
export function layFlight(stair: StairJob, limits: LayoutLimits): Result<Flight> {
  const { survey, steps, place } = stair;
  const totalRise = sumRise(survey);
  if (sign(totalRise) <= 0) {
    return failure([problem(`${place}.survey.rise`, 'rise.notPositive', { totalRiseMm: toMm(totalRise) })]);
  }
  const problems: Problem[] = [];
  const risers = countRisers(stair, totalRise, limits, problems);
  const run = steps.run ?? limits.treadMin ?? ZERO;
  if (steps.run === null && limits.treadMin === null) problems.push(problem(`${place}.steps.run`, 'run.noLimit'));
  else if (sign(run) <= 0) problems.push(problem(`${place}.steps.run`, 'run.notPositive'));
  else problems.push(...againstRun(stair, run));
  if (problems.length > 0) return failure(problems);
  return success(measure(stair, totalRise, risers, run));
}

/** H = M + foot below the reading + upper finish − lower finish, exactly. */
export function sumRise({ rise, footBelowReading, upperToAdd, lowerToAdd }: StairJob['survey']): Exact {
  return add(add(rise, footBelowReading), subtract(upperToAdd.amount, lowerToAdd.amount));
}

/** The fewest risers for which N × riser.max ≥ H, decided exactly; at least two make a stair. */
export function fewestRisers(totalRise: Exact, riserMax: Exact): number {
  return Math.max(2, Number(ceiling(divide(totalRise, riserMax))));
}

function countRisers(stair: StairJob, totalRise: Exact, limits: LayoutLimits, problems: Problem[]): number {
  if (stair.steps.risers !== 'auto') return stair.steps.risers;
  const place = `${stair.place}.steps.risers`;
  if (limits.riserMax === null || sign(limits.riserMax) <= 0) {
    problems.push(problem(place, 'risers.noLimit'));
    return 2;
  }
  const count = fewestRisers(totalRise, limits.riserMax);
  if (count > MOST_RISERS) problems.push(problem(place, 'risers.tooMany', { needed: count, most: MOST_RISERS }));
  return count;
}

/** What must stay in proportion to the run for a step to exist at all. */
function againstRun(stair: StairJob, run: Exact): Problem[] {
  const { steps, stringer, place } = stair;
  const problems: Problem[] = [];
  if (compare(times(steps.nosing, 2), run) >= 0) {
    problems.push(problem(`${place}.steps.nosing`, 'nosing.tooDeep', { limitMm: toMm(run) / 2 }));
  }
  if (compare(times(steps.riserThickness, 4), run) > 0) {
    problems.push(problem(`${place}.steps.riserThickness`, 'riserBoard.tooThick', { limitMm: toMm(run) / 4 }));
  }
  const topTread = stringer.topTreadRun;
  if (topTread === null) return problems;
  if (isHung(stringer.top)) problems.push(problem(`${place}.stringer.topTreadRun`, 'topTread.onlyLevel'));
  else if (sign(topTread) <= 0 || compare(topTread, run) > 0) {
    problems.push(problem(`${place}.stringer.topTreadRun`, 'topTread.outside', { limitMm: toMm(run) }));
  }
  return problems;
}

function measure(stair: StairJob, totalRise: Exact, risers: number, run: Exact): Flight {
  const { survey, steps } = stair;
  const seatHeight = survey.lowerLaid === 'after-stairs' ? negate(survey.lowerToAdd.amount) : ZERO;
  const exact: ExactFlight = {
    totalRise,
    unitRise: divide(totalRise, whole(risers)),
    run,
    nosing: steps.nosing,
    treadThickness: steps.treadThickness.amount,
    riserThickness: steps.riserThickness,
    seatHeight,
  };
  const unitRise = toMm(exact.unitRise);
  const runMm = toMm(run);
  const stepLength = Math.hypot(unitRise, runMm);
  return {
    exact,
    risers,
    treads: isHung(stair.stringer.top) ? risers - 1 : risers,
    totalRise: toMm(totalRise),
    unitRise,
    run: runMm,
    runToTopRiser: (risers - 1) * runMm,
    nosing: toMm(exact.nosing),
    treadThickness: toMm(exact.treadThickness),
    riserThickness: toMm(exact.riserThickness),
    seatHeight: toMm(seatHeight),
    lowerToAdd: toMm(survey.lowerToAdd.amount),
    upperToAdd: toMm(survey.upperToAdd.amount),
    upperSubfloor: toMm(survey.upperSubfloor),
    stepLength,
    pitch: Math.atan2(unitRise, runMm),
    sin: unitRise / stepLength,
    cos: runMm / stepLength,
    finishedTops: Array.from({ length: risers + 1 }, (_, index) =>
      toMm(divide(times(totalRise, index), whole(risers))),
    ),
  };
}

/** Height of the line through the tread tips, at x. */
export function nosingLineHeight(flight: Flight, x: number): number {
  return flight.unitRise + (flight.unitRise / flight.run) * (x + flight.nosing);
}
