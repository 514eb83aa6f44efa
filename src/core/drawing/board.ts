/**
 * The board with the stringer laid out on it: crown edge up, the tape hooked on the left end, tips
 * ticked on the edge, inner corners on the gauge line. On a narrow view it is broken into rows of
 * whole steps, so that every number keeps its size.
 *
 * Frame: x along the board from its left end; the crown edge of each row lies at that row's y, and
 * the board hangs below it. Millimetres, y up.
 */

import type { PrintedSheet } from '../check/printedSheet';
import { type Point, point } from '../geometry/point';
import type { StairLayout } from '../layout/layoutStair';
import type { StairPlan } from '../plan/planStair';
import { boardFrame, toBoard } from '../stringer/board';
import type { About, Box, Drawing, DrawingWords, FigureText, Mark, TextMark, View } from './drawing';
import { figureOf } from './figures';
import { contentEms, Sketch, TYPE, textBox } from './sketch';
import { clipLine, clipToStrip } from './strip';

const SIDE = 28;
const ABOVE = 46;
const BELOW = 72;
const TICK_LENGTH = 10;
/** Between two numbers of a row. */
const NUMBER_GAP = 10;
/** Digits of the corners' numbers, and the lines below the board that they may stand on; pixels. */
const CORNER_SIZE = 17;
const LEVELS = [24, 52] as const;

interface Row {
  readonly from: number;
  readonly to: number;
  /** y of the crown edge. */
  readonly edge: number;
}

/** How the board is broken into rows, and where they lie. */
interface Rows {
  readonly rows: readonly Row[];
  readonly total: number;
  readonly frame: Box;
  /** Millimetres to a pixel where the whole is shown. */
  readonly perPixel: number;
}

/** @param view the height is not used: the drawing takes as many rows as it needs */
export function drawBoard(plan: Pick<StairPlan, 'layout' | 'sheet'>, view: View, words: DrawingWords): Drawing {
  const { zoom = 1 } = view;
  const numbers = plan.sheet.tips.length;
  for (let count = fewestRows(plan, view.width); ; count += 1) {
    const rows = breakRows(plan, view.width, count);
    const whole = drawRows(plan, rows, 1, words);
    // As few rows as give every number its room.
    if (!whole.isComplete && count < numbers) continue;
    // Rows keep their places whatever the zoom: all that changes is the texts' own size.
    const { sketch } = zoom === 1 ? whole : drawRows(plan, rows, zoom, words);
    return { marks: sketch.marks, frame: rows.frame, perPixel: sketch.perPixel };
  }
}

function drawRows(
  { layout, sheet }: Pick<StairPlan, 'layout' | 'sheet'>,
  { rows, total, frame, perPixel }: Rows,
  zoom: number,
  words: DrawingWords,
): { readonly sketch: Sketch; readonly isComplete: boolean } {
  const sketch = new Sketch(perPixel / zoom, frame);
  const complete = rows.map((row) => drawRow(sketch, layout, sheet, row, total));
  const [first] = rows;
  if (first !== undefined) captionGauge(sketch, layout, sheet, first, words);
  return { sketch, isComplete: complete.every((each) => each) };
}

/** A first guess, from the widest number of the edge. */
function fewestRows({ layout, sheet }: Pick<StairPlan, 'layout' | 'sheet'>, width: number): number {
  const { units } = layout.job;
  const widest = Math.max(...sheet.tips.map((tip) => contentEms(figureOf(tip, units)))) * TYPE.number + NUMBER_GAP;
  const stepsInRow = Math.max(1, (width - 2 * SIDE) / widest);
  return Math.max(1, Math.floor(sheet.tips.length / stepsInRow));
}

/** Rows of about as many tips each; they are broken between a corner and the next tip. */
function breakRows({ layout, sheet }: Pick<StairPlan, 'layout' | 'sheet'>, width: number, count: number): Rows {
  const total = sheet.stockLength ?? layout.stringer.boardLength + 2 * layout.stringer.trim;
  const tipsInRow = Math.ceil(sheet.tips.length / count);
  const breaks: number[] = [0];
  for (let tip = tipsInRow; tip < sheet.tips.length; tip += tipsInRow) {
    const corner = sheet.corners[tip - 1] as number;
    breaks.push(((sheet.tips[tip] as number) + corner) / 2);
  }
  const spans = breaks.map((from, i) => ({ from, to: breaks[i + 1] ?? total }));
  const longest = Math.max(...spans.map(({ from, to }) => to - from));
  const perPixel = longest / Math.max(40, width - 2 * SIDE);
  const height = layout.stringer.stockDepth + perPixel * (ABOVE + BELOW);
  return {
    rows: spans.map((span, index) => ({ ...span, edge: -perPixel * ABOVE - index * height })),
    total,
    perPixel,
    frame: { left: -perPixel * SIDE, right: longest + perPixel * SIDE, top: 0, bottom: -spans.length * height },
  };
}

