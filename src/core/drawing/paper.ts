/**
 * Sheets of paper and what of them can be counted on. Frame of a sheet: x to the right, y up, from
 * the lower left corner as the reader holds it. Millimetres.
 *
 * Most printers leave 4 to 8 mm blank at an edge, so nothing that is needed comes within 10 mm.
 * Letter and A4 share one live area that fits both, so that a file made for one can be printed on
 * the other at full size without losing a line.
 */
import { inchMm } from '../units/exact';
import type { Box } from './drawing';

export type PaperName = 'letter' | 'a4' | 'legal' | 'a3' | 'tabloid' | 'roll36';

export const PAPER_NAMES: readonly PaperName[] = ['letter', 'a4', 'legal', 'a3', 'tabloid', 'roll36'];

/** Standing on its short side, or lying on its long one. */
export type Turn = 'upright' | 'lying';

export interface Sheet {
  readonly paper: PaperName;
  readonly turn: Turn;
  readonly width: number;
  readonly height: number;
}

/** Blank border in which nothing that is needed may lie. */
export const EDGE = 10;

/** Upright: fits Letter and A4 alike. */
const EITHER = { short: 190, long: 259 };

/** A page of a PDF may be 14,400 points long; a roll is cut a little before that. */
const ROLL_LONGEST = 5000;

interface Sides {
  readonly short: number;
  readonly long: number;
}

const SIDES: Readonly<Record<PaperName, Sides>> = {
  letter: { short: inchMm(8.5), long: inchMm(11) },
  a4: { short: 210, long: 297 },
  legal: { short: inchMm(8.5), long: inchMm(14) },
  a3: { short: 297, long: 420 },
  tabloid: { short: inchMm(11), long: inchMm(17) },
  roll36: { short: inchMm(36), long: ROLL_LONGEST },
};

/** @param length of a roll only: how much of it is used */
export function sheetOf(paper: PaperName, turn: Turn, length?: number): Sheet {
  const { short, long } = SIDES[paper];
  const used = paper === 'roll36' && length !== undefined ? Math.min(long, length) : long;
  return turn === 'upright' ? { paper, turn, width: short, height: used } : { paper, turn, width: used, height: short };
}

/** What lies within the blank border of this very sheet. */
export function ownArea({ width, height }: Sheet): Box {
  return { left: EDGE, bottom: EDGE, right: width - EDGE, top: height - EDGE };
}

/** The area to plan with: for Letter and A4 the one that fits both, in the middle of the sheet. */
export function liveArea(sheet: Sheet): Box {
  if (sheet.paper !== 'letter' && sheet.paper !== 'a4') return ownArea(sheet);
  const width = sheet.turn === 'upright' ? EITHER.short : EITHER.long;
  const height = sheet.turn === 'upright' ? EITHER.long : EITHER.short;
  return centred(sheet, width, height);
}

export function centred(sheet: Sheet, width: number, height: number): Box {
  const left = (sheet.width - width) / 2;
  const bottom = (sheet.height - height) / 2;
  return { left, bottom, right: left + width, top: bottom + height };
}
