import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compare, type Exact, fraction, inch, times, toMm } from '../../src/core/units/exact';
import { formatFeet, formatLength, tapeNumber, tapeText } from '../../src/core/units/format';
import { parseLength } from '../../src/core/units/length';
import { roundTo } from '../../src/core/units/rounding';
import { openJob } from '../../src/document/openJob';
import { saveJob } from '../../src/document/saveJob';
import { holds } from './measure';
import { jobOf, randomStair } from './randomStairs';

const INCH_GRIDS = [8, 16, 32, 64].map((parts) => [`1/${parts} in`, inch(1 / parts)] as const);
const METRIC_GRIDS = [
  ['1 mm', fraction(1n, 1n)],
  ['0.5 mm', fraction(1n, 2n)],
  ['0.001 mm', fraction(1n, 1000n)],
] as const;

function readsBack(text: string, expected: Exact): void {
  const reading = parseLength(text, true);
  holds(reading.ok && compare(reading.length, expected) === 0, `${text} is not read back`);
}

/** What a reader makes of `14 5/8 +`: the plus is 1/32. */
function tapeInSixtyFourths(text: string): number {
  const plain = text.replace(/^-/, '').replace('+', '').trim();
  const heavy = text.includes('+') ? 2 : 0;
  const sum = plain.split(' ').reduce((total, part) => {
    const [top = '0', bottom] = part.split('/');
    return total + (64 * Number(top)) / Number(bottom ?? 1);
  }, heavy);
  return text.startsWith('-') ? -sum : sum;
}

describe('written and read back, a length on the grid is itself', () => {
  test.each(INCH_GRIDS)('%s, every point of two feet and any point of a house', (_, step) => {
    const check = (steps: number): void => {
      const exact = times(step, steps);
      readsBack(formatLength(toMm(exact), step, 'imperial'), exact);
      readsBack(formatFeet(toMm(exact), step), exact);
      const tape = tapeText(tapeNumber(toMm(exact), step));
      holds(
        tapeInSixtyFourths(tape) * 25.4 === roundTo(toMm(exact), toMm(inch(1 / 64))) * 64,
        `${tape} for ${toMm(exact)} mm`,
      );
    };
    for (let steps = -64; steps <= 24 * 64; steps += 1) check(steps);
    fc.assert(fc.property(fc.integer({ min: -1_000_000, max: 1_000_000 }), check), { numRuns: 2_000 });
  });

  test.each(METRIC_GRIDS)('%s', (_, step) => {
    const check = (steps: number): void => {
      const exact = times(step, steps);
      readsBack(formatLength(toMm(exact), step, 'metric'), exact);
    };
    for (let steps = -50; steps <= 2_000; steps += 1) check(steps);
    fc.assert(fc.property(fc.integer({ min: -9_999_999, max: 9_999_999 }), check), { numRuns: 2_000 });
  });

  test('any length at all is written as the nearest point, and then stays', () => {
    const grids = [
      ...INCH_GRIDS.map(([, step]) => ['imperial', step] as const),
      ...METRIC_GRIDS.map(([, step]) => ['metric', step] as const),
    ];
    fc.assert(
      fc.property(
        fc.constantFrom(...grids),
        fc.double({ min: -20_000, max: 20_000, noNaN: true }),
        ([units, step], mm) => {
          const text = formatLength(mm, step, units);
          const reading = parseLength(text, true);
          if (!reading.ok) throw new Error(`${text}: ${reading.fault}`);
          holds(Math.abs(toMm(reading.length) - mm) <= toMm(step) / 2 + 1e-6, `${text} for ${mm}`);
          holds(formatLength(toMm(reading.length), step, units) === text, `${text} does not stay`);
        },
      ),
      { numRuns: 3_000 },
    );
  });
});

describe('any text at all', () => {
  const scraps = fc.array(
    fc.constantFrom(
      '1',
      '0',
      '8',
      '12',
      '.',
      ',',
      '/',
      "'",
      '"',
      ' ',
      '-',
      'in',
      'ft',
      'mm',
      'm',
      'e',
      '½',
      '⅝',
      '″',
      '−',
      '\n',
    ),
    { maxLength: 12 },
  );

  test('is a length or is refused with a reason, and never throws', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ maxLength: 60 }),
          scraps.map((parts) => parts.join('')),
        ),
        fc.boolean(),
        (text, mayBeNegative) => {
          const reading = parseLength(text, mayBeNegative);
          if (reading.ok) {
            holds(Number.isFinite(toMm(reading.length)), `${text} is endless`);
            holds(mayBeNegative || reading.length.num >= 0n, `${text} is negative`);
            holds(reading.length.den > 0n, `${text} has no denominator`);
          } else holds(reading.fault.startsWith('length.'), text);
        },
      ),
      { numRuns: 5_000 },
    );
  });
});

describe('a job file', () => {
  test('opens as it was saved, and saves as it was opened', () => {
    fc.assert(
      fc.property(randomStair, (stair) => {
        const job = jobOf(stair);
        const opened = openJob(saveJob(job));
        if (!opened.ok) throw new Error(JSON.stringify(opened.problems));
        expect(opened.value).toEqual(job);
        holds(saveJob(opened.value) === saveJob(job), 'saving twice differs');
      }),
      { numRuns: 200 },
    );
  });

  test('spoiled anywhere, it gives problems with places and never throws', () => {
    const spoil = fc.record({
      at: fc.nat(),
      take: fc.nat({ max: 8 }),
      put: fc.constantFrom('', '{', '}', '[', '"', ',', ':', 'null', '1e999', '__proto__', '\u0000', '\\'),
    });
    fc.assert(
      fc.property(randomStair, fc.array(spoil, { minLength: 1, maxLength: 3 }), (stair, spoils) => {
        const text = spoils.reduce(
          (file, { at, take, put }) => {
            const place = at % file.length;
            return file.slice(0, place) + put + file.slice(place + take);
          },
          saveJob(jobOf(stair)),
        );
        const opened = openJob(text);
        if (!opened.ok)
          holds(
            opened.problems.length > 0 && opened.problems.every(({ place, code }) => place !== '' && code !== ''),
            text,
          );
      }),
      { numRuns: 2_000 },
    );
  });

  test('any JSON value is refused with a place', () => {
    fc.assert(
      fc.property(fc.jsonValue(), fc.boolean(), (value, dressed) => {
        const job = dressed ? { format: 'pitchboard.job', version: 1, stairs: [{ id: 'a', survey: value }] } : value;
        const opened = openJob(JSON.stringify(job));
        holds(!opened.ok && opened.problems.every(({ place }) => place !== ''), JSON.stringify(job));
      }),
      { numRuns: 2_000 },
    );
  });
});
