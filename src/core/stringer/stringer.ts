/**
 * The stringer that can be marked, cut and hung. Frame: the elevation of layout/flight for
 * `outline`; everything else is a length on the board (board.ts).
 *
 * Method: two rows of running marks instead of a stepped square. The tips lie on the edge at
 * every U, the inner corners on one gauge line; joining them gives both cuts of every notch,
 * and no error is handed on from one notch to the next.
 */
import type { Point } from '../geometry/point';
import { atLeast, isPositive } from '../geometry/tolerance';
import type { StairJob } from '../job/stairJob';
import type { Flight } from '../layout/flight';
import type { WidthStack } from '../layout/width';
import { failure, type Problem, problem, type Result, success } from '../result';
import {
  compare,
  divide,
  type Exact,
  multiply,
  negate,
  sign,
  subtract,
  times,
  toMm,
  whole,
  ZERO,
} from '../units/exact';
import { type AsCut, forecastAsCut } from './asCut';
import { boardFrame, shortestStock, toBoard } from './board';
import { cutHeel, type Heel, hasFirstCut } from './heel';
import { innerCorner, type KickerNotch, outlineOf, tip } from './outline';
import { bearOnHeader, cutTopEnd, type HeaderBearing, type TopEnd } from './topEnd';

/** Where one stringer stands on a floor that falls across, and what that makes of its bottom end. */
export interface Foot {
  /** Counted from the left when climbing, from 1; 0 where one stringer is as another. */
  readonly stringer: number;
  /** Its centre, from the stair's centre line, to the right. */
  readonly across: number;
  readonly heel: Heel;
  /** Toe to top, a check dimension. */
  readonly diagonal: number;
  readonly outline: readonly Point[];
  readonly asCut: AsCut;
}

/**
 * Marks, top end and board are the same for every stringer. Where the feet differ, `heel` and what hangs on
 * it are those of the master, with the tallest toe: every other is traced from it and its toe cut shorter,
 * and none can come out too short.
 */
export interface Stringer {
  readonly stockDepth: number;
  readonly stockThickness: number;
  readonly tipInset: number;
  readonly trim: number;
  readonly heel: Heel;
  readonly top: TopEnd;
  readonly bearing: HeaderBearing;
  readonly kicker: KickerNotch | null;
  /** RG/U: depth of a notch, square to the edge. */
  readonly notchDepth: number;
  /** Distance of the gauge line from the board's edge: tip inset + notch depth. */
  readonly gaugeLine: number;
  /** Wood left between the inner corners and the lower edge. */
  readonly throat: number;
  /** Net length, before the kicker is notched and before trims. */
  readonly boardLength: number;
  /** The shortest board sold that holds it and two trims; null if none does. */
  readonly stockLength: number | null;
  /** Distance of the first tip from the board's end. */
  readonly firstMark: number;
  /** Toe to top, a check dimension. */
  readonly diagonal: number;
  /** Distances of the tips from the first, along the edge. */
  readonly marks: readonly number[];
  /** Inner corners between treads, from the first tip, along the gauge line. */
  readonly cornerMarks: readonly number[];
  /** The top end of the last level cut, from the first tip, along its own line. */
  readonly endMark: number;
  readonly outline: readonly Point[];
  readonly asCut: AsCut;
  /** From left to right; one, with stringer 0, where all are alike. */
  readonly feet: readonly Foot[];
  /** Which of the feet is the master's. */
  readonly master: Foot;
}

/**
 * @param width where stringers stand; without it, or on a floor that is level across, one stands for all
 * @returns the stringer, or why no board of this depth can carry this flight
 */
