/** Files that a tired hand, another program or somebody with ill will could write: answered or refused in words. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { answerStair } from '../../src/cli/layoutAnswer';
import { planJob } from '../../src/core/plan/planStair';
import type { Problem } from '../../src/core/result';
import { demoJob } from '../../src/document/demoJob';
import { openJob } from '../../src/document/openJob';
import { saveJob } from '../../src/document/saveJob';
import { KNOWN_KEYS } from '../../src/document/schema';
import { sayProblem, speakerFor } from '../../src/text/say';
import { BOOK } from '../fixtures/stairs';
import { holds } from './measure';

const SAY = speakerFor('us');

const LENGTHS = ['0 in', '-1 in', '1/0 in', '1e3 in', '999999999999999 in', '0.000001 mm', '1/7 in', '½ in', '-3/8 in'];
const STAIRS = ['10 in', '3/4 in', '11 1/4 in', '200 mm', '2700 mm', '8\' 11 5/8"', '48 in', '120 in', '300 in'];
const WORDS = ['', ' ', '10', '1,5 mm', "8.10'", 'unknown', 'auto', 'level-with-floor', '\u0000', '\u202e', '{x}'];
const OTHERS = [
  null,
  0,
  1,
  14,
  200,
  201,
  -1,
  1.5,
  1e308,
  true,
  [],
  {},
  { length: '1 in' },
  { length: '1 in', known: '' },
];
const value = fc.constantFrom<unknown>(...LENGTHS, ...STAIRS, ...WORDS, ...OTHERS, 'a'.repeat(5000));

const places = ['survey', 'steps', 'stringer'].flatMap((part) =>
  (KNOWN_KEYS[`stairs.${part}`] ?? []).map((key) => [part, key] as const),
);
const change = fc.record({ place: fc.constantFrom(...places), value });

function wrongFile(changes: readonly { place: readonly [string, string]; value: unknown }[], units: unknown): string {
  const job = JSON.parse(saveJob(demoJob)) as { units: unknown; stairs: Record<string, Record<string, unknown>>[] };
  job.units = units;
  for (const { place, value } of changes) {
    const stair = job.stairs[0] as Record<string, Record<string, unknown>>;
    stair[place[0]] = { ...stair[place[0]], [place[1]]: value };
  }
  return JSON.stringify(job);
}

function saidInWords({ place, code, values }: Problem): void {
  const words = sayProblem(SAY, { code, values }, 'imperial');
  holds(place !== '' && words.length > 10 && !words.includes('undefined'), `${place} ${code} is not said: ${words}`);
}

test('a job with wrong values in it is refused in words, or answered in numbers that are numbers', () => {
  expect(places.length).toBeGreaterThan(25);
  let answered = 0;
  let refused = 0;
  fc.assert(
    fc.property(
      fc.array(change, { minLength: 1, maxLength: 3 }),
      fc.constantFrom('imperial', 'metric', 'furlongs'),
      (changes, units) => {
        const read = openJob(wrongFile(changes, units));
        const plans = read.ok ? planJob(read.value, BOOK) : read;
        if (!plans.ok) {
          refused += 1;
          holds(plans.problems.length > 0, 'refused without a word');
          plans.problems.forEach(saidInWords);
          return;
        }
        answered += 1;
        JSON.stringify(
          plans.value.map((plan) => answerStair(plan, SAY)),
          (key, each) => {
            holds(typeof each !== 'number' || Number.isFinite(each), `${key} is ${each}`);
            return each;
          },
        );
      },
    ),
    { numRuns: 3000 },
  );
  // Both ways have to have been gone, or nothing was tried.
  expect(answered).toBeGreaterThan(100);
  expect(refused).toBeGreaterThan(1000);
});
