import { describe, expect, test } from 'vitest';
import { kindOf, knownFields, mostOf } from '../../../src/core/codes/fieldKinds';
import { findOn } from '../../../src/core/codes/findings';
import { rulesInForce } from '../../../src/core/codes/inForce';
import { judge } from '../../../src/core/codes/judge';
import { localNotes } from '../../../src/core/codes/localLimits';
import { chooseRules, type Limit, type RulePack, type RuleRow, type RuleUnit } from '../../../src/core/codes/rulePack';
import type { LocalRuleText } from '../../../src/core/job/jobText';
import type { Problem } from '../../../src/core/result';
import { inch, whole } from '../../../src/core/units/exact';
import { sayProblem, speakerFor } from '../../../src/text/say';
import { answerOf, changed, faultsOf, LOFT, planOf, refusalOf } from '../../fixtures/stairs';

const row = (field: string, value: RuleRow['value'], unit: RuleUnit): RuleRow => ({
  field,
  value,
  unit,
  section: `section of ${field}`,
  confidence: 'seen',
  sources: ['A'],
});

const PACK: RulePack = {
  id: 'test',
  title: 'A code of this test',
  edition: '2000',
  jurisdiction: 'nowhere',
  profiles: [],
  sources: { A: 'here' },
  rows: [
    row('riser.max', 7.75, 'in'),
    row('handrail.height.max', 1000, 'mm'),
    row('pitch.max', 42, 'deg'),
    row('walkingSurface.slope.max', 48, '1:n'),
    row('openRiser.allowed', true, 'bool'),
    row('winder.allowed', true, 'bool'),
    row('flight.maxRisers', 16, 'count'),
    row('load.uniform', 40, 'psf'),
    row('load.guard', 200, 'lbf'),
    row('load.handrail', 0.9, 'kN'),
    row('load.other', 1.9, 'kPa'),
    row('illumination.min', 1, 'fc'),
    row('vent.min', 70, 'in2'),
    row('landing.minWidth', 'as wide as the flight', 'rule'),
    row('scope', 'all stairs', 'text'),
    row('variation.riser.max', 'uniform', 'rule'),
    row('width.min', null, 'none'),
    row('winder.minNarrow', null, 'none'),
    { ...row('nosing.min', 0.75, 'in'), when: 'closed-risers' },
    { ...row('guard.requiredAboveDrop', 1000, 'mm'), inclusive: true },
    { ...row('twoRPlusG.max', 700, 'mm'), advice: true },
    row('other', 'one', 'text'),
    row('other', 12, 'count'),
  ],
};

const chosen = (local: readonly LocalRuleText[]) => chooseRules({ pack: 'test', local }, () => PACK);

function limitOf(field: string, value: string): Limit | undefined {
  const rules = chosen([{ field, value }]);
  return rules.ok ? rules.value.limits.find((limit) => limit.field === field) : undefined;
}

