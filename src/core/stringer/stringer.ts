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
import { failure, type Problem, problem, type Result, success } from '../result';
import { compare, toMm } from '../units/exact';
import { type AsCut, forecastAsCut } from './asCut';
import { boardFrame, shortestStock, toBoard } from './board';
import { cutHeel, type Heel, hasFirstCut } from './heel';
import { innerCorner, type KickerNotch, outlineOf, tip } from './outline';
import { bearOnHeader, cutTopEnd, type HeaderBearing, type TopEnd } from './topEnd';

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
}

/**
 * @returns the stringer, or why no board of this depth can carry this flight
 */
export function cutStringer(flight: Flight, stair: StairJob): Result<Stringer> {
  const { stringer: choice, place } = stair;
  if (compare(choice.tipInset, choice.stockDepth) >= 0) {
    return failure([problem(`${place}.stringer.tipInset`, 'tipInset.pastBoard', { limitMm: toMm(choice.stockDepth) })]);
  }
  const depth = toMm(choice.stockDepth) - toMm(choice.tipInset);
  const notchDepth = flight.unitRise * flight.cos;
  const heel = cutHeel(flight, depth);
  const top = cutTopEnd(flight, stair, depth);
  const kicker = choice.kicker && { width: toMm(choice.kicker.width), height: toMm(choice.kicker.height) };
  const problems = [
    ...againstBoard(stair, depth - notchDepth, notchDepth, heel, top),
    ...againstKicker(stair, heel, kicker),
  ];
  if (problems.length > 0) return failure(problems);
  return success(measure(flight, stair, heel, top, kicker));
}

function againstBoard(stair: StairJob, throat: number, notchDepth: number, heel: Heel, top: TopEnd): Problem[] {
  const board = `${stair.place}.stringer.stockDepth`;
  if (top.hung && stair.stringer.top === 'header-behind-riser' && top.hanger !== 0) {
    return [problem(`${stair.place}.stringer.hanger`, 'hanger.notWithHeader')];
  }
  if (!hasFirstCut(heel)) {
    return [problem(`${stair.place}.steps.treadThickness`, 'toe.none', { dropMm: heel.drop })];
  }
  if (!isPositive(throat)) return [problem(board, 'throat.none', { notchMm: notchDepth })];
  if (!isPositive(heel.seat)) return [problem(board, 'seat.none')];
  if (!isPositive(top.plumbCut)) return [problem(board, 'plumbCut.none', { shortMm: -top.plumbCut })];
  if (atLeast(heel.heelX, top.endX)) return [problem(board, 'heel.behindEnd', { heelMm: heel.heelX, endMm: top.endX })];
  return [];
}

function againstKicker(stair: StairJob, heel: Heel, kicker: KickerNotch | null): Problem[] {
  if (kicker === null || stair.stringer.kicker === null || !hasFirstCut(heel) || !isPositive(heel.seat)) return [];
  const place = `${stair.place}.stringer.kicker`;
  const problems: Problem[] = [];
  if (compare(stair.stringer.kicker.height, heel.firstRiserCutExact) >= 0) {
    problems.push(problem(`${place}.height`, 'kicker.tooHigh', { limitMm: heel.firstRiserCut }));
  }
  if (atLeast(kicker.width, heel.seat))
    problems.push(problem(`${place}.width`, 'kicker.tooWide', { limitMm: heel.seat }));
  return problems;
}

function measure(flight: Flight, stair: StairJob, heel: Heel, top: TopEnd, kicker: KickerNotch | null): Stringer {
  const stockDepth = toMm(stair.stringer.stockDepth);
  const tipInset = toMm(stair.stringer.tipInset);
  const trim = toMm(stair.stringer.trim);
  const frame = boardFrame(flight, tipInset);
  const notchDepth = flight.unitRise * flight.cos;
  const marks = Array.from({ length: flight.treads }, (_, i) => toBoard(frame, tip(flight, i + 1)).x);
  const endMark = toBoard(frame, { x: top.endX, y: top.topY }).x;
  const boardLength = endMark + heel.firstRiserCut * flight.sin;
  const firstMark = trim + heel.firstRiserCut * flight.sin;
  const headerDepth = stair.survey.headerDepth === null ? null : toMm(stair.survey.headerDepth);
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
    diagonal: Math.hypot(top.endX - flight.riserThickness, top.topY - flight.seatHeight),
    marks,
    cornerMarks: Array.from({ length: flight.treads - 1 }, (_, i) => toBoard(frame, innerCorner(flight, i + 1)).x),
    endMark,
    outline: outlineOf(flight, heel, top, kicker),
    asCut: forecastAsCut(
      flight,
      heel,
      marks.map((mark) => firstMark + mark),
      toMm(stair.markStep),
    ),
  };
}
