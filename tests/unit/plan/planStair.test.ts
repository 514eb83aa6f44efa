import { describe, expect, test, vi } from 'vitest';
import * as check from '../../../src/core/check/checkLayout';
import type { JobText } from '../../../src/core/job/jobText';
import { planJob, planStair } from '../../../src/core/plan/planStair';
import { failure, invariant, problem, success } from '../../../src/core/result';
import { BOOK, bare, changed, DECK, faultsOf, LOFT, planOf } from '../../fixtures/stairs';

const both = (...jobs: JobText[]): JobText => ({ ...LOFT, stairs: jobs.flatMap(({ stairs }) => stairs) });
const refused = (job: JobText) => {
  const plans = planJob(job, BOOK);
  return plans.ok ? [] : plans.problems.map(({ place, code }) => `${place} ${code}`);
};

describe('one stair', () => {
  test('a plan holds everything that is shown', () => {
    const plan = planOf(LOFT);
    expect(plan.layout.draft).toBe(false);
    expect(plan.findings.length).toBeGreaterThan(20);
    expect(plan.sheet.tips).toHaveLength(13);
    expect(plan.rules.pack?.id).toBe('irc-2021');
  });

  test('rules that cannot be read and a stair that cannot be read are named together', () => {
    const job = changed(LOFT, { rules: { local: [{ field: 'riser.max', value: 'tall' }] }, survey: { rise: '?' } });
    expect(faultsOf(job)).toEqual(['rules.local[0].value local.value', 'stairs[0].survey.rise length.unread']);
  });

  test('the pack that was left out is listed as used, one that was named is not', () => {
    const { rules: _, ...without } = LOFT;
    expect(planOf(without).defaults).toContainEqual({ key: 'rules.pack', used: 'irc-2021' });
    expect(planOf({ ...LOFT, rules: { local: [] } }).defaults).toContainEqual({ key: 'rules.pack', used: 'irc-2021' });
    expect(planOf(LOFT).defaults.map(({ key }) => key)).not.toContain('rules.pack');
  });

  test.each([
    ['a pack that is not there', { pack: 'elsewhere' }, ['note.noHeadroomLimit', 'note.packMissing']],
    ['a profile that is not there', { pack: 'irc-2021', profile: 'lighthouse' }, ['note.profileMissing']],
    [
      'a profile of a pack that is not there',
      { pack: 'elsewhere', profile: 'dwelling' },
      ['note.noHeadroomLimit', 'note.packMissing'],
    ],
  ])('%s is noted', (_, rules, codes) => {
    expect(planOf({ ...LOFT, rules }).notes.map(({ code }) => code)).toEqual(codes);
  });

  test('without a pack nothing is checked against rules', () => {
    const kinds = planOf({ ...LOFT, rules: { pack: 'elsewhere' } }).findings.map(({ kind }) => kind);
    expect(kinds).not.toContain('rule');
  });

  test('a local rule counts without any pack', () => {
    const rules = { pack: 'elsewhere', local: [{ field: 'riser.max', value: '8 in' }] };
    const job = changed(LOFT, { rules, steps: { risers: 'auto' } });
    expect(planOf(job).layout.flight.risers).toBe(14);
    expect(planOf(job).findings.find(({ field }) => field === 'riser.max')?.status).toBe('meets');
  });

  test('a layout that fails its own check does not leave', () => {
    const spy = vi
      .spyOn(check, 'checkLayout')
      .mockReturnValue([{ what: 'riser', step: 3, expected: 191.5, found: 200 }]);
    try {
      const plan = planStair(LOFT, 0, BOOK);
      expect(plan).toEqual(
        failure([problem('stairs[0]', 'check.failed', { what: 'riser', step: 3, expectedMm: 191.5, foundMm: 200 })]),
      );
    } finally {
      spy.mockRestore();
    }
  });
});

describe('several stairs', () => {
  test('in their order', () => {
    const plans = planJob(both(LOFT, DECK), BOOK);
    expect(plans.ok && plans.value.map(({ layout }) => layout.job.id)).toEqual(['loft', 'deck']);
  });

  test('all or nothing, and every problem at its own place', () => {
    const wrong = changed(DECK, { survey: { rise: '?' } });
    expect(refused(both(LOFT, wrong))).toEqual(['stairs[1].survey.rise length.unread']);
    expect(refused(both(changed(LOFT, { steps: { run: '0 in' } }), wrong))).toEqual([
      'stairs[0].steps.run run.notPositive',
      'stairs[1].survey.rise length.unread',
    ]);
  });

  test('what is wrong with the whole job is said once', () => {
    expect(refused({ ...both(LOFT, DECK), markStep: '1/16' })).toEqual(['markStep length.noUnit']);
    expect(refused({ ...both(LOFT, DECK), rules: { local: [{ field: 'riser.max', value: '?' }] } })).toEqual([
      'rules.local[0].value local.value',
    ]);
  });

  test('soft covering is noted for the stair that has it', () => {
    const covered = changed(DECK, { steps: { softCovering: {} } });
    const plans = planJob(both(LOFT, covered), BOOK);
    const notes = plans.ok
      ? plans.value.map((plan) => plan.notes.map(({ code }) => code).includes('note.softCovering'))
      : [];
    expect(notes).toEqual([false, true]);
  });

  test('units belong to the job', () => {
    const plans = planJob(bare('metric', '2700 mm'), BOOK);
    expect(plans.ok && plans.value[0]?.layout.job.units).toBe('metric');
  });
});

test('results and our own mistakes', () => {
  expect(success(1)).toEqual({ ok: true, value: 1 });
  expect(() => invariant(true, 'never')).not.toThrow();
  expect(() => invariant(false, 'a stair has steps')).toThrow('a stair has steps');
});

describe('what is said about the rules', () => {
  const codesOf = (job: JobText) => planOf(job).notes.map(({ code }) => code);

  test('a pack that is not here checks nothing, unless the user set limits of their own', () => {
    expect(codesOf(changed(LOFT, { rules: { pack: 'nowhere' } }))).toContain('note.packMissing');
    const local = [{ field: 'riser.max', value: '8 in' }];
    expect(codesOf(changed(LOFT, { rules: { pack: 'nowhere', local } }))).toContain('note.packMissingLocal');
  });

  test('a local limit of a name that nothing knows is said to be without effect', () => {
    const withField = (field: string) => changed(LOFT, { rules: { local: [{ field, value: '30 in' }] } });
    expect(codesOf(withField('riser.mx'))).toContain('note.localUnknown');
    expect(codesOf(withField('riser.max'))).not.toContain('note.localUnknown');
    // A row of the pack that is only listed may be replaced too: it is listed with the new figure.
    expect(codesOf(withField('landing.minDepth'))).not.toContain('note.localUnknown');
  });
});