describe('a local value is read as what its rule holds', () => {
  test.each<[string, string, RuleUnit, RuleRow['value']]>([
    ['riser.max', '8 1/4 in', 'in', 8.25],
    ['riser.max', '209.55 mm', 'in', 8.25],
    ['handrail.height.max', '38 in', 'mm', 965.2],
    ['pitch.max', '41', 'deg', 41],
    ['pitch.max', '41.5 deg', 'deg', 41.5],
    ['pitch.max', '90°', 'deg', 90],
    ['walkingSurface.slope.max', '50', '1:n', 50],
    ['walkingSurface.slope.max', '1:50', '1:n', 50],
    ['walkingSurface.slope.max', '1 in 50', '1:n', 50],
    ['openRiser.allowed', 'no', 'bool', false],
    ['openRiser.allowed', 'Yes', 'bool', true],
    ['winder.allowed', 'false', 'bool', false],
    ['winder.allowed', 'true', 'bool', true],
    ['flight.maxRisers', ' 12 ', 'count', 12],
    ['load.uniform', '60 psf', 'psf', 60],
    ['load.uniform', '60', 'psf', 60],
    ['load.guard', '250 lbf', 'lbf', 250],
    ['load.handrail', '1 kN', 'kN', 1],
    ['load.other', '4.8 kPa', 'kPa', 4.8],
    ['illumination.min', '10 fc', 'fc', 10],
    ['vent.min', '72 sq in', 'in2', 72],
    // Where the pack has words or nothing, what the field is judged by says what it is.
    ['width.min', '900 mm', 'mm', 900],
    ['width.min', '36 in', 'in', 36],
    ['variation.riser.max', '3/8 in', 'in', 0.375],
    ['pitch.min', '25', 'deg', 25],
    ['flight.minRisers', '3', 'count', 3],
    ['tread.max', '14 in', 'in', 14],
    // Where nobody judges it, the text itself does.
    ['landing.minWidth', '36 in', 'in', 36],
    ['landing.minWidth', 'as the flight, and 4 in more', 'text', 'as the flight, and 4 in more'],
    ['scope', 'everywhere', 'text', 'everywhere'],
    ['scope', '12', 'count', 12],
    ['winder.minNarrow', '50 mm', 'mm', 50],
    ['somewhere.new', '2 m', 'mm', 2000],
    ['somewhere.new', '30 deg', 'deg', 30],
    ['somewhere.new', '1:20', '1:n', 20],
    ['somewhere.new', '100 psf', 'psf', 100],
    ['somewhere.new', '5', 'count', 5],
    ['somewhere.new', 'yes', 'bool', true],
  ])('%s %j is %s %j', (field, value, unit, figure) => {
    expect(limitOf(field, value)).toMatchObject({ unit, value: figure, confidence: 'local' });
  });

  test.each([
    ['riser.max', '42 deg'],
    ['riser.max', 'yes'],
    ['pitch.max', '91'],
    ['pitch.max', '42 in'],
    ['pitch.max', '1:48'],
    ['pitch.min', 'steep'],
    ['walkingSurface.slope.max', '1:'],
    ['openRiser.allowed', 'perhaps'],
    ['openRiser.allowed', '1'],
    ['load.uniform', '60 lbf'],
    ['tread.max', '14'],
    ['width.min', 'wide'],
    ['variation.riser.max', 'uniform'],
    ['winder.minNarrow', 'a point'],
    ['scope', ''],
    ['somewhere.new', 'words'],
    ['somewhere.new', '95 deg'],
    ['flight.minRisers', '1000000000'],
  ])('%s %j cannot be read', (field, value) => {
    expect(chosen([{ field, value }])).toMatchObject({
      ok: false,
      problems: [{ code: 'local.value', values: { found: value } }],
    });
  });

  test.each([
    ['riser.max', '-8 in', 'length'],
    ['flight.maxRisers', '-3', 'count'],
    ['pitch.max', '-42 deg', 'angle'],
    ['load.uniform', '\u221240 psf', 'load'],
  ])('%s %j is less than nothing, and is said to be', (field, value, kind) => {
    expect(chosen([{ field, value }])).toMatchObject({
      ok: false,
      problems: [{ place: 'rules.local[0].value', code: 'local.negative', values: { found: value, kind } }],
    });
  });

  test.each([
    ['riser.max', '8 deg', 'a length with its unit, such as "8 1/4 in" or "210 mm"'],
    ['riser.max', '8', 'a length with its unit'],
    ['pitch.max', '42 in', 'an angle up to plumb, such as "42 deg"'],
    ['pitch.max', '95 deg', 'an angle up to plumb'],
    ['flight.maxRisers', '16 in', 'a whole number, such as "16"'],
    ['openRiser.allowed', '4 in', 'yes or no'],
    ['walkingSurface.slope.max', '2 percent', 'a slope, such as "1:48"'],
    ['load.uniform', '40 in', 'a load in the unit of the rule'],
    ['somewhere.new', 'words', 'it as the rule has it'],
  ])('%s %j: the sentence says what would be right', (field, value, right) => {
    const reading = chosen([{ field, value }]);
    if (reading.ok) throw new Error('taken');
    const [found] = reading.problems;
    const words = sayProblem(speakerFor('us'), found as Problem, 'imperial');
    expect(words).toContain(`"${value}"`);
    expect(words).toContain(right);
  });

  test('what it stands in place of stays beside it, and what the row is for still holds', () => {
    expect(limitOf('riser.max', '8 in')?.replaced).toEqual({
      value: 7.75,
      unit: 'in',
      section: 'section of riser.max',
    });
    expect(limitOf('width.min', '36 in')?.replaced).toEqual({
      value: null,
      unit: 'none',
      section: 'section of width.min',
    });
    expect(limitOf('tread.max', '14 in')?.replaced).toBeUndefined();
    expect(limitOf('nosing.min', '1 in')?.when).toBe('closed-risers');
    expect(limitOf('guard.requiredAboveDrop', '900 mm')?.inclusive).toBe(true);
    expect(limitOf('twoRPlusG.max', '650 mm')?.advice).toBeUndefined();
    // A field with several rows: the figure counts, not the words.
    expect(limitOf('other', '13')?.replaced).toMatchObject({ value: 12 });
  });

  test('a rule that is replaced twice still shows what the pack says', () => {
    const rules = chosen([
      { field: 'riser.max', value: '8 in' },
      { field: 'riser.max', value: '9 in' },
    ]);
    const [limit] = rules.ok ? rules.value.limits.filter(({ field }) => field === 'riser.max') : [];
    expect([limit?.value, limit?.replaced?.value]).toEqual([9, 7.75]);
  });

  test('the finding carries it', () => {
    const local = [{ field: 'riser.max', value: '8 1/4 in', note: 'county' }];
    const plan = planOf(changed(LOFT, { rules: { pack: 'irc-2021', local } }));
    const of = (field: string) => plan.findings.find((finding) => finding.field === field);
    expect(of('riser.max')).toMatchObject({
      limit: 8.25,
      source: 'county',
      confidence: 'local',
      replaced: { value: 7.75, unit: 'in', section: 'R311.7.5.1' },
    });
    expect(of('tread.min')?.replaced).toBeNull();
    expect(of('throat')?.replaced).toBeNull();
  });
});

