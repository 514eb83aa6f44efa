import { describe, expect, test } from 'vitest';
import type { FinishText } from '../../../src/core/job/jobText';
import { readStair } from '../../../src/core/job/readStair';
import { hasHangerBoard, isHung } from '../../../src/core/job/stairJob';
import { compare, inch } from '../../../src/core/units/exact';
import { answerOf, type Changes, changed, faultsOf, LOFT, SLAB } from '../../fixtures/stairs';

function read(changes: Changes) {
  const result = readStair(changed(LOFT, changes), 0);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
}

describe('finishes and how sure they are', () => {
  test.each<[FinishText, number, string]>([
    ['5/8 in', 0.625, 'specified'],
    [{ length: '5/8 in', known: 'measured' }, 0.625, 'measured'],
    [{ length: '5/8 in', known: 'specified' }, 0.625, 'specified'],
    [{ length: '5/8 in', known: 'assumed' }, 0.625, 'assumed'],
    ['-1/4 in', -0.25, 'specified'],
    ['unknown', 0, 'unknown'],
  ])('%j', (text, inches, known) => {
    const { survey } = read({ survey: { lowerToAdd: text } });
    expect(survey.lowerToAdd.known).toBe(known);
    expect(compare(survey.lowerToAdd.amount, inch(inches))).toBe(0);
  });

  test('an unknown finish makes a draft, and an assumed one does not', () => {
    const unknown = answerOf(changed(LOFT, { survey: { upperToAdd: 'unknown' } }));
    expect([unknown.draft, unknown.unknowns]).toEqual([true, ['survey.upperToAdd']]);
    const assumed = answerOf(changed(LOFT, { survey: { upperToAdd: { length: '3/4 in', known: 'assumed' } } }));
    expect([assumed.draft, assumed.unknowns]).toEqual([false, []]);
  });

  test('a tread that nobody has decided is laid out as 1 in, or as 25 mm', () => {
    expect(compare(read({ steps: { treadThickness: 'unknown' } }).steps.treadThickness.amount, inch(1))).toBe(0);
    const metric = readStair(changed(SLAB, { steps: { treadThickness: 'unknown' } }), 0);
    expect(metric.ok && Number(metric.value.steps.treadThickness.amount.num)).toBe(25);
  });
});

describe('what is read as it stands', () => {
  test('a stair without a name is called by its id', () => {
    const { name: _, ...stair } = LOFT.stairs[0] as { id: string; name?: string; survey: { rise: string } };
    const result = readStair({ ...LOFT, stairs: [stair] }, 0);
    expect(result.ok && result.value.name).toBe('loft');
  });

  test('zero is no riser board, and open', () => {
    expect(answerOf(changed(LOFT, { steps: { riserThickness: '0 in' } })).riserHeights).toEqual([]);
  });

  test('soft covering is noted and not counted', () => {
    const covered = answerOf(changed(LOFT, { steps: { softCovering: { lower: '1/2 in', treads: '1/2 in' } } }));
    expect(covered.totalRise).toBe(answerOf(LOFT).totalRise);
    expect(covered.notes.some((note) => note.includes('soft covering'))).toBe(true);
  });
});

describe('one key alone', () => {
  test.each<[string, Changes, string]>([
    ['an unreadable rise', { survey: { rise: 'high' } }, 'stairs[0].survey.rise length.unread'],
    ['a negative rise', { survey: { rise: '-105 in' } }, 'stairs[0].survey.rise length.negative'],
    [
      'a header of negative depth',
      { survey: { headerDepth: '-1 in' } },
      'stairs[0].survey.headerDepth length.negative',
    ],
    ['a finish without unit', { survey: { lowerToAdd: '5/8' } }, 'stairs[0].survey.lowerToAdd length.noUnit'],
    [
      'a finish object without unit',
      { survey: { upperToAdd: { length: '5/8', known: 'measured' } } },
      'stairs[0].survey.upperToAdd length.noUnit',
    ],
    ['a tread of nothing', { steps: { treadThickness: '0 in' } }, 'stairs[0].steps.treadThickness value.notPositive'],
    [
      'a negative tread',
      { steps: { treadThickness: { length: '-1 in', known: 'measured' } } },
      'stairs[0].steps.treadThickness length.negative',
    ],
    ['a negative nosing', { steps: { nosing: '-1 in' } }, 'stairs[0].steps.nosing length.negative'],
    [
      'a negative riser board',
      { steps: { riserThickness: '-3/4 in' } },
      'stairs[0].steps.riserThickness length.negative',
    ],
    ['a board without depth', { stringer: { stockDepth: '0 in' } }, 'stairs[0].stringer.stockDepth value.notPositive'],
    [
      'a board without thickness',
      { stringer: { stockThickness: '0 in' } },
      'stairs[0].stringer.stockThickness value.notPositive',
    ],
    ['a spacing of nothing', { stringer: { spacingMax: '0 in' } }, 'stairs[0].stringer.spacingMax value.notPositive'],
    ['a negative inset', { stringer: { tipInset: '-1/8 in' } }, 'stairs[0].stringer.tipInset length.negative'],
    ['a negative trim', { stringer: { trim: '-2 in' } }, 'stairs[0].stringer.trim length.negative'],
    [
      'a kicker without width',
      { stringer: { kicker: { width: '0 in', height: '1 in' } } },
      'stairs[0].stringer.kicker.width value.notPositive',
    ],
    [
      'a kicker without height',
      { stringer: { kicker: { width: '1 in', height: '0 in' } } },
      'stairs[0].stringer.kicker.height value.notPositive',
    ],
    ['one stringer', { stringer: { count: 1 } }, 'stairs[0].stringer.count value.count'],
    ['two and a half stringers', { stringer: { count: 2.5 } }, 'stairs[0].stringer.count value.count'],
    ['a mark step of nothing', { markStep: '0 in' }, 'markStep value.notPositive'],
    ['a mark step over half an inch', { markStep: '33/64 in' }, 'markStep markStep.tooCoarse'],
    ['an unreadable mark step', { markStep: '1/16' }, 'markStep length.noUnit'],
    [
      'soft covering that is no length',
      { steps: { softCovering: { treads: 'thick' } } },
      'stairs[0].steps.softCovering.treads length.unread',
    ],
  ])('%s', (_, changes, fault) => {
    expect(faultsOf(changed(LOFT, changes))).toEqual([fault]);
  });

  test.each([1, 0, -3, 201, 13.5, 1e300])('%d risers', (risers) => {
    expect(faultsOf(changed(LOFT, { steps: { risers } }))).toEqual(['stairs[0].steps.risers value.count']);
  });

  test('two risers and two hundred are counts that are accepted', () => {
    for (const risers of [2, 200]) {
      const result = readStair(changed(LOFT, { steps: { risers } }), 0);
      expect(result.ok && result.value.steps.risers).toBe(risers);
    }
  });

  test('every key that cannot be read is named at once', () => {
    const faults = faultsOf(changed(LOFT, { markStep: 'fine', survey: { rise: '?' }, steps: { run: '?' } }));
    expect(faults.map((fault) => fault.split(' ')[0])).toEqual([
      'markStep',
      'stairs[0].survey.rise',
      'stairs[0].steps.run',
    ]);
  });
});

test('three tops hang, and two have a hanger board', () => {
  const tops = ['header-behind-riser', 'hanger-is-riser', 'hanger-behind-riser', 'level-with-floor'] as const;
  expect(tops.map(isHung)).toEqual([true, true, true, false]);
  expect(tops.map(hasHangerBoard)).toEqual([false, true, true, false]);
});
