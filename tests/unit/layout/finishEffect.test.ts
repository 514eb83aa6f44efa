import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type FinishSurface,
  finishEffect,
  finishWindow,
  likelyFinishes,
  type RiserLimits,
} from '../../../src/core/layout/finishEffect';
import type { StairLayout } from '../../../src/core/layout/layoutStair';
import { anyStair, planOrSkip } from '../../fixtures/anyStair';
import { type Changes, changed, inInches, LOFT, PAD, planOf, SLAB } from '../../fixtures/stairs';

const IN = 25.4;
/** Greatest riser and greatest difference: IRC 2021 R311.7.5.1. */
const RULES: RiserLimits = { riserMax: 7.75 * IN, variation: 0.375 * IN };
const NONE: RiserLimits = { riserMax: null, variation: null };
const SURFACES: readonly FinishSurface[] = ['lower', 'upper', 'tread'];
const LEVEL: Changes = { stringer: { top: 'level-with-floor', hanger: undefined } };
const FLOOR_FIRST: Changes = { survey: { lowerLaid: 'before-stairs' } };

const layoutOf = (changes: Changes = {}) => planOf(changed(LOFT, changes)).layout;

/**
 * The stair built on paper from the cut piece alone: it stands on what lies at its foot, its level cuts
 * are as high over that as they were sawn, treads of the new thickness lie on them, floors where they are.
 */
function risersBuilt(layout: StairLayout, amounts: Partial<Record<FinishSurface, number>>): number[] {
  const { flight, stringer, job } = layout;
  const lower = amounts.lower ?? flight.lowerToAdd;
  const upper = amounts.upper ?? flight.upperToAdd;
  const tread = amounts.tread ?? flight.treadThickness;
  const today = 0;
  const upperToday = flight.totalRise + flight.lowerToAdd - flight.upperToAdd;
  const seat = job.survey.lowerLaid === 'before-stairs' ? today + lower : today;
  const cuts = Array.from(
    { length: flight.treads },
    // On a sloping floor the toe stands higher or lower than the floor at the landing line.
    (_, i) =>
      seat + (stringer.heel.toeY - flight.seatHeight) + stringer.heel.firstRiserCut + i * flight.unitRise + tread,
  );
  const tops = [today + lower, ...cuts, upperToday + upper];
  return tops.slice(1).map((top, i) => top - (tops[i] as number));
}

/** What riser 1 gains at the lower edge of a floor that falls across: half of its fall between skirts. */
function asideOf({ flight, width }: StairLayout): number {
  return width === null ? 0 : (Math.abs(flight.slopeAcross) * width.betweenSkirts) / 2;
}

