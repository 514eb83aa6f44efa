/**
 * Limits that move, for every kind of rule, and readings that move under an answer: what is said of
 * any stair, whatever pack it stands on.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { kindOf, knownFields } from '../../src/core/codes/fieldKinds';
import { findOn } from '../../src/core/codes/findings';
import { judge, type Status } from '../../src/core/codes/judge';
import { chooseRules, type Limit, type RuleSet } from '../../src/core/codes/rulePack';
import { layoutStair, type StairLayout } from '../../src/core/layout/layoutStair';
import { limitsOf, planStair } from '../../src/core/plan/planStair';
import { add, type Exact, fraction, multiply, whole } from '../../src/core/units/exact';
import { findPack } from '../../src/packs/ruleBook';
import { loadAllPacks, profilesOf, rulesOf } from '../fixtures/packs';
import { BOOK } from '../fixtures/stairs';
import { holds } from './measure';
import { jobOf, NM, type RandomStair, randomStair } from './randomStairs';

const PROFILES = profilesOf(await loadAllPacks());

function layoutOf(stair: RandomStair): StairLayout {
  const plan = planStair(jobOf(stair), 0, BOOK);
  fc.pre(plan.ok);
  return (plan as { value: { layout: StairLayout } }).value.layout;
}

const LENT: Readonly<Record<string, string>> = {
  'nosing.notRequiredFromTread': 'nosing.min',
  'openRiser.freeBelowHeight': 'openRiser.maxSphere',
};
/** Loosened by a smaller figure: a least, and how deep a tread has to be to go without a nosing. */
const isLeast = (field: string) => /\.min|minRisers|notRequiredFromTread/.test(field);
/** Worse comes later; what is asked for and not shown is worse than what is not asked for. */
const RANK: readonly Status[] = ['meets', 'not-checked', 'breaks'];

const numbered = knownFields().filter((field) => kindOf(field) !== 'yesNo');
const lengths = fc.oneof(fc.integer({ min: 0, max: 400 * NM }), fc.integer({ min: 0, max: 4000 * NM }));
const anyLimit = fc.constantFrom(...numbered).chain((field) => {
  const kind = kindOf(field);
  if (kind === 'count')
    return fc.tuple(fc.constant(field), fc.integer({ min: 0, max: 40 }), fc.integer({ min: 0, max: 40 }));
  if (kind === 'angle')
    return fc.tuple(fc.constant(field), fc.integer({ min: 0, max: 90 }), fc.integer({ min: 0, max: 90 }));
  return fc.tuple(fc.constant(field), lengths, lengths);
});

function limitOf(field: string, figure: number, when: Limit['when']): Limit {
  const kind = kindOf(field);
  const exact = kind === 'length' ? fraction(BigInt(figure), BigInt(NM)) : whole(figure);
  const unit = kind === 'length' ? 'mm' : kind === 'angle' ? 'deg' : 'count';
  return { field, value: figure, unit, exact, when, section: '1', source: '', confidence: 'seen' };
}

const setOf = (...limits: Limit[]): RuleSet => ({
  pack: null,
  packId: '',
  profile: null,
  profileMissing: false,
  limits,
});

describe('a limit of any kind that moves', () => {
  test('tightened, it never answers better; loosened, never worse', () => {
    const seen = new Map<string, Set<Status>>();
    const when = fc.constantFrom(undefined, undefined, 'open-risers' as const, 'closed-risers' as const);
    fc.assert(
      fc.property(
        randomStair,
        anyLimit,
        when,
        lengths,
        fc.boolean(),
        (stair, [field, one, other], only, host, open) => {
          const layout = layoutOf(open ? { ...stair, nm: { ...stair.nm, riser: 0 } } : stair);
          const [low, high] = [Math.min(one, other), Math.max(one, other)];
          const [tight, loose] = isLeast(field) ? [high, low] : [low, high];
          const asked = LENT[field] ?? field;
          const answer = (figure: number) => {
            const limit = limitOf(field, figure, only);
            const hosted = LENT[field] === undefined ? limit : limitOf(asked, host, undefined);
            return judge(layout, hosted, setOf(hosted, ...(hosted === limit ? [] : [limit]))).status;
          };
          const [tightened, loosened] = [answer(tight), answer(loose)];
          holds(
            RANK.indexOf(loosened) <= RANK.indexOf(tightened),
            `${field} ${tight} ${tightened}, ${loose} ${loosened}`,
          );
          seen.set(field, (seen.get(field) ?? new Set()).add(tightened).add(loosened));
        },
      ),
      { numRuns: 12_000 },
    );
    // A property that never sees a rule break proves nothing about it.
    for (const field of numbered) {
      const asks = /required[FA]|bothSides/.test(field);
      const never = /^(variation|riser\.slope)/.test(field);
      expect([...(seen.get(field) ?? [])], field).toContain('meets');
      if (!never) expect([...(seen.get(field) ?? [])], field).toContain(asks ? 'not-checked' : 'breaks');
    }
  }, 120_000);

  test('open risers that are no longer allowed break where they are, and nowhere else', () => {
    fc.assert(
      fc.property(randomStair, fc.boolean(), (stair, open) => {
        const layout = layoutOf(open ? { ...stair, nm: { ...stair.nm, riser: 0 } } : stair);
        const isOpen = layout.flight.exact.riserThickness.num === 0n;
        const answer = (value: boolean) => {
          const limit: Limit = {
            ...limitOf('riser.max', 0, undefined),
            field: 'openRiser.allowed',
            value,
            exact: null,
          };
          return judge(layout, limit, setOf(limit)).status;
        };
        holds(answer(true) === 'meets', 'allowed, and breaks');
        holds(answer(false) === (isOpen ? 'breaks' : 'meets'), 'not allowed');
      }),
      { numRuns: 300 },
    );
  });

  test('tightening one limit of any pack takes away nothing that does not meet, of it or of any other', () => {
    fc.assert(
      fc.property(
        randomStair,
        fc.constantFrom(...PROFILES),
        fc.nat(),
        fc.integer({ min: 0, max: 100 }),
        fc.constantFrom(null, whole(1), whole(3)),
        (stair, [pack, profile], at, percent, doubt) => {
          const layout = layoutOf(stair);
          const rules = rulesOf(pack, profile);
          const figures = rules.limits.filter(({ exact, field }) => exact !== null && kindOf(field) !== undefined);
          const picked = figures[at % figures.length] as Limit;
          const by = isLeast(picked.field)
            ? fraction(BigInt(100 + percent), 100n)
            : fraction(BigInt(100 - percent), 100n);
          const tight = { ...picked, exact: multiply(picked.exact as Exact, by) };
          const limits = rules.limits.map((limit) => (limit === picked ? tight : limit));
          const broken = (set: RuleSet) =>
            findOn(layout, set, BOOK.tastes, doubt)
              .filter(({ status }) => status !== 'meets')
              .map(({ field, kind }) => `${kind} ${field}`);
          const after = broken({ ...rules, limits });
          for (const each of broken(rules))
            holds(after.includes(each), `${each} gone under a tighter ${picked.field} of ${pack}`);
        },
      ),
      { numRuns: 1_500 },
    );
  }, 60_000);
});

