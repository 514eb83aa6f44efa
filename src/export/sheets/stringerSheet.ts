/** The sheet that lies on the board: the board itself, its marks, what to check, how to set square and saw. */
import { drawBoard } from '../../core/drawing/board';
import type { Mark } from '../../core/drawing/drawing';
import { figureOf } from '../../core/drawing/figures';
import { hatchAlong, type Stroke } from '../../core/drawing/hatch';
import { PageSketch, PRINT } from '../../core/drawing/pageSketch';
import { clipLineToBox } from '../../core/drawing/strip';
import { point } from '../../core/geometry/point';
import type { JudgedPlan } from '../../core/plan/planStair';
import { spreadAsCut } from '../../core/stringer/asCut';
import { mmToInches } from '../../core/units/exact';
import { tapeText } from '../../core/units/format';
import { roundTo } from '../../core/units/rounding';
import type { TextKey } from '../../text/say';
import {
  drawingWords,
  type Leaf,
  type LeafContext,
  type LeafMaker,
  PAPER_PIXEL,
  type Placed,
  placeDrawing,
  viewFor,
} from './leaf';
import { NO_SCALE } from './listLeaves';
import { type CellText, type Column, drawTable, FIGURES, figure, type TableStyle, words } from './table';

const DEGREES = 180 / Math.PI;
const RIGHT_ANGLE = 90;
/** The risers that the rounded marks will give, along the foot: height of a row, and how many it holds. */
const AS_CUT_ROW = 13;
const AS_CUT_MOST = 16;
const GAP = 6;
/** At the scale of a whole board on a sheet. */
const SMALL_HATCH = { reach: 2.4, spacing: 1.5 };
const CHECKS_WIDTH = 96;
/** Rows are set closer when all steps have to be on one sheet, but not so close that they touch. */
const CLOSEST = 4.9;
const HEADS = 13;
/** Fourteen lines of checks, each so high. */
const CHECK_ROW = 5;
const CHECKS_HEIGHT = 76;
/** Millimetres of paper to a pixel where figures have no fractions. */
const DIGITS_PIXEL = 0.21;

export const makeStringerSheet: LeafMaker = (context) => {
  const { say, content, plan, measure } = context;
  const board = boardOn(context);
  const lowest = Math.min(...board.marks.map((mark) => (mark.kind === 'text' ? mark.at.y - mark.size : content.top)));
  const top = lowest - 3;
  const sketch = new PageSketch(measure);
  for (const stroke of wasteOn(board.marks)) sketch.line('waste-hatch', ...stroke);
  drawAsCut(context, sketch);
  const first: Leaf = {
    title: say('sheets.stringer'),
    // Where the floor falls across no two are alike, and whoever cuts them so has them all out by the difference.
    under: say(plan.sheet.feet.length === 0 ? 'sheets.stringer.under' : 'sheets.stringer.eachToe', {
      count: plan.layout.width?.stringers ?? 0,
    }),
    scale: { kind: 'ratio', ratio: board.ratio },
    marks: [],
  };
  const bottom = content.bottom + asCutHeight(plan) + 2;
  const rows = markRows(context);
  // Long boards take two rows, and their tables a sheet of their own: nothing is squeezed or left out.
  const checks = CHECKS_HEIGHT + CHECK_ROW * Math.max(0, plan.sheet.feet.length - 1);
  const onFirst = top - bottom >= Math.max(checks, rows.length * CLOSEST + HEADS);
  if (onFirst) drawTables(context, sketch, top, bottom, rows);
  const leaf = { ...first, marks: [...board.marks, ...sketch.marks] };
  return onFirst ? [leaf] : [leaf, ...tableLeaves(context, rows, first)];
};

/** One row if figures can be set small enough for it; stacked fractions cannot. */
function boardOn({ say, content, plan, measure }: LeafContext): Placed {
  const pixel = plan.layout.job.units === 'metric' ? DIGITS_PIXEL : PAPER_PIXEL;
  return placeDrawing(drawBoard(plan, viewFor(content, pixel), drawingWords(say)), content, measure, pixel);
}

