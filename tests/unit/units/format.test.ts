import { describe, expect, test } from 'vitest';
import { fraction, inch, whole } from '../../../src/core/units/exact';
import { decimalText, formatFeet, formatLength, tapeNumber, tapeText } from '../../../src/core/units/format';
import { roundTo, stepsIn } from '../../../src/core/units/rounding';

const mm = (inches: number): number => inches * 25.4;
const SIXTEENTH = inch(1 / 16);
const THIRTY_SECOND = inch(1 / 32);
const HALF_MM = fraction(1n, 2n);

describe('rounding once', () => {
  test.each([
    [6.2762, 'nearest', 6.25],
    [6.2812499, 'nearest', 6.25],
    [6.28125, 'nearest', 6.3125],
    [6.2762, 'down', 6.25],
    [6.2762, 'up', 6.3125],
    [7.5, 'down', 7.5],
    [7.5, 'up', 7.5],
    [-6.28125, 'nearest', -6.25],
    [-6.2762, 'down', -6.3125],
    [-6.2762, 'up', -6.25],
    [0, 'nearest', 0],
  ] as const)('%d in, to the %s sixteenth, is %d', (value, rounding, expected) => {
    expect(roundTo(value, 1 / 16, rounding)).toBe(expected);
  });

  test('the last bits of a float do not cost a step', () => {
    expect(stepsIn(0.1 + 0.2, 0.1, 'down')).toBe(3);
    expect(stepsIn(0.1 + 0.2, 0.1, 'up')).toBe(3);
    expect(stepsIn(7 * 0.0625 - 1e-12, 0.0625, 'down')).toBe(7);
  });

  test('nothing below zero is left of a rounded nothing', () => {
    expect(Object.is(stepsIn(-0.01, 1), 0)).toBe(true);
    expect(Object.is(stepsIn(-0.01, 1, 'up'), 0)).toBe(true);
    expect(Object.is(stepsIn(-0, 1, 'down'), 0)).toBe(true);
  });
});

describe('as a tape reads', () => {
  test.each([
    [14.625, THIRTY_SECOND, '14 5/8'],
    [14.65625, THIRTY_SECOND, '14 5/8 +'],
    [14.03125, THIRTY_SECOND, '14 +'],
    [0.03125, THIRTY_SECOND, '0 +'],
    [-0.03125, THIRTY_SECOND, '-0 +'],
    [0.65625, THIRTY_SECOND, '5/8 +'],
    [0, SIXTEENTH, '0'],
    [14, SIXTEENTH, '14'],
    [0.4375, SIXTEENTH, '7/16'],
    [-0.375, SIXTEENTH, '-3/8'],
    [-2.375, SIXTEENTH, '-2 3/8'],
    [6.2762, SIXTEENTH, '6 1/4'],
    [6.984, SIXTEENTH, '7'],
    [14 + 5 / 64, inch(1 / 64), '14 5/64'],
  ])('%d in is %s', (inches, step, text) => {
    expect(tapeText(tapeNumber(mm(inches), step))).toBe(text);
  });

  test('heavy is the fraction and one thirty-second', () => {
    expect(tapeNumber(mm(7 + 17 / 32), THIRTY_SECOND)).toEqual({
      negative: false,
      whole: 7,
      numerator: 1,
      denominator: 2,
      heavy: true,
    });
  });

  test('down is down', () => {
    expect(tapeText(tapeNumber(mm(7.1027), SIXTEENTH, 'down'))).toBe('7 1/16');
  });
});

describe('written so that it can be read back', () => {
  test.each([
    [107.625, SIXTEENTH, 'imperial', '107 5/8 in'],
    [107, SIXTEENTH, 'imperial', '107 in'],
    [0.625, SIXTEENTH, 'imperial', '5/8 in'],
    [0, SIXTEENTH, 'imperial', '0 in'],
    [-0.625, SIXTEENTH, 'imperial', '-5/8 in'],
    [-1.625, SIXTEENTH, 'imperial', '-1 5/8 in'],
    [107.65625, THIRTY_SECOND, 'imperial', '107 21/32 in'],
  ] as const)('%d in', (inches, step, units, text) => {
    expect(formatLength(mm(inches), step, units)).toBe(text);
  });

  test.each([
    [2733.675, HALF_MM, '2733.5 mm'],
    [2733.75, HALF_MM, '2734 mm'],
    [0.2, HALF_MM, '0 mm'],
    [-15, HALF_MM, '-15 mm'],
    [2733.675, fraction(1n, 1000n), '2733.675 mm'],
    [198.36, whole(1), '198 mm'],
  ] as const)('%d mm', (length, step, text) => {
    expect(formatLength(length, step, 'metric')).toBe(text);
  });

  test.each([
    [107.625, '8\' 11 5/8"'],
    [96, '8\' 0"'],
    [0.75, '0\' 3/4"'],
    [-14.5, '-1\' 2 1/2"'],
    [11.99, '1\' 0"'],
  ])('%d in, in feet', (inches, text) => {
    expect(formatFeet(mm(inches), SIXTEENTH)).toBe(text);
  });

  test.each([
    [fraction(1n, 3n), '0.333333'],
    [fraction(2n, 3n), '0.666667'],
    [fraction(-1n, 2n), '-0.5'],
    [fraction(-1n, 10_000_000n), '0'],
    [whole(1200), '1200'],
    [fraction(5_467n, 2n), '2733.5'],
  ])('decimals, six at most, no. %#', (value, text) => {
    expect(decimalText(value)).toBe(text);
  });
});