describe('local rules that contradict each other', () => {
  const locals = (...pairs: [string, string][]) => pairs.map(([field, value]) => ({ field, value }));

  test.each<[string, LocalRuleText[]]>([
    ['lengths in one unit', locals(['tread.min', '11 in'], ['tread.max', '10 in'])],
    ['lengths in two units', locals(['tread.min', '255 mm'], ['tread.max', '10 in'])],
    ['the other way round', locals(['tread.max', '10 in'], ['tread.min', '11 in'])],
    ['counts', locals(['flight.minRisers', '4'], ['flight.maxRisers', '3'])],
    ['angles', locals(['pitch.min', '40'], ['pitch.max', '39'])],
    ['what nobody judges', locals(['grip.min', '2 in'], ['grip.max', '1 in'])],
  ])('%s: refused, with both named', (_, local) => {
    const rules = chosen(local);
    expect(rules).toMatchObject({ ok: false, problems: [{ place: 'rules.local[1].value', code: 'local.crossed' }] });
    const values = rules.ok ? {} : rules.problems[0]?.values;
    expect(new Set([values?.['least'], values?.['most']])).toEqual(new Set(local.map(({ field }) => field)));
    expect(new Set([values?.['leastValue'], values?.['mostValue']])).toEqual(new Set(local.map(({ value }) => value)));
  });

  test.each<[string, LocalRuleText[]]>([
    ['least and most alike', locals(['tread.min', '254 mm'], ['tread.max', '10 in'])],
    ['the last one for a field stands', locals(['tread.min', '11 in'], ['tread.max', '10 in'], ['tread.min', '9 in'])],
    ['what cannot be compared', locals(['grip.min', '2 in'], ['grip.max', '1'])],
    ['words', locals(['grip.min', 'yes'], ['grip.max', '1 in'])],
    ['a least without a most', locals(['tread.min', '11 in'], ['riser.max', '10 in'])],
    ['the pack’s own most, which this place may not know', locals(['riser.min', '9 in'])],
  ])('%s: not refused', (_, local) => {
    expect(chosen(local).ok).toBe(true);
  });

  test('one that crosses the pack is laid out, and it is said that no stair can meet both', () => {
    const notesOf = (...local: [string, string][]) =>
      planOf(changed(LOFT, { rules: { pack: 'irc-2021', local: locals(...local) } })).notes.filter(
        ({ code }) => code === 'note.localCrossed',
      );
    expect(notesOf(['riser.min', '8 in'])).toEqual([
      {
        code: 'note.localCrossed',
        values: { least: 'riser.min', leastValue: '8 in', most: 'riser.max', mostValue: '7.75 in' },
      },
    ]);
    expect(notesOf(['handrail.height.max', '30 in'])).toHaveLength(1);
    expect(notesOf(['riser.min', '4 in'], ['nosing.max', '19.05 mm'])).toEqual([]);
  });

  test('the command says both in one line', () => {
    const local = locals(['tread.min', '11 in'], ['tread.max', '10 in']);
    const job = changed(LOFT, { rules: { pack: 'irc-2021', local } });
    expect(faultsOf(job)).toEqual(['rules.local[1].value local.crossed']);
    const [line = ''] = refusalOf(job);
    expect(line).toMatch(/^rules\.local\[1\]\.value: tread\.min .*11 in.* tread\.max .*10 in/);
  });
});

