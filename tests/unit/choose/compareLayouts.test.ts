import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Alternative, applyAlternative, compareLayouts } from '../../../src/core/choose/compareLayouts';
import type { JobText } from '../../../src/core/job/jobText';
import { planStair } from '../../../src/core/plan/planStair';
import { anyStair } from '../../fixtures/anyStair';
import { BOOK, bare, type Changes, changed, inInches, LOFT, planOf, SLAB } from '../../fixtures/stairs';

const around = (job: JobText) => compareLayouts(job, 0, BOOK);

function pick(list: readonly Alternative[], risers: number, runMm: number): Alternative {
  const found = list.find((one) => one.risers === risers && Math.abs(one.run - runMm) < 1e-9);
  if (found === undefined) throw new Error(`no ${risers} at ${runMm}`);
  return found;
}

const figures = (job: JobText, risers: number, inches: number) => {
  const { outcome } = pick(around(job), risers, inches * 25.4);
  if (outcome === null) throw new Error('does not lay out');
  return outcome;
};

describe('the neighbours of the loft stair, a worked example of our own', () => {
  const list = around(LOFT);

  test('five riser counts, seven runs, in order, each once', () => {
    expect([...new Set(list.map(({ risers }) => risers))]).toEqual([12, 13, 14, 15, 16]);
    expect(list.slice(0, 7).map(({ run }) => Math.round((run / 25.4) * 1e9) / 1e9)).toEqual([
      9, 9.5, 9.75, 10, 10.25, 10.5, 11,
    ]);
    expect(list).toHaveLength(35);
    expect(new Set(list.map(({ id }) => id)).size).toBe(35);
    expect(list.filter(({ chosen }) => chosen).map(({ risers, changes }) => [risers, changes])).toEqual([[14, []]]);
  });

  // Opening for 80 in of headroom, summed by hand from (80 + 13 1/4) G/R + 1 1/8 + 3/4 + 1/2, R = 105 9/16 / N.
  test.each([
    [14, 10, 7.540179, 25.080357, 126.0458],
    [14, 10.25, 7.540179, 25.330357, 129.1377],
    [15, 10, 7.0375, 24.075, 134.8794],
    [13, 10, 8.120192, 26.240385, 117.2123],
    [16, 10, 6.597656, 23.195313, 143.7131],
  ])('%d risers at %d: rise, two rises and a run, opening', (risers, run, rise, proportion, opening) => {
    const { figures: found } = figures(LOFT, risers, run);
    expect(inInches(found.unitRise)).toBeCloseTo(rise, 5);
    expect(inInches(found.twoRisePlusRun)).toBeCloseTo(proportion, 5);
    expect(inInches(found.openingNeeded)).toBeCloseTo(opening, 3);
    expect(inInches(found.totalRun)).toBeCloseTo((risers - 1) * run, 9);
    expect(inInches(found.headerFace)).toBeCloseTo((risers - 1) * run + 0.75, 9);
  });

  test('the rules that each breaks are named', () => {
    expect(figures(LOFT, 14, 10).breaksRules).toEqual(['headroom.min']);
    expect(figures(LOFT, 13, 10).breaksRules).toEqual(['riser.max']);
    expect(figures(LOFT, 13, 9).breaksRules).toEqual(['riser.max', 'tread.min']);
    expect(figures(LOFT, 15, 10).breaksRules).toEqual(['headroom.min']);
    expect(figures(LOFT, 12, 11).breaksBuild).toEqual(['headerContact']);
  });

  test('findings are counted by kind and status', () => {
    const { counts } = figures(LOFT, 14, 10);
    const { findings } = planOf(LOFT);
    const sum = Object.values(counts).flatMap((statuses) => Object.values(statuses));
    expect(sum.reduce((a, b) => a + b, 0)).toBe(findings.length);
    expect(counts.rule.breaks).toBe(1);
    expect(counts.taste.breaks + counts.taste.meets).toBe(3);
  });

  test('differences are taken from the chosen one', () => {
    const { differences } = figures(LOFT, 15, 10);
    expect(inInches(differences?.headerFace ?? null)).toBeCloseTo(10, 9);
    expect(inInches(differences?.unitRise ?? null)).toBeCloseTo(105.5625 / 15 - 105.5625 / 14, 9);
    expect(differences?.risers).toBe(1);
    const own = figures(LOFT, 14, 10).differences;
    expect(Object.values(own ?? {}).every((value) => value === 0)).toBe(true);
  });

  test('what is not known has no difference', () => {
    const without = changed(LOFT, { survey: { openingFraming: undefined } });
    expect(figures(without, 15, 10).differences?.headroom).toBeNull();
  });
});

