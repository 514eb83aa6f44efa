/**
 * Straight flights printed in handbooks. What a source rounds is never compared for equality: the
 * tolerance is half of the last unit it prints. What is exact follows from its givens alone.
 */
import { describe, expect, test } from 'vitest';
import { fewestRisers } from '../../src/core/layout/slope';
import { inch } from '../../src/core/units/exact';
import { formatLength } from '../../src/core/units/format';
import { roundTo } from '../../src/core/units/rounding';
import { answerOf, bare, changed, inInches, type StairAnswer } from '../fixtures/stairs';

/** A flight between two finished floors, cut as the book has it: header right behind the last riser. */
function flight(
  rise: string,
  risers: number | 'auto',
  run: string,
  more: { nosing?: string; treadThickness?: string } = {},
): StairAnswer {
  return answerOf(
    changed(bare('imperial', rise), {
      survey: { lowerToAdd: '0 in', upperToAdd: '0 in' },
      steps: { risers, run, treadThickness: '1 in', ...more },
      stringer: { top: 'header-behind-riser' },
    }),
  );
}

const nearestSixteenth = (inches: number) => formatLength(inches * 25.4, inch(1 / 16), 'imperial');
const overRise = (answer: StairAnswer) =>
  answer.risers * roundTo(inInches(answer.unitRise), 1 / 16) - inInches(answer.totalRise);

describe('NAVEDTRA 14044, Builder 3 & 2 vol. 2 (1994), ch. 6, Stairway Layout', () => {
  test('8 ft 11 in is 107 in; a customary rise of 7 in goes 15 times, the fraction disregarded', () => {
    const answer = flight('8\' 11"', 15, '10 3/8 in');
    expect(inInches(answer.totalRise)).toBeCloseTo(107, 12);
    expect(Math.floor(inInches(answer.totalRise) / 7)).toBe(15);
    expect(inInches(answer.unitRise)).toBeCloseTo(107 / 15, 12);
  });

  test('rise 7 1/8, run 10 3/8, total run 145 1/4 in (from memory, the page was not seen)', () => {
    const answer = flight('8\' 11"', 15, '10 3/8 in');
    expect(nearestSixteenth(inInches(answer.unitRise))).toBe('7 1/8 in');
    expect(17.5 - roundTo(inInches(answer.unitRise), 1 / 8)).toBe(10.375);
    expect(inInches(answer.totalRun)).toBeCloseTo(145.25, 9);
    expect(inInches(answer.stepLength)).toBeCloseTo(12.5907, 4);
    expect(answer.pitchDegrees).toBeCloseTo(34.51, 2);
  });

  test('stepping off the rounded rise falls 1/8 in short of the floor; running marks do not', () => {
    const answer = flight('8\' 11"', 15, '10 3/8 in');
    expect(overRise(answer)).toBeCloseTo(-0.125, 9);
    expect(answer.finishedTops.at(-1)).toBe(answer.totalRise);
  });

  test('a reading to a subfloor gains the finish above, one from a subfloor loses the finish below', () => {
    const read = (lowerToAdd: string, upperToAdd: string) =>
      inInches(answerOf(changed(bare('imperial', '107 in'), { survey: { lowerToAdd, upperToAdd } })).totalRise);
    expect(read('0 in', '3/4 in')).toBeCloseTo(107.75, 12);
    expect(read('3/4 in', '0 in')).toBeCloseTo(106.25, 12);
    expect(read('3/4 in', '3/4 in')).toBeCloseTo(107, 12);
    // Where the two differ, their difference is what is added.
    expect(read('5/8 in', '3/4 in')).toBeCloseTo(107.125, 12);
  });
});

