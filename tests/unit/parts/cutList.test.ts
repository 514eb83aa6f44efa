import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type CutPiece, type CutRow, cutList } from '../../../src/core/parts/cutList';
import { laySkirt, usualSkirt } from '../../../src/core/parts/skirt';
import type { StairPlan } from '../../../src/core/plan/planStair';
import { anyStair, planOrSkip } from '../../fixtures/anyStair';
import { type Changes, changed, DECK, inInches, LOFT, planOf, SLAB } from '../../fixtures/stairs';

const listOf = ({ layout, sheet }: StairPlan) =>
  cutList(layout, sheet, laySkirt(layout.flight, usualSkirt(layout.job.units)));
const rowsOf = (changes: Changes = {}) => listOf(planOf(changed(LOFT, changes))).flatMap(({ rows }) => rows);

function row(rows: readonly CutRow[], piece: CutPiece): CutRow {
  const found = rows.find((one) => one.piece === piece);
  if (found === undefined) throw new Error(`no ${piece}`);
  return found;
}

const inches = ({ count, width, length, thickness }: CutRow) =>
  [count, width, length, thickness].map((value, i) =>
    value === null || i === 0 ? value : Math.round((value / 25.4) * 1e4) / 1e4,
  );

describe('the loft stair of our own', () => {
  const rows = rowsOf({ stringer: { spacingMax: '18 in' } });

  // Treads and risers 36 15/16 in between skirts; outside of the stringers 39 1/2 − 2 × 1 1/2 = 36 1/2 in.
  test.each<[CutPiece, (number | null)[]]>([
    ['tread', [13, 11.125, 36.9375, 1.0625]],
    ['first-riser', [1, 7.0625, 36.9375, 0.75]],
    ['riser', [12, 7.5, 36.9375, 0.75]],
    ['hanger', [1, 14.9375, 36.9375, 0.75]],
    ['kicker', [1, 3.5, 36.5, 1.5]],
    ['stringer', [3, 11.25, 168, 1.5]],
    ['skirt', [2, 9.9375, 178.6494, 0.75]],
  ])('%s: count, width, length, thickness', (piece, expected) => {
    expect(inches(row(rows, piece))).toEqual(expected);
  });

  test('spacers lie along the lower edge, and their width is nobody’s to say', () => {
    const spacer = row(rows, 'spacer');
    // Heel 0.75 + 9.2663 at −0.625; plumb end at 130, 96.9598 − 7.1150 up.
    expect(inInches(spacer.length)).toBeCloseTo(Math.hypot(130 - 10.0163, 89.8448 + 0.625), 3);
    expect([spacer.count, spacer.width, spacer.widthIs]).toEqual([2, null, 'as-bought']);
  });

  test('each says what its width and its length go by', () => {
    const level = rowsOf({ stringer: { top: 'level-with-floor', hanger: '3/4 in' } });
    const by = [...rows, row(level, 'hanger')].map(({ piece, widthIs, lengthBy }) => [piece, widthIs, lengthBy]);
    expect(by).toEqual([
      ['hanger', 'rip', 'between-skirts'],
      ['tread', 'rip', 'between-skirts'],
      ['riser', 'rip', 'between-skirts'],
      ['first-riser', 'rip', 'between-skirts'],
      ['kicker', 'rip', 'outside-stringers'],
      ['stringer', 'as-bought', 'stock'],
      ['spacer', 'as-bought', 'lower-edge'],
      ['skirt', 'at-least', 'skirt'],
      ['hanger', 'as-bought', 'between-skirts'],
    ]);
  });

  test('every board is as thick as the job says of it', () => {
    const other = rowsOf({
      stringer: { hanger: '1/2 in' },
      steps: { riserThickness: '5/8 in', joint: 'riser-on-tread' },
    });
    const thick = (piece: CutPiece) => inches(row(other, piece))[3];
    expect([thick('hanger'), thick('riser'), thick('last-tread'), thick('tread')]).toEqual([
      0.5, 0.625, 1.0625, 1.0625,
    ]);
  });

  test('settings fall, and each holds all that is ripped by it', () => {
    const groups = listOf(planOf(LOFT));
    expect(groups.map(({ setting }) => (setting === null ? null : Math.round((setting / 25.4) * 1e4) / 1e4))).toEqual([
      14.9375,
      11.125,
      7.5,
      7.0625,
      3.5,
      null,
    ]);
    expect(groups.at(-1)?.rows.every(({ widthIs }) => widthIs !== 'rip')).toBe(true);
  });

  test('boards of one setting stand together', () => {
    const plan = planOf(changed(LOFT, { stringer: { kicker: { width: '7.5 in', height: '1 1/2 in' } } }));
    const group = listOf(plan).find(({ rows: some }) => some.some(({ piece }) => piece === 'kicker'));
    expect(group?.rows.map(({ piece }) => piece)).toEqual(['riser', 'kicker']);
  });
});