test('a load in newtons stands in the findings in its own unit, advice among taste', () => {
  const rules = chooseRules({ pack: 'test' }, () => PACK);
  if (!rules.ok) throw new Error('refused');
  const found = findOn(planOf(LOFT).layout, rules.value, []);
  expect(found.find(({ field }) => field === 'load.handrail')).toMatchObject({
    limit: 0.9,
    unit: 'kN',
    status: 'not-checked',
  });
  expect(found.find(({ field }) => field === 'load.other')).toMatchObject({ limit: 1.9, unit: 'kPa' });
  expect(found.find(({ field }) => field === 'twoRPlusG.max')?.kind).toBe('taste');
});

test('every field that is known is judged or lends its figure, and none else is judged', () => {
  const { layout } = planOf(LOFT);
  const rules = { pack: null, packId: '', profile: null, profileMissing: false, limits: [] };
  const lent = ['nosing.notRequiredFromTread', 'openRiser.freeBelowHeight'];
  for (const field of knownFields()) {
    const unit = { length: 'in', angle: 'deg', count: 'count', yesNo: 'bool' } as const;
    const kind = kindOf(field) as keyof typeof unit;
    const limit: Limit = {
      field,
      value: kind === 'yesNo' ? true : 40,
      unit: unit[kind],
      exact: kind === 'yesNo' ? null : inch(40),
      section: '1',
      source: '',
      confidence: 'seen',
    };
    const asksForMore = /^(handrail|guard)\./.test(field);
    const { status, actual } = judge(layout, limit, rules);
    if (lent.includes(field)) expect(status, field).toBe('not-checked');
    else if (!asksForMore) expect(status, field).not.toBe('not-checked');
    else expect(actual, field).not.toBeNull();
  }
  expect(kindOf('handrail.height.min')).toBeUndefined();
  expect(kindOf('constructor')).toBeUndefined();
});

test('a least has its most', () => {
  expect([mostOf('riser.min'), mostOf('flight.minRisers'), mostOf('riser.max')]).toEqual([
    'riser.max',
    'flight.maxRisers',
    null,
  ]);
});

test('the command’s answer keeps its keys', () => {
  const [finding] = answerOf(LOFT).findings;
  expect(Object.keys(finding ?? {})).toEqual([
    'field',
    'kind',
    'status',
    'actual',
    'limit',
    'unit',
    'section',
    'source',
  ]);
});

test('counts that exclude each other are said as counts', () => {
  const counts = (field: string, value: number): Limit => ({
    field,
    value,
    unit: 'count',
    exact: whole(value),
    section: '',
    source: '',
    confidence: field.includes('min') ? 'local' : 'seen',
  });
  expect(localNotes([counts('flight.minRisers', 20), counts('flight.maxRisers', 18)])).toEqual([
    {
      code: 'note.localCrossed',
      values: { least: 'flight.minRisers', leastValue: '20', most: 'flight.maxRisers', mostValue: '18' },
    },
  ]);
});

test('without its reader a job with local rules waits, and one without them does not', () => {
  const pack = () => PACK;
  expect(rulesInForce({ pack: 'test', local: [{ field: 'tread.min', value: '10 in' }] }, pack, null)).toEqual({
    ok: false,
    problems: [],
  });
  expect(rulesInForce({ pack: 'test', local: [] }, pack, null).ok).toBe(true);
  expect(rulesInForce({ pack: 'test' }, pack, null).ok).toBe(true);
});
