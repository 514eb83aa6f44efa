/** Heights of the flight for a stick and for a laser, and what is marked in the house before anything is hung. */
import { onGrid } from '../../core/check/printedSheet';
import { figureOf } from '../../core/drawing/figures';
import { PageSketch, PRINT } from '../../core/drawing/pageSketch';
import { point } from '../../core/geometry/point';
import { type SetOutMark, setOut } from '../../core/layout/setOut';
import { laserTable, storyPole } from '../../core/layout/storyPole';
import { inchMm } from '../../core/units/exact';
import { formatLength } from '../../core/units/format';
import type { Leaf, LeafContext, LeafMaker } from './leaf';
import { NO_SCALE } from './listLeaves';
import { type CellText, type Column, drawTable, FIGURES, figure, words } from './table';

/** Where a laser stands easily; the table says it, and any other height shifts every row alike. */
const LASER_HEIGHT = { imperial: inchMm(40), metric: 1000 };
const SET_OUT_WIDTH = 88;
const GAP = 6;

export const makeHeights: LeafMaker = (context) => {
  const { say, content, measure, plan } = context;
  const { slopeAlong, slopeAcross } = plan.layout.flight;
  const isLevel = slopeAlong === 0 && slopeAcross === 0;
  const columns = columnsFor(context);
  const leaves: Leaf[] = [];
  for (let left = rowsFor(context); left.length > 0; ) {
    const sketch = new PageSketch(measure);
    const area = { left: content.left, top: content.top, bottom: content.bottom };
    const { drawn } = drawTable(sketch, area, columns, left, FIGURES);
    if (leaves.length === 0) drawSetOut(context, sketch);
    leaves.push({
      title: say('sheets.heights'),
      under: say(isLevel ? 'sheets.heights.under' : 'sheets.heights.onSlope'),
      scale: NO_SCALE,
      marks: sketch.marks,
    });
    left = left.slice(Math.max(1, drawn));
  }
  return leaves;
};

function columnsFor({ say, content, plan }: LeafContext): readonly Column[] {
  const { units, markStep } = plan.layout.job;
  const laser = formatLength(LASER_HEIGHT[units], markStep, units);
  const step = 31;
  const width = (content.right - content.left - SET_OUT_WIDTH - GAP - step) / 4;
  return [
    { head: say('marks.step'), width: step },
    { head: say('sheets.pole.finished'), width },
    { head: say('sheets.pole.today'), width },
    { head: say('sheets.pole.cut'), width },
    { head: say('sheets.pole.laser', { laser }), width },
  ];
}

function rowsFor({ say, plan }: LeafContext): readonly (readonly CellText[])[] {
  const { layout, sheet } = plan;
  const { units } = layout.job;
  const rows = storyPole(layout);
  const laser = laserTable(rows, LASER_HEIGHT[units]);
  const mark = (mm: number) => figure(figureOf(onGrid(mm, sheet.step, 'nearest'), units));
  return rows.map(({ step, finished, finishedToday, cutToday }, i) => [
    words(
      step === 0 ? say('sheets.lowerFloor') : step === layout.flight.risers ? say('pole.floor') : String(step),
      true,
    ),
    mark(finished),
    mark(finishedToday),
    cutToday === null ? words('') : mark(cutToday),
    mark(laser[i]?.finished ?? 0),
  ]);
}

function drawSetOut({ say, plan, content }: LeafContext, sketch: PageSketch): void {
  const { layout, sheet } = plan;
  const left = content.right - SET_OUT_WIDTH;
  sketch.words('body-strong', point(left, content.top - 2.5), say('sheets.setOut'), PRINT.body);
  const columns = [
    { head: '', width: SET_OUT_WIDTH - 30 },
    { head: '', width: 30 },
  ];
  const { units } = layout.job;
  const marks = setOut(layout, sheet).map((mark) => [
    words(setOutName(say, mark)),
    figure(figureOf(mark.value, units)),
  ]);
  const toes = sheet.feet.map(({ stringer, toeHeight }) => [
    words(say('check.toeOf', { stringer })),
    figure(figureOf(toeHeight, units)),
  ]);
  const rows = [...marks, ...toes];
  const area = { left, top: content.top - 4, bottom: content.bottom };
  const { bottom } = drawTable(sketch, area, columns, rows, { size: PRINT.body, rowHeight: 5.4 });
  if (bottom - content.bottom > 16) {
    sketch.paragraph('body', left, bottom - 3, SET_OUT_WIDTH, say('sheets.setOut.note'), PRINT.small);
  }
}

function setOutName(say: LeafContext['say'], { what, step }: SetOutMark): string {
  return say(`sheets.setOut.${what}`, { step });
}
