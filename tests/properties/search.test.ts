/** The search against another one that asks every layout, over random surveys and all packs; its order, and its proofs. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { changeStair } from '../../src/core/choose/changeStair';
import { figuresOf } from '../../src/core/choose/figures';
import type { RulePack, RuleRow } from '../../src/core/codes/rulePack';
import type { JobText } from '../../src/core/job/jobText';
import { planStair } from '../../src/core/plan/planStair';
import { changesFor } from '../../src/core/search/candidate';
import { findConflict } from '../../src/core/search/conflict';
import { CRITERIA, rankLayouts, scoreOf } from '../../src/core/search/rank';
import { type Found, searchLayouts } from '../../src/core/search/searchLayouts';
import { relax, tryOpening, tryWay } from '../../src/core/search/tryWay';
import { askSearch, type Search, TOPS, type Wishes } from '../../src/core/search/wishes';
import { divide, inch, whole } from '../../src/core/units/exact';
import { loadAllPacks, profilesOf } from '../fixtures/packs';
import { BOOK } from '../fixtures/stairs';
import { FOUR_TOPS, type House, isLegal } from './bruteSearch';
import { writeLength } from './randomStairs';

const SURVEYS = 500;
const IN = 25_400_000;
const MM = 1_000_000;
const packs = await loadAllPacks();
const CHOICES = profilesOf(packs);

const mostly = <T>(usual: readonly T[], other: fc.Arbitrary<T>) =>
  fc.oneof({ weight: 4, arbitrary: fc.constantFrom(...usual) }, { weight: 1, arbitrary: other });
const orNone = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { freq: 2 });

/**
 * Counted in sixteenths of an inch, or millimetres. What the house leaves (opening, floor, boards) is meant for a
 * run of the rules' usual size and then a little more or less, so that most surveys allow some layouts, and few many.
 */
const survey = fc.record({
  metric: fc.boolean(),
  pack: fc.integer({ min: 0, max: CHOICES.length - 1 }),
  // Whole risers of a round height, as often as not: there a stair stands exactly on a limit.
  risers: mostly([10, 12, 13, 14, 15, 16], fc.integer({ min: 2, max: 24 })),
  unitRise: mostly([112, 116, 120, 122, 124], fc.integer({ min: 5 * 16, max: 9 * 16 })),
  more: fc.oneof(fc.constant(0), fc.integer({ min: 0, max: 60 })),
  lowerToAdd: fc.integer({ min: -8, max: 16 }),
  laidAfter: fc.boolean(),
  meantRun: fc.integer({ min: 9 * 16, max: 13 * 16 }),
  floorDepth: fc.option(fc.integer({ min: 8 * 16, max: 16 * 16 })),
  openingMore: orNone(fc.integer({ min: -96, max: 640 })),
  lining: fc.integer({ min: 0, max: 16 }),
  nosing: mostly([15, 16, 17], fc.constantFrom(0, 8, 12, 20, 24)),
  tread: mostly([16, 20, 26], fc.integer({ min: 12, max: 40 })),
  riser: mostly([8, 12, 16], fc.constant(0)),
  hanger: fc.integer({ min: 4, max: 24 }),
  depths: fc.subarray([9.25 * 16, 11.25 * 16, 12 * 16, 14 * 16], { minLength: 1 }),
  thickness: mostly([24, 28], fc.constant(20)),
  inset: fc.constantFrom(0, 0, 4),
  trim: fc.integer({ min: 0, max: 40 }),
  kicker: fc.option(fc.constant({ width: 56, height: 24 })),
  runMore: orNone(fc.integer({ min: -160, max: 320 })),
  headroomWished: orNone(fc.integer({ min: 76 * 16, max: 84 * 16 })),
  longest: mostly([16, 20, 24], fc.constantFrom(8, 12, 14)),
});
type Survey = typeof survey extends fc.Arbitrary<infer T> ? T : never;