describe('the loft stair of our own', () => {
  test.each<[FinishSurface, number, number, number]>([
    ['lower', 0.625, 7.540179, 7.540179],
    ['lower', 0, 8.165179, 7.540179],
    ['lower', 1, 7.165179, 7.540179],
    ['upper', 0, 7.540179, 6.790179],
    ['upper', 1, 7.540179, 7.790179],
    ['tread', 1.3125, 7.790179, 7.290179],
  ])('%s of %d in: riser 1 is %d, the last %d', (surface, amount, first, last) => {
    const effect = finishEffect(layoutOf(), { [surface]: amount * IN }, RULES);
    expect(inInches(effect.firstRiser)).toBeCloseTo(first, 6);
    expect(inInches(effect.lastRiser)).toBeCloseTo(last, 6);
    expect(inInches(effect.otherRisers)).toBeCloseTo(7.540179, 6);
  });

  test('a floor before the stair carries it: the last riser pays', () => {
    const effect = finishEffect(layoutOf(FLOOR_FIRST), { lower: 0.875 * IN }, RULES);
    expect(effect.firstRiser).toBeCloseTo(effect.otherRisers, 9);
    expect(inInches(effect.lastRiser)).toBeCloseTo(7.540179 - 0.25, 6);
  });

  test('level with the floor, the head makes a lip and not a riser', () => {
    const effect = finishEffect(layoutOf(LEVEL), { upper: 1 * IN }, RULES);
    expect(inInches(effect.lip)).toBeCloseTo(0.25, 9);
    expect(effect.lastRiser).toBe(effect.otherRisers);
    expect([effect.keepsRiserMax, effect.keepsVariation, effect.keeps]).toEqual([true, true, false]);
    expect(finishEffect(layoutOf(LEVEL), { upper: 1 * IN }, NONE).keeps).toBe(false);
    expect(finishEffect(layoutOf(LEVEL), { lower: 0.5 * IN }, RULES).keeps).toBe(true);
  });

  test('of two risers neither is as it was, so only they are compared', () => {
    const low: Changes = { survey: { rise: '15 in' }, steps: { risers: 2 }, stringer: { kicker: undefined } };
    const both = finishEffect(layoutOf(low), { lower: 0.875 * IN, upper: 0.5 * IN }, RULES);
    expect(inInches(both.firstRiser)).toBeCloseTo(15.125 / 2 - 0.25, 9);
    expect(inInches(both.lastRiser)).toBeCloseTo(15.125 / 2 - 0.25, 9);
    expect(both.spread).toBeCloseTo(0, 9);
  });

  test('two wrongs can be right together', () => {
    const layout = layoutOf();
    expect(finishEffect(layout, { tread: 1.3125 * IN }, RULES).keeps).toBe(false);
    const both = finishEffect(layout, { tread: 1.3125 * IN, lower: 0.875 * IN, upper: 1 * IN }, RULES);
    expect([both.firstRiser, both.lastRiser].map((riser) => riser / IN)).toEqual([
      expect.closeTo(7.540179, 6),
      expect.closeTo(7.540179, 6),
    ]);
    expect(both.keeps).toBe(true);
  });

  test('each limit answers for itself, and one that is not there does not', () => {
    const layout = layoutOf();
    const bare = finishEffect(layout, { lower: 0.3 * IN }, RULES);
    expect([bare.keepsRiserMax, bare.keepsVariation, bare.keeps]).toEqual([false, true, false]);
    const thick = finishEffect(layout, { lower: 1.1 * IN }, RULES);
    expect([thick.keepsRiserMax, thick.keepsVariation, thick.keeps]).toEqual([true, false, false]);
    expect(finishEffect(layout, { lower: 1.1 * IN }, { ...RULES, variation: null }).keeps).toBe(true);
    expect(finishEffect(layout, { lower: 1.1 * IN }, { ...RULES, riserMax: null }).keeps).toBe(false);
    const unjudged = finishEffect(layout, { lower: 1.1 * IN }, NONE);
    expect([unjudged.keepsRiserMax, unjudged.keepsVariation, unjudged.keeps]).toEqual([null, null, null]);
  });
});

describe('the window', () => {
  // Worked example of our own: lower 0.415 to 1.000 in, upper 0.375 to 0.960 in.
  test.each<[FinishSurface, number, number]>([
    ['lower', 0.625 - (7.75 - 105.5625 / 14), 1],
    ['upper', 0.375, 0.75 + (7.75 - 105.5625 / 14)],
    ['tread', 1.0625 - 0.1875, 1.0625 + 0.1875],
  ])('%s: from %d to %d in', (surface, low, high) => {
    const window = finishWindow(layoutOf(), surface, RULES);
    expect(inInches(window?.low ?? null)).toBeCloseTo(low, 9);
    expect(inInches(window?.high ?? null)).toBeCloseTo(high, 9);
  });

  test('a side that no limit closes is open', () => {
    const layout = layoutOf();
    expect(finishWindow(layout, 'lower', NONE)).toEqual({ low: null, high: null });
    const onlyTallest = finishWindow(layout, 'lower', { ...RULES, variation: null });
    expect(onlyTallest?.high).toBeNull();
    expect(inInches(onlyTallest?.low ?? null)).toBeCloseTo(0.415179, 6);
    expect(finishWindow(layout, 'upper', { ...RULES, variation: null })?.low).toBeNull();
  });

  test('a tread moves one riser up and one down, so a greatest riser closes both sides', () => {
    const window = finishWindow(layoutOf(), 'tread', { ...RULES, variation: null });
    const room = 7.75 - 105.5625 / 14;
    expect(inInches(window?.low ?? null)).toBeCloseTo(1.0625 - room, 9);
    expect(inInches(window?.high ?? null)).toBeCloseTo(1.0625 + room, 9);
  });

  test('risers that are too high as they are have none', () => {
    expect(finishWindow(layoutOf({ steps: { risers: 13 } }), 'lower', RULES)).toBeNull();
  });

  test('a riser exactly on its limit leaves one side only', () => {
    const layout = layoutOf({ survey: { rise: '108 3/8 in' } });
    expect(inInches(layout.flight.unitRise)).toBeCloseTo(7.75, 12);
    const window = finishWindow(layout, 'lower', RULES);
    expect([window?.low, window?.high].map((end) => (end as number) / IN)).toEqual([
      expect.closeTo(0.625, 9),
      expect.closeTo(1, 9),
    ]);
  });

  test('level with the floor, the head has no play at all, the foot has', () => {
    const layout = layoutOf(LEVEL);
    const { upperToAdd } = layout.flight;
    expect(finishWindow(layout, 'upper', RULES)).toEqual({ low: upperToAdd, high: upperToAdd });
    expect(finishWindow(layout, 'tread', RULES)?.low).toBe(layout.flight.treadThickness);
    expect(inInches(finishWindow(layout, 'lower', RULES)?.high ?? null)).toBeCloseTo(1, 9);
    const first = layoutOf({ ...LEVEL, ...FLOOR_FIRST });
    expect(inInches(finishWindow(first, 'lower', RULES)?.high ?? null)).toBeCloseTo(0.625, 9);
  });

  test('a floor before the stair turns the window round', () => {
    const window = finishWindow(layoutOf(FLOOR_FIRST), 'lower', RULES);
    expect(inInches(window?.low ?? null)).toBeCloseTo(0.625 - (7.75 - 105.5625 / 14), 9);
    expect(inInches(window?.high ?? null)).toBeCloseTo(1, 9);
  });
});

