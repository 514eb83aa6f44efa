import { describe, expect, test } from 'vitest';
import { toMm } from '../../../src/core/units/exact';
import { answerOf, changed, LOFT } from '../../fixtures/stairs';

/** The longest decimals that a length may be written with, each with digits of its own. */
const long = (inches: string, last: number): string => `${inches}.${String(last).padStart(35 - inches.length, '0')} in`;

describe('lengths with as many digits as they may have', () => {
  const job = changed(LOFT, {
    survey: {
      rise: long('105', 1),
      footBelowReading: long('0', 2),
      lowerToAdd: long('0', 3),
      upperToAdd: long('0', 4),
      floorDepth: long('13', 5),
      headerDepth: long('11', 6),
      openingFraming: long('126', 7),
      headerLining: long('0', 8),
      widthFraming: long('39', 9),
    },
    steps: { run: long('10', 11), nosing: long('1', 12), treadThickness: long('1', 13), riserThickness: '1/7 in' },
    stringer: { stockDepth: long('11', 14), hanger: '3/11 in' },
  });

  test('still give numbers', () => {
    const answer = answerOf(job);
    const plain = answerOf(
      changed(LOFT, {
        survey: {
          rise: '105 in',
          footBelowReading: '0 in',
          lowerToAdd: '0 in',
          upperToAdd: '0 in',
          floorDepth: '13 in',
          headerDepth: '11 in',
          openingFraming: '126 in',
          headerLining: '0 in',
          widthFraming: '39 in',
        },
        steps: { run: '10 in', nosing: '1 in', treadThickness: '1 in', riserThickness: '1/7 in' },
        stringer: { stockDepth: '11 in', hanger: '3/11 in' },
      }),
    );
    for (const [key, value] of Object.entries(plain)) {
      if (typeof value === 'number') expect(answer[key as 'headroom'], key).toBeCloseTo(value, 9);
    }
  });
});

test('fractions far beyond what a float can hold still have their quotient', () => {
  const huge = 10n ** 400n;
  expect(toMm({ num: 3n * huge, den: 2n * huge })).toBe(1.5);
  expect(toMm({ num: -3n * huge, den: 2n * huge })).toBe(-1.5);
  expect(toMm({ num: 7n, den: huge })).toBe(0);
  // One on either side of the greatest float.
  expect(toMm({ num: 10n ** 310n, den: 10n ** 307n })).toBeCloseTo(1000, 9);
  expect(toMm({ num: 10n ** 307n, den: 10n ** 310n })).toBeCloseTo(0.001, 12);
});