describe('US Army Engineer School, subcourse EN5156, Stairway Calculations (the same figures in Wagner, Modern Carpentry, 2008, 18.5)', () => {
  const answer = flight('7\' 10"', 13, '10 1/2 in');

  test('94 in by 7 is nearest to 13 risers of 7.23 in, or 7 1/4, and 12 treads make 126 in', () => {
    expect(Math.round(inInches(answer.totalRise) / 7)).toBe(13);
    expect(Math.abs(inInches(answer.unitRise) - 7.23)).toBeLessThan(0.005);
    expect(nearestSixteenth(inInches(answer.unitRise))).toBe('7 1/4 in');
    expect(answer.treads).toBe(12);
    expect(inInches(answer.totalRun)).toBeCloseTo(126, 9);
    expect(formatLength(answer.totalRun, inch(1 / 16), 'imperial')).toBe('126 in');
  });

  test('exact: 7 7/32 in to the thirty-second, a step of 12.7489 in, 34.55 degrees', () => {
    expect(formatLength(answer.unitRise, inch(1 / 32), 'imperial')).toBe('7 7/32 in');
    expect(inInches(answer.stepLength)).toBeCloseTo(12.7489, 4);
    expect(answer.pitchDegrees).toBeCloseTo(34.553, 3);
  });

  test('thirteen times 7 1/4 is 1/4 in over the floor', () => {
    expect(overRise(answer)).toBeCloseTo(0.25, 9);
  });

  test('two hypotenuses that are not one: 12 steps along the pitch, and rise against run', () => {
    expect(12 * inInches(answer.stepLength)).toBeCloseTo(152.99, 2);
    expect(Math.hypot(inInches(answer.totalRise), inInches(answer.totalRun))).toBeCloseTo(157.2, 1);
  });

  test.each([
    [7.5, 10],
    [6.5, 12],
  ])('twice a rise of %d and a run of %d are 25 in', (rise, run) => {
    const { twoRisePlusRun } = flight(`${rise * 14} in`, 14, `${run} in`);
    expect(inInches(twoRisePlusRun)).toBeCloseTo(25, 9);
  });
});

describe('Hodgson & Williams, Stair-Building and the Steel Square (1917), Laying Out, fig. 33', () => {
  test('84 in in 12 risers of 7 in, 104 1/2 in in 11 treads of 9 1/2 in', () => {
    const answer = flight("7'", 12, '9 1/2 in');
    expect(inInches(answer.unitRise)).toBeCloseTo(7, 12);
    expect(answer.treads).toBe(11);
    expect(inInches(answer.totalRun)).toBeCloseTo(104.5, 9);
    expect(inInches(answer.stepLength)).toBeCloseTo(11.8004, 4);
    expect(answer.pitchDegrees).toBeCloseTo(36.384, 3);
  });

  test('by its own rule of 24 the example itself is half an inch short', () => {
    expect(inInches(flight("7'", 12, '9 1/2 in').twoRisePlusRun)).toBeCloseTo(23.5, 9);
  });

  test.each([
    [8, 8],
    [9, 7.5],
    [10, 7],
  ])('a run of %d and a rise of %d meet the rule of 24', (run, rise) => {
    expect(inInches(flight(`${rise * 12} in`, 12, `${run} in`).twoRisePlusRun)).toBeCloseTo(24, 9);
  });

  test('the pitch board at 10 and 7 is 12.2066 in long (exact, not printed)', () => {
    expect(inInches(flight('84 in', 12, '10 in').stepLength)).toBeCloseTo(12.2066, 4);
  });
});

describe("Carpenter's Guide (reprint, author not shown), Stairs, figs 51 and 52", () => {
  const answer = flight('9\' 4"', 16, '10 in', { nosing: '1 1/4 in', treadThickness: '1 1/8 in' });

  test('112 in in 16 risers of 7 in, a run of 10 in with a tread board of 11 1/4 in', () => {
    expect(inInches(answer.unitRise)).toBeCloseTo(7, 12);
    expect(inInches(answer.treadDepth)).toBeCloseTo(11.25, 12);
    expect(inInches(answer.totalRun)).toBeCloseTo(150, 9);
  });

  test('the bottom of the first rise loses the tread', () => {
    expect(inInches(answer.firstRiserCut)).toBeCloseTo(7 - 1.125, 12);
  });

  test('under a ceiling of 8 ft 6 in the header over the third riser leaves 6 ft 9 in', () => {
    // The book measures from the tread at the third riser, 21 in up: an opening whose edge stands over the
    // nosing of that riser, x = 2 × 10 − 1 1/4, is the same place on the nosing line.
    const edge = 20 - 1.25;
    const headerFace = inInches(answer.headerFace);
    const framed = answerOf(
      changed(bare('imperial', '9\' 4"'), {
        survey: {
          lowerToAdd: '0 in',
          upperToAdd: '0 in',
          floorDepth: '10 in',
          headerLining: '0 in',
          openingFraming: `${headerFace - edge} in`,
        },
        steps: { risers: 16, run: '10 in', nosing: '1 1/4 in', treadThickness: '1 1/8 in' },
        stringer: { top: 'header-behind-riser' },
      }),
    );
    expect(inInches(framed.finishedTops[3] as number)).toBeCloseTo(21, 9);
    expect(inInches(framed.headroom)).toBeCloseTo(81, 9);
    expect(inInches(framed.headroom)).toBeGreaterThanOrEqual(80);
    expect(inInches(framed.headroom)).toBeLessThanOrEqual(84);
    // The top riser's face is (16 − 3) × 10 in from the third one.
    expect(inInches(framed.totalRun) - 20).toBeCloseTo(130, 9);
  });
});

