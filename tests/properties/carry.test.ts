import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { screenCarry } from '../../src/core/carry/screenCarry';
import type { CarryText } from '../../src/core/job/jobText';
import { anyStair, planOrSkip } from '../fixtures/anyStair';
import { BOOK, benchPlan, jobWith, onBench, resultOf } from '../unit/carry/benchStair';

const anyWood = fc.constantFrom<readonly [string, string]>(
  ['douglas-fir-larch', 'no-1'],
  ['douglas-fir-larch', 'no-2'],
  ['hem-fir', 'no-1'],
  ['hem-fir', 'no-2'],
  ['spruce-pine-fir', 'no-2'],
  ['southern-pine', 'no-1'],
  ['southern-pine', 'no-2'],
);

const anyCarry: fc.Arbitrary<CarryText> = fc
  .record({
    wood: anyWood,
    service: fc.constantFrom('dry' as const, 'wet' as const),
    treatment: fc.constantFrom('none' as const, 'incised' as const, undefined),
    duration: fc.constantFrom('permanent' as const, 'occupancy' as const, 'snow' as const, undefined),
    live: fc.integer({ min: 20, max: 150 }).map((psf) => `${psf} psf`),
    point: fc.integer({ min: 100, max: 1000 }).map((pounds) => `${pounds} lbf`),
    dead: fc.integer({ min: 0, max: 40 }).map((psf) => `${psf} psf`),
  })
  .map(({ wood: [species, grade], ...rest }) => ({ species, grade, ...rest }));

const anyBench = fc.record({
  span: fc.double({ min: 24, max: 200, noNaN: true }),
  throat: fc.double({ min: 2, max: 8, noNaN: true }),
  spacing: fc.double({ min: 8, max: 40, noNaN: true }),
  stringers: fc.constantFrom(2, 3, 4),
});

/** How much of what the data allows is used, by check; the foot is not moved by span or throat alone. */
function used(carry: ReturnType<typeof onBench>): Map<string, number> {
  return new Map(
    carry.answers.flatMap(({ check, is, may }) => (is === null || may === null ? [] : [[check, is / may] as const])),
  );
}

function neverWorse(better: ReturnType<typeof onBench>, worse: ReturnType<typeof onBench>): void {
  const [less, more] = [used(better), used(worse)];
  expect(less.size).toBe(6);
  for (const [check, ratio] of less) expect(ratio, check).toBeLessThanOrEqual((more.get(check) ?? 0) * (1 + 1e-9));
}

describe('what a stringer carries', () => {
  test('a deeper throat is never worse', () => {
    fc.assert(
      fc.property(anyCarry, anyBench, fc.double({ min: 0, max: 3, noNaN: true }), (told, bench, more) => {
        neverWorse(onBench(told, { ...bench, throat: bench.throat + more }), onBench(told, bench));
      }),
    );
  });

  test('a longer span is never better', () => {
    fc.assert(
      fc.property(anyCarry, anyBench, fc.double({ min: 0, max: 60, noNaN: true }), (told, bench, more) => {
        neverWorse(onBench(told, bench), onBench(told, { ...bench, span: bench.span + more }));
      }),
    );
  });

  test('a wider spacing is never better', () => {
    fc.assert(
      fc.property(anyCarry, anyBench, fc.double({ min: 0, max: 20, noNaN: true }), (told, bench, more) => {
        neverWorse(onBench(told, bench), onBench(told, { ...bench, spacing: bench.spacing + more }));
      }),
    );
  });

  test('wet is never better than dry, nor incised than plain', () => {
    fc.assert(
      fc.property(anyCarry, anyBench, (told, bench) => {
        neverWorse(onBench({ ...told, service: 'dry' }, bench), onBench({ ...told, service: 'wet' }, bench));
        neverWorse(onBench({ ...told, treatment: 'none' }, bench), onBench({ ...told, treatment: 'incised' }, bench));
      }),
    );
  });

  test('more load is never better', () => {
    fc.assert(
      fc.property(anyCarry, anyBench, fc.constantFrom('live', 'point', 'dead'), (told, bench, which) => {
        const heavier = { ...told, [which]: which === 'point' ? '1200 lbf' : '200 psf' };
        neverWorse(onBench(told, bench), onBench(heavier, bench));
      }),
    );
  });

  test('any stair with any wood gives numbers, or says why not', () => {
    const anyTold = fc.oneof(
      anyCarry,
      fc.record({ species: fc.string({ maxLength: 20 }), grade: fc.string({ maxLength: 8 }) }),
      fc.constant({}),
    );
    fc.assert(
      fc.property(
        anyStair,
        anyTold,
        fc.constantFrom('free-standing', 'along-walls', undefined),
        (job, told, support) => {
          const carry = screenCarry(planOrSkip(jobWith({ ...told, support }, job)), BOOK);
          for (const { result, terms } of carry.steps) {
            for (const value of [result, ...terms.map((term) => term.value)]) expect(Number.isFinite(value)).toBe(true);
            expect(result).toBeGreaterThanOrEqual(0);
          }
          for (const { answer, gap, is } of carry.answers) {
            expect(gap === null).toBe(answer !== 'not-in-data');
            if (answer !== 'not-in-data') expect(is).toBeGreaterThan(0);
          }
        },
      ),
    );
  });
});