/** @returns how many rows of marks had room */
function drawTables(
  context: LeafContext,
  sketch: PageSketch,
  top: number,
  bottom: number,
  rows: readonly CellText[][],
): number {
  const rowHeight = Math.max(CLOSEST, Math.min(FIGURES.rowHeight, (top - bottom - HEADS) / rows.length));
  const area = { left: context.content.left, top, bottom };
  const style = { size: PRINT.figure, rowHeight };
  drawChecks(context, sketch, top, bottom);
  return drawTable(sketch, area, markColumns(context), rows, style).drawn;
}

function tableLeaves(context: LeafContext, rows: readonly CellText[][], like: Leaf): Leaf[] {
  const { content, measure } = context;
  const leaves: Leaf[] = [];
  for (let left = rows; left.length > 0; ) {
    const sketch = new PageSketch(measure);
    const drawn = drawTables(context, sketch, content.top, content.bottom, left);
    leaves.push({ ...like, scale: NO_SCALE, marks: sketch.marks });
    left = left.slice(Math.max(1, drawn));
  }
  return leaves;
}

/** The board's drawing gives its rows as outlines and cuts; what is cut away is hatched, within the board. */
function wasteOn(marks: readonly Mark[]): readonly Stroke[] {
  const shapes = marks.flatMap((mark) => (mark.kind === 'shape' ? [mark] : []));
  const boards = shapes.filter(({ role }) => role === 'board-fill');
  const cuts = shapes.filter(({ role }) => role === 'cut-line').map(({ corners }) => corners as Stroke);
  return shapes
    .filter(({ role }) => role === 'wood-fill')
    .flatMap(({ corners }, row) => {
      const xs = (boards[row]?.corners ?? corners).map(({ x }) => x);
      const ys = (boards[row]?.corners ?? corners).map(({ y }) => y);
      const box = { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) };
      const own = cuts.filter(([a]) => a.y >= box.bottom - 1 && a.y <= box.top + 1);
      return hatchAlong(own, corners, 'outside', SMALL_HATCH).flatMap(([a, b]): Stroke[] => {
        const piece = clipLineToBox(a, b, box);
        return piece === null ? [] : [piece];
      });
    });
}

function markColumns({ say, content, plan }: LeafContext): readonly Column[] {
  const width = (content.right - content.left - CHECKS_WIDTH - GAP - 14) / 4;
  const alike = plan.sheet.feet.length === 0;
  return [
    { head: say('marks.step'), width: 14 },
    { head: say('marks.tip'), width },
    { head: say('marks.corner'), width },
    { head: say(alike ? 'sheets.cutHeight' : 'sheets.cutHeightHere'), width },
    { head: say(alike ? 'sheets.finishedTread' : 'sheets.finishedTreadHere'), width },
  ];
}

function markRows({ say, plan }: LeafContext): CellText[][] {
  const { layout, sheet } = plan;
  const { flight, job } = layout;
  const length = (mm: number) => figure(figureOf(mm, job.units));
  return sheet.tips.map((tip, i) => {
    const corner = sheet.corners[i];
    const top = flight.finishedTops[i + 1] as number;
    const cut = top - flight.treadThickness - flight.seatHeight;
    return [
      words(String(i + 1), true),
      length(tip),
      corner === undefined ? words(say('sheets.seeEnd')) : length(corner),
      length(roundTo(cut, sheet.step)),
      length(roundTo(top, sheet.step)),
    ];
  });
}

/** The last is which stringer, for a number that each has of its own. */
type Check = readonly [what: TextKey, value: CellText, note?: TextKey | undefined, stringer?: number];

