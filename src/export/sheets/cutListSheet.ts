/** What is ripped and cut, by the setting of the fence, widest first. */
import { figureOf } from '../../core/drawing/figures';
import { type CutRow, cutList, scribesFirstRiser } from '../../core/parts/cutList';
import { laySkirt, usualSkirt } from '../../core/parts/skirt';
import type { StairPlan } from '../../core/plan/planStair';
import { tapeText } from '../../core/units/format';
import type { Speaker } from '../../text/say';
import type { LeafContext, LeafMaker } from './leaf';
import { listLeaves } from './listLeaves';
import { BLANK, type CellText, count, FIGURES, figure, words } from './table';

/** All rows in the order of the saw. */
export function cutRows({ layout, sheet }: Pick<StairPlan, 'layout' | 'sheet'>): readonly CutRow[] {
  const skirt = laySkirt(layout.flight, usualSkirt(layout.job.units));
  return cutList(layout, sheet, skirt).flatMap(({ rows }) => rows);
}

export function pieceName(say: Speaker, { piece }: CutRow): string {
  return say(`sheets.piece.${piece}`);
}

export const makeCutList: LeafMaker = (context) => {
  const { say, content, plan } = context;
  const width = content.right - content.left;
  const { riserOpening } = plan.layout.rips;
  const open = riserOpening === null ? '' : say('rips.open', { opening: openingText(plan, riserOpening) });
  return listLeaves(context, {
    title: say('sheets.cutList'),
    under: open === '' ? say('sheets.cutList.under') : open,
    columns: [
      { head: say('rips.piece'), width: width * 0.24 },
      { head: say('rips.count'), width: width * 0.09 },
      { head: say('csv.width'), width: width * 0.15 },
      { head: say('sheets.widthIs'), width: width * 0.12 },
      { head: say('sheets.length'), width: width * 0.14 },
      { head: say('sheets.thickness'), width: width * 0.14 },
      { head: say('sheets.done'), width: width * 0.12 },
    ],
    rows: cutRows(plan).map((row) => rowOf(context, row)),
    style: { ...FIGURES, rowHeight: 7 },
  });
};

function openingText({ layout }: StairPlan, mm: number): string {
  const shown = figureOf(mm, layout.job.units, 'up');
  return shown.kind === 'digits' ? `${shown.text} mm` : `${tapeText(shown.number)} in`;
}

function rowOf({ say, plan }: LeafContext, row: CutRow): CellText[] {
  const { units } = plan.layout.job;
  const length = (mm: number | null, rounding: 'nearest' | 'down' = 'nearest') =>
    mm === null ? words('') : figure(figureOf(mm, units, rounding));
  return [
    words(
      row.piece === 'first-riser' && scribesFirstRiser(plan)
        ? say('sheets.piece.first-riser-scribed')
        : pieceName(say, row),
    ),
    row.count === null ? words('?', true) : count(row.count),
    length(row.width, row.widthIs === 'rip' ? 'down' : 'nearest'),
    words(say(`sheets.width.${row.widthIs}`)),
    length(row.length),
    length(row.thickness),
    BLANK,
  ];
}
