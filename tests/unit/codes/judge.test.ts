import { describe, expect, test } from 'vitest';
import type { Finding } from '../../../src/core/codes/findings';
import { isPartOfAnother, judge } from '../../../src/core/codes/judge';
import type { Limit, RuleSet, RuleUnit } from '../../../src/core/codes/rulePack';
import { fromNumber, inches } from '../../../src/core/units/exact';
import { type Changes, changed, LOFT, planOf, SLAB } from '../../fixtures/stairs';

function limit(field: string, value: Limit['value'], unit: RuleUnit): Limit {
  const number = typeof value === 'number' ? fromNumber(value) : null;
  const exact = number === null ? null : unit === 'in' ? inches(number) : number;
  return { field, value, unit, exact, section: '1', source: 'a rule of this test', confidence: 'seen' };
}

function ruleSet(...limits: Limit[]): RuleSet {
  return { pack: null, packId: 'test', profile: null, profileMissing: false, limits };
}

/** Judges one limit on the loft stair after some changes. */
function on(changes: Changes, asked: Limit, ...others: Limit[]) {
  return judge(planOf(changed(LOFT, changes)).layout, asked, ruleSet(asked, ...others));
}

const plain = { survey: { rise: '105 in', lowerToAdd: '0 in', upperToAdd: '0 in' } } as const;
const steps = (next: NonNullable<Changes['steps']>): Changes => ({ ...plain, steps: next });

describe('exactly on a limit meets it, one step past it breaks it', () => {
  test.each<[string, number, RuleUnit, Changes, Changes]>([
    ['riser.max', 7.5, 'in', steps({ risers: 14 }), { survey: { ...plain.survey, rise: '2667.000001 mm' } }],
    ['riser.min', 7.5, 'in', steps({ risers: 14 }), { survey: { ...plain.survey, rise: '2666.999999 mm' } }],
    ['tread.min', 10, 'in', steps({ run: '10 in' }), steps({ run: '253.999999 mm' })],
    ['tread.max', 10, 'in', steps({ run: '10 in' }), steps({ run: '254.000001 mm' })],
    ['twoRPlusG.min', 635, 'mm', steps({ run: '10 in' }), steps({ run: '253.999999 mm' })],
    ['twoRPlusG.max', 25, 'in', steps({ run: '10 in' }), steps({ run: '254.000001 mm' })],
    ['nosing.max', 1.25, 'in', steps({ nosing: '1 1/4 in' }), steps({ nosing: '31.750001 mm' })],
    ['nosing.min', 0.75, 'in', steps({ nosing: '3/4 in' }), steps({ nosing: '19.049999 mm' })],
    ['flight.maxVerticalRise', 105, 'in', plain, { survey: { ...plain.survey, rise: '2667.000001 mm' } }],
    ['flight.minRisers', 14, 'count', steps({ risers: 14 }), steps({ risers: 13 })],
    ['flight.maxRisers', 14, 'count', steps({ risers: 14 }), steps({ risers: 15 })],
    ['width.min', 36, 'in', { survey: { widthFraming: '37 in' } }, { survey: { widthFraming: '939.799999 mm' } }],
    [
      'openRiser.maxSphere',
      4,
      'in',
      steps({ riserThickness: '0 in', treadThickness: '88.900001 mm' }),
      steps({ riserThickness: '0 in', treadThickness: '3 1/2 in' }),
    ],
  ])('%s %d %s', (field, value, unit, meets, breaks) => {
    expect(on(meets, limit(field, value, unit)).status).toBe('meets');
    expect(on(breaks, limit(field, value, unit)).status).toBe('breaks');
  });

  test('headroom: 80 in meets, and a nanometre of opening less breaks', () => {
    const { needed } = planOf(LOFT).layout.opening;
    const headroom = limit('headroom.min', 80, 'in');
    const opening = (mm: number) => on({ survey: { openingFraming: `${mm.toFixed(6)} mm` } }, headroom).status;
    expect(opening((needed as number) + 1e-6)).toBe('meets');
    expect(opening((needed as number) - 2e-6)).toBe('breaks');
  });

  test('headroom that comes out as a round figure meets that figure exactly', () => {
    // R 180, G 240, no nosing: an edge at x = 40 stands under 210 mm of nosing line, of 2520 less 250.
    const layout = planOf(
      changed(SLAB, {
        survey: {
          rise: '2520 mm',
          lowerToAdd: '0 mm',
          upperToAdd: '0 mm',
          floorDepth: '250 mm',
          openingFraming: '3092 mm',
          headerLining: '0 mm',
        },
        steps: { risers: 14, run: '240 mm', nosing: '0 mm', riserThickness: '12 mm' },
      }),
    ).layout;
    expect(layout.opening.edgeX).toBe(40);
    const at = (value: number) => judge(layout, limit('headroom.min', value, 'mm'), ruleSet());
    expect(at(2060)).toEqual({ status: 'meets', actual: 2060, readAgain: [] });
    expect(at(2060.000001).status).toBe('breaks');
  });
});