/** Metric ones are the same numbers, one and a half millimetres for a sixteenth. */
function houseOf(s: Survey): House {
  const nm = (steps: number) => (s.metric ? Math.round(steps * 1.5) * MM : (steps * IN) / 16);
  const totalRise = nm(s.unitRise) * s.risers + nm(s.more);
  const floorDepth = s.floorDepth === null ? null : nm(s.floorDepth);
  // The opening that 80 in of headroom takes over a stair of the meant run, as the trade reckons it.
  const needed = ((80 * 16 + (s.floorDepth ?? 160)) * s.meantRun) / s.unitRise;
  const opening = s.openingMore === null ? null : nm(Math.max(16, Math.round(needed) + s.openingMore));
  return {
    totalRise,
    lowerToAdd: nm(s.lowerToAdd),
    laidAfter: s.laidAfter,
    floorDepth,
    opening,
    lining: nm(s.lining),
    nosing: nm(s.nosing),
    tread: nm(s.tread),
    riser: nm(s.riser),
    hanger: nm(s.hanger),
    depths: s.depths.map(nm),
    thickness: nm(s.thickness),
    inset: nm(s.inset),
    trim: nm(s.trim),
    kicker: s.kicker && { width: nm(s.kicker.width), height: nm(s.kicker.height) },
    runAvailable: s.runMore === null ? null : nm(Math.max(16, (s.risers - 1) * s.meantRun + s.runMore)),
    headroomWished: s.headroomWished === null ? null : nm(s.headroomWished),
    longest: s.metric ? s.longest * 300 * MM : s.longest * 12 * IN,
  };
}

function jobOf(s: Survey, house: House): JobText {
  const [pack, profile] = CHOICES[s.pack] as (typeof CHOICES)[number];
  const text = (length: number) => writeLength(length, 0);
  return {
    format: 'pitchboard.job',
    version: 1,
    units: s.metric ? 'metric' : 'imperial',
    rules: { pack, profile },
    stairs: [
      {
        id: 'any',
        survey: {
          rise: text(house.totalRise + house.lowerToAdd),
          lowerToAdd: text(house.lowerToAdd),
          lowerLaid: s.laidAfter ? 'after-stairs' : 'before-stairs',
          upperToAdd: '0 mm',
          ...(house.floorDepth === null ? {} : { floorDepth: text(house.floorDepth) }),
          ...(house.opening === null ? {} : { openingFraming: text(house.opening) }),
          headerLining: text(house.lining),
          headerDepth: '250 mm',
        },
        steps: {
          risers: s.risers,
          run: s.metric ? '250 mm' : '10 in',
          nosing: text(house.nosing),
          treadThickness: text(house.tread),
          riserThickness: text(house.riser),
        },
        stringer: {
          stockDepth: text(house.depths[0] as number),
          stockThickness: text(house.thickness),
          tipInset: text(house.inset),
          trim: text(house.trim),
          // With any board between: the search takes it along, or leaves it out.
          top: 'hanger-behind-riser',
          hanger: text(house.hanger),
          ...(house.kicker === null
            ? {}
            : { kicker: { width: text(house.kicker.width), height: text(house.kicker.height) } }),
        },
      },
    ],
  };
}

const exactNm = (length: number) => divide(whole(length), whole(MM));

function wishesOf(house: House): Wishes {
  const orNull = (length: number | null) => (length === null ? null : exactNm(length));
  return {
    runAvailable: orNull(house.runAvailable),
    headroom: orNull(house.headroomWished),
    stockLengths: [house.longest / MM],
    stockDepths: house.depths.map(exactNm),
    tops: TOPS,
  };
}

function asked(s: Survey): { house: House; job: JobText; search: Search; rows: readonly RuleRow[] } {
  const house = houseOf(s);
  const job = jobOf(s, house);
  const search = askSearch(job, 0, BOOK, wishesOf(house), s.metric ? whole(1) : inch(1 / 16));
  if (!search.ok) throw new Error(JSON.stringify(search.problems));
  const [id, profile] = CHOICES[s.pack] as (typeof CHOICES)[number];
  const pack = packs.find((each) => each.id === id) as RulePack;
  const rows = pack.rows.filter((row) => row.profile === undefined || row.profile === profile);
  return { house, job, search: search.value, rows };
}

function finish<T>(steps: Generator<undefined, T>): T {
  for (;;) {
    const { done, value } = steps.next();
    if (done === true) return value;
  }
}

const TIMEOUT = 300_000;