test('likely thicknesses, on a floor as such and on the treads on top of them', () => {
  const inches = (surface: FinishSurface) =>
    likelyFinishes(layoutOf(), surface, RULES).map(({ amount }) => Math.round((amount / IN) * 1e6) / 1e6);
  expect(inches('upper')).toEqual([0, 0.25, 0.375, 0.5, 0.75, 1]);
  expect(inches('tread')).toEqual([1.0625, 1.3125, 1.4375, 1.5625, 1.8125, 2.0625]);
  const metric = likelyFinishes(planOf(SLAB).layout, 'lower', NONE);
  expect(metric.map(({ thickness }) => thickness)).toEqual([0, 6, 9, 12, 18, 25]);
  expect(metric[2]?.effect.firstRiser).toBeCloseTo(193.928571 + 15 - 9, 5);
  // 0, 1/4 and 1 in leave the window of 0.375 to 0.960 in for the upper floor.
  expect(likelyFinishes(layoutOf(), 'upper', RULES).map(({ effect }) => effect.keeps)).toEqual([
    false,
    false,
    true,
    true,
    true,
    false,
  ]);
});

const amount = fc.double({ min: -20, max: 60, noNaN: true });

test('for any stair, the risers are those of the stair built from the cut piece', () => {
  fc.assert(
    fc.property(anyStair, amount, amount, fc.double({ min: 10, max: 70, noNaN: true }), (job, lower, upper, tread) => {
      const { layout } = planOrSkip(job);
      const effect = finishEffect(layout, { lower, upper, tread }, NONE);
      const built = risersBuilt(layout, { lower, upper, tread });
      const aside = asideOf(layout);
      if (!layout.stringer.top.hung) expect(built.pop()).toBeCloseTo(effect.lip, 7);
      expect(built[0]).toBeCloseTo(effect.firstRiser, 7);
      expect(built.at(-1)).toBeCloseTo(effect.lastRiser, 7);
      for (const riser of built.slice(1, -1)) expect(riser).toBeCloseTo(effect.otherRisers, 7);
      const all = [...built, (built[0] as number) + aside, (built[0] as number) - aside];
      expect(effect.tallest).toBeCloseTo(Math.max(...all), 7);
      expect(effect.spread).toBeCloseTo(Math.max(...all) - Math.min(...all), 7);
    }),
    { numRuns: 200 },
  );
});