export function cutStringer(flight: Flight, stair: StairJob, width: WidthStack | null): Result<Stringer> {
  const { stringer: choice, place } = stair;
  if (compare(choice.tipInset, choice.stockDepth) >= 0) {
    return failure([problem(`${place}.stringer.tipInset`, 'tipInset.pastBoard', { limitMm: toMm(choice.stockDepth) })]);
  }
  const depth = toMm(choice.stockDepth) - toMm(choice.tipInset);
  const notchDepth = flight.unitRise * flight.cos;
  const heels = standingPlaces(flight, width).map((place) => ({
    ...place,
    heel: cutHeel(flight, depth, place.acrossExact),
  }));
  const top = cutTopEnd(flight, stair, depth);
  const kicker = choice.kicker && { width: toMm(choice.kicker.width), height: toMm(choice.kicker.height) };
  const byToe = [...heels].sort((a, b) =>
    compare(b.heel.firstRiserCutExact, a.heel.firstRiserCutExact),
  ) as unknown as ByToe;
  const onFloor = againstFloor(flight, stair, width, byToe);
  const problems =
    onFloor.length > 0
      ? onFloor
      : [...againstBoard(stair, depth - notchDepth, notchDepth, byToe, top), ...againstKicker(stair, byToe, kicker)];
  if (problems.length > 0) return failure(problems);
  return success(measure(flight, stair, heels, byToe[0], top, kicker));
}

interface Standing {
  readonly stringer: number;
  readonly acrossExact: Exact;
  readonly heel: Heel;
}

/** The tallest toe first; what is too short or too far back is so at one of the two ends. */
type ByToe = readonly [Standing, ...Standing[]];

/** Centres of the stringers, where it makes a difference which one it is. */
function standingPlaces(flight: Flight, width: WidthStack | null): Omit<Standing, 'heel'>[] {
  if (width === null || sign(flight.exact.slopeAcross) === 0) return [{ stringer: 0, acrossExact: ZERO }];
  return Array.from({ length: width.stringers }, (_, k) => ({
    stringer: k + 1,
    acrossExact: divide(times(width.spacingExact, 2 * k + 1 - width.stringers), whole(2)),
  }));
}

/** A floor must not come up to the first tread anywhere, nor leave a stringer without its first cut. */
function againstFloor(flight: Flight, stair: StairJob, width: WidthStack | null, byToe: ByToe): Problem[] {
  const { slopeAlong, slopeAcross, unitRise } = flight.exact;
  const across = `${stair.place}.survey.fallAcross`;
  if (width !== null && compare(multiply(size(slopeAcross), width.betweenSkirtsExact), times(unitRise, 2)) >= 0) {
    return [problem(across, 'slope.overTread', { riseMm: flight.unitRise })];
  }
  const { stringer, heel } = byToe.at(-1) as Standing;
  const isLevel = sign(slopeAlong) === 0 && sign(slopeAcross) === 0;
  if (isLevel || hasFirstCut(heel) || sign(onLevelFloor(flight)) <= 0) return [];
  const at = sign(slopeAcross) === 0 ? `${stair.place}.survey.fallAlong` : across;
  return [problem(at, 'toe.noneOnSlope', { stringer, shortMm: -heel.firstRiserCut })];
}

/** The first cut that a level floor would leave. */
function onLevelFloor({ exact }: Flight): Exact {
  return subtract(subtract(exact.unitRise, exact.treadThickness), exact.seatHeight);
}

function size(slope: Exact): Exact {
  return sign(slope) < 0 ? negate(slope) : slope;
}

function againstBoard(stair: StairJob, throat: number, notchDepth: number, byToe: ByToe, top: TopEnd): Problem[] {
  const board = `${stair.place}.stringer.stockDepth`;
  if (top.hung && stair.stringer.top === 'header-behind-riser' && top.hanger !== 0) {
    return [problem(`${stair.place}.stringer.hanger`, 'hanger.notWithHeader')];
  }
  const [{ heel: tallest }] = byToe;
  const { heel: shortest } = byToe.at(-1) as Standing;
  if (!hasFirstCut(shortest)) {
    return [problem(`${stair.place}.steps.treadThickness`, 'toe.none', { dropMm: shortest.drop })];
  }
  if (!isPositive(throat)) return [problem(board, 'throat.none', { notchMm: notchDepth })];
  // The taller the toe, the shorter the seat behind it, and the farther in front its end.
  if (!isPositive(tallest.seat)) return [problem(board, 'seat.none')];
  if (!isPositive(top.plumbCut)) return [problem(board, 'plumbCut.none', { shortMm: -top.plumbCut })];
  if (atLeast(shortest.heelX, top.endX)) {
    return [problem(board, 'heel.behindEnd', { heelMm: shortest.heelX, endMm: top.endX })];
  }
  return [];
}