describe('a search that asks every layout', () => {
  it(
    'finds the same ones: none is missed, and none shown that breaks a rule',
    () => {
      let [legal, compared, surveysWithSome, closedByHead, onLimit] = [0, 0, 0, 0, 0];
      fc.assert(
        fc.property(survey, fc.integer({ min: 0, max: 7 }), (s, offset) => {
          const { house, search, rows } = asked(s);
          const result = finish(searchLayouts(search));
          onLimit += result.decidedExactly;
          if (result.found.length > 0) surveysWithSome += 1;
          if (result.found.length > 0 && house.opening !== null && house.floorDepth !== null) closedByHead += 1;
          const found = new Set(result.found.map(({ id }) => id));
          const grid = s.metric ? MM : IN / 16;
          const stride = s.metric ? 13 : 8;
          const { frame } = result;
          const runs = new Set<number>();
          for (let k = frame.leastSteps + offset; k <= frame.mostSteps; k += stride) runs.add(k);
          // And every run that stands on a limit of its own.
          for (const { field, value, unit } of rows) {
            if (!field.startsWith('tread.') || typeof value !== 'number') continue;
            const at = (value * (unit === 'in' ? IN : MM)) / grid;
            if (Number.isInteger(at)) for (const k of [at - 1, at, at + 1]) runs.add(k);
          }
          for (const top of FOUR_TOPS) {
            for (let risers = frame.fewest; risers <= frame.most; risers += 1) {
              for (const k of runs) {
                const is = isLegal(house, rows, top, risers, k * grid);
                compared += 1;
                if (is) legal += 1;
                if (is !== found.has(`${top} ${risers} ${k}`)) {
                  throw new Error(`${top}, ${risers} risers, run ${k}: ${is ? 'missed' : 'shown, and breaks a rule'}`);
                }
              }
            }
          }
        }),
        { numRuns: SURVEYS },
      );
      expect(compared).toBeGreaterThan(500_000);
      expect(legal).toBeGreaterThan(10_000);
      expect(onLimit).toBeGreaterThan(100);
      expect(surveysWithSome).toBeGreaterThan(SURVEYS / 3);
      expect(closedByHead).toBeGreaterThan(SURVEYS / 12);
    },
    TIMEOUT,
  );
});

/** A few of what was found, spread over all of it. */
function some(found: readonly Found[], count: number): readonly Found[] {
  const stride = Math.max(1, Math.floor(found.length / count));
  return found.filter((_, at) => at % stride === 0);
}

/** Two rises and a run are over their least by just what the tape's doubt comes to: that turns nothing. */
const ON_THE_EDGE: Survey = {
  metric: true,
  pack: 22,
  risers: 13,
  unitRise: 116,
  more: 0,
  lowerToAdd: 0,
  laidAfter: false,
  meantRun: 197,
  floorDepth: null,
  openingMore: null,
  lining: 0,
  nosing: 15,
  tread: 16,
  riser: 8,
  hanger: 4,
  depths: [224],
  thickness: 24,
  inset: 0,
  trim: 0,
  kicker: null,
  runMore: 27,
  headroomWished: null,
  longest: 16,
};

const BROKEN_BUILD = ['throat', 'headerContact', 'kicker.toe', 'kicker.seat'];

