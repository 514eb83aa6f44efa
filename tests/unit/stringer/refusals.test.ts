/** A stringer that cannot be cut is refused with the figure that stands in the way; and the corners of one that can. */
import { describe, expect, test } from 'vitest';
import { planStair } from '../../../src/core/plan/planStair';
import { BOOK, type Changes, changed, inInches, LOFT, planOf } from '../../fixtures/stairs';

const refusalOf = (changes: Changes) => {
  const plan = planStair(changed(LOFT, changes), 0, BOOK);
  return plan.ok ? null : plan.problems.map(({ code, values }) => [code, values] as const);
};

// Unit rise 105.5625 / 14, run 10, tread 1 1/16: worked by hand.
const RISE = 105.5625 / 14;
const STEP = Math.hypot(RISE, 10);
const mm = (inch: number) => expect.closeTo(inch * 25.4, 9) as number;

describe('refused with its figure', () => {
  test('a tip inset of the whole board', () => {
    expect(refusalOf({ stringer: { tipInset: '11 1/4 in' } })).toEqual([
      ['tipInset.pastBoard', { limitMm: 11.25 * 25.4 }],
    ]);
  });

  test('a board that is no deeper than its notches', () => {
    expect(refusalOf({ stringer: { stockDepth: '6 in', kicker: undefined } })).toEqual([
      ['throat.none', { notchMm: mm((RISE * 10) / STEP) }],
    ]);
  });

  test('treads thicker than the first riser is high', () => {
    expect(refusalOf({ steps: { treadThickness: '9 in' }, stringer: { kicker: undefined } })?.[0]).toEqual([
      'toe.none',
      { dropMm: mm(9 - 0.625) },
    ]);
  });

  test('a kicker as high as the first cut, or as wide as the seat', () => {
    // The first cut: unit rise, less the tread, and 5/8 of floor still to come under it.
    const first = RISE - 1.0625 + 0.625;
    expect(refusalOf({ stringer: { kicker: { width: '3 1/2 in', height: '7 1/8 in' } } })).toEqual([
      ['kicker.tooHigh', { limitMm: mm(first) }],
    ]);
    const { seat } = planOf(LOFT).layout.stringer.heel;
    expect(refusalOf({ stringer: { kicker: { width: '9 1/2 in', height: '1 1/2 in' } } })).toEqual([
      ['kicker.tooWide', { limitMm: seat }],
    ]);
    expect(inInches(seat)).toBeCloseTo(9.266343, 6);
  });
});

describe('the corners of the loft stringer', () => {
  const corners = () => planOf(LOFT).layout.stringer.outline.map(({ x, y }) => [inInches(x), inInches(y)] as const);

  test('the plumb end hangs from the last level cut, as long as the plumb cut', () => {
    const { plumbCut, endX } = planOf(LOFT).layout.stringer.top;
    const atEnd = corners().filter(([x]) => Math.abs(x - inInches(endX)) < 1e-9);
    const top = 13 * RISE - 1.0625;
    expect(atEnd.map(([, y]) => y)).toEqual([expect.closeTo(top, 9), expect.closeTo(top - inInches(plumbCut), 9)]);
    expect(inInches(plumbCut)).toBeGreaterThan(5);
  });

  test('toe, heel and kicker stand on the floor of today, 5/8 under the finished one', () => {
    const [toe] = corners();
    const [heel, kickerBack, kickerTop] = corners().slice(-3);
    expect(toe).toEqual([expect.closeTo(0.75, 9), expect.closeTo(-0.625 + 1.5, 9)]);
    expect(heel?.[1]).toBeCloseTo(-0.625, 9);
    expect(kickerBack).toEqual([expect.closeTo(0.75 + 3.5, 9), expect.closeTo(-0.625, 9)]);
    expect(kickerTop).toEqual([expect.closeTo(0.75 + 3.5, 9), expect.closeTo(-0.625 + 1.5, 9)]);
  });

  test('without a kicker the toe is on the floor, and the heel is the last corner', () => {
    const outline = planOf(changed(LOFT, { stringer: { kicker: undefined } })).layout.stringer.outline;
    expect(inInches(outline[0]?.y ?? null)).toBeCloseTo(-0.625, 9);
    expect(outline).toHaveLength(corners().length - 2);
  });
});