test('for any stair, just inside the window every riser built keeps the limits, just outside one does not', () => {
  const limits = fc.record({
    riserMax: fc.option(fc.integer({ min: 170, max: 230 }), { nil: null }),
    variation: fc.option(fc.integer({ min: 0, max: 15 }), { nil: null }),
  });
  const keeps = (layout: StairLayout, surface: FinishSurface, value: number, { riserMax, variation }: RiserLimits) => {
    const built = risersBuilt(layout, { [surface]: value });
    const lip = layout.stringer.top.hung ? 0 : (built.pop() as number);
    const first = built[0] as number;
    built.push(first + asideOf(layout), first - asideOf(layout));
    const [most, least] = [Math.max(...built), Math.min(...built)];
    return (
      Math.abs(lip) < 1e-6 &&
      (riserMax === null || most <= riserMax + 1e-6) &&
      (variation === null || most - least <= variation + 1e-6)
    );
  };
  fc.assert(
    fc.property(anyStair, fc.constantFrom(...SURFACES), limits, (job, surface, asked) => {
      const { layout } = planOrSkip(job);
      const { flight } = layout;
      const asIs = { lower: flight.lowerToAdd, upper: flight.upperToAdd, tread: flight.treadThickness }[surface];
      const window = finishWindow(layout, surface, asked);
      if (window === null) {
        expect(keeps(layout, surface, asIs, asked)).toBe(false);
        return;
      }
      for (const [end, out] of [
        [window.low, -1],
        [window.high, 1],
      ] as const) {
        expect(keeps(layout, surface, end ?? asIs + out * 500, asked)).toBe(true);
        expect(finishEffect(layout, { [surface]: end ?? asIs + out * 500 }, asked).keeps).not.toBe(false);
        if (end !== null) expect(keeps(layout, surface, end + out * 0.01, asked)).toBe(false);
        if (end !== null) expect(finishEffect(layout, { [surface]: end + out * 0.01 }, asked).keeps).toBe(false);
      }
    }),
    { numRuns: 300 },
  );
});

describe('on a floor that falls across', () => {
  // Worked by hand: R = 52.703125 / 7 = 7.529018 in, riser 1 is that ± 3/32 in at the edges.
  const pad = () => planOf(PAD).layout;

  test('the spread is there without any change', () => {
    const effect = finishEffect(pad(), {}, RULES);
    expect(inInches(effect.tallest)).toBeCloseTo(7.529018 + 3 / 32, 5);
    expect(inInches(effect.spread)).toBeCloseTo(3 / 16, 9);
  });

  test('and leaves so much less of the window', () => {
    const window = finishWindow(pad(), 'lower', RULES);
    expect(inInches(window?.low ?? null)).toBeCloseTo(-(7.75 - 7.529018 - 3 / 32), 5);
    expect(inInches(window?.high ?? null)).toBeCloseTo(3 / 8 - 3 / 32, 9);
  });

  test('a fall that uses up what risers may vary leaves none', () => {
    const steep = planOf(changed(PAD, { survey: { fallAcross: '1/2 in' } })).layout;
    expect(finishWindow(steep, 'lower', RULES)).toBeNull();
    expect(finishWindow(steep, 'upper', RULES)).toBeNull();
  });

  test('riser 1 over its greatest at one edge can be cured by a thicker floor, and by nothing thinner', () => {
    const layout = planOf(changed(PAD, { survey: { rise: '52 5/8 in' } })).layout;
    // R = 53.953125 / 7 = 7.707589, at the low edge 7.801339: from 0.051339 in on.
    const window = finishWindow(layout, 'lower', RULES);
    expect(inInches(window?.low ?? null)).toBeCloseTo(0.051339, 5);
    expect(inInches(window?.high ?? null)).toBeCloseTo(3 / 8 - 3 / 32, 9);
    expect(finishWindow(layout, 'upper', RULES)).toBeNull();
    // Thinner treads would lift the last riser over it first.
    expect(finishWindow(layout, 'tread', RULES)).toBeNull();
  });

  test('a top level with the floor, over its greatest at an edge, has none either', () => {
    const level = { survey: { rise: '53 5/8 in' }, stringer: { top: 'level-with-floor' } } as const;
    const layout = planOf(changed(PAD, { ...level, survey: { ...level.survey, readingFromHeader: undefined } })).layout;
    expect(finishWindow(layout, 'tread', { riserMax: 7.7 * IN, variation: null })).toBeNull();
  });
});
