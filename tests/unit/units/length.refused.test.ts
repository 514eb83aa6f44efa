import { describe, expect, test } from 'vitest';
import { couldBeFeetAndInches, type LengthFault, parseLength, withUnit } from '../../../src/core/units/length';

const REFUSED: readonly (readonly [string, LengthFault])[] = [
  ['', 'length.empty'],
  ['   ', 'length.empty'],
  ['\n', 'length.empty'],
  ['107', 'length.noUnit'],
  ['107 5/8', 'length.noUnit'],
  ['107-5/8', 'length.noUnit'],
  ['107.625', 'length.noUnit'],
  ['.5', 'length.noUnit'],
  ['5/8', 'length.noUnit'],
  ['½', 'length.noUnit'],
  ['8.10', 'length.noUnit'],
  ["8' 11", 'length.noUnit'],
  ["8'11 5/8", 'length.noUnit'],
  ['8 ft 11', 'length.noUnit'],
  ['-3/8', 'length.noUnit'],
  ['107,625 in', 'length.decimalComma'],
  ['2733,5 mm', 'length.decimalComma'],
  ['2,7 m', 'length.decimalComma'],
  ['1,000 mm', 'length.decimalComma'],
  ['107,625', 'length.decimalComma'],
  ["8.10'", 'length.feetDecimal'],
  ['8.10 ft', 'length.feetDecimal'],
  ['8.5 feet', 'length.feetDecimal'],
  [".5'", 'length.feetDecimal'],
  ["8.'", 'length.feetDecimal'],
  ['8.5\' 3"', 'length.feetDecimal'],
  ['1/0 in', 'length.zeroDenominator'],
  ['107 5/0 in', 'length.zeroDenominator'],
  ['0/0"', 'length.zeroDenominator'],
  ['8\' 5/0"', 'length.zeroDenominator'],
  ['1e3 mm', 'length.exponent'],
  ['1e3', 'length.exponent'],
  ['1.07e2 in', 'length.exponent'],
  ['1E+2 in', 'length.exponent'],
  ['5e-1 in', 'length.exponent'],
  ['107 8/8 in', 'length.improperFraction'],
  ['107 15/8 in', 'length.improperFraction'],
  ['8\' 1 9/8"', 'length.improperFraction'],
  ['8\' 12"', 'length.inchesOverFoot'],
  ['8\' 13 1/2"', 'length.inchesOverFoot'],
  ['8 ft 107 in', 'length.inchesOverFoot'],
  ['0\' 12.0"', 'length.inchesOverFoot'],
  ['-3/8 in', 'length.negative'],
  ['−1 mm', 'length.negative'],
  ["-8'", 'length.negative'],
  ['10000 m', 'length.tooFar'],
  ['10000000 mm', 'length.tooFar'],
  ['99999999 in', 'length.tooFar'],
  ['107 5/8 in and a bit to be on the safe side', 'length.tooLong'],
  [`${'0'.repeat(40)}1 mm`, 'length.tooLong'],
  ['in', 'length.unread'],
  ['mm', 'length.unread'],
  ['"', 'length.unread'],
  ["'", 'length.unread'],
  ['-', 'length.unread'],
  ['--3/8 in', 'length.unread'],
  ['+3/8 in', 'length.unread'],
  ['107 5/8 in.', 'length.unread'],
  ['107 5/8 in 3', 'length.unread'],
  ['107 5/8 in in', 'length.unread'],
  ['107 5/8 5/8 in', 'length.unread'],
  ['107 .5 in', 'length.unread'],
  ['107.5 5/8 in', 'length.unread'],
  ['1/2/3 in', 'length.unread'],
  ['1./2 in', 'length.unread'],
  ['107. in', 'length.unread'],
  ["8' 11'", 'length.unread'],
  ['11" 8\'', 'length.unread'],
  ['5/8 ft', 'length.unread'],
  ['5/8 mm', 'length.unread'],
  ['2 m 700 mm', 'length.unread'],
  ["8' 3 mm", 'length.unread'],
  ['12 km', 'length.unread'],
  ['12 yd', 'length.unread'],
  ['twelve in', 'length.unread'],
  ['NaN mm', 'length.unread'],
  ['Infinity in', 'length.unread'],
  ['0x10 in', 'length.unread'],
  ['1_000 mm', 'length.unread'],
  ['１０７ in', 'length.unread'],
  ['10 7 in', 'length.unread'],
];

