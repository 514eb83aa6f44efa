import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nosingLineHeight } from '../../../src/core/layout/flight';
import { laySkirt, usualSkirt } from '../../../src/core/parts/skirt';
import { anyStair, planOrSkip } from '../../fixtures/anyStair';
import { inInches, LOFT, planOf } from '../../fixtures/stairs';

const IN = 25.4;

test('the loft stair of our own', () => {
  const { flight } = planOf(LOFT).layout;
  const skirt = laySkirt(flight, usualSkirt('imperial'));
  expect(inInches(skirt.topEdge)).toBeCloseTo(175.338, 3);
  expect(inInches(skirt.boardLength)).toBeCloseTo(178.649, 3);
  expect(inInches(skirt.widthNeeded)).toBeCloseTo(9.892, 3);
  // (10 / 7.540179) (5 1/2 − 7.540179 − 4) − 1 1/8
  expect(inInches(skirt.lowerCutX)).toBeCloseTo(-9.1357, 4);
  expect(inInches(skirt.upperCutX)).toBeCloseTo(130.8643, 4);
});

test('on a floor still to come its foot hangs lower by that floor, seen along the slope', () => {
  const { flight } = planOf(LOFT).layout;
  const usual = usualSkirt('imperial');
  const longer = laySkirt(flight, { ...usual, foot: -0.625 * IN });
  expect(inInches(longer.boardLength - laySkirt(flight, usual).boardLength)).toBeCloseTo(0.625 * flight.sin, 9);
});

test('usual figures in millimetres', () => {
  expect(usualSkirt('metric')).toEqual({ margin: 100, baseHeight: 140, foot: 0 });
});

describe('for any stair', () => {
  const choice = fc.record({
    margin: fc.integer({ min: 20, max: 150 }),
    baseHeight: fc.integer({ min: 60, max: 250 }),
    foot: fc.integer({ min: -30, max: 0 }),
  });

  test('both ends are at baseboard height over their floors, on the edge', () => {
    fc.assert(
      fc.property(anyStair, choice, (job, asked) => {
        const { flight } = planOrSkip(job).layout;
        const skirt = laySkirt(flight, asked);
        const edge = (x: number) => nosingLineHeight(flight, x) + asked.margin;
        expect(edge(skirt.lowerCutX)).toBeCloseTo(asked.baseHeight, 7);
        expect(edge(skirt.upperCutX)).toBeCloseTo(flight.totalRise + asked.baseHeight, 7);
        const across = skirt.upperCutX - skirt.lowerCutX;
        expect(Math.hypot(across, flight.totalRise)).toBeCloseTo(skirt.topEdge, 7);
      }),
    );
  });

  test('the width reaches every inner corner of tread and riser exactly, and the length every corner of the board', () => {
    fc.assert(
      fc.property(anyStair, choice, (job, asked) => {
        const { flight } = planOrSkip(job).layout;
        const skirt = laySkirt(flight, asked);
        const from = { x: skirt.lowerCutX, y: asked.baseHeight };
        // Distance in from the edge, and along it, measured with the edge's own direction.
        const dir = { x: (flight.risers * flight.run) / skirt.topEdge, y: flight.totalRise / skirt.topEdge };
        const into = (x: number, y: number) => (x - from.x) * dir.y - (y - from.y) * dir.x;
        const along = (x: number, y: number) => (x - from.x) * dir.x + (y - from.y) * dir.y;
        for (let i = 0; i < flight.risers; i += 1) {
          expect(into(i * flight.run, flight.finishedTops[i] as number)).toBeCloseTo(skirt.widthNeeded, 6);
        }
        const ends = [along(from.x, asked.foot), along(skirt.upperCutX, flight.totalRise + asked.baseHeight)];
        expect((ends[1] as number) - (ends[0] as number)).toBeCloseTo(skirt.boardLength, 6);
      }),
    );
  });
});
