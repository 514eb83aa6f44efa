import { describe, expect, test } from 'vitest';
import {
  chooseRules,
  inRuleUnit,
  type Limit,
  limitFor,
  type RuleChoice,
  type RulePack,
} from '../../../src/core/codes/rulePack';
import { inch, toMm, whole } from '../../../src/core/units/exact';

const row = (
  field: string,
  value: RulePack['rows'][number]['value'],
  unit: RulePack['rows'][number]['unit'],
  profile?: string,
) => ({
  field,
  value,
  unit,
  section: '1',
  confidence: 'seen' as const,
  sources: ['A'],
  profile,
});

function pack(profiles: readonly string[]): RulePack {
  return {
    id: 'test',
    title: 'A code of this test',
    edition: '2000',
    jurisdiction: 'nowhere',
    profiles,
    sources: { A: 'here' },
    rows: [
      row('riser.max', 7.75, 'in'),
      row('tread.min', 240, 'mm'),
      row('flight.maxRisers', 16, 'count'),
      row('width.min', 36, 'in', 'dwelling'),
      row('width.min', 44, 'in', 'other'),
      row('scope', 'stairs', 'text'),
      row('other', 'one', 'text'),
      row('other', 'two', 'text'),
      row('none', null, 'none'),
    ],
  };
}

function rules(choice: Partial<RuleChoice> = {}, profiles: readonly string[] = ['other', 'dwelling']) {
  const result = chooseRules({ pack: 'test', ...choice }, (id) => (id === 'test' ? pack(profiles) : undefined));
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
}

const width = (set: ReturnType<typeof rules>) => limitFor(set, 'width.min');

describe('which rows are in force', () => {
  test.each<[string, Partial<RuleChoice>, string[], string | null, boolean, number | null]>([
    ['the dwelling, where the pack has one', {}, ['other', 'dwelling'], 'dwelling', false, 36],
    ['the private one', {}, ['other', 'private'], 'private', false, null],
    ['else the first', {}, ['other', 'third'], 'other', false, 44],
    ['none, where there are none', {}, [], null, false, null],
    ['the one that was asked for', { profile: 'other' }, ['other', 'dwelling'], 'other', false, 44],
    ['the usual one, where that is unknown', { profile: 'lighthouse' }, ['other', 'dwelling'], 'dwelling', true, 36],
  ])('%s', (_, choice, profiles, profile, missing, inches) => {
    const set = rules(choice, profiles);
    expect([set.profile, set.profileMissing]).toEqual([profile, missing]);
    expect(width(set)).toEqual(inches === null ? null : inch(inches));
  });

  test('numbers are exact, words are not numbers', () => {
    const set = rules();
    expect(toMm(limitFor(set, 'riser.max') as never)).toBe(196.85);
    expect(toMm(limitFor(set, 'tread.min') as never)).toBe(240);
    expect([limitFor(set, 'scope'), limitFor(set, 'none'), limitFor(set, 'nowhere')]).toEqual([null, null, null]);
    expect(set.limits.filter(({ field }) => field === 'other')).toHaveLength(2);
  });

  test('a pack that is not there has no limits, and is named', () => {
    const set = rules({ pack: 'elsewhere' });
    expect([set.pack, set.packId, set.limits]).toEqual([null, 'elsewhere', []]);
  });

  test('a missing pack is no missing profile of it', () => {
    expect(rules({ pack: 'elsewhere', profile: 'dwelling' }).profileMissing).toBe(true);
  });
});

describe('local rules', () => {
  const local = (field: string, value: string, note?: string): Limit | undefined =>
    rules({ local: [{ field, value, note }] }).limits.find((limit) => limit.field === field);

  test('replace a row, in its unit, with the note as source', () => {
    expect(local('riser.max', '8 1/4 in', 'county amendment')).toMatchObject({
      value: 8.25,
      unit: 'in',
      source: 'county amendment',
      confidence: 'local',
      section: '',
    });
    expect(local('riser.max', '210 mm')).toMatchObject({ unit: 'in', source: '' });
    expect(local('tread.min', '10 in')).toMatchObject({ unit: 'mm', value: 254 });
  });

  test.each([
    ['headroom.min', '80 in', 'in', 80],
    ['headroom.min', '2000 mm', 'mm', 2000],
    ['headroom.min', '2 m', 'mm', 2000],
    ['flight.maxRisers', '12', 'count', 12],
    ['flight.minRisers', '3', 'count', 3],
    ['handrail.requiredFromRisers', '2.5', 'count', 2.5],
  ])('add %s %s', (field, value, unit, figure) => {
    expect(local(field, value)).toMatchObject({ unit, value: figure });
  });

  test('the last one for a field stands', () => {
    const set = rules({
      local: [
        { field: 'riser.max', value: '8 in' },
        { field: 'riser.max', value: '9 in' },
      ],
    });
    expect(set.limits.filter(({ field }) => field === 'riser.max').map(({ value }) => value)).toEqual([9]);
  });

  test.each([
    ['riser.max', 'tall'],
    ['riser.max', '8'],
    ['riser.max', ''],
    ['tread.min', '240'],
    ['flight.maxRisers', '12 in'],
    ['flight.maxRisers', 'twelve'],
    ['scope', '  '],
    ['nowhere', '1e9'],
  ])('%s %j cannot be read', (field, value) => {
    const result = chooseRules(
      {
        pack: 'test',
        local: [
          { field: 'riser.max', value: '8 in' },
          { field, value },
        ],
      },
      () => pack([]),
    );
    expect(result).toMatchObject({ ok: false, problems: [{ place: 'rules.local[1].value', code: 'local.value' }] });
  });
});

test('a length is shown in the unit of its rule', () => {
  expect(inRuleUnit(inch(7.75), 'in')).toBe(7.75);
  expect(inRuleUnit(inch(7.75), 'mm')).toBe(196.85);
  expect(inRuleUnit(whole(14), 'count')).toBe(14);
});
