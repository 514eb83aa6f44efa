import { describe, expect, test } from 'vitest';
import {
  add,
  ceiling,
  compare,
  divide,
  type Exact,
  fraction,
  fromDecimal,
  fromNumber,
  inch,
  inches,
  inchMm,
  mmToInches,
  multiply,
  negate,
  sign,
  subtract,
  times,
  toInches,
  toMm,
  whole,
  ZERO,
} from '../../../src/core/units/exact';

const same = (a: Exact, b: Exact): void => expect(compare(a, b)).toBe(0);

describe('exact fractions', () => {
  test('the denominator is kept positive', () => {
    expect(fraction(3n, -4n)).toEqual({ num: -3n, den: 4n });
    expect(fraction(3n, 4n)).toEqual({ num: 3n, den: 4n });
  });

  test.each([
    ['7.0625', 70_625n, 10_000n],
    ['107', 107n, 1n],
    ['-0.5', -5n, 10n],
    ['0', 0n, 1n],
  ])('%s is read digit by digit', (digits, num, den) => {
    expect(fromDecimal(digits)).toEqual({ num, den });
  });

  test.each([
    [7.75, 31n, 4n],
    [-0.1, -1n, 10n],
    [1e21, 10n ** 21n, 1n],
    [1e-7, 1n, 10n ** 7n],
    [2.5e-9, 25n, 10n ** 10n],
    [1.5e22, 15n * 10n ** 21n, 1n],
  ])('%d is what was written, not the nearest float', (value, num, den) => {
    same(fromNumber(value), { num, den });
  });

  test('sums, differences and products', () => {
    const third = fraction(1n, 3n);
    const half = fraction(1n, 2n);
    same(add(third, half), fraction(5n, 6n));
    same(add(third, third), fraction(2n, 3n));
    same(subtract(half, third), fraction(1n, 6n));
    same(multiply(third, half), fraction(1n, 6n));
    same(divide(third, negate(half)), fraction(-2n, 3n));
    same(times(third, 3), whole(1));
    same(negate(ZERO), ZERO);
  });

  test('order and sign, negative numbers too', () => {
    expect(compare(fraction(1n, 3n), fraction(1n, 2n))).toBe(-1);
    expect(compare(fraction(1n, 2n), fraction(1n, 3n))).toBe(1);
    expect(compare(fraction(-1n, 2n), fraction(-2n, 4n))).toBe(0);
    expect([sign(whole(-2)), sign(ZERO), sign(whole(2))]).toEqual([-1, 0, 1]);
  });

  test.each([
    [7n, 2n, 4n],
    [8n, 2n, 4n],
    [1n, 1000n, 1n],
    [0n, 5n, 0n],
    [-7n, 2n, -3n],
    [-8n, 2n, -4n],
  ])('%d/%d rounds up to %d', (num, den, up) => {
    expect(ceiling({ num, den })).toBe(up);
  });

  test('an inch is 25.4 mm, by the international agreement of 1959', () => {
    same(inches(whole(5)), whole(127));
    same(inch(7.75), fromDecimal('196.85'));
    same(toInches(inch(107.625)), fromDecimal('107.625'));
    expect(inchMm(1)).toBe(25.4);
    expect(mmToInches(25.4)).toBe(1);
    expect(toMm(inch(1 / 64))).toBe(0.396875);
  });

  test('fourteen risers of the greatest height meet their rise and miss one 1/64 higher', () => {
    const most = times(inch(7.75), 14);
    expect(compare(most, inch(108.5))).toBe(0);
    expect(compare(most, inch(108 + 33 / 64))).toBe(-1);
  });
});

describe('the nearest float of a fraction that is longer than any float', () => {
  const long = 10n ** 400n;

  test.each([
    ['both long', 3n * long, 2n * long, 1.5],
    ['both long, less than nothing', -3n * long, 4n * long, -0.75],
    ['a long one over a short one', 5n * 10n ** 310n, 10n ** 300n, 5e10],
    ['a short one over a long one', 7n * 10n ** 300n, 10n ** 310n, 7e-10],
  ])('%s', (_, num, den, expected) => {
    expect(toMm({ num, den }) / expected).toBeCloseTo(1, 12);
  });
});

test('fractions of one denominator are added over it', () => {
  expect(add({ num: 1n, den: 16n }, { num: 3n, den: 16n })).toEqual({ num: 4n, den: 16n });
});
