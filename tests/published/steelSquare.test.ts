/** Tables printed on and for the steel square, and what follows from them by plain arithmetic. */
import { describe, expect, test } from 'vitest';
import { distance, point } from '../../src/core/geometry/point';
import { inch } from '../../src/core/units/exact';
import { formatLength } from '../../src/core/units/format';
import { answerOf, bare, changed, inInches } from '../fixtures/stairs';

const step = (rise: number, run: number) =>
  answerOf(
    changed(bare('imperial', `${rise * 14} in`), {
      survey: { lowerToAdd: '0 in', upperToAdd: '0 in' },
      steps: { risers: 14, run: `${run} in`, treadThickness: '1 in' },
      stringer: { stockDepth: '14 in' },
    }),
  );

describe('brace table, NAVEDTRA 14044, fig. 2-11, to two decimals', () => {
  test.each([
    [24, 33.94],
    [27, 38.18],
    [30, 42.43],
  ])('equal legs of %d in: %d', (leg, printed) => {
    expect(Math.abs(distance(point(0, 0), point(leg, leg)) - printed)).toBeLessThanOrEqual(0.005);
  });

  test('legs of 8 in are a third of legs of 24', () => {
    expect(Math.abs(distance(point(0, 0), point(8, 8)) - 33.94 / 3)).toBeLessThanOrEqual(0.005);
  });

  test('a stair at 45 degrees lies on the same diagonal', () => {
    expect(Math.abs(3 * inInches(step(8, 8).stepLength) - 33.94)).toBeLessThanOrEqual(0.005);
  });
});

describe('angles by the steel square, Building Trades Pocketbook (ICS, about 1905): so much on the tongue with 12 on the blade', () => {
  // The source calls its table approximately correct; 10 degrees is off by more than half its 1/32, so 1/32 is allowed.
  test.each([
    [5, 1 + 1 / 16],
    [10, 2 + 3 / 32],
    [15, 3 + 7 / 32],
    [20, 4 + 3 / 8],
    [22.5, 4 + 31 / 32],
    [25, 5 + 19 / 32],
    [30, 6 + 15 / 16],
  ])('%d degrees', (degrees, tongue) => {
    expect(Math.abs(12 * Math.tan((degrees * Math.PI) / 180) - tongue)).toBeLessThanOrEqual(1 / 32);
  });

  test.each([
    [20, 4 + 3 / 8],
    [25, 5 + 19 / 32],
    [30, 6 + 15 / 16],
  ])('a stair with that rise on a run of 12 is pitched at %d degrees, as near as 1/32 in allows', (degrees, rise) => {
    const perThirtySecond = (Math.atan(1 / 32 / 12) * 180) / Math.PI;
    expect(Math.abs(step(rise, 12).pitchDegrees - degrees)).toBeLessThanOrEqual(perThirtySecond);
  });
});

describe('pitch by rise and run, Table D-1 as printed in WAC 296-24-74010 (degrees and minutes)', () => {
  test.each([
    [30, 35, 6.5, 11],
    [32, 8, 6.75, 10.75],
    [33, 41, 7, 10.5],
    [35, 16, 7.25, 10.25],
    [36, 52, 7.5, 10],
    [38, 29, 7.75, 9.75],
    [41, 44, 8.25, 9.25],
    [43, 22, 8.5, 9],
    [45, 0, 8.75, 8.75],
    [46, 38, 9, 8.5],
    [48, 16, 9.25, 8.25],
    [49, 54, 9.5, 8],
  ])('%d degrees %d minutes: %d and %d in', (degrees, minutes, rise, run) => {
    expect(Math.abs(step(rise, run).pitchDegrees * 60 - (degrees * 60 + minutes))).toBeLessThanOrEqual(0.51);
  });

  test('8 and 9 1/2 in is printed as 40 degrees 08 minutes, two minutes too many: a slip of the table', () => {
    const { pitchDegrees } = step(8, 9.5);
    expect(Math.abs(pitchDegrees * 60 - (40 * 60 + 6))).toBeLessThanOrEqual(0.51);
    expect(40 * 60 + 8 - pitchDegrees * 60).toBeGreaterThan(1.5);
  });
});

describe('length of a step, derived here and in no book: the root of rise and run squared', () => {
  test.each([
    [6, 11, 12.53, '12 1/2 in', 28.61],
    [6, 12, 13.4164, '13 7/16 in', 26.57],
    [6.5, 11, 12.7769, '12 3/4 in', 30.58],
    [6.5, 12, 13.6473, '13 5/8 in', 28.44],
    [6.75, 10.5, 12.4825, '12 1/2 in', 32.74],
    [7, 10, 12.2066, '12 3/16 in', 34.99],
    [7, 11, 13.0384, '13 1/16 in', 32.47],
    [7.25, 10, 12.3516, '12 3/8 in', 35.94],
    [7.25, 10.5, 12.7598, '12 3/4 in', 34.62],
    [7.5, 10, 12.5, '12 1/2 in', 36.87],
    [7.75, 10, 12.6516, '12 5/8 in', 37.78],
    [8, 9, 12.0416, '12 1/16 in', 41.63],
  ])('%d and %d in', (rise, run, length, sixteenth, degrees) => {
    const answer = step(rise, run);
    expect(Math.abs(inInches(answer.stepLength) - length)).toBeLessThanOrEqual(0.00005 + 1e-9);
    expect(formatLength(answer.stepLength, inch(1 / 16), 'imperial')).toBe(sixteenth);
    expect(Math.abs(answer.pitchDegrees - degrees)).toBeLessThanOrEqual(0.005 + 1e-9);
  });
});