describe('what is no length, and why', () => {
  test.each(REFUSED)('%j', (text, fault) => {
    expect(parseLength(text)).toEqual({ ok: false, fault });
  });

  test('there are at least sixty of them', () => {
    expect(new Set(REFUSED.map(([text]) => text)).size).toBeGreaterThanOrEqual(60);
  });

  test.each([[107.625], [0], [null], [undefined], [true], [[]], [{}], [{ length: '5/8 in' }]])(
    '%j is no text at all',
    (value) => {
      expect(parseLength(value)).toEqual({ ok: false, fault: 'length.noText' });
    },
  );

  test('just under ten kilometres is still a length', () => {
    expect(parseLength('9999999.999 mm').ok).toBe(true);
    expect(parseLength('-10000000 mm', true)).toEqual({ ok: false, fault: 'length.tooFar' });
  });
});

describe('a field on screen takes the unit of the job', () => {
  test.each([
    ['107 5/8', 'imperial', false, '107 5/8 in'],
    [' 107 5/8 ', 'imperial', true, '107 5/8 in'],
    ['107.625', 'imperial', true, '107.625 in'],
    ['2733.5', 'metric', true, '2733.5 mm'],
    ['8.10', 'metric', true, '8.10 mm'],
    ['8.10', 'imperial', false, '8.10 in'],
    ['8.12', 'imperial', true, '8.12 in'],
    ['21.5', 'imperial', true, '21.5 in'],
    ['-3/8', 'imperial', false, '-3/8 in'],
    ['- 3/8', 'imperial', false, '- 3/8 in'],
    ["8' 11", 'imperial', true, "8' 11 in"],
    ['8 ft', 'imperial', true, '8 ft'],
    ['107 5/8"', 'metric', true, '107 5/8"'],
    ['rubbish', 'imperial', true, 'rubbish'],
  ] as const)('%j in a %s job (feet: %s) is kept as %j', (typed, units, takesFeet, kept) => {
    expect(withUnit(typed, units, takesFeet)).toEqual({ ok: true, text: kept });
  });

  test.each(['8.10', '8.6', '20.11', '0.5', '8.05'])(
    '%s could be feet and inches, where a site would say feet',
    (typed) => {
      expect(withUnit(typed, 'imperial', true)).toEqual({ ok: false, fault: 'length.feetOrDecimal' });
      expect(couldBeFeetAndInches(typed)).toBe(true);
    },
  );

  test.each(['107.625', '8.12', '21.5', '8', '8.100', '8.', '.5', '-8.10', '8.10 in', '118.10'])(
    '%s has one reading',
    (typed) => {
      expect(couldBeFeetAndInches(typed)).toBe(false);
    },
  );

  test('nothing typed is nothing', () => {
    expect(withUnit('  ', 'imperial', true)).toEqual({ ok: false, fault: 'length.empty' });
  });
});

test('a text is read up to forty signs, and no further', () => {
  const long = (signs: number) => `${'0'.repeat(signs - 4)}1 in`;
  expect(parseLength(long(40)).ok).toBe(true);
  expect(parseLength(long(41))).toEqual({ ok: false, fault: 'length.tooLong' });
});

test.each([
  [' 5 mm ', 'metric', '5 mm'],
  [' 5 ', 'metric', '5 mm'],
  [' 5 ', 'imperial', '5 in'],
  ['- 5', 'imperial', '- 5 in'],
  ['-5', 'metric', '-5 mm'],
  ['5 -', 'imperial', '5 -'],
  ['8- 5/8', 'imperial', '8- 5/8 in'],
] as const)('%j in a field of %s lengths is kept as %j', (typed, units, kept) => {
  expect(withUnit(typed, units, false)).toEqual({ ok: true, text: kept });
});
