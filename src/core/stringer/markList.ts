/**
 * What one walks through at the board, at the saw and in the house, one number at a time. Every value
 * is the sheet's own, rounded there once from its exact running distance; nothing is ever stepped off.
 * The order is that of the hand: along the board, tip and corner in turn, as the tape passes them.
 */
import { onGrid, type PrintedSheet } from '../check/printedSheet';
import type { StairLayout } from '../layout/layoutStair';
import { type SetOutFrom, type SetOutMark, setOut } from '../layout/setOut';
import { storyPole } from '../layout/storyPole';
import { type RipPiece, ripPieces } from '../parts/ripPieces';

/**
 * What the tape is hooked on. `board-end`: along the crown edge, corners along the gauge line. `edge`:
 * square in from the crown edge. `tip`: plumb down from the first tip, or level back from the last.
 * `toe`: from the toe's lower corner. `floor`: up from what the stringer stands on. `fence`: the saw.
 */
export type MarkFrom = 'board-end' | 'edge' | 'tip' | 'toe' | 'floor' | 'fence' | SetOutFrom;

export type MarkWhat =
  | 'gauge'
  | 'tip'
  | 'corner'
  | 'end'
  | 'end-depth'
  | 'toe'
  | 'kicker-height'
  | 'kicker-width'
  | `${RipPiece['piece']}-rip`
  | SetOutMark['what']
  | 'pole-cut'
  | 'pole-finished'
  | 'check-toe'
  | 'check-level'
  | 'check-diagonal';

export interface MarkEntry {
  /** The same at every start, for as long as the stair has that mark. */
  readonly id: string;
  readonly what: MarkWhat;
  /** Which one, from 1; 0 where there is only one. */
  readonly step: number;
  readonly value: number;
  readonly from: MarkFrom;
  /** How many pieces get it. */
  readonly count: number;
}

export interface MarkLists {
  readonly marks: readonly MarkEntry[];
  readonly rips: readonly MarkEntry[];
  readonly setting: readonly MarkEntry[];
  readonly pole: readonly MarkEntry[];
}

export function markLists(layout: StairLayout, sheet: PrintedSheet): MarkLists {
  return {
    marks: boardMarks(layout, sheet),
    rips: ripPieces(layout, sheet).map(({ piece, count, setting }) => ({
      ...entry(`${piece}-rip`, 0, setting, 'fence'),
      count,
    })),
    setting: setOut(layout, sheet).map(({ what, step, value, from }) => entry(what, step, value, from)),
    pole: poleMarks(layout, sheet),
  };
}

/** Three measurements that find a wrong line before the saw does. */
export function stringerChecks({ stringer }: StairLayout, sheet: PrintedSheet): readonly MarkEntry[] {
  const lastLevelCut = onGrid(stringer.top.lastLevelCut, sheet.step, 'nearest');
  return [
    ...toes('check-toe', sheet),
    entry('check-level', 0, lastLevelCut, 'tip'),
    entry('check-diagonal', 0, sheet.diagonal, 'toe'),
  ];
}

/** One for each stringer where the feet differ, counted from the left. */
function toes(what: 'toe' | 'check-toe', { feet, toeHeight }: PrintedSheet): MarkEntry[] {
  if (feet.length === 0) return [entry(what, 0, toeHeight, 'tip')];
  return feet.map((foot) => entry(what, foot.stringer, foot.toeHeight, 'tip'));
}

function boardMarks({ stringer }: StairLayout, sheet: PrintedSheet): MarkEntry[] {
  const along = sheet.tips.flatMap((tip, i) => {
    const corner = sheet.corners[i];
    const after = corner === undefined ? [] : [entry('corner', i + 1, corner, 'board-end')];
    return [entry('tip', i + 1, tip, 'board-end'), ...after];
  });
  const { kicker } = stringer;
  const mark = (value: number) => onGrid(value, sheet.step, 'nearest');
  return [
    entry('gauge', 0, sheet.gaugeLine, 'edge'),
    ...along,
    entry('end', 0, sheet.end, 'board-end'),
    entry('end-depth', 0, sheet.endDepth, 'edge'),
    ...toes('toe', sheet),
    ...(kicker === null
      ? []
      : [entry('kicker-height', 0, mark(kicker.height), 'toe'), entry('kicker-width', 0, mark(kicker.width), 'toe')]),
  ];
}

/** The pole stands where the stringer will: on today's floor, or on the finished one that is laid before it. */
function poleMarks(layout: StairLayout, sheet: PrintedSheet): MarkEntry[] {
  const { seatHeight } = layout.flight;
  const mark = (height: number) => onGrid(height - seatHeight, sheet.step, 'nearest');
  return storyPole(layout)
    .slice(1)
    .flatMap(({ step, finished, cut }) => [
      ...(cut === null ? [] : [entry('pole-cut', step, mark(cut), 'floor')]),
      entry('pole-finished', step, mark(finished), 'floor'),
    ]);
}

function entry(what: MarkWhat, step: number, value: number, from: MarkFrom): MarkEntry {
  return { id: step === 0 ? what : `${what}-${step}`, what, step, value, from, count: 1 };
}
