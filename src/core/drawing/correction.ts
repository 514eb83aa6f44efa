/**
 * What a printer does to lengths, put right. No printer is true: each has one factor along a sheet
 * and another across it, and "fit to page" is a third. Somebody lays a tape on the two proof bars;
 * measured ÷ nominal is the factor, and everything at full size is drawn that much smaller or larger.
 * The factors belong to the sides of the paper, not to left and right: a sheet that is read lying
 * goes through the printer the same way.
 */
import { type Point, point } from '../geometry/point';
import { failure, type Problem, problem, type Result, success } from '../result';
import type { Box, Mark } from './drawing';
import { centred, type Sheet } from './paper';

/** Measured ÷ nominal, for the bar along each side of the sheet. */
export interface Correction {
  readonly short: number;
  readonly long: number;
}

export const UNCORRECTED: Correction = { short: 1, long: 1 };

/** Beyond this it is no printer's error but another paper size or a scaling that can be turned off. */
const MOST = 0.1;

export function readCorrection(short: number, long: number): Result<Correction> {
  const problems = Object.entries({ short, long }).flatMap(([side, factor]) => refusal(side, factor));
  return problems.length > 0 ? failure(problems) : success({ short, long });
}

function refusal(side: string, factor: number): Problem[] {
  if (factor >= 1 - MOST && factor <= 1 + MOST) return [];
  const shown = Number.isFinite(factor) ? Math.round((factor - 1) * 1000) / 10 : '?';
  return [problem(`correction.${side}`, 'paper.correctionTooFar', { percent: shown, most: MOST * 100 })];
}

export function isCorrected({ short, long }: Correction): boolean {
  return short !== 1 || long !== 1;
}

interface Factors {
  readonly x: number;
  readonly y: number;
}

function factorsFor(sheet: Sheet, { short, long }: Correction): Factors {
  return sheet.turn === 'upright' ? { x: short, y: long } : { x: long, y: short };
}

/** What can be planned in true millimetres, so that it is inside the area before and after printing. */
export function areaBefore(sheet: Sheet, area: Box, correction: Correction): Box {
  const { x, y } = factorsFor(sheet, correction);
  return centred(sheet, (area.right - area.left) * Math.min(1, x), (area.top - area.bottom) * Math.min(1, y));
}

/** Marks in true millimetres → marks as they must be written for this printer, about the sheet's middle. */
export function corrected(marks: readonly Mark[], sheet: Sheet, correction: Correction): readonly Mark[] {
  if (!isCorrected(correction)) return marks;
  const { x, y } = factorsFor(sheet, correction);
  const middle = point(sheet.width / 2, sheet.height / 2);
  const move = (p: Point) => point(middle.x + (p.x - middle.x) / x, middle.y + (p.y - middle.y) / y);
  return marks.map((mark) =>
    mark.kind === 'text' ? { ...mark, at: move(mark.at) } : { ...mark, corners: mark.corners.map(move) },
  );
}
