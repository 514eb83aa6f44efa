import { describe, expect, test } from 'vitest';
import { parseLength } from '../../../src/core/units/length';

const NM_PER_SIXTY_FOURTH = 396_875n;

/** Nanometres, exactly: a length that is no whole number of them has lost something. */
function nanometres(text: string, mayBeNegative = false): bigint {
  const reading = parseLength(text, mayBeNegative);
  if (!reading.ok) throw new Error(`${text}: ${reading.fault}`);
  const scaled = reading.length.num * 1_000_000n;
  expect(scaled % reading.length.den, `${text} is a whole number of nanometres`).toBe(0n);
  return scaled / reading.length.den;
}

/** @param inches a multiple of 1/64, so that the float itself is exact */
const inch = (inches: number): bigint => BigInt(inches * 64) * NM_PER_SIXTY_FOURTH;

const IMPERIAL: readonly (readonly [string, number])[] = [
  ['107 5/8 in', 107.625],
  ['107-5/8 in', 107.625],
  ['107-5/8"', 107.625],
  ['107 5/8"', 107.625],
  ['107 5/8 "', 107.625],
  ['107 5/8″', 107.625],
  ['107 5/8”', 107.625],
  ['107 5/8“', 107.625],
  ["107 5/8''", 107.625],
  ['107 5/8in', 107.625],
  ['107 5/8 inch', 107.625],
  ['107 5/8 inches', 107.625],
  ['107 5/8 IN', 107.625],
  ['107 5 / 8 in', 107.625],
  ['107  5/8  in', 107.625],
  ['107 - 5/8 in', 107.625],
  ['107–5/8 in', 107.625],
  ['107⅝ in', 107.625],
  ['107 ⅝"', 107.625],
  ['107-⅝ in', 107.625],
  ['107 5⁄8 in', 107.625],
  ['107.625 in', 107.625],
  ['107.625"', 107.625],
  ['107.6250000 in', 107.625],
  [' 107.625 in ', 107.625],
  ['\t107 5/8\u00a0in\n', 107.625],
  ['8\' 11 5/8"', 107.625],
  ['8\'11 5/8"', 107.625],
  ['8\'-11 5/8"', 107.625],
  ['8\' - 11-5/8"', 107.625],
  ['8\'11-5/8"', 107.625],
  ['8\' -11 5/8"', 107.625],
  ['8′ 11 5/8″', 107.625],
  ['8’ 11 5/8”', 107.625],
  ['8 ft 11-5/8 in', 107.625],
  ['8ft 11 5/8in', 107.625],
  ['8 feet 11 5/8 inches', 107.625],
  ['8 foot 11.625 in', 107.625],
  ['8\' 11.625"', 107.625],
  ['8\'11⅝"', 107.625],
  ['0\' 3/4"', 0.75],
  ['0\' 0"', 0],
  ["8'", 96],
  ['8 ft', 96],
  ['8ft', 96],
  ['100 feet', 1200],
  ['1 foot', 12],
  ["08'", 96],
  ['3/4 in', 0.75],
  ['¾ in', 0.75],
  ['½"', 0.5],
  ['¼"', 0.25],
  ['⅛"', 0.125],
  ['⅜ in', 0.375],
  ['⅞ in', 0.875],
  ['15/16"', 0.9375],
  ['31/32 in', 0.96875],
  ['63/64 in', 0.984375],
  ['1/64 in', 0.015625],
  ['9/8 in', 1.125],
  ['.5 in', 0.5],
  ['0.5 in', 0.5],
  ['0 in', 0],
  ['10 in', 10],
  ['10"', 10],
  ['007 in', 7],
  ['8\' 11 63/64"', 107.984375],
];

const METRIC: readonly (readonly [string, bigint])[] = [
  ['2733.675 mm', 2_733_675_000n],
  ['2733.675mm', 2_733_675_000n],
  ['2733.675 MM', 2_733_675_000n],
  ['273.3675 cm', 2_733_675_000n],
  ['273.3675cm', 2_733_675_000n],
  ['2.733675 m', 2_733_675_000n],
  ['2.733675m', 2_733_675_000n],
  ['2734 mm', 2_734_000_000n],
  ['.5 mm', 500_000n],
  ['0.001 mm', 1_000n],
  ['0.000001 mm', 1n],
  ['0 mm', 0n],
  ['9999 m', 9_999_000_000_000n],
];

describe('lengths as people write them', () => {
  test.each(IMPERIAL)('%s', (text, inches) => {
    expect(nanometres(text)).toBe(inch(inches));
  });

  test.each(METRIC)('%s', (text, expected) => {
    expect(nanometres(text)).toBe(expected);
  });

  test('there are at least sixty of them', () => {
    expect(new Set([...IMPERIAL, ...METRIC].map(([text]) => text)).size).toBeGreaterThanOrEqual(60);
  });

  test('one length in every notation is one length', () => {
    const same = ['107 5/8 in', '8\' 11 5/8"', '2733.675 mm', '273.3675 cm', '2.733675 m', '107.625"'];
    expect(new Set(same.map((text) => nanometres(text))).size).toBe(1);
  });

  test.each([
    ['-3/8 in', -0.375],
    ['- 3/8 in', -0.375],
    ['−3/8 in', -0.375],
    ['–3/8"', -0.375],
    ['-1\' 2"', -14],
    ['-0 in', 0],
  ])('%s, where a minus has a meaning', (text, inches) => {
    expect(nanometres(text, true)).toBe(inch(inches));
  });

  test('nothing with a minus is nothing, and is accepted anywhere', () => {
    expect(nanometres('-0 in')).toBe(0n);
    expect(nanometres('-0.0 mm')).toBe(0n);
  });

  test.each([
    ['⅓ in', 1n, 3n],
    ['1 ⅔ in', 5n, 3n],
    ['⅕ in', 1n, 5n],
    ['⅖ in', 2n, 5n],
    ['⅗ in', 3n, 5n],
    ['⅘ in', 4n, 5n],
    ['⅙ in', 1n, 6n],
    ['⅚ in', 5n, 6n],
    ['⅒ in', 1n, 10n],
  ])('%s stays a fraction of an inch, which no decimal could hold', (text, num, den) => {
    const reading = parseLength(text);
    expect(reading.ok && reading.length.num * 5n * den).toBe(reading.ok && reading.length.den * 127n * num);
  });

  test.each([
    ['7.750000001 in', 7_750_000_001n, 25_400n, 1_000_000_000n],
    ['196.850001 mm', 196_850_001n, 1n, 1_000_000n],
  ])('%s keeps every digit', (text, num, mmTimes, den) => {
    const reading = parseLength(text);
    const scale = mmTimes === 1n ? 1n : 1000n;
    expect(reading.ok && reading.length.num * den * scale).toBe(reading.ok && reading.length.den * num * mmTimes);
  });
});
