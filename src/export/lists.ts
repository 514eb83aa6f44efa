/** The cut list and the marks as tables for a spreadsheet. Lengths as in `csv.ts`: mm, inches, tape. */
import type { StairPlan } from '../core/plan/planStair';
import { inch, mmToInches } from '../core/units/exact';
import { formatLength } from '../core/units/format';
import type { Rounding } from '../core/units/rounding';
import type { Speaker } from '../text/say';
import { type Cell, csvOf } from './csv';
import { cutRows, pieceName } from './sheets/cutListSheet';

const THIRTY_SECOND = inch(1 / 32);

function lengthHeads(say: Speaker, what: string): Cell[] {
  return [say('csv.mm', { what }), say('csv.inches', { what }), say('csv.tape', { what })];
}

/** The tape's form carries its unit: `7 17/32 in` is no date in any locale. */
function lengthCells(mm: number | null, rounding: Rounding = 'nearest'): Cell[] {
  if (mm === null) return [null, null, null];
  return [mm, mmToInches(mm), formatLength(mm, THIRTY_SECOND, 'imperial', rounding)];
}

export function cutListCsv(plan: StairPlan, say: Speaker): string {
  const rows = cutRows(plan).map((row) => [
    stairName(plan),
    pieceName(say, row),
    row.count,
    say(`sheets.width.${row.widthIs}`),
    ...lengthCells(row.width, row.widthIs === 'rip' ? 'down' : 'nearest'),
    ...lengthCells(row.length),
    ...lengthCells(row.thickness),
  ]);
  const heads = [
    say('csv.stair'),
    say('csv.piece'),
    say('csv.count'),
    say('csv.widthIs'),
    ...lengthHeads(say, say('csv.width')),
    ...lengthHeads(say, say('csv.length')),
    ...lengthHeads(say, say('csv.thickness')),
  ];
  return csvOf([heads, ...rows]);
}

export function marksCsv(plan: StairPlan, say: Speaker): string {
  const { sheet } = plan;
  const name = stairName(plan);
  const row = (what: string, step: number | null, mm: number): Cell[] => [name, what, step, ...lengthCells(mm)];
  const heads = [say('csv.stair'), say('csv.mark'), say('csv.step'), ...lengthHeads(say, say('csv.from'))];
  return csvOf([
    heads,
    ...sheet.tips.map((tip, i) => row(say('csv.tip'), i + 1, tip)),
    ...sheet.corners.map((corner, i) => row(say('csv.corner'), i + 1, corner)),
    row(say('csv.end'), null, sheet.end),
  ]);
}

function stairName({ layout: { job } }: StairPlan): string {
  return job.name === '' ? job.id : job.name;
}
