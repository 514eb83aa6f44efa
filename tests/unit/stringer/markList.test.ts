import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type MarkEntry, markLists, stringerChecks } from '../../../src/core/stringer/markList';
import { anyStair, planOrSkip } from '../../fixtures/anyStair';
import { type Changes, changed, DECK, LOFT, planOf } from '../../fixtures/stairs';

const listsOf = (changes: Changes = {}) => {
  const { layout, sheet } = planOf(changed(LOFT, changes));
  return markLists(layout, sheet);
};
const inches = (value: number) => Math.round((value / 25.4) * 1e6) / 1e6;
const byId = (list: readonly MarkEntry[], id: string) => {
  const found = list.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no ${id} among ${list.map((one) => one.id).join(' ')}`);
  return found;
};

describe('along the board of the loft stair, a worked example of our own', () => {
  // Asked for in each test, so that what is wrong in a list fails the test that names it.
  const loft = () => listsOf().marks;

  test('tip and corner in turn, as the tape passes them, with the gauge line first', () => {
    const marks = loft();
    expect(marks.slice(0, 6).map(({ id }) => id)).toEqual(['gauge', 'tip-1', 'corner-1', 'tip-2', 'corner-2', 'tip-3']);
    expect(marks.slice(-6).map(({ id }) => id)).toEqual([
      'tip-13',
      'end',
      'end-depth',
      'toe',
      'kicker-height',
      'kicker-width',
    ]);
    // 13 tips, 12 corners and the end: 26 distances from one end of the board.
    const along = marks.filter(({ from }) => from === 'board-end');
    expect(along).toHaveLength(26);
    const values = along.map(({ value }) => value);
    expect(values).toEqual([...values].sort((a, b) => a - b));
  });

  test.each([
    ['gauge', 6, 'edge'],
    ['tip-1', 6.25, 'board-end'],
    ['corner-1', 14.25, 'board-end'],
    ['tip-3', 31.3125, 'board-end'],
    ['tip-13', 156.5625, 'board-end'],
    ['end', 163.9375, 'board-end'],
    ['end-depth', 5.5625, 'edge'],
    ['toe', 7.125, 'tip'],
    ['kicker-height', 1.5, 'toe'],
    ['kicker-width', 3.5, 'toe'],
  ])('%s is %d from %s', (id, value, from) => {
    const mark = byId(loft(), id);
    expect([inches(mark.value), mark.from]).toEqual([value, from]);
  });

  test('without a kicker there is none to cut', () => {
    const { marks: without } = listsOf({ stringer: { kicker: undefined } });
    expect(without.at(-1)?.id).toBe('toe');
  });
});

describe('at the saw, in the house, on the pole', () => {
  test('rips and how many', () => {
    const { rips } = listsOf();
    expect(rips.map(({ id, value, count, from }) => [id, inches(value), count, from])).toEqual([
      ['tread-rip', 11.125, 13, 'fence'],
      ['first-riser-rip', 7.0625, 1, 'fence'],
      ['riser-rip', 7.5, 12, 'fence'],
      ['hanger-rip', 14.9375, 1, 'fence'],
    ]);
  });

  test('setting: header, floor, and across', () => {
    const { setting } = listsOf();
    expect(setting.slice(0, 4).map(({ id }) => id)).toEqual(['header', 'toe-mark', 'riser-mark', 'nosing-mark']);
    expect(inches(byId(setting, 'header').value)).toBe(7.875);
    expect(inches(byId(setting, 'stringer-centre-1').value)).toBe(2.25);
  });

  test('the pole stands on the floor that is there', () => {
    const { pole } = listsOf();
    expect(pole.slice(0, 3).map(({ id }) => id)).toEqual(['pole-cut-1', 'pole-finished-1', 'pole-cut-2']);
    expect(new Set(pole.map(({ from }) => from))).toEqual(new Set(['floor']));
    expect(inches(byId(pole, 'pole-cut-1').value)).toBe(7.125);
    expect(inches(byId(pole, 'pole-finished-14').value)).toBe(106.1875);
    expect(pole.some(({ id }) => id === 'pole-cut-14')).toBe(false);
    const { pole: onFinished } = listsOf({ survey: { lowerLaid: 'before-stairs' } });
    expect(inches(byId(onFinished, 'pole-finished-14').value)).toBe(105.5625);
    expect(inches(byId(onFinished, 'pole-cut-1').value)).toBe(6.5);
  });
});

test('three checks', () => {
  const { layout, sheet } = planOf(LOFT);
  const checks = stringerChecks(layout, sheet);
  expect(checks.map(({ id, value, from }) => [id, inches(value), from])).toEqual([
    ['check-toe', 7.125, 'tip'],
    ['check-level', 9.25, 'tip'],
    ['check-diagonal', 161.9375, 'toe'],
  ]);
});

describe('for any stair', () => {
  test('every number is one that the sheet prints, or lies on its grid', () => {
    fc.assert(
      fc.property(anyStair, (job) => {
        const { layout, sheet } = planOrSkip(job);
        const { marks, rips, setting, pole } = markLists(layout, sheet);
        const printed = new Set(Object.values(sheet).flat());
        for (const { id, value } of rips) expect(printed.has(value), id).toBe(true);
        for (const { id, value } of [...marks, ...setting, ...pole]) {
          const steps = value / sheet.step;
          expect(printed.has(value) || Math.abs(steps - Math.round(steps)) < 1e-6, id).toBe(true);
        }
        expect(marks.filter(({ what }) => what === 'tip').map(({ value }) => value)).toEqual(sheet.tips);
        expect(marks.filter(({ what }) => what === 'corner').map(({ value }) => value)).toEqual(sheet.corners);
      }),
    );
  });

  test('no two entries have one id, so that a tick means one mark', () => {
    fc.assert(
      fc.property(anyStair, (job) => {
        const { layout, sheet } = planOrSkip(job);
        const lists = [...Object.values(markLists(layout, sheet)).flat(), ...stringerChecks(layout, sheet)];
        const ids = lists.map(({ id }) => id);
        expect(new Set(ids).size).toBe(ids.length);
      }),
    );
  });

  test('ids stay when the numbers move', () => {
    const ids = (changes: Changes) =>
      Object.values(listsOf(changes)).map((list: readonly MarkEntry[]) => list.map(({ id }) => id));
    expect(ids({ survey: { rise: '105 1/2 in' }, steps: { run: '10 1/8 in' } })).toEqual(ids({}));
  });
});

test('a deck without a width has the four marks of header and floor', () => {
  const { layout, sheet } = planOf(DECK);
  expect(markLists(layout, sheet).setting).toHaveLength(4);
});