describe('which neighbours there are', () => {
  test('metric steps', () => {
    const runs = around(SLAB)
      .slice(0, 8)
      .map(({ run }) => run);
    // The least run of the rule pack, 10 in (IRC 2021 R311.7.5.2), stands between its neighbours.
    expect(runs).toEqual([220, 235, 240, 245, 250, 254, 255, 270]);
  });

  test('the least run that the rules allow is always among them', () => {
    const steep = changed(LOFT, { steps: { run: '12 in' } });
    expect(pick(around(steep), 14, 254).changes).toEqual([{ key: 'steps.run', value: '10 in' }]);
    const nowhere = changed(LOFT, { rules: { pack: 'elsewhere' }, steps: { run: '12 in' } });
    expect(around(nowhere).some(({ run }) => run === 254)).toBe(false);
  });

  test('two risers are the fewest, and a run of nothing is none', () => {
    const low = changed(LOFT, { survey: { rise: '15 in' }, steps: { risers: 2, run: '3/4 in', nosing: '0 in' } });
    const list = around(low);
    expect([...new Set(list.map(({ risers }) => risers))]).toEqual([2, 3, 4]);
    expect(list.every(({ run }) => run > 0)).toBe(true);
  });

  test('the most is two hundred', () => {
    const tall = changed(LOFT, { survey: { rise: '1490 in' }, steps: { risers: 199 } });
    expect([...new Set(around(tall).map(({ risers }) => risers))]).toEqual([197, 198, 199, 200]);
  });

  test('one that leaves no geometry stands there with its reason', () => {
    const tight = changed(LOFT, { stringer: { stockDepth: '6 1/4 in', kicker: undefined } });
    const refused = around(tight).filter(({ outcome }) => outcome === null);
    expect(refused.length).toBeGreaterThan(0);
    for (const { problems } of refused) expect(problems.length).toBeGreaterThan(0);
    expect(refused.flatMap(({ problems }) => problems.map(({ code }) => code))).toContain('throat.none');
  });

  test.each<[string, Changes]>([
    ['typed', { stringer: { stockDepth: '6 in', kicker: undefined } }],
    ['left to the program', { steps: { risers: 'auto' }, stringer: { stockDepth: '6 in', kicker: undefined } }],
  ])('a chosen one that does not lay out, its count %s, still has neighbours', (_, changes) => {
    const list = around(changed(LOFT, changes));
    expect(list.find(({ chosen }) => chosen)?.outcome).toBeNull();
    const laidOut = list.filter(({ outcome }) => outcome !== null);
    expect(laidOut.length).toBeGreaterThan(0);
    expect(laidOut.every(({ outcome }) => outcome?.differences === null)).toBe(true);
  });

  test.each<[string, Changes]>([
    ['a rise that is no length', { survey: { rise: 'tall' } }],
    ['a rule that is no length', { rules: { local: [{ field: 'riser.max', value: 'tall' }] } }],
    ['a count left to rules that set none', { rules: { pack: 'elsewhere' }, steps: { risers: 'auto' } }],
    ['a run left to rules that set none', { rules: { pack: 'elsewhere' }, steps: { run: undefined } }],
    ['no rise', { survey: { rise: '0 in', upperToAdd: '0 in' }, steps: { risers: 'auto' } }],
    ['a riser of nothing', { rules: { local: [{ field: 'riser.max', value: '0 in' }] }, steps: { risers: 'auto' } }],
  ])('%s: no neighbours', (_, changes) => {
    expect(around(changed(LOFT, changes))).toEqual([]);
  });

  test('a stair without a word about its rules is compared by the usual pack', () => {
    expect(around(bare('imperial', '105 in')).find(({ chosen }) => chosen)?.risers).toBe(14);
  });
});

describe('taking one up', () => {
  test('writes only what differs, and leaves the other stairs alone', () => {
    const two = { ...LOFT, stairs: [...LOFT.stairs, ...LOFT.stairs] };
    const next = applyAlternative(two, 1, pick(around(two), 15, 10.25 * 25.4));
    expect(next.stairs[0]).toBe(two.stairs[0]);
    expect(next.stairs[1]?.steps).toEqual({ ...LOFT.stairs[0]?.steps, risers: 15, run: '10 1/4 in' });
    expect(next.stairs[1]?.survey).toBe(two.stairs[1]?.survey);
  });

  test('the chosen one changes nothing at all', () => {
    expect(applyAlternative(LOFT, 0, pick(around(LOFT), 14, 254))).toBe(LOFT);
  });

  test('a count left to the program stays so where it is not what changes', () => {
    const auto = changed(LOFT, { steps: { risers: 'auto', run: undefined } });
    const next = applyAlternative(auto, 0, pick(around(auto), 14, 11 * 25.4));
    expect(next.stairs[0]?.steps).toMatchObject({ risers: 'auto', run: '11 in' });
  });

  test('gives the very figures that were in the table, for any stair', () => {
    fc.assert(
      fc.property(anyStair, (job) => {
        for (const one of around(job)) {
          const plan = planStair(applyAlternative(job, 0, one), 0, BOOK);
          expect(plan.ok).toBe(one.outcome !== null);
          if (!plan.ok) continue;
          expect(plan.value.layout.flight.risers).toBe(one.risers);
          expect(plan.value.layout.flight.run).toBeCloseTo(one.run, 9);
          expect(plan.value.layout.stringer.throat).toBe(one.outcome?.figures.throat);
        }
      }),
      { numRuns: 10 },
    );
  }, 30_000);
});
