import { describe, expect, test } from 'vitest';
import { answerOf, changed, LOFT } from '../../fixtures/stairs';

/** Worked example of our own, not published: inches, to four places. */
const SIXTEENTHS = [
  7.5625, 7.5633, 7.5256, 7.5633, 7.5256, 7.5256, 7.5633, 7.5256, 7.5633, 7.5256, 7.5256, 7.5633, 7.5256, 7.5042,
];

describe('which risers come out of rounded marks', () => {
  test('to the sixteenth', () => {
    const { asCut } = answerOf(LOFT);
    expect(asCut.step).toBe(25.4 / 16);
    expect(asCut.risers).toHaveLength(14);
    for (const [i, riser] of asCut.risers.entries()) {
      expect(Math.abs(riser / 25.4 - (SIXTEENTHS[i] as number))).toBeLessThan(0.00005 + 1e-9);
    }
    expect(Math.abs(asCut.spread / 25.4 - 0.0591)).toBeLessThan(0.00005 + 1e-9);
  });

  test('to the thirty-second', () => {
    const { asCut } = answerOf(changed(LOFT, { markStep: '1/32 in' }));
    expect(Math.abs((asCut.risers[0] as number) / 25.4 - 7.5312)).toBeLessThan(0.0001);
    expect(Math.abs((asCut.risers.at(-1) as number) / 25.4 - 7.5542)).toBeLessThan(0.0001);
    expect(Math.abs(asCut.spread / 25.4 - 0.0286)).toBeLessThan(0.0001);
  });

  test.each(['1/8 in', '1/16 in', '1/32 in', '1/64 in', '0.5 mm', '1 mm'])(
    'they always add up to the rise (%s)',
    (markStep) => {
      const answer = answerOf(changed(LOFT, { markStep }));
      const sum = answer.asCut.risers.reduce((a, b) => a + b, 0);
      expect(sum).toBeCloseTo(answer.totalRise, 8);
    },
  );

  test('level with the floor the stringer carries its own last tread', () => {
    const answer = answerOf(changed(LOFT, { stringer: { top: 'level-with-floor', hanger: undefined } }));
    expect(answer.asCut.risers).toHaveLength(14);
    const sum = answer.asCut.risers.reduce((a, b) => a + b, 0);
    // What the rounded marks are off at the last tread stays there: no riser is left to take it.
    expect(Math.abs(sum - answer.totalRise)).toBeLessThan(25.4 / 16);
    expect(answer.asCut.risers[1]).toBeCloseTo(answerOf(LOFT).asCut.risers[1] as number, 9);
  });
});