describe('what is not judged', () => {
  test.each([
    ['a field without an entry', limit('handrail.height.min', 34, 'in')],
    ['a field that is a property of every object', limit('constructor', 34, 'in')],
    ['a limit in words', limit('riser.max', 'as the product says', 'text')],
    ['a limit that is a yes or no', limit('riser.max', true, 'bool')],
    ['a yes or no in words', limit('openRiser.allowed', 'perhaps', 'text')],
    ['a variation in other words than uniform', limit('variation.riser.max', 'small', 'rule')],
  ])('%s', (_, asked) => {
    expect(on({}, asked)).toEqual({ status: 'not-checked', actual: null, readAgain: [] });
  });

  test('headroom and width without their survey', () => {
    expect(on({ survey: { floorDepth: undefined } }, limit('headroom.min', 80, 'in')).status).toBe('not-checked');
    expect(on({ survey: { widthFraming: undefined } }, limit('width.min', 36, 'in')).status).toBe('not-checked');
  });

  test('a row that only lends its number is not listed apart', () => {
    const all = ruleSet(limit('nosing.min', 0.75, 'in'), limit('openRiser.maxSphere', 4, 'in'));
    expect(isPartOfAnother('nosing.notRequiredFromTread', all)).toBe(true);
    expect(isPartOfAnother('openRiser.freeBelowHeight', all)).toBe(true);
    expect(isPartOfAnother('riser.max', all)).toBe(false);
    // Without a rule to lend it to, it stands in the list itself.
    expect(isPartOfAnother('nosing.notRequiredFromTread', ruleSet())).toBe(false);
    const fields = planOf(LOFT).findings.map(({ field }) => field);
    expect(fields).not.toContain('nosing.notRequiredFromTread');
  });
});

describe('rules with a condition', () => {
  const least = limit('nosing.min', 0.75, 'in');
  const deep = limit('nosing.notRequiredFromTread', 11, 'in');

  test.each([
    ['11 in', 'meets'],
    ['279.399999 mm', 'breaks'],
    ['10 in', 'breaks'],
  ])('a run of %s without nosing %s, where deep treads need none', (run, status) => {
    expect(on(steps({ run, nosing: '0 in' }), least, deep).status).toBe(status);
  });

  test('without that exception every tread needs its nosing', () => {
    expect(on(steps({ run: '12 in', nosing: '0 in' }), least).status).toBe('breaks');
  });

  const sphere = limit('openRiser.maxSphere', 4, 'in');
  const free = limit('openRiser.freeBelowHeight', 30, 'in');

  test('closed risers let nothing through', () => {
    expect(on({}, sphere, free)).toEqual({ status: 'meets', actual: 0, readAgain: [] });
  });

  test('openings that stay below the free height are not judged by their size', () => {
    // Four risers of 7 3/4 in: hung, the highest opening ends at 3 × 7 3/4 − 1.
    const low: Changes = {
      survey: { rise: '31 in', lowerToAdd: '0 in', upperToAdd: '0 in' },
      steps: { risers: 4, riserThickness: '0 in', treadThickness: '1 in' },
      stringer: { kicker: undefined },
    };
    expect(on(low, sphere, free)).toEqual({ status: 'meets', actual: 6.75, readAgain: [] });
    expect(on(low, sphere).status).toBe('breaks');
    const edge = limit('openRiser.freeBelowHeight', 22.25, 'in');
    expect(on(low, sphere, edge).status).toBe('meets');
    expect(on(low, sphere, limit('openRiser.freeBelowHeight', 22.24, 'in')).status).toBe('breaks');
  });

  test.each([
    [3, 'meets'],
    [4, 'not-checked'],
  ])('%d risers and a handrail that is asked for from four', (risers, status) => {
    const short: Changes = {
      survey: { rise: '22 1/2 in', lowerToAdd: '0 in', upperToAdd: '0 in' },
      steps: { risers },
      stringer: { kicker: undefined },
    };
    expect(on(short, limit('handrail.requiredFromRisers', 4, 'count'))).toEqual({
      status,
      actual: risers,
      readAgain: [],
    });
  });

  test('a guard is asked for above a drop, not on it', () => {
    const drop = (rise: string) =>
      on(
        {
          survey: { rise, lowerToAdd: '0 in', upperToAdd: '0 in' },
          steps: { risers: 4 },
          stringer: { kicker: undefined },
        },
        limit('guard.requiredAboveDrop', 30, 'in'),
      );
    expect(drop('30 in')).toEqual({ status: 'meets', actual: 30, readAgain: [] });
    expect(drop('762.000001 mm').status).toBe('not-checked');
  });

  test.each(['variation.riser.max', 'variation.riser.adjacent.max', 'variation.tread.max', 'variation.nosing.max'])(
    '%s: a straight flight on paper has no variation',
    (field) => {
      expect(on({}, limit(field, 0.375, 'in'))).toEqual({ status: 'meets', actual: 0, readAgain: [] });
    },
  );
});

