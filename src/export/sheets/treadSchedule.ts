/**
 * Every step with its own tread and the riser board under it, to be ticked off as it is cut and fitted.
 * The cut list has the same pieces by the saw; here they stand in the order of the climb.
 */
import { figureOf } from '../../core/drawing/figures';
import { scribesFirstRiser } from '../../core/parts/cutList';
import type { LeafContext, LeafMaker } from './leaf';
import { listLeaves } from './listLeaves';
import { BLANK, type CellText, FIGURES, figure, words } from './table';

export const makeTreadSchedule: LeafMaker = (context) => {
  const { say, content, plan } = context;
  const width = content.right - content.left;
  const shares: readonly (readonly [string, number])[] = [
    [say('marks.step'), 0.16],
    [say('sheets.treads.depth'), 0.125],
    [say('sheets.treads.length'), 0.125],
    [say('sheets.thickness'), 0.125],
    [say('sheets.treads.nosing'), 0.125],
    [say('sheets.treads.riser'), 0.14],
    [say('sheets.treads.cut'), 0.1],
    [say('sheets.treads.fitted'), 0.1],
  ];
  return listLeaves(context, {
    title: say('sheets.treads'),
    under: say(
      plan.layout.width === null
        ? 'sheets.treads.noWidth'
        : scribesFirstRiser(plan)
          ? 'sheets.treads.scribe'
          : 'sheets.treads.under',
    ),
    columns: shares.map(([head, share]) => ({ head, width: width * share })),
    rows: [...treadRows(context), ...landingRow(context)],
    style: FIGURES,
  });
};

function treadRows({ plan }: LeafContext): CellText[][] {
  const { layout, sheet } = plan;
  const { flight, width, job } = layout;
  const length = (mm: number | null | undefined, rounding: 'nearest' | 'down' = 'nearest') =>
    mm === null || mm === undefined ? words('') : figure(figureOf(mm, job.units, rounding));
  const known = job.steps.treadThickness.known !== 'unknown';
  return Array.from({ length: flight.treads }, (_, i) => [
    words(String(i + 1), true),
    length(i + 1 === flight.treads ? sheet.lastTreadRip : sheet.treadRip, 'down'),
    length(width?.treadLength),
    known ? length(flight.treadThickness) : words('?', true),
    length(flight.nosing),
    length(sheet.riserRips[i], 'down'),
    BLANK,
    BLANK,
  ]);
}

/** The board that closes the top, under the landing nosing; none for open risers or where the last tread is the floor's. */
function landingRow({ say, plan }: LeafContext): CellText[][] {
  const { layout, sheet } = plan;
  const height = sheet.topRiserRip ?? (layout.job.stringer.top === 'hanger-is-riser' ? sheet.hangerRip : null);
  if (height === null) return [];
  const shown = figure(figureOf(height, layout.job.units, 'down'));
  const across = layout.width === null ? words('') : figure(figureOf(layout.width.treadLength, layout.job.units));
  return [[words(say('pole.floor'), true), words(''), across, words(''), words(''), shown, BLANK, BLANK]];
}