function againstKicker(stair: StairJob, byToe: ByToe, kicker: KickerNotch | null): Problem[] {
  const [{ heel: tallest }] = byToe;
  const { heel: shortest } = byToe.at(-1) as Standing;
  if (kicker === null || stair.stringer.kicker === null || !hasFirstCut(shortest) || !isPositive(tallest.seat)) {
    return [];
  }
  const place = `${stair.place}.stringer.kicker`;
  const problems: Problem[] = [];
  if (compare(stair.stringer.kicker.height, shortest.firstRiserCutExact) >= 0) {
    problems.push(problem(`${place}.height`, 'kicker.tooHigh', { limitMm: shortest.firstRiserCut }));
  }
  if (atLeast(kicker.width, tallest.seat)) {
    problems.push(problem(`${place}.width`, 'kicker.tooWide', { limitMm: tallest.seat }));
  }
  return problems;
}

function measure(
  flight: Flight,
  stair: StairJob,
  heels: readonly Standing[],
  tallest: Standing,
  top: TopEnd,
  kicker: KickerNotch | null,
): Stringer {
  const stockDepth = toMm(stair.stringer.stockDepth);
  const tipInset = toMm(stair.stringer.tipInset);
  const trim = toMm(stair.stringer.trim);
  const frame = boardFrame(flight, tipInset);
  const notchDepth = flight.unitRise * flight.cos;
  const marks = Array.from({ length: flight.treads }, (_, i) => toBoard(frame, tip(flight, i + 1)).x);
  const endMark = toBoard(frame, { x: top.endX, y: top.topY }).x;
  const { heel } = tallest;
  const boardLength = endMark + heel.firstRiserCut * flight.sin;
  const firstMark = trim + heel.firstRiserCut * flight.sin;
  const headerDepth = stair.survey.headerDepth === null ? null : toMm(stair.survey.headerDepth);
  const ticks = marks.map((mark) => firstMark + mark);
  const footOf = (standing: Standing): Foot => {
    const across = toMm(standing.acrossExact);
    return {
      stringer: standing.stringer,
      across,
      heel: standing.heel,
      diagonal: Math.hypot(top.endX - flight.riserThickness, top.topY - standing.heel.toeY),
      outline: outlineOf(flight, standing.heel, top, kicker, across),
      asCut: forecastAsCut(flight, standing.heel, ticks, toMm(stair.markStep), across),
    };
  };
  const master = footOf(tallest);
  return {
    stockDepth,
    stockThickness: toMm(stair.stringer.stockThickness),
    tipInset,
    trim,
    heel,
    top,
    bearing: bearOnHeader(flight, top, headerDepth),
    kicker,
    notchDepth,
    gaugeLine: tipInset + notchDepth,
    throat: stockDepth - tipInset - notchDepth,
    boardLength,
    stockLength: shortestStock(boardLength + 2 * trim, stair.units),
    firstMark,
    diagonal: master.diagonal,
    marks,
    cornerMarks: Array.from({ length: flight.treads - 1 }, (_, i) => toBoard(frame, innerCorner(flight, i + 1)).x),
    endMark,
    outline: master.outline,
    asCut: master.asCut,
    feet: heels.map((standing) => (standing === tallest ? master : footOf(standing))),
    master,
  };
}

/** The feet that are cut each for itself; none where one stringer is as another. */
export function differingFeet({ feet }: Stringer): readonly Foot[] {
  return feet.filter(({ stringer }) => stringer > 0);
}

/** The same stringer as it stands on one of the feet: for whoever draws or lists each that differs. */
export function onFoot(stringer: Stringer, foot: Foot): Stringer {
  const { heel, diagonal, outline, asCut } = foot;
  return { ...stringer, heel, diagonal, outline, asCut, master: foot };
}
