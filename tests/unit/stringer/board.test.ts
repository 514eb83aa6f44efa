import { describe, expect, test } from 'vitest';
import { signedArea } from '../../../src/core/geometry/point';
import { boardFrame, STOCK_LENGTHS, toBoard } from '../../../src/core/stringer/board';
import { innerCorner, tip } from '../../../src/core/stringer/outline';
import { answerOf, changed, DECK, inInches, LOFT, planOf, SLAB } from '../../fixtures/stairs';

/** Worked example of our own, not published: tips and inner corners from the board's end, inches. */
const LOFT_TIPS = [
  6.276, 18.8, 31.324, 43.849, 56.373, 68.897, 81.421, 93.945, 106.469, 118.994, 131.518, 144.042, 156.566,
];
const LOFT_CORNERS = [
  14.261, 26.785, 39.309, 51.833, 64.357, 76.881, 89.406, 101.93, 114.454, 126.978, 139.502, 152.026,
];
/** Worked example of our own, not published: the metric stair, to 0.5 mm. */
const SLAB_TIPS = [160, 472.5, 784.5, 1097, 1409.5, 1722, 2034.5, 2347, 2659.5, 2972, 3284.5, 3597, 3909.5];
const SLAB_CORNERS = [352, 664.5, 977, 1289.5, 1602, 1914, 2226.5, 2539, 2851.5, 3164, 3476.5, 3789];

describe('running marks', () => {
  test('loft', () => {
    const { firstMark, marks, cornerMarks } = answerOf(LOFT);
    const off = (along: number, expected: number) => Math.abs(inInches(firstMark + along) - expected);
    for (const [i, mark] of marks.entries()) expect(off(mark, LOFT_TIPS[i] as number)).toBeLessThan(0.0006);
    for (const [i, mark] of cornerMarks.entries()) expect(off(mark, LOFT_CORNERS[i] as number)).toBeLessThan(0.0006);
    expect([marks.length, cornerMarks.length]).toEqual([LOFT_TIPS.length, LOFT_CORNERS.length]);
  });

  test('slab, as printed', () => {
    const { sheet } = planOf(SLAB);
    expect(sheet.tips).toEqual(SLAB_TIPS);
    expect(sheet.corners).toEqual(SLAB_CORNERS);
  });

  test('deck', () => {
    const { marks, stepLength } = answerOf(DECK);
    expect(marks).toHaveLength(6);
    for (const [i, mark] of marks.entries()) expect(mark).toBeCloseTo(i * stepLength, 9);
  });
});

describe('the board frame', () => {
  test('tips lie on the inset line, inner corners on the gauge line, the heel on the lower edge', () => {
    const { flight, stringer } = planOf(changed(LOFT, { stringer: { tipInset: '1/8 in' } })).layout;
    const frame = boardFrame(flight, stringer.tipInset);
    for (let i = 1; i <= flight.treads; i += 1) {
      expect(toBoard(frame, tip(flight, i)).y).toBeCloseTo(stringer.tipInset, 8);
      expect(toBoard(frame, innerCorner(flight, i)).y).toBeCloseTo(stringer.gaugeLine, 8);
    }
    const heel = toBoard(frame, { x: stringer.heel.heelX, y: flight.seatHeight });
    expect(heel.y).toBeCloseTo(stringer.stockDepth, 8);
  });
});

describe('the board to buy', () => {
  test.each([
    ['imperial', 'loft', LOFT, '2 in', 168],
    ['imperial', 'loft, long trims', LOFT, '3 1/16 in', 192],
    ['imperial', 'loft, no trim', LOFT, '0 in', 168],
  ] as const)('%s %s', (_, __, job, trim, inches) => {
    expect(inInches(answerOf(changed(job, { stringer: { trim } })).stockLength)).toBeCloseTo(inches, 9);
  });

  test('one that is just long enough is long enough', () => {
    const { boardLength } = answerOf(SLAB);
    const trim = (4200 - boardLength) / 2;
    expect(answerOf(changed(SLAB, { stringer: { trim: `${(trim - 1e-6).toFixed(6)} mm` } })).stockLength).toBe(4200);
    expect(answerOf(changed(SLAB, { stringer: { trim: `${(trim + 1e-3).toFixed(6)} mm` } })).stockLength).toBe(4500);
  });

  test('none is long enough', () => {
    expect(answerOf(changed(LOFT, { survey: { rise: '200 in' }, steps: { risers: 26 } })).stockLength).toBeNull();
    expect(answerOf(changed(SLAB, { survey: { rise: '5100 mm' }, steps: { risers: 26 } })).stockLength).toBeNull();
  });

  test('lengths are sold every 2 ft and every 300 mm', () => {
    expect([...STOCK_LENGTHS.imperialFeet]).toEqual([8, 10, 12, 14, 16, 18, 20, 22, 24]);
    expect([STOCK_LENGTHS.metricMm[0], STOCK_LENGTHS.metricMm.at(-1), STOCK_LENGTHS.metricMm.length]).toEqual([
      2400, 7200, 17,
    ]);
  });
});

describe('the outline', () => {
  test('corners in order round the piece, the first not repeated', () => {
    const { outline, treads } = answerOf(changed(LOFT, { stringer: { kicker: undefined } }));
    expect(outline).toHaveLength(1 + 2 * treads - 1 + 3);
    expect(outline[0]).not.toEqual(outline.at(-1));
    const area = signedArea(outline.map(([x, y]) => ({ x: x as number, y: y as number })));
    expect(area).toBeLessThan(0);
  });

  test('a kicker takes its own area and nothing else', () => {
    const area = (outline: readonly number[][]) =>
      -signedArea(outline.map(([x, y]) => ({ x: x as number, y: y as number })));
    const whole = area(answerOf(changed(LOFT, { stringer: { kicker: undefined } })).outline);
    expect((whole - area(answerOf(LOFT).outline)) / 25.4 ** 2).toBeCloseTo(3.5 * 1.5, 6);
  });
});
