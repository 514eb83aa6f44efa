/** A blank form for measuring the finished stair: what it should be, and room for what it is. */
import { figureOf } from '../../core/drawing/figures';
import { PageSketch, PRINT } from '../../core/drawing/pageSketch';
import { point } from '../../core/geometry/point';
import type { TextKey } from '../../text/say';
import type { Leaf, LeafContext, LeafMaker } from './leaf';
import { NO_SCALE } from './listLeaves';
import { BLANK, type CellText, drawTable, figure, type TableStyle, words } from './table';

const OTHER_WIDTH = 96;
const GAP = 6;
/** The column of steps; wider where a place across stands beside its number. */
const STEP = 14;
const WIDE_STEP = 27;
/** Rows that a pen can write in. */
const ROWS: TableStyle = { size: PRINT.figure, rowHeight: 7 };
const OTHERS: readonly TextKey[] = [
  'inspect.riserSpread',
  'inspect.runSpread',
  'inspect.nosing',
  'inspect.headroom',
  'inspect.width',
  'inspect.rail',
  'inspect.guard',
  'inspect.openings',
  'inspect.landings',
  'inspect.light',
  'inspect.fixings',
  'inspect.creaks',
];

export const makeInspection: LeafMaker = (context) => {
  const { say, content, measure } = context;
  const leaves: Leaf[] = [];
  for (let left = riserRows(context); left.length > 0; ) {
    const sketch = new PageSketch(measure);
    const step = firstRiserAcross(context).length === 0 ? STEP : WIDE_STEP;
    const width = (content.right - content.left - OTHER_WIDTH - GAP - step) / 4;
    const columns = [
      { head: say('marks.step'), width: step },
      { head: say('inspect.riserPlanned'), width },
      { head: say('inspect.riserMeasured'), width },
      { head: say('inspect.runPlanned'), width },
      { head: say('inspect.runMeasured'), width },
    ];
    const area = { left: content.left, top: content.top, bottom: content.bottom };
    const { drawn } = drawTable(sketch, area, columns, left, ROWS);
    if (leaves.length === 0) drawOthers(context, sketch);
    leaves.push({
      title: say('sheets.inspection'),
      under: say('sheets.inspection.under'),
      scale: NO_SCALE,
      marks: sketch.marks,
    });
    left = left.slice(Math.max(1, drawn));
  }
  return leaves;
};

function riserRows(context: LeafContext): readonly (readonly CellText[])[] {
  const { flight, job } = context.plan.layout;
  const row = (step: string, riser: number, hasRun: boolean): CellText[] => [
    words(step, true),
    figure(figureOf(riser, job.units)),
    BLANK,
    hasRun ? figure(figureOf(flight.run, job.units)) : words(''),
    hasRun ? BLANK : words(''),
  ];
  const rows = Array.from({ length: flight.risers }, (_, i) => row(String(i + 1), flight.unitRise, i < flight.treads));
  const across = firstRiserAcross(context);
  if (across.length === 0) return rows;
  return [...across.map(([step, riser], i) => row(step, riser, i === MIDDLE)), ...rows.slice(1)];
}

/** Of three places across. */
const MIDDLE = 1;

/** Where the floor falls across, riser 1 is another at each side than in the middle; else nothing. */
function firstRiserAcross({ say, plan }: LeafContext): readonly (readonly [step: string, riser: number])[] {
  const { flight, width } = plan.layout;
  if (flight.slopeAcross === 0 || width === null) return [];
  const side = (width.betweenSkirts / 2) * flight.slopeAcross;
  return [
    [say('inspect.left', { step: 1 }), flight.unitRise + side],
    [say('inspect.middle', { step: 1 }), flight.unitRise],
    [say('inspect.right', { step: 1 }), flight.unitRise - side],
  ];
}

function drawOthers({ say, content }: LeafContext, sketch: PageSketch): void {
  const left = content.right - OTHER_WIDTH;
  const columns = [
    { head: say('inspect.other'), width: OTHER_WIDTH * 0.62 },
    { head: say('inspect.measured'), width: OTHER_WIDTH * 0.38 },
  ];
  const area = { left, top: content.top, bottom: content.bottom + 26 };
  const rows = OTHERS.map((key) => [words(say(key)), BLANK]);
  const { bottom } = drawTable(sketch, area, columns, rows, { size: PRINT.body, rowHeight: 8 });
  for (const [i, key] of (['inspect.by', 'inspect.date'] as const).entries()) {
    const y = bottom - 12 - i * 11;
    sketch.words('body', point(left, y), say(key), PRINT.body);
    sketch.level('rule', left + 36, content.right, y - 2);
  }
}