/** @returns whether every number of the row was placed */
function drawRow(sketch: Sketch, layout: StairLayout, sheet: PrintedSheet, row: Row, total: number): boolean {
  const { units } = layout.job;
  const right = Math.min(row.to, total);
  const onRow = (along: number, into: number): Point => point(along - row.from, row.edge - into);
  drawBlank(sketch, layout, row, total);
  drawCuts(sketch, layout, row);
  sketch.lineAbout('gaugeLine', 'gauge-line', onRow(row.from, sheet.gaugeLine), onRow(right, sheet.gaugeLine));
  const inRow = (along: number) => along >= row.from && along <= right;
  const tips = sheet.tips.map((tip, i) => {
    if (!inRow(tip)) return true;
    const at = onRow(tip, 0);
    const tick = [onRow(tip, sheet.step), point(at.x, at.y + sketch.px(TICK_LENGTH))];
    const number = numberAt(sketch, at.x, at.y + sketch.px(TICK_LENGTH + 16), figureOf(tip, units), TYPE.number);
    return sketch.place([{ kind: 'shape', role: 'mark-point', closed: false, corners: tick }, number], `tip:${i + 1}`);
  });
  const corners = sheet.corners.map((corner, i) => {
    if (!inRow(corner)) return true;
    return markCorner(sketch, layout, onRow(corner, sheet.gaugeLine), corner, row, `corner:${i + 1}`);
  });
  const end = !inRow(sheet.end) || markCorner(sketch, layout, onRow(sheet.end, sheet.endDepth), sheet.end, row, 'end');
  return end && [...tips, ...corners].every((placed) => placed);
}

/** Over or under its mark, and moved in from the frame where that is near. */
function numberAt(sketch: Sketch, x: number, y: number, content: FigureText, size: number): TextMark {
  return sketch.inside(sketch.figure('number', point(x, y), 'middle', content, size));
}

/** The board as it comes, open where the row breaks it. */
function drawBlank(sketch: Sketch, layout: StairLayout, row: Row, total: number): void {
  const right = Math.min(row.to, total) - row.from;
  const lower = row.edge - layout.stringer.stockDepth;
  sketch.rectangle('board-fill', 0, lower, right, row.edge);
  for (const y of [row.edge, lower])
    sketch.lineAbout('stringer.stockDepth', 'board-line', point(0, y), point(right, y));
  if (row.from === 0) sketch.line('board-line', point(0, lower), point(0, row.edge));
  if (row.to >= total) sketch.line('board-line', point(right, lower), point(right, row.edge));
}

/** What stays of it, and the lines to cut: a row's break is no cut and gets no line. */
function drawCuts(sketch: Sketch, layout: StairLayout, row: Row): void {
  const { stringer, flight } = layout;
  const frame = boardFrame(flight, stringer.tipInset);
  const outline = stringer.outline.map((corner) => {
    const { x: u, y: v } = toBoard(frame, corner);
    return point(stringer.firstMark + u - row.from, row.edge - v);
  });
  const right = row.to - row.from;
  sketch.shape('wood-fill', clipToStrip(outline, 0, right));
  outline.forEach((corner, index) => {
    const piece = clipLine(corner, outline[(index + 1) % outline.length] as Point, 0, right);
    if (piece !== null) sketch.line('cut-line', ...piece);
  });
}

/** A corner's number stands below the board, on a second line where it would touch its neighbour. */
function markCorner(sketch: Sketch, layout: StairLayout, at: Point, along: number, row: Row, about: About): boolean {
  const content = figureOf(along, layout.job.units);
  const board = row.edge - layout.stringer.stockDepth;
  return sketch.placeFirst(
    LEVELS.map((level): Mark[] => [
      {
        kind: 'shape',
        role: 'leader',
        closed: false,
        corners: [at, point(at.x, board - sketch.px(level - CORNER_SIZE * 0.8 - 4))],
      },
      numberAt(sketch, at.x, board - sketch.px(level), content, CORNER_SIZE),
    ]),
    about,
  );
}

/** The line that the corners lie on, with its distance from the edge: where the numbers below leave room. */
function captionGauge(sketch: Sketch, layout: StairLayout, sheet: PrintedSheet, row: Row, words: DrawingWords): void {
  const board = row.edge - layout.stringer.stockDepth;
  const content = figureOf(sheet.gaugeLine, layout.job.units);
  const right = row.to - row.from;
  const at = (x: number, level: number, anchor: 'start' | 'end'): Mark[] => {
    const y = board - sketch.px(level);
    const number = sketch.figure('number', point(x, y), anchor, content, CORNER_SIZE);
    const caption = words('gaugeLine');
    const box = textBox(number);
    return anchor === 'start'
      ? [number, sketch.words('caption', point(box.right + sketch.px(8), y), 'start', caption)]
      : [number, sketch.words('caption', point(box.left - sketch.px(8), y), 'end', caption)];
  };
  const places = LEVELS.flatMap((level) => [at(0, level, 'start'), at(right, level, 'end')]);
  sketch.placeFirst(places, 'gaugeLine');
}
