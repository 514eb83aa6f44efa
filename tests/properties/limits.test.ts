import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { JobText } from '../../src/core/job/jobText';
import { planStair } from '../../src/core/plan/planStair';
import { BOOK, bare } from '../fixtures/stairs';
import { holds } from './measure';
import { jobOf, NM, type RandomStair, randomStair } from './randomStairs';

const RUNS = { numRuns: 400 };
const mm = (nm: number): string => `${Math.floor(nm / NM)}.${String(nm % NM).padStart(6, '0')} mm`;

function withRules(job: JobText, ...local: { field: string; value: string }[]): JobText {
  return { ...job, rules: { pack: 'irc-2021', local } };
}

/** Statuses by field; undefined for a stair without geometry. */
function statuses(job: JobText): Map<string, string> | undefined {
  const plan = planStair(job, 0, BOOK);
  return plan.ok
    ? new Map(plan.value.findings.filter(({ kind }) => kind === 'rule').map(({ field, status }) => [field, status]))
    : undefined;
}

function statusOf(stair: RandomStair, field: string, value: string): string | undefined {
  const found = statuses(withRules(jobOf(stair), { field, value }));
  fc.pre(found !== undefined);
  return found?.get(field);
}

/** Fields whose figure is a length of the stair, and which side of the limit is the good one. */
const FIELDS: readonly (readonly [string, (stair: RandomStair) => number, 1 | -1])[] = [
  ['tread.min', ({ nm }) => nm.run, 1],
  ['tread.max', ({ nm }) => nm.run, -1],
  ['nosing.max', ({ nm }) => nm.nosing, -1],
  ['flight.maxVerticalRise', ({ nm }) => nm.rise + nm.foot + nm.upper - nm.lower, -1],
  ['width.min', ({ nm }) => nm.width - 2 * nm.wallboard, 1],
];

describe('exactly on a limit meets it, one nanometre past breaks it', () => {
  test.each(FIELDS)(
    '%s',
    (field, figure, good) => {
      fc.assert(
        fc.property(randomStair, (stair) => {
          const at = figure(stair);
          fc.pre(at > 0);
          holds(statusOf(stair, field, mm(at)) === 'meets', 'on the limit');
          holds(statusOf(stair, field, mm(at + good)) === 'breaks', 'a nanometre past it');
          holds(statusOf(stair, field, mm(at - good)) === 'meets', 'a nanometre inside it');
        }),
        RUNS,
      );
    },
    30_000,
  );

  test('riser.max and riser.min, on a unit rise that is no whole number of anything', () => {
    fc.assert(
      fc.property(randomStair, (stair) => {
        const total = stair.nm.rise + stair.nm.foot + stair.nm.upper - stair.nm.lower;
        const [below, above] = [Math.floor(total / stair.risers), Math.ceil(total / stair.risers)];
        holds(statusOf(stair, 'riser.max', mm(above)) === 'meets', 'not over the limit');
        holds(statusOf(stair, 'riser.min', mm(below)) === 'meets', 'not under the limit');
        holds(
          statusOf(stair, 'riser.max', mm(below)) === (below === above ? 'meets' : 'breaks'),
          'over by a part of a nanometre',
        );
        holds(
          statusOf(stair, 'riser.min', mm(above)) === (below === above ? 'meets' : 'breaks'),
          'under by a part of a nanometre',
        );
      }),
      RUNS,
    );
  }, 30_000);

  test('risers left to the program: N × the greatest riser is N, and a nanometre more is N + 1', () => {
    const risers = fc.integer({ min: 3, max: 40 });
    const most = fc.integer({ min: 150 * NM, max: 220 * NM });
    fc.assert(
      fc.property(risers, most, (count, riser) => {
        const laid = (rise: number) => {
          const job = bare('metric', mm(rise));
          const [stair] = job.stairs as [JobText['stairs'][number]];
          const survey = { ...stair.survey, lowerToAdd: '0 mm', upperToAdd: '0 mm' };
          const plan = planStair(
            withRules({ ...job, stairs: [{ ...stair, survey }] }, { field: 'riser.max', value: mm(riser) }),
            0,
            BOOK,
          );
          if (!plan.ok) throw new Error(JSON.stringify(plan.problems));
          const finding = plan.value.findings.find(({ field }) => field === 'riser.max');
          holds(finding?.status === 'meets', 'what the program chose breaks its own limit');
          return plan.value.layout.flight.risers;
        };
        holds(laid(count * riser) === count, 'exactly on the limit');
        holds(laid(count * riser + 1) === count + 1, 'a nanometre past it');
        holds(laid(count * riser - 1) === count, 'a nanometre inside it');
      }),
      RUNS,
    );
  }, 30_000);
});

describe('a limit that moves', () => {
  const field = fc.constantFrom(
    'riser.max',
    'tread.min',
    'nosing.max',
    'nosing.min',
    'headroom.min',
    'width.min',
    'flight.maxVerticalRise',
    'twoRPlusG.max',
    'twoRPlusG.min',
    'riser.min',
    'tread.max',
    'openRiser.maxSphere',
  );
  const value = fc.integer({ min: NM, max: 4000 * NM });

  test('tightened, it never removes what breaks; loosened, it never adds any', () => {
    let broken = 0;
    let met = 0;
    fc.assert(
      fc.property(randomStair, field, value, value, (stair, name, one, other) => {
        const job = jobOf(stair);
        const upper = name.includes('max');
        const [tight, loose] = upper === one < other ? [one, other] : [other, one];
        const tightened = statuses(withRules(job, { field: name, value: mm(tight) }));
        const loosened = statuses(withRules(job, { field: name, value: mm(loose) }));
        fc.pre(tightened !== undefined && loosened !== undefined);
        for (const [each, status] of loosened ?? []) {
          if (status === 'breaks')
            holds(tightened?.get(each) === 'breaks', `${each} no longer breaks under a tighter ${name}`);
        }
        if (loosened?.get(name) === 'meets') met += 1;
        if (tightened?.get(name) === 'breaks') broken += 1;
      }),
      { numRuns: 2_000 },
    );
    expect(Math.min(broken, met)).toBeGreaterThan(200);
  }, 60_000);
});