function checksOf({ say, plan }: LeafContext): readonly Check[] {
  const { layout, sheet } = plan;
  const { flight, stringer, job } = layout;
  const { kicker, heel, top } = stringer;
  const master = stringer.master.stringer;
  const length = (mm: number, rounding?: 'down') => figure(figureOf(mm, job.units, rounding));
  const onGrid = (mm: number) => length(roundTo(mm, sheet.step));
  const decimal = (mm: number) => (job.units === 'imperial' ? mmToInches(mm).toFixed(3) : mm.toFixed(1));
  const pitch = flight.pitch * DEGREES;
  const square = say('sheets.on', { rise: decimal(flight.unitRise), run: decimal(flight.run) });
  const seatRise: readonly Check[] =
    sheet.seatRise === 0
      ? []
      : [[sheet.seatRise > 0 ? 'heel.seatUp' : 'heel.seatDown', length(Math.abs(sheet.seatRise))]];
  const notch: readonly Check[] =
    kicker === null
      ? []
      : [
          ['sheets.kickerWidth', length(kicker.width)],
          ['sheets.kickerHeight', length(kicker.height), 'sheets.kickerGenerous'],
        ];
  return [
    ['board.gauge', length(sheet.gaugeLine)],
    ...toesOf(plan, length),
    [
      kicker !== null ? 'sheets.seatBehind' : sheet.seatRise === 0 ? 'heel.seat' : 'heel.seatOnSlope',
      onGrid(heel.seat - (kicker?.width ?? 0)),
    ],
    ...seatRise,
    ...notch,
    ['check.level', onGrid(top.lastLevelCut)],
    ['marks.end', length(sheet.end)],
    ['sheets.endDepth', length(sheet.endDepth)],
    ['top.plumb', onGrid(top.plumbCut)],
    master === 0
      ? ['check.diagonal', length(sheet.diagonal)]
      : ['check.diagonalOf', length(sheet.diagonal), undefined, master],
    ['sheets.square', words(square, true)],
    ['sheets.saw', words(`${pitch.toFixed(1)}° · ${(RIGHT_ANGLE - pitch).toFixed(1)}°`, true)],
    ['sheets.headerMark', length(sheet.headerMark)],
    ['sheets.throat', length(stringer.throat, 'down')],
  ];
}

/** One toe for all, or one for each stringer of a floor that falls across. */
function toesOf({ layout, sheet }: LeafContext['plan'], length: (mm: number) => CellText): readonly Check[] {
  const dropped = layout.stringer.heel.drop > 0 ? 'sheets.dropped' : undefined;
  if (sheet.feet.length === 0) return [['check.toe', length(sheet.toeHeight), dropped]];
  return sheet.feet.map((foot): Check => ['check.toeOf', length(foot.toeHeight), dropped, foot.stringer]);
}

function drawChecks(context: LeafContext, sketch: PageSketch, top: number, bottom: number): void {
  const { say, content } = context;
  const left = content.right - CHECKS_WIDTH;
  const columns = [
    { head: '', width: CHECKS_WIDTH - 30 },
    { head: '', width: 30 },
  ];
  const rows = checksOf(context).map(([key, value, note, stringer = 0]) => {
    const what = say(key, { stringer });
    return [words(note === undefined ? what : `${what} (${say(note)})`), value];
  });
  const style: TableStyle = { size: PRINT.small + 0.3, rowHeight: CHECK_ROW };
  const { bottom: end } = drawTable(sketch, { left, top, bottom }, columns, rows, style);
  if (end - bottom > 16) {
    sketch.paragraph('body', left, end - 2, CHECKS_WIDTH, say('sheets.stringerCaution'), PRINT.small);
  }
}

/** Every finished riser after cutting to these marks. */
function drawAsCut({ say, content, plan }: LeafContext, sketch: PageSketch): void {
  const { asCut, feet, master } = plan.layout.stringer;
  const { units } = plan.layout.job;
  const top = content.bottom + asCutHeight(plan);
  sketch.level('rule', content.left, content.right, top);
  // Over all stringers, as the findings have it, and not only the one whose risers stand here.
  const spread = figureOf(spreadAsCut(feet), units, 'up');
  const shown = spread.kind === 'digits' ? spread.text : tapeText(spread.number).replace(/^0 \+$/, '1/32');
  const { stringer } = master;
  const head = say(stringer === 0 ? 'sheets.asCut' : 'sheets.asCutOf', { spread: shown, stringer });
  sketch.words('small', point(content.left, top - 3), head, PRINT.small);
  const perRow = Math.ceil(asCut.risers.length / asCutRows(plan));
  const width = (content.right - content.left) / perRow;
  asCut.risers.forEach((riser, i) => {
    const x = content.left + width * ((i % perRow) + 0.5);
    const y = top - 9 - Math.floor(i / perRow) * AS_CUT_ROW;
    sketch.figure('number', point(x, y), figureOf(riser, units), PRINT.figure, 'middle');
    sketch.words('small', point(x, y - 6), String(i + 1), PRINT.small, 'middle');
  });
}

/** So many that a riser has room for its fraction. */
function asCutRows({ layout }: JudgedPlan): number {
  return Math.ceil(layout.stringer.asCut.risers.length / AS_CUT_MOST);
}

function asCutHeight(plan: JudgedPlan): number {
  return 6 + AS_CUT_ROW * asCutRows(plan);
}