describe('what is found', () => {
  it('plans as it was found: the same figures, no rule broken, as many cautions', () => {
    let planned = 0;
    fc.assert(
      fc.property(survey, (s) => {
        const { house, job, search } = asked(s);
        const { found } = finish(searchLayouts(search));
        for (const one of some(found, 4)) {
          const taken = changeStair(job, 0, changesFor(job, 0, search.job, one));
          const plan = planStair(taken, 0, BOOK, search.doubt);
          if (!plan.ok) throw new Error(`${one.id}: ${JSON.stringify(plan.problems)}`);
          const { layout, findings } = plan.value;
          const exactly = planStair(taken, 0, BOOK);
          if (!exactly.ok) throw new Error('it plans only with a doubt');
          expect(exactly.value.findings.filter(({ kind, status }) => kind === 'rule' && status === 'breaks')).toEqual(
            [],
          );
          const figures = figuresOf(plan.value);
          expect(one.quick.headerX).toBeCloseTo(figures.headerFace, 6);
          expect(one.quick.throat).toBeCloseTo(figures.throat, 6);
          expect(one.quick.boardLength).toBeCloseTo(figures.boardLength, 6);
          expect(one.quick.contact).toBeCloseTo(figures.headerContact as number, 6);
          expect(one.quick.plumbCut).toBeCloseTo(layout.stringer.top.plumbCut, 6);
          expect(one.quick.seat).toBeCloseTo(layout.stringer.heel.seat, 6);
          if (figures.headroom !== null) expect(one.quick.headroom).toBeCloseTo(figures.headroom, 6);
          else expect(one.quick.headroom).toBeNull();
          const build = findings.filter(
            ({ kind, field, status }) =>
              kind === 'build' && status === 'breaks' && (BROKEN_BUILD.includes(field) || field.startsWith('asCut')),
          );
          // What no choice moves is not counted when layouts are weighed against each other.
          const close = findings.filter(
            ({ kind, field, status }) =>
              kind === 'rule' &&
              status === 'close' &&
              /^(riser|twoR|pitch|headroom|openRiser|stringer[.]eff)/.test(field),
          );
          expect(one.cautions).toBe(build.length + close.length);
          expect(one.stockLength).toBe(house.longest / MM);
          planned += 1;
        }
      }),
      { numRuns: 300, examples: [[ON_THE_EDGE]] },
    );
    expect(planned).toBeGreaterThan(100);
  }, 300_000);

  it('stands in the order that was asked for, and is beaten only by what is at least as good in all of it', () => {
    const criteria = fc.uniqueArray(fc.constantFrom(...CRITERIA), { minLength: 1, maxLength: 4 });
    let beaten = 0;
    fc.assert(
      fc.property(survey, criteria, (s, names) => {
        const { search } = asked({ ...s, runMore: s.runMore ?? 160 });
        const result = finish(searchLayouts(search));
        const order = { criteria: names, stride: 622, unitRise: 178 };
        const ranked = finish(rankLayouts(search, result, order));
        expect(ranked.map(({ found }) => found.id).sort()).toEqual(result.found.map(({ id }) => id).sort());
        const scores = ranked.map(({ found }) => names.map((name) => scoreOf(search, found, name, order)));
        for (let i = 1; i < scores.length; i += 1) {
          const [before, after] = [scores[i - 1] as number[], scores[i] as number[]];
          const turn = before.findIndex((score, at) => score !== after[at]);
          if (turn >= 0) expect(before[turn]).toBeLessThan(after[turn] as number);
        }
        const atLeastAsGood = (a: readonly number[], b: readonly number[]) =>
          a.every((x, at) => x <= (b[at] as number));
        const isBetter = (a: readonly number[], b: readonly number[]) => a.some((x, at) => x < (b[at] as number));
        for (let i = 0; i < Math.min(ranked.length, 60); i += 1) {
          const mine = scores[i] as number[];
          const beats = (other: readonly number[]) => atLeastAsGood(other, mine) && isBetter(other, mine);
          const by = ranked[i]?.beatenBy ?? null;
          expect(by !== null).toBe(scores.some(beats));
          if (by === null) continue;
          beaten += 1;
          expect(beats(scores[ranked.findIndex(({ found }) => found === by)] as number[])).toBe(true);
        }
      }),
      { numRuns: 60 },
    );
    expect(beaten).toBeGreaterThan(100);
  }, 300_000);
});

/** Floors that fall and what hangs overhead, counted in sixteenths of an inch. */
const around = fc.record({
  fallAlong: fc.integer({ min: -24, max: 24 }),
  readFrom: orNone(fc.integer({ min: 0, max: 160 * 16 })),
  obstacles: fc.array(
    fc.record({
      near: fc.integer({ min: 0, max: 100 * 16 }),
      depth: fc.integer({ min: 4 * 16, max: 50 * 16 }),
      height: fc.integer({ min: 82 * 16, max: 130 * 16 }),
      heightFar: fc.option(fc.integer({ min: 82 * 16, max: 130 * 16 })),
      clearance: fc.option(fc.integer({ min: 74 * 16, max: 82 * 16 })),
    }),
    { maxLength: 2 },
  ),
});

function withAround(job: JobText, a: typeof around extends fc.Arbitrary<infer T> ? T : never): JobText {
  const text = (steps: number) => `${steps / 16} in`;
  const [stair] = job.stairs;
  if (stair === undefined) throw new Error('no stair');
  const survey = {
    ...stair.survey,
    fallAlong: text(a.fallAlong),
    fallAlongOver: '48 in',
    ...(a.readFrom === null ? {} : { readingFromHeader: text(a.readFrom) }),
    obstacles: a.obstacles.map(({ near, depth, height, heightFar, clearance }) => ({
      near: text(near),
      far: text(near + depth),
      height: text(height),
      ...(heightFar === null ? {} : { heightFar: text(heightFar) }),
      ...(clearance === null ? {} : { clearance: text(clearance) }),
    })),
  };
  return { ...job, stairs: [{ ...stair, survey }] };
}

