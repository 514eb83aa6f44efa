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
    const width = (content.right - content.left - OTHER_WIDTH - GAP - 14) / 4;
    const columns = [
      { head: say('marks.step'), width: 14 },
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

function riserRows({ plan }: LeafContext): readonly (readonly CellText[])[] {
  const { flight, job } = plan.layout;
  return Array.from({ length: flight.risers }, (_, i) => [
    words(String(i + 1), true),
    figure(figureOf(flight.unitRise, job.units)),
    BLANK,
    i < flight.treads ? figure(figureOf(flight.run, job.units)) : words(''),
    i < flight.treads ? BLANK : words(''),
  ]);
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