describe('what only some stairs have', () => {
  test('a last tread that differs', () => {
    const rows = rowsOf({ stringer: { top: 'level-with-floor', hanger: undefined, topTreadRun: '3 1/2 in' } });
    expect(row(rows, 'tread').count).toBe(13);
    expect(inches(row(rows, 'last-tread')).slice(0, 2)).toEqual([1, 5.375]);
  });

  test('a riser board over the top tread', () => {
    const rows = rowsOf({ stringer: { top: 'hanger-behind-riser' } });
    expect(inches(row(rows, 'top-riser')).slice(0, 2)).toEqual([1, 7.8125]);
    expect(row(rows, 'hanger').count).toBe(1);
    expect(
      rowsOf({ stringer: { top: 'header-behind-riser', hanger: undefined } }).map(({ piece }) => piece),
    ).not.toContain('hanger');
  });

  test('a first riser board like the others is one of them', () => {
    // Tread 5/8 and 5/8 of floor to come: nothing is dropped.
    const rows = rowsOf({ steps: { treadThickness: '5/8 in' } });
    expect(row(rows, 'riser').count).toBe(13);
    expect(rows.map(({ piece }) => piece)).not.toContain('first-riser');
  });

  test('two risers: one tread, one board', () => {
    const rows = rowsOf({ survey: { rise: '15 in' }, steps: { risers: 2 }, stringer: { kicker: undefined } });
    expect([row(rows, 'tread').count, row(rows, 'first-riser').count]).toEqual([1, 1]);
    expect(rows.map(({ piece }) => piece)).not.toContain('riser');
  });

  test('open risers have no boards', () => {
    const pieces = rowsOf({ steps: { riserThickness: '0 in' } }).map(({ piece }) => piece);
    expect(pieces.filter((piece) => piece.includes('riser'))).toEqual([]);
  });

  test('a board behind a stringer level with the floor, of a height that is not ours', () => {
    const rows = rowsOf({ stringer: { top: 'level-with-floor', hanger: '3/4 in' } });
    expect(inches(row(rows, 'hanger'))).toEqual([1, null, 36.9375, 0.75]);
    const without = rowsOf({ stringer: { top: 'level-with-floor', hanger: undefined } });
    expect(without.map(({ piece }) => piece)).not.toContain('hanger');
    const noWidth = rowsOf({
      survey: { widthFraming: undefined },
      stringer: { top: 'level-with-floor', hanger: '3/4 in' },
    });
    expect(row(noWidth, 'hanger').length).toBeNull();
  });

  test('no kicker, no skirt, no spacer where there is none', () => {
    const pieces = rowsOf({
      survey: { skirt: '0 in', spacer: '0 in' },
      stringer: { kicker: undefined },
    }).map(({ piece }) => piece);
    expect(pieces.filter((piece) => ['kicker', 'skirt', 'spacer'].includes(piece))).toEqual([]);
  });
});

describe('what is not known is not said', () => {
  test('without a width: no lengths across, no count of stringers, nothing along a wall', () => {
    const rows = listOf(planOf(DECK)).flatMap((group) => group.rows);
    expect(rows.filter(({ piece }) => piece !== 'stringer').every(({ length }) => length === null)).toBe(true);
    expect(row(rows, 'stringer').count).toBeNull();
    expect(inches(row(rows, 'stringer')).slice(1)).toEqual([11.25, 96, 1.5]);
    expect(rows.map(({ piece }) => piece).filter((piece) => ['skirt', 'spacer'].includes(piece))).toEqual([]);
    const kicker = rowsOf({ survey: { widthFraming: undefined } });
    expect(row(kicker, 'kicker').length).toBeNull();
  });

  test('stringers that were counted by hand are known without a width', () => {
    expect(row(rowsOf({ survey: { widthFraming: undefined }, stringer: { count: 4 } }), 'stringer').count).toBe(4);
  });

  test('a tread that nobody has decided has no thickness', () => {
    const rows = rowsOf({ steps: { treadThickness: 'unknown' } });
    expect(row(rows, 'tread').thickness).toBeNull();
    expect(row(rows, 'riser').thickness).not.toBeNull();
  });

  test('a stringer that no board sold holds has no stock length', () => {
    const rows = rowsOf({ survey: { rise: '200 in' }, steps: { risers: 26 } });
    expect(row(rows, 'stringer').length).toBeNull();
  });
});

test('for any stair every rip of the sheet is there, as often as it is needed and no other', () => {
  fc.assert(
    fc.property(anyStair, (job) => {
      const plan = planOrSkip(job);
      const { layout, sheet } = plan;
      const groups = listOf(plan);
      const ripped = groups.flatMap(({ setting, rows }) =>
        rows
          .filter(({ widthIs, piece }) => widthIs === 'rip' && piece !== 'kicker')
          .flatMap(({ count, width }) => {
            expect(width).toBe(setting);
            return Array.from({ length: count ?? 0 }, () => width as number);
          }),
      );
      const wanted = [
        ...Array.from({ length: layout.flight.treads - 1 }, () => sheet.treadRip),
        sheet.lastTreadRip,
        ...sheet.riserRips,
        ...[sheet.topRiserRip, sheet.hangerRip].filter((rip) => rip !== null),
      ];
      const sorted = (list: number[]) => [...list].sort((a, b) => a - b).map((value) => value.toFixed(6));
      expect(sorted(ripped)).toEqual(sorted(wanted));
      const settings = groups.slice(0, -1).map(({ setting }) => setting as number);
      expect(settings).toEqual([...settings].sort((a, b) => b - a));
    }),
  );
});

test('metric rips are whole millimetres', () => {
  for (const { setting } of listOf(planOf(SLAB)).slice(0, -1)) expect(Number.isInteger(setting)).toBe(true);
});