/**
 * The same stringer a second time, by other means: the beam lies on its slope, the load is a row of small weights
 * whose part square to it bends it, moments are summed weight by weight, and the sag is the sum of moment times unit
 * moment over stiffness (virtual work, by Simpson's rule). None of the closed forms of the program is in it.
 */
describe('a beam on a slope, cut into pieces', () => {
  const PIECES = 400;

  function sagOf(moment: (s: number) => number, length: number, stiffness: number): number {
    const unit = (s: number) => Math.min(s, length - s) / 2;
    const step = length / PIECES;
    const sum = Array.from({ length: PIECES + 1 }, (_, i) => {
      const weight = i === 0 || i === PIECES ? 1 : i % 2 === 1 ? 4 : 2;
      return weight * moment(i * step) * unit(i * step);
    }).reduce((total, part) => total + part, 0);
    return (sum * step) / 3 / stiffness;
  }

  /** Weights, each with its place along the slope, as a moment at any place; only their part square to the slope bends. */
  function momentOf(weights: readonly (readonly [at: number, weight: number])[], length: number, cos: number) {
    const atFoot = weights.reduce((sum, [at, weight]) => sum + weight * cos * (1 - at / length), 0);
    return (s: number) =>
      atFoot * s - weights.reduce((sum, [at, weight]) => sum + (at < s ? weight * cos * (s - at) : 0), 0);
  }

  test('bends and sags as the closed forms say', () => {
    fc.assert(
      fc.property(anyCarry, anyBench, (told, bench) => {
        const carry = onBench(told, bench);
        const { cos } = benchPlan(told, bench).layout.flight;
        const length = (bench.span * 25.4) / cos;
        const share = (name: 'liveLine' | 'deadLine') => (resultOf(carry, name) * bench.span * 25.4) / PIECES;
        const row = (weight: number) =>
          Array.from({ length: PIECES }, (_, i) => [((i + 0.5) * length) / PIECES, weight] as const);
        const dead = row(share('deadLine'));
        const all = momentOf(row(share('liveLine') + share('deadLine')), length, cos);
        const point = carry.loads.point.value;
        const one = momentOf([...dead, [length / 2, point] as const], length, cos);
        const thickness = 38.1;
        const depth = bench.throat * 25.4;
        const stress = (moment: number) => (moment * depth) / 2 / ((thickness * depth ** 3) / 12);
        expect(Math.max(stress(all(length / 2)), stress(one(length / 2))) / resultOf(carry, 'bendingIs')).toBeCloseTo(
          1,
          4,
        );
        const bend = (resultOf(carry, 'stiffness') * thickness * depth ** 3) / 12;
        const live = momentOf(row(share('liveLine')), length, cos);
        expect(sagOf(live, length, bend) / resultOf(carry, 'sagLiveIs')).toBeCloseTo(1, 4);
        expect(sagOf(all, length, bend) / resultOf(carry, 'sagTotalIs')).toBeCloseTo(1, 4);
        const alone = momentOf([[length / 2, point]], length, cos);
        expect(sagOf(alone, length, bend) / resultOf(carry, 'sagPointIs')).toBeCloseTo(1, 4);
        // The weights' reactions, straight down.
        const half = (weights: readonly (readonly [number, number])[]) =>
          weights.reduce((sum, [, weight]) => sum + weight, 0) / 2;
        const most = Math.max(half(row(share('liveLine') + share('deadLine'))), half(dead) + point);
        expect((1.5 * most) / (thickness * depth) / resultOf(carry, 'shearIs')).toBeCloseTo(1, 9);
      }),
      { numRuns: 30 },
    );
  });
});