describe('readings that are out by no more than the doubt', () => {
  const share = fc.integer({ min: -990, max: 990 });
  const KEYS = ['rise', 'footBelowReading', 'openingFraming', 'floorDepth', 'widthFraming'] as const;

  /** The same stair with its readings out, each by its own share of the doubt. */
  function misread(layout: StairLayout, rules: RuleSet, doubt: Exact, shares: readonly number[]): StairLayout | null {
    const survey = { ...layout.job.survey };
    const stringer = { ...layout.job.stringer };
    const out = (at: number, value: Exact) =>
      add(value, multiply(doubt, fraction(BigInt(shares[at] as number), 1000n)));
    KEYS.forEach((key, at) => {
      const value = survey[key];
      if (value !== null) survey[key] = out(at, value);
    });
    stringer.stockDepth = out(5, stringer.stockDepth);
    stringer.stockThickness = out(6, stringer.stockThickness);
    const steps = { ...layout.job.steps, risers: layout.flight.risers };
    const again = layoutStair({ ...layout.job, survey, stringer, steps }, limitsOf(rules));
    return again.ok ? again.value : null;
  }

  test('turn no answer that was not too close to call', () => {
    let close = 0;
    fc.assert(
      fc.property(
        randomStair,
        fc.constantFrom(...PROFILES),
        fc.integer({ min: 1, max: 40 }),
        fc.tuple(share, share, share, share, share, share, share),
        (stair, [pack, profile], tenths, shares) => {
          const layout = layoutOf(stair);
          const rules = rulesOf(pack, profile);
          const doubt = fraction(BigInt(tenths), 10n);
          const other = misread(layout, rules, doubt, shares);
          fc.pre(other !== null && other.width?.stringers === layout.width?.stringers);
          const before = findOn(layout, rules, [], doubt).filter(({ kind }) => kind === 'rule');
          const after = findOn(other as StairLayout, rules, []).filter(({ kind }) => kind === 'rule');
          before.forEach((finding, at) => {
            holds(finding.readAgain.length > 0 === (finding.status === 'close'), `${finding.field} and what to read`);
            if (finding.status === 'close') close += 1;
            else
              holds(finding.status === after[at]?.status, `${finding.field} of ${pack} turned from ${finding.status}`);
          });
        },
      ),
      { numRuns: 3_000 },
    );
    expect(close).toBeGreaterThan(100);
  }, 120_000);

  test('more doubt never settles anything', () => {
    fc.assert(
      fc.property(
        randomStair,
        fc.constantFrom(...PROFILES),
        fc.integer({ min: 0, max: 50 }),
        (stair, [pack, profile], tenths) => {
          const layout = layoutOf(stair);
          const rules = rulesOf(pack, profile);
          const at = (doubt: number) => findOn(layout, rules, [], fraction(BigInt(doubt), 10n));
          const more = at(tenths + 5);
          at(tenths).forEach((finding, index) => {
            const wider = more[index]?.status;
            holds(
              wider === finding.status || wider === 'close',
              `${finding.field} of ${pack}: ${finding.status} to ${wider}`,
            );
          });
        },
      ),
      { numRuns: 500 },
    );
  }, 60_000);
});

test('a job that names a profile gets no row of another', () => {
  for (const [pack, profile] of PROFILES) {
    const rules = chooseRules({ pack, profile }, findPack);
    if (!rules.ok) throw new Error(pack);
    const allowed = rules.value.pack?.rows.filter((row) => row.profile === undefined || row.profile === profile);
    expect(rules.value.limits.length, pack).toBe(allowed?.length);
  }
});