describe('under things overhead and on floors that fall', () => {
  it('finds what planning one by one finds', () => {
    const seen = { legal: 0, not: 0 };
    fc.assert(
      fc.property(survey, around, fc.integer({ min: 0, max: 15 }), (s, a, offset) => {
        const house = houseOf(s);
        const job = withAround(jobOf(s, house), a);
        const search = askSearch(job, 0, BOOK, { ...wishesOf(house), runAvailable: null, headroom: null });
        if (!search.ok) return;
        const result = finish(searchLayouts(search.value));
        const ids = new Set(result.found.map(({ id }) => id));
        for (const top of TOPS) {
          for (let risers = Math.max(2, s.risers - 1); risers <= s.risers + 1; risers += 1) {
            for (let steps = result.frame.leastSteps + offset; steps <= result.frame.mostSteps; steps += 16) {
              if (risers > result.frame.most) continue;
              const one = { top, risers, steps, depth: exactNm(house.depths.at(-1) as number) };
              const plan = planStair(changeStair(job, 0, changesFor(job, 0, search.value.job, one)), 0, BOOK);
              const isLegalPlan =
                plan.ok &&
                plan.value.findings.every(({ kind, status }) => kind !== 'rule' || status !== 'breaks') &&
                plan.value.layout.stringer.boardLength + 2 * plan.value.layout.stringer.trim <=
                  house.longest / MM + 1e-6;
              // A shallower board may do where the deepest does not: what is found is planned elsewhere.
              if (isLegalPlan && !ids.has(`${top} ${risers} ${steps}`))
                throw new Error(`${top} ${risers} ${steps} is missed`);
              if (house.depths.length === 1 && !isLegalPlan && ids.has(`${top} ${risers} ${steps}`)) {
                throw new Error(`${top} ${risers} ${steps} is shown, and breaks a rule`);
              }
              if (isLegalPlan) seen.legal += 1;
              else seen.not += 1;
            }
          }
        }
      }),
      { numRuns: 60 },
    );
    expect(seen.legal).toBeGreaterThan(100);
    expect(seen.not).toBeGreaterThan(1000);
  }, 300_000);
});

describe('where nothing is found', () => {
  it('the bounds that conflict are the fewest, and what each would have to become was tried', () => {
    let [proofs, tried, openings] = [0, 0, 0];
    fc.assert(
      fc.property(survey, (s) => {
        // A short opening under a floor that is there: mostly nothing fits.
        const { job, search } = asked({
          ...s,
          floorDepth: s.floorDepth ?? 200,
          openingMore: (s.openingMore ?? 0) - 640,
        });
        const { found } = finish(searchLayouts(search));
        const conflict = finish(findConflict(search));
        expect(conflict === null).toBe(found.length > 0);
        if (conflict === null || conflict.bounds.length === 0) return;
        proofs += 1;
        const { sifter, bounds } = conflict;
        const { frame } = sifter;
        // Of the whole frame, coarsely: each breaks one of the conflict, and without any one of them some break none.
        const free = new Set<number>();
        for (const top of TOPS) {
          for (let risers = frame.fewest; risers <= frame.most; risers += 1) {
            for (let steps = frame.leastSteps; steps <= frame.mostSteps; steps += 1) {
              for (let depth = 0; depth < sifter.depthCount; depth += 1) {
                const broken = sifter.broken(top, risers, steps, depth);
                if (broken === null) continue;
                const ofConflict = bounds.filter((at) => broken.includes(at));
                if (ofConflict.length === 0) throw new Error(`${top} ${risers} ${steps} breaks none of the conflict`);
                if (ofConflict.length === 1) free.add(ofConflict[0] as number);
              }
            }
          }
        }
        expect([...free].sort((a, b) => a - b)).toEqual([...bounds]);
        for (const way of conflict.ways) {
          const becoming = tryWay({ job, index: 0, book: BOOK, search }, conflict, way);
          if (becoming === null) throw new Error(`${JSON.stringify(way.broken)} was tried in vain`);
          tried += 1;
          const relaxed = relax({ job, index: 0, search }, becoming.changes);
          const again = askSearch(relaxed.job, 0, BOOK, relaxed.wishes);
          if (!again.ok) throw new Error(JSON.stringify(again.problems));
          const ids = finish(searchLayouts(again.value)).found.map(({ id }) => id);
          expect(ids).toContain(`${way.candidate.top} ${way.candidate.risers} ${way.candidate.steps}`);
        }
        const opening = tryOpening({ job, index: 0, book: BOOK, search }, conflict);
        expect(opening === null).toBe(conflict.opening === null);
        if (opening !== null) openings += 1;
      }),
      { numRuns: 40 },
    );
    expect(proofs).toBeGreaterThan(10);
    expect(tried).toBeGreaterThan(20);
    expect(openings).toBeGreaterThan(0);
  }, 300_000);
});
