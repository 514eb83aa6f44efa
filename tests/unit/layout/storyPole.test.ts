import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { laserTable, storyPole } from '../../../src/core/layout/storyPole';
import { anyStair, planOrSkip } from '../../fixtures/anyStair';
import { type Changes, changed, LOFT, planOf, SLAB } from '../../fixtures/stairs';

const poleOf = (changes: Changes = {}) => storyPole(planOf(changed(LOFT, changes)).layout);
const sixteenths = (mm: number | null) => (mm === null ? null : Math.round((mm / 25.4) * 16) / 16);

describe('the pole of the loft stair, a worked example of our own', () => {
  // Level cuts over the slab, and finished heights over the finished floor, each to the nearest sixteenth.
  // Top 7 is half of 105 9/16, 52 25/32: half way between two sixteenths, and such a tie goes up.
  const CUTS = [
    7.125, 14.625, 22.1875, 29.75, 37.25, 44.8125, 52.375, 59.875, 67.4375, 74.9375, 82.5, 90.0625, 97.5625,
  ];
  const FINISHED = [
    0, 7.5625, 15.0625, 22.625, 30.1875, 37.6875, 45.25, 52.8125, 60.3125, 67.875, 75.375, 82.9375, 90.5, 98, 105.5625,
  ];

  test('heights, to the sixteenth', () => {
    const rows = poleOf();
    expect(rows.map(({ step }) => step)).toEqual(Array.from({ length: 15 }, (_, i) => i));
    expect(rows.map(({ finished }) => sixteenths(finished))).toEqual(FINISHED);
    expect(rows.slice(1, 14).map(({ cutToday }) => sixteenths(cutToday))).toEqual(CUTS);
  });

  test('a hung stringer has no cut at either floor', () => {
    const rows = poleOf();
    expect([rows[0]?.cut, rows[0]?.cutToday, rows[14]?.cut, rows[14]?.cutToday]).toEqual([null, null, null, null]);
  });

  test('level with the floor it has one under the last tread', () => {
    const last = poleOf({ stringer: { top: 'level-with-floor', hanger: undefined } }).at(-1);
    expect((last?.cut as number) / 25.4).toBeCloseTo(104.5, 9);
  });

  test('over today’s floor everything is higher by the floor to come', () => {
    for (const { finished, finishedToday } of poleOf()) expect((finishedToday - finished) / 25.4).toBeCloseTo(0.625, 9);
    const stripped = poleOf({ survey: { lowerToAdd: '-1/4 in' } });
    for (const { finished, finishedToday } of stripped) expect((finishedToday - finished) / 25.4).toBeCloseTo(-0.25, 9);
  });
});

test('carriage heights of the metric stair of our own, over the slab', () => {
  const expected = [177, 371, 565, 758.5, 952.5, 1146.5, 1340.5, 1534.5, 1728.5, 1922.5, 2116, 2310, 2504];
  const rows = storyPole(planOf(SLAB).layout).slice(1, 14);
  expect(rows.map(({ cutToday }) => Math.round((cutToday as number) * 2) / 2)).toEqual(expected);
});

test('a level line at any height moves every mark by that height and no other', () => {
  const rows = poleOf();
  const laser = laserTable(rows, 1000);
  for (const [i, row] of rows.entries()) {
    expect(laser[i]?.step).toBe(row.step);
    expect(laser[i]?.finished).toBeCloseTo(row.finishedToday - 1000, 9);
    expect(laser[i]?.cut === null).toBe(row.cut === null);
  }
  // A line through the first level cut: 7.10268 in over the slab.
  expect(laserTable(rows, 7.102679 * 25.4)[1]?.cut).toBeCloseTo(0, 4);
});

test('for any stair, today’s subfloor stands at the rise that was read, less what the foot lies lower', () => {
  fc.assert(
    fc.property(anyStair, (job) => {
      const { layout } = planOrSkip(job);
      const { rise, footBelowReading, readingFromHeader: stood, fallAlong } = layout.job.survey;
      const asMm = ({ num, den }: { num: bigint; den: bigint }) => Number(num) / Number(den);
      const beyond = stood === null ? 0 : layout.stringer.top.headerX - asMm(stood);
      const since = (beyond * asMm(fallAlong.fall)) / asMm(fallAlong.over);
      const last = storyPole(layout).at(-1);
      expect((last?.finishedToday as number) - layout.flight.upperToAdd).toBeCloseTo(
        asMm(rise) + asMm(footBelowReading) + since,
        7,
      );
    }),
  );
});
