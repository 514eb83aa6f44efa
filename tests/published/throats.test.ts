/**
 * What is left under the notches, worked by hand: depth of board less r·g/√(r² + g²), to three decimals of an inch.
 * Derived, no source; the limits of five inches and of three and a half are the deck guide's and Ontario's.
 */
import { describe, expect, test } from 'vitest';
import { bare, changed, inInches, planOf } from '../fixtures/stairs';

const BOARDS = ['9 1/4 in', '11 1/4 in', '13 1/4 in'] as const;

function throatAt(unitRise: number, run: number, stockDepth: string): number {
  const stair = bare('imperial', `${unitRise * 14} in`);
  const finished = { lowerToAdd: '0 in', upperToAdd: '0 in' };
  const steps = { risers: 14, run: `${run} in`, treadThickness: '1 in' };
  return inInches(planOf(changed(stair, { survey: finished, steps, stringer: { stockDepth } })).layout.stringer.throat);
}

describe('the throat', () => {
  test.each([
    [7, 10, [3.515, 5.515, 7.515]],
    [7, 11, [3.344, 5.344, 7.344]],
    [7.25, 10.5, [3.284, 5.284, 7.284]],
    [7.5, 10, [3.25, 5.25, 7.25]],
    [7.75, 10, [3.124, 5.124, 7.124]],
    [6.5, 12, [3.535, 5.535, 7.535]],
    [7.75, 11, [2.9145, 4.9145, 6.9145]],
  ] as const)('of %s by %s', (rise, run, throats) => {
    BOARDS.forEach((board, i) => {
      expect(throatAt(rise, run, board), board).toBeCloseTo(throats[i] as number, 3);
    });
  });

  // The run at which a 2×12 keeps just five inches, and a 2×10 just three and a half.
  test.each([
    [7.75, 10.57, '11 1/4 in', 5],
    [7.5, 11.3, '11 1/4 in', 5],
    [7.25, 12.33, '11 1/4 in', 5],
    [7, 13.87, '11 1/4 in', 5],
    [7, 10.08, '9 1/4 in', 3.5],
    [6.5, 12.33, '9 1/4 in', 3.5],
  ] as const)('at %s by %s of a board of %s is just %s', (rise, run, board, left) => {
    expect(throatAt(rise, run, board)).toBeCloseTo(left, 2);
    expect(throatAt(rise, run + 0.25, board)).toBeLessThan(left);
  });
});