describe('the list of findings', () => {
  const find = (changes: Changes, field: string) =>
    planOf(changed(LOFT, changes)).findings.filter((finding) => finding.field === field) as [Finding, ...Finding[]];

  test('rules first, then build, then taste', () => {
    const kinds = planOf(LOFT).findings.map(({ kind }) => kind);
    expect(
      [...kinds].sort((a, b) => ['rule', 'build', 'taste'].indexOf(a) - ['rule', 'build', 'taste'].indexOf(b)),
    ).toEqual(kinds);
    expect(new Set(kinds)).toEqual(new Set(['rule', 'build', 'taste']));
  });

  test('every rule carries its section and its source', () => {
    for (const finding of planOf(LOFT).findings.filter(({ kind }) => kind === 'rule')) {
      expect(finding.section).not.toBe('');
      expect(finding.source).toContain('2021');
    }
  });

  test('the worked stair breaks headroom, and by how much', () => {
    const [headroom] = find({}, 'headroom.min');
    expect(headroom).toMatchObject({ status: 'breaks', limit: 80, unit: 'in', section: 'R311.7.2' });
    expect(80 - (headroom.actual as number)).toBeCloseTo(0.0345, 3);
  });

  test.each<[string, Changes, string, string]>([
    ['throat over the old rule of thumb', {}, 'throat', 'meets'],
    ['throat under it', { stringer: { stockDepth: '9 1/4 in' } }, 'throat', 'breaks'],
    ['header contact over half', {}, 'headerContact', 'meets'],
    ['header contact under half', { survey: { headerDepth: '9 1/4 in' } }, 'headerContact', 'breaks'],
    ['no header contact at all', { survey: { headerDepth: '5 1/2 in' } }, 'headerContact', 'breaks'],
    ['wood left over the kicker', {}, 'kicker.toe', 'meets'],
    ['too little of it', { stringer: { kicker: { width: '3 1/2 in', height: '4 1/4 in' } } }, 'kicker.toe', 'breaks'],
    ['seat left behind the kicker', {}, 'kicker.seat', 'meets'],
    ['too little of it', { stringer: { kicker: { width: '6 1/2 in', height: '1 1/2 in' } } }, 'kicker.seat', 'breaks'],
    ['marks that keep the risers even', {}, 'asCut.spread', 'meets'],
    [
      'marks that do not',
      { rules: { pack: 'irc-2021', local: [{ field: 'variation.riser.max', value: '1/32 in' }] } },
      'asCut.spread',
      'breaks',
    ],
  ])('%s', (_, changes, field, status) => {
    expect(find(changes, field)[0].status).toBe(status);
  });

  test('without a header depth, a kicker or a limit on variation nothing is made up', () => {
    expect(find({ survey: { headerDepth: undefined } }, 'headerContact')).toEqual([]);
    expect(find({ stringer: { kicker: undefined } }, 'kicker.toe')).toEqual([]);
    expect(find({ rules: { pack: 'elsewhere' } }, 'asCut.spread')).toEqual([]);
  });

  test('build findings speak the unit of the job', () => {
    const metric = planOf(SLAB).findings.find(({ field }) => field === 'throat');
    expect(metric).toMatchObject({ unit: 'mm', source: 'common practice, no source' });
    expect(metric?.actual).toBeCloseTo(137.9, 1);
    expect(metric?.limit).toBeCloseTo(88.9, 9);
    expect(find({}, 'throat')[0].limit).toBeCloseTo(3.5, 12);
  });

  test.each<[string, Changes, string, number]>([
    ['taste.twoRPlusG', {}, 'breaks', 25],
    ['taste.twoRPlusG', steps({ run: '10 in' }), 'meets', 25],
    ['taste.twoRPlusG', steps({ run: '8 in', nosing: '1 in' }), 'breaks', 24],
    ['taste.rPlusG', {}, 'meets', 19],
    ['taste.rPlusG', steps({ run: '9 in' }), 'breaks', 17],
    ['taste.rPlusG', steps({ run: '12 in' }), 'breaks', 19],
    ['taste.rTimesG', {}, 'breaks', 75],
    ['taste.rTimesG', steps({ run: '9 in' }), 'breaks', 70],
    ['taste.rTimesG', steps({ run: '10 in' }), 'meets', 75],
  ])('%s %j', (field, changes, status, bound) => {
    expect(find(changes, field)[0]).toMatchObject({ kind: 'taste', status, limit: bound });
  });
});
