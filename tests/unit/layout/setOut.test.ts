import { describe, expect, test } from 'vitest';
import { exactSheet } from '../../../src/core/check/printedSheet';
import { setOut } from '../../../src/core/layout/setOut';
import { type Changes, changed, DECK, LOFT, planOf, SLAB } from '../../fixtures/stairs';

const marksOf = (changes: Changes = {}) => {
  const { layout, sheet } = planOf(changed(LOFT, changes));
  return setOut(layout, sheet);
};
const inches = (marks: ReturnType<typeof marksOf>, what: string) =>
  marks.filter((mark) => mark.what === what).map(({ value }) => Math.round((value / 25.4) * 1e6) / 1e6);

describe('the loft stair of our own', () => {
  test('header and floor, as printed', () => {
    const marks = marksOf();
    expect(inches(marks, 'header')).toEqual([7.875]);
    expect(inches(marks, 'toe-mark')).toEqual([130]);
    expect(inches(marks, 'riser-mark')).toEqual([130.75]);
    expect(inches(marks, 'nosing-mark')).toEqual([131.875]);
    expect(marks.slice(0, 4).map(({ from }) => from)).toEqual(['subfloor', 'header', 'header', 'header']);
  });

  test('across, from the framing on the left', () => {
    const marks = marksOf({ stringer: { spacingMax: '18 in' } });
    expect(inches(marks, 'spacer')).toEqual([1.5, 38]);
    expect(inches(marks, 'stringer-centre')).toEqual([2.25, 19.75, 37.25]);
    expect(marks.slice(4).every(({ from }) => from === 'left-framing')).toBe(true);
    expect(marks.slice(4).map(({ step }) => step)).toEqual([1, 2, 1, 2, 3]);
  });

  test('the outer stringers lie against the spacers, and the row is the same from either wall', () => {
    const { layout } = planOf(changed(LOFT, { stringer: { count: 5 } }));
    const marks = setOut(layout, exactSheet(layout));
    const centres = marks.filter(({ what }) => what === 'stringer-centre').map(({ value }) => value);
    const [left, right] = marks.filter(({ what }) => what === 'spacer').map(({ value }) => value);
    expect((centres[0] as number) - 0.75 * 25.4).toBeCloseTo(left as number, 9);
    expect((centres[4] as number) + 0.75 * 25.4).toBeCloseTo(right as number, 9);
    for (const [k, centre] of centres.entries()) {
      expect(centre + (centres[4 - k] as number)).toBeCloseTo(39.5 * 25.4, 9);
    }
  });

  test('each centre is rounded on its own, so that nothing adds up', () => {
    const changes: Changes = { stringer: { count: 8 } };
    const { layout, sheet } = planOf(changed(LOFT, changes));
    const exact = setOut(layout, exactSheet(layout));
    for (const [i, { value }] of setOut(layout, sheet).entries()) {
      expect(Math.abs(value - (exact[i]?.value as number))).toBeLessThanOrEqual(sheet.step / 2 + 1e-9);
    }
  });
});

test('without spacers there are none to mark', () => {
  const marks = marksOf({ survey: { spacer: '0 in' } });
  expect(inches(marks, 'spacer')).toEqual([]);
  expect(inches(marks, 'stringer-centre')[0]).toBe(0.75);
});

test.each([
  ['deck', DECK],
  ['slab', SLAB],
])('%s: without a width nothing is said across', (_, job) => {
  const { layout, sheet } = planOf(job);
  expect(setOut(layout, sheet)).toHaveLength(4);
});

test('walls too close for a stair are no width', () => {
  expect(marksOf({ survey: { widthFraming: '4 in' } })).toHaveLength(4);
});
