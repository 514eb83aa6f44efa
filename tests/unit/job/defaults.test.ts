import { describe, expect, test } from 'vitest';
import { type DefaultKey, defaultText, nothingText } from '../../../src/core/job/defaults';
import { answerOf, bare, changed } from '../../fixtures/stairs';

/** What is used for a key that was left out. Common practice, no source. */
const TABLE: readonly (readonly [DefaultKey, string, string])[] = [
  ['markStep', '1/16 in', '0.5 mm'],
  ['survey.footBelowReading', '0 in', '0 mm'],
  ['survey.fallAlong', '0 in', '0 mm'],
  ['survey.fallAcross', '0 in', '0 mm'],
  ['survey.upperSubfloor', '3/4 in', '22 mm'],
  ['survey.headerLining', '1/2 in', '12.5 mm'],
  ['survey.wallboard', '1/2 in', '12.5 mm'],
  ['survey.skirt', '3/4 in', '18 mm'],
  ['survey.spacer', '1 1/2 in', '38 mm'],
  ['steps.nosing', '1 in', '20 mm'],
  ['steps.riserThickness', '3/4 in', '18 mm'],
  ['steps.upperNosingThickness', '3/4 in', '18 mm'],
  ['stringer.stockDepth', '11 1/4 in', '290 mm'],
  ['stringer.stockThickness', '1 1/2 in', '45 mm'],
  ['stringer.tipInset', '0 in', '0 mm'],
  ['stringer.trim', '2 in', '50 mm'],
  ['stringer.hanger', '3/4 in', '18 mm'],
  ['stringer.spacingMax', '16 in', '400 mm'],
];

const OTHERS: readonly (readonly [string, string, string])[] = [
  ['survey.lowerToAdd', 'unknown', 'unknown'],
  ['survey.upperToAdd', 'unknown', 'unknown'],
  ['survey.lowerLaid', 'after-stairs', 'after-stairs'],
  ['steps.risers', 'auto', 'auto'],
  ['steps.run', '10 in', '254 mm'],
  ['steps.treadThickness', 'unknown, laid out as 1 in', 'unknown, laid out as 25 mm'],
  ['steps.joint', 'tread-butts-riser', 'tread-butts-riser'],
  ['stringer.top', 'hanger-is-riser', 'hanger-is-riser'],
  ['stringer.count', 'auto', 'auto'],
  ['rules.pack', 'irc-2021', 'irc-2021'],
];

describe.each([
  ['imperial', bare('imperial', '105 in'), 1],
  ['metric', bare('metric', '2700 mm'), 2],
] as const)('a stair that says only its rise, %s', (units, job, column) => {
  const answer = answerOf(job);
  const used = new Map(answer.defaults.map(({ key, used: text }) => [key, text]));

  test.each([...TABLE, ...OTHERS])('%s', (...row) => {
    expect(used.get(row[0])).toBe(row[column]);
  });

  test('every default that was used is listed once, and nothing else is', () => {
    expect(answer.defaults).toHaveLength(used.size);
    expect([...used.keys()].sort()).toEqual([...TABLE, ...OTHERS].map(([key]) => key).sort());
  });

  test('what nobody has said is unknown, so the layout is a draft', () => {
    expect(answer.unknowns).toEqual(['survey.lowerToAdd', 'survey.upperToAdd', 'steps.treadThickness']);
    expect(answer.draft).toBe(true);
  });

  test('a key that was given is no longer among them', () => {
    const given = answerOf(
      changed(job, { steps: { risers: 14, joint: 'riser-on-tread' }, rules: { pack: 'irc-2021' } }),
    );
    const keys = given.defaults.map(({ key }) => key);
    expect(keys).not.toContain('steps.risers');
    expect(keys).not.toContain('steps.joint');
    expect(keys).not.toContain('rules.pack');
  });

  test('the text is the one that the reader uses', () => {
    for (const row of TABLE) expect(defaultText(row[0], units)).toBe(row[column]);
  });
});

test('without units the job is in inches, and that is listed too', () => {
  const { units: _, ...job } = bare('imperial', '105 in');
  expect(answerOf(job).defaults).toContainEqual({ key: 'units', used: 'imperial' });
  expect(answerOf(bare('imperial', '105 in')).defaults.map(({ key }) => key)).not.toContain('units');
});

test.each([
  ['level-with-floor', 'imperial', '0 in'],
  ['level-with-floor', 'metric', '0 mm'],
  ['header-behind-riser', 'imperial', '0 in'],
  ['header-behind-riser', 'metric', '0 mm'],
  ['hanger-behind-riser', 'imperial', '3/4 in'],
  ['hanger-behind-riser', 'metric', '18 mm'],
] as const)('a hanger left out under %s, %s, is %s', (top, units, used) => {
  const rise = units === 'imperial' ? '105 in' : '2700 mm';
  const answer = answerOf(changed(bare(units, rise), { stringer: { top } }));
  expect(answer.defaults).toContainEqual({ key: 'stringer.hanger', used });
  expect(nothingText(units)).toBe(units === 'metric' ? '0 mm' : '0 in');
});

test('level with the floor, the top tread that was left out is the run', () => {
  const answer = answerOf(changed(bare('imperial', '105 in'), { stringer: { top: 'level-with-floor' } }));
  expect(answer.defaults).toContainEqual({ key: 'stringer.topTreadRun', used: '10 in' });
  expect(answer.lastLevelCut).toBe(answer.run);
});
