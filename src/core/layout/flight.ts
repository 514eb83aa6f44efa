/**
 * The flight itself: how many risers, how high, how deep, before anything is cut.
 *
 * Frame (all of layout/ and stringer/): the side elevation. x = 0 is the finished face of
 * riser 1 and grows in the direction of climbing; y (height) = 0 is the FINISHED lower floor
 * at the landing line and grows upward. Millimetres.
 *
 * Method: the total finished rise is summed exactly from the reading, its finishes and the floor's
 * slope (layout/slope), and the unit rise is that sum divided by the riser count, never rounded before it
 * is used. On a sloping floor the frame's zero is at the landing line, on the stair's centre line.
 */
import { isHung, type StairJob } from '../job/stairJob';
import { failure, type Problem, problem, type Result, success } from '../result';
import { compare, divide, type Exact, multiply, negate, sign, times, toMm, whole, ZERO } from '../units/exact';
import { fewestOnFloor, slopeAcross, slopeAlong, sumRise } from './slope';

/** What the chosen rules contribute to a layout; null where they have no such limit. */
export interface LayoutLimits {
  readonly riserMax: Exact | null;
  readonly treadMin: Exact | null;
  readonly headroomMin: Exact | null;
}

/** The same figures as exact fractions, for everything that is decided at a limit. */
export interface ExactFlight {
  /** H: finished floor at the landing line to finished floor at the header. */
  readonly totalRise: Exact;
  /** R = H / N. */
  readonly unitRise: Exact;
  /** G, nosing to nosing. */
  readonly run: Exact;
  readonly nosing: Exact;
  readonly treadThickness: Exact;
  /** tr, zero for open risers. */
  readonly riserThickness: Exact;
  /** zs: height of the surface that the stringer stands on, at the landing line. */
  readonly seatHeight: Exact;
  /** px, py: what the lower floor rises for each length toward the header, and to the right. */
  readonly slopeAlong: Exact;
  readonly slopeAcross: Exact;
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
  readonly slopeAlong: number;
  readonly slopeAcross: number;
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
  const run = steps.run ?? limits.treadMin ?? ZERO;
  const problems: Problem[] = againstReading(survey, place);
  const risers = countRisers(stair, run, limits, problems);
  const totalRise = sumRise(stair, risers, run);
  if (sign(totalRise) <= 0) {
    return failure([problem(`${place}.survey.rise`, 'rise.notPositive', { totalRiseMm: toMm(totalRise) })]);
  }
  if (steps.run === null && limits.treadMin === null) problems.push(problem(`${place}.steps.run`, 'run.noLimit'));
  else if (sign(run) <= 0) problems.push(problem(`${place}.steps.run`, 'run.notPositive'));
  else problems.push(...againstRun(stair, run), ...againstSlope(stair, divide(totalRise, whole(risers)), run));
  if (problems.length > 0) return failure(problems);
  return success(measure(stair, totalRise, risers, run));
}

/** The same difference must not be added twice: once as it was read, once as the slope makes it. */
function againstReading(survey: StairJob['survey'], place: string): Problem[] {
  const bySlope = survey.readingFromHeader !== null && sign(survey.fallAlong.fall) !== 0;
  return bySlope && sign(survey.footBelowReading) !== 0
    ? [problem(`${place}.survey.footBelowReading`, 'foot.twice')]
    : [];
}

/**
 * A floor has to meet the stringer's lower edge behind the toe: it must be less steep than the stair,
 * and must not fall toward the header past square to the board.
 */
function againstSlope(stair: StairJob, unitRise: Exact, run: Exact): Problem[] {
  const along = slopeAlong(stair.survey);
  const isUnderStair = compare(multiply(along, run), unitRise) < 0;
  const isBeforeSquare = compare(multiply(negate(along), unitRise), run) < 0;
  if (isUnderStair && isBeforeSquare) return [];
  return [problem(`${stair.place}.survey.fallAlong`, isUnderStair ? 'slope.pastSquare' : 'slope.asStair')];
}

function countRisers(stair: StairJob, run: Exact, limits: LayoutLimits, problems: Problem[]): number {
  if (stair.steps.risers !== 'auto') return stair.steps.risers;
  const place = `${stair.place}.steps.risers`;
  if (limits.riserMax === null || sign(limits.riserMax) <= 0) {
    problems.push(problem(place, 'risers.noLimit'));
    return 2;
  }
  const count = fewestOnFloor(stair, run, limits.riserMax);
  if (count === null) {
    problems.push(problem(`${stair.place}.survey.fallAlong`, 'slope.asStair'));
    return 2;
  }
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
    slopeAlong: slopeAlong(survey),
    slopeAcross: slopeAcross(survey),
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
    slopeAlong: toMm(exact.slopeAlong),
    slopeAcross: toMm(exact.slopeAcross),
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

/** Height of what the stringer stands on, at x and at a distance from the centre line, to the right. */
export function floorHeight(flight: Flight, x: number, across: number): number {
  return flight.seatHeight + flight.slopeAlong * x + flight.slopeAcross * across;
}