describe('C. A. King, Inside Finishing (1912), 46, fig. 54', () => {
  const rise = 96 + 3 / 4 + 8 + 7 / 8;

  test('room, plaster, joists and floor make 8 ft 9 5/8 in', () => {
    expect(rise).toBe(105.625);
    expect(inInches(flight('8\' 9 5/8"', 14, '10 in').totalRise)).toBeCloseTo(rise, 12);
  });

  test.each([
    [14, 7.54, '7 9/16 in', '7 17/32 in', 0.25],
    [15, 7.04, '7 1/16 in', '7 1/32 in', 0.3125],
  ])('%d risers are %d in', (risers, printed, sixteenth, thirtySecond, over) => {
    const answer = flight('105 5/8 in', risers, '10 in');
    // Fourteen come to 7.5446, which the source cuts off ("a little more than 7 1/2").
    expect(inInches(answer.unitRise) - printed).toBeGreaterThanOrEqual(0);
    expect(inInches(answer.unitRise) - printed).toBeLessThan(0.01);
    expect(nearestSixteenth(inInches(answer.unitRise))).toBe(sixteenth);
    expect(formatLength(answer.unitRise, inch(1 / 32), 'imperial')).toBe(thirtySecond);
    expect(overRise(answer)).toBeCloseTo(over, 9);
  });

  test('both counts can be laid out; the program by itself takes the fewest that the rules allow', () => {
    expect(fewestRisers(inch(105.625), inch(7.75))).toBe(14);
    expect(flight('105 5/8 in', 'auto', '10 in').risers).toBe(14);
  });
});

describe('W. H. Wood, Practical Stair Building and Handrailing (1894), plate II', () => {
  test.each([
    [7.25, 10.75, 18],
    [7.25, 9.75, 17],
  ])('a rise of %d and a run of %d are %d in together', (rise, run, sum) => {
    const answer = flight(`${rise * 12} in`, 12, `${run} in`);
    expect(inInches(answer.unitRise) + inInches(answer.run)).toBeCloseTo(sum, 9);
  });
});

describe('Vitruvius, De architectura IX, preface 8', () => {
  test('a storey of 3 parts and a base of 4 have a string of 5', () => {
    const answer = flight('105 in', 14, '10 in');
    expect(inInches(answer.unitRise)).toBeCloseTo(7.5, 12);
    expect(inInches(answer.stepLength)).toBeCloseTo(12.5, 12);
    expect(answer.pitchDegrees).toBeCloseTo(36.87, 2);
  });
});

describe('ICS treatise on stair building, vol. 3, 11: a thinner platform gives its thickness to the head', () => {
  test('6 ft 8 in and 4 in less of depth are 7 ft', () => {
    const head = (floorDepth: string) =>
      inInches(
        answerOf(
          changed(bare('imperial', '9\' 4"'), {
            survey: {
              lowerToAdd: '0 in',
              upperToAdd: '0 in',
              floorDepth,
              openingFraming: '132 in',
              headerLining: '0 in',
            },
            steps: { risers: 16, run: '10 in' },
          }),
        ).headroom,
      );
    const deep = head('10 in');
    expect(head('6 in') - deep).toBeCloseTo(4, 9);
    expect(80 + (head('6 in') - deep)).toBeCloseTo(84, 9);
  });
});
