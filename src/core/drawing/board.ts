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
import type { Drawing, DrawingWords, View } from './drawing';
import { figureOf } from './figures';
import { contentEms, Sketch, TYPE } from './sketch';
import { clipLine, clipToStrip } from './strip';

const SIDE = 28;
const ABOVE = 40;
const BELOW = 62;
const TICK_LENGTH = 10;
/** Between two numbers of a row. */
const NUMBER_GAP = 10;

interface Row {
  readonly from: number;
  readonly to: number;
  /** y of the crown edge. */
  readonly edge: number;
}

/** @param view the height is not used: the drawing takes as many rows as it needs */
export function drawBoard(plan: Pick<StairPlan, 'layout' | 'sheet'>, view: View, words: DrawingWords): Drawing {
  const { layout, sheet } = plan;
  const total = sheet.stockLength ?? layout.stringer.boardLength + 2 * layout.stringer.trim;
  const spans = spansFor(layout, sheet, view.width, total);
  const longest = Math.max(...spans.map(({ from, to }) => to - from));
  const perPixel = longest / Math.max(40, view.width - 2 * SIDE);
  const sketch = new Sketch(perPixel);
  const depth = layout.stringer.stockDepth;
  const rowHeight = depth + sketch.px(ABOVE + BELOW);
  spans.forEach((span, index) => {
    const row: Row = { ...span, edge: -sketch.px(ABOVE) - index * rowHeight };
    drawRow(sketch, layout, sheet, row, total);
    if (index === 0) captionRow(sketch, layout, row, words);
  });
  return {
    marks: sketch.marks,
    frame: { left: -sketch.px(SIDE), right: longest + sketch.px(SIDE), top: 0, bottom: -spans.length * rowHeight },
    perPixel,
  };
}

/** As few rows as give every number of the edge its room; breaks lie between a corner and the next tip. */
function spansFor(
  layout: StairLayout,
  sheet: PrintedSheet,
  width: number,
  total: number,
): { from: number; to: number }[] {
  const { units } = layout.job;
  const widest = Math.max(...sheet.tips.map((tip) => contentEms(figureOf(tip, units)))) * TYPE.number + NUMBER_GAP;
  const stepsInRow = Math.max(1, Math.floor((width - 2 * SIDE) / widest));
  const stepsInTotal = total / layout.flight.stepLength;
  const rows = Math.max(1, Math.ceil(stepsInTotal / stepsInRow));
  const tipsInRow = Math.ceil(sheet.tips.length / rows);
  const breaks: number[] = [0];
  for (let tip = tipsInRow; tip < sheet.tips.length; tip += tipsInRow) {
    const corner = sheet.corners[tip - 1] as number;
    breaks.push(((sheet.tips[tip] as number) + corner) / 2);
  }
  return [...breaks.keys()].map((i) => ({ from: breaks[i] as number, to: breaks[i + 1] ?? total }));
}

function drawRow(sketch: Sketch, layout: StairLayout, sheet: PrintedSheet, row: Row, total: number): void {
  const { units } = layout.job;
  const right = Math.min(row.to, total);
  const onRow = (along: number, into: number): Point => point(along - row.from, row.edge - into);
  drawBlank(sketch, layout, row, total);
  drawCuts(sketch, layout, row);
  sketch.line('gauge-line', onRow(row.from, sheet.gaugeLine), onRow(right, sheet.gaugeLine));
  const inRow = (along: number) => along >= row.from && along <= right;
  sheet.tips.filter(inRow).forEach((tip) => {
    const number = figureOf(tip, units);
    const at = onRow(tip, 0);
    sketch.place(
      [
        {
          kind: 'shape',
          role: 'mark-point',
          closed: false,
          corners: [onRow(tip, sheet.step), point(at.x, at.y + sketch.px(TICK_LENGTH))],
        },
        sketch.figure('number', point(at.x, at.y + sketch.px(TICK_LENGTH + 14)), 'middle', number, TYPE.number),
      ],
      'marks',
    );
  });
  for (const corner of sheet.corners.filter(inRow)) {
    markCorner(sketch, layout, onRow(corner, sheet.gaugeLine), corner, row);
  }
  if (inRow(sheet.end)) markCorner(sketch, layout, onRow(sheet.end, sheet.endDepth), sheet.end, row);
}

/** The board as it comes, open where the row breaks it. */
function drawBlank(sketch: Sketch, layout: StairLayout, row: Row, total: number): void {
  const right = Math.min(row.to, total) - row.from;
  const lower = row.edge - layout.stringer.stockDepth;
  sketch.rectangle('board-fill', 0, lower, right, row.edge);
  for (const y of [row.edge, lower]) sketch.line('board-line', point(0, y), point(right, y));
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
function markCorner(sketch: Sketch, layout: StairLayout, at: Point, along: number, row: Row): void {
  const content = figureOf(along, layout.job.units);
  const board = row.edge - layout.stringer.stockDepth;
  for (const level of [22, 44]) {
    const foot = board - sketch.px(level - 13);
    const placed = sketch.place(
      [
        { kind: 'shape', role: 'leader', closed: false, corners: [at, point(at.x, foot)] },
        sketch.figure('number', point(at.x, board - sketch.px(level)), 'middle', content, TYPE.number * 0.85),
      ],
      'cornerMarks',
    );
    if (placed) return;
  }
}

function captionRow(sketch: Sketch, layout: StairLayout, row: Row, words: DrawingWords): void {
  const y = row.edge - layout.stringer.stockDepth - sketch.px(46);
  sketch.place([sketch.words('caption', point(0, y), 'start', words('gaugeLine'))]);
}
