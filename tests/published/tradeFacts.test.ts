/** What carpenters know by heart. Every one of these: common practice, no source. */
import { describe, expect, test } from 'vitest';
import { answerOf, bare, type Changes, changed, inInches, planOf } from '../fixtures/stairs';

const floors = { lowerToAdd: '0 in', upperToAdd: '0 in' } as const;
/** 14 risers of 7 11/16 in. */
const stair = (changes: Changes = {}) =>
  answerOf(
    changed(bare('imperial', '107 5/8 in'), {
      ...changes,
      survey: { ...floors, ...changes.survey },
      steps: { risers: 14, run: '10 in', nosing: '1 1/8 in', treadThickness: '1 1/8 in', ...changes.steps },
    }),
  );

describe('common practice, no source', () => {
  test('a rise of 7 11/16 with a tread of 1 1/8: the bottom riser board is 6 9/16, the stringer 8 13/16 below the floor', () => {
    const answer = stair();
    expect(inInches(answer.unitRise)).toBeCloseTo(7 + 11 / 16, 12);
    expect(inInches(answer.riserHeights[0] as number)).toBeCloseTo(6 + 9 / 16, 12);
    expect(inInches(answer.firstRiserCut)).toBeCloseTo(6 + 9 / 16, 12);
    expect(inInches(answer.topBelowFinish)).toBeCloseTo(8 + 13 / 16, 12);
  });

  test('a run of 10 and a nosing of 1 1/8 make a tread of 11 1/8', () => {
    expect(inInches(stair().treadDepth)).toBeCloseTo(11.125, 12);
  });

  test('with 3/4 riser boards, where the hanger board is the last riser, the top level cut is 3/4 short of the run', () => {
    const answer = stair({ steps: { riserThickness: '3/4 in' }, stringer: { top: 'hanger-is-riser' } });
    expect(inInches(answer.run - answer.lastLevelCut)).toBeCloseTo(0.75, 12);
    const behind = stair({ steps: { riserThickness: '3/4 in' }, stringer: { top: 'hanger-behind-riser' } });
    expect(inInches(behind.run - behind.lastLevelCut)).toBeCloseTo(0, 9);
  });

  test('3/4 flooring still to come at the foot adds 3/4 under the first notch', () => {
    // The finished rise stays what it was: the tape read 3/4 more, down to today's floor.
    const later = stair({ survey: { rise: '108 3/8 in', lowerToAdd: '3/4 in' } });
    expect(later.unitRise).toBeCloseTo(stair().unitRise, 9);
    expect(inInches(later.firstRiserCut - stair().firstRiserCut)).toBeCloseTo(0.75, 9);
  });

  test('finished first, middle and last risers are equal only with the drop', () => {
    const { layout } = planOf(
      changed(bare('imperial', '107 5/8 in'), { survey: floors, steps: { risers: 14, treadThickness: '1 1/8 in' } }),
    );
    const { flight, stringer } = layout;
    const first = stringer.heel.firstRiserCut + flight.treadThickness;
    const last = flight.totalRise - (stringer.top.topY + flight.treadThickness);
    expect(first).toBeCloseTo(flight.unitRise, 9);
    expect(last).toBeCloseTo(flight.unitRise, 9);
  });

  test.each([
    [7.125, '1 1/16 in', '0 in', 6.0625],
    [7.125, '1 1/16 in', '3/4 in', 6.8125],
    [7, '1 in', '0 in', 6],
  ])(
    'a rise of %d, a tread of %s, %s of floor to come: %d is left at the foot (derived: r − t + f)',
    (rise, tread, floor, left) => {
      const [top = 0, bottom = 1] = floor.replace(' in', '').split('/').map(Number);
      const answer = stair({
        survey: { rise: `${rise * 14 + top / bottom} in`, lowerToAdd: floor },
        steps: { treadThickness: tread },
      });
      expect(inInches(answer.unitRise)).toBeCloseTo(rise, 12);
      expect(inInches(answer.firstRiserCut)).toBeCloseTo(left, 12);
    },
  );

  describe('a rough opening of 38 1/2 with 1/2 wallboard and 3/4 skirts on both sides', () => {
    const across = {
      survey: { widthFraming: '38 1/2 in', wallboard: '1/2 in', skirt: '3/4 in', spacer: '1 1/2 in' },
      stringer: { spacingMax: '18 in' },
    } as const;

    test('leaves a stair of 36', () => {
      expect(inInches(stair(across).width?.betweenSkirts ?? null)).toBeCloseTo(36, 12);
    });

    test('a spacer of 1 1/2 leaves room for wallboard and skirt behind the treads', () => {
      const { width } = planOf(changed(bare('imperial', '107 5/8 in'), across)).layout;
      expect(inInches(width?.treadOverhang ?? null)).toBeCloseTo(1.5 - 0.5 - 0.75, 12);
    });

    test('with treads of 1 1/8 at 18 in, three stringers carry it', () => {
      const { width } = stair(across);
      expect(width?.stringers).toBe(3);
      expect(inInches(width?.spacing ?? null)).toBeLessThanOrEqual(18);
    });
  });
});
