/** The step Check: what a finding tells, what can be done about it there, and what the place asks instead. */
import { screen, waitFor, within } from '@testing-library/react';
import { describe, expect, it } from 'vitest';
import type { JobText } from '../../src/core/job/jobText';
import { demoJob } from '../../src/document/demoJob';
import { canUndo } from '../../src/state/plannerStore';
import { atStep, demoWith, field, form, openPage, readBy, retype } from './bench';

const findings = () => within(screen.getByRole('region', { name: 'Against the rules' }));
const rowOf = (rule: string): HTMLElement => {
  const row = findings().getAllByText(rule)[0]?.closest('li');
  if (row === null || row === undefined) throw new Error(`no row for ${rule}`);
  return row;
};

/** Fourteen risers where fifteen would do. */
function tooTall(): JobText {
  const [stair] = demoJob.stairs;
  const survey = { rise: '110 in', lowerToAdd: '0 in', upperToAdd: '0 in' };
  return demoWith({ survey, steps: { ...stair?.steps, risers: 14 } });
}

describe('a finding that breaks', () => {
  it('says how it is measured, where, by how much, in which code, and where that can be read', async () => {
    const { user } = await openPage({ firstJob: tooTall() });
    await atStep(user, 'Check');
    const row = rowOf('Height of a riser');
    expect(readBy(row)).toContain('is 7 7/8 in, at most 7 3/4 in, 1/8 in too much');
    expect(row.textContent).toContain('Falls, every riser.');
    expect(row.textContent).toContain('Plumb, from the top of one tread to the top of the next');
    expect(row.textContent).toContain('International Residential Code, 2021, R311.7.5.1, read in the rule’s own text');
    const link = within(row).getByRole('link');
    expect([
      link.getAttribute('href'),
      link.getAttribute('rel'),
      link.getAttribute('target'),
      link.textContent,
    ]).toEqual(['https://codes.iccsafe.org', 'noreferrer noopener', '_blank', 'codes.iccsafe.org']);
  });

  it('lights up in the drawing', async () => {
    const { user } = await openPage({ firstJob: tooTall() });
    await atStep(user, 'Check');
    expect(document.querySelectorAll('.lit')).toHaveLength(0);
    await user.click(within(rowOf('Height of a riser')).getByRole('button', { name: 'Height of a riser' }));
    await waitFor(() => expect(document.querySelectorAll('.lit').length).toBeGreaterThan(0));
  });

  it('is cleared by one touch, as one step of undo', async () => {
    const { user, planner, present } = await openPage({ firstJob: tooTall() });
    await atStep(user, 'Check');
    await user.click(await within(rowOf('Height of a riser')).findByRole('button', { name: /^15 risers/ }));
    expect(present().stairs[0]?.steps?.risers).toBe(15);
    await waitFor(() => expect(findings().queryByRole('heading', { name: 'What breaks' })).toBeNull());
    planner.actions.undo();
    expect(present()).toEqual(tooTall());
    expect(canUndo(planner.store.getState())).toBe(false);
  });
});

describe('what was not checked', () => {
  it('stands in the same list, in sight, with its limit and section', async () => {
    const { user } = await openPage();
    await atStep(user, 'Check');
    const row = rowOf('Guard on the level');
    expect(row.closest('details')?.open).toBe(true);
    expect(readBy(row)).toContain('at least 36 in');
    expect(row.textContent).toContain('R312.1.2');
  });
});

describe('how far the tape may be out', () => {
  it('is 1/16 in until one says so, and decides what is too close to call', async () => {
    const survey = { rise: '108 3/8 in', lowerToAdd: '0 in', upperToAdd: '0 in' };
    const steps = { ...demoJob.stairs[0]?.steps, risers: 14 };
    const { user, present } = await openPage({ firstJob: demoWith({ survey, steps }) });
    await atStep(user, 'Check');
    // 108 1/2 in would be the limit: an eighth away.
    expect(rowOf('Height of a riser').className).toContain('finding-meets');
    await retype(user, field('A tape reading may be out by'), '1/4');
    expect(present().tapeDoubt).toBe('1/4 in');
    await waitFor(() => expect(rowOf('Height of a riser').className).toContain('finding-close'));
    expect(rowOf('Height of a riser').textContent).toContain('Read again: Rise today.');
    await retype(user, field('A tape reading may be out by'), '3');
    expect(screen.getAllByText(/a tape that may be out by more than 1\/2 in settles nothing/).length).toBeGreaterThan(
      0,
    );
    expect(present().tapeDoubt).toBe('1/4 in');
  });
});

describe('local limits', () => {
  const add = () => form().getByRole('button', { name: 'Add a local limit' });
  const what = () => form().getByLabelText('Another limit: what');
  const much = () => form().getByLabelText<HTMLInputElement>('Another limit: how much');

  it('begin at the pack’s figure, carry who says so, and stand beside it', async () => {
    const { user, present } = await openPage();
    await atStep(user, 'Check');
    await user.selectOptions(what(), 'Headroom, plumb from the nosing line');
    expect(much().value).toBe('80 in');
    await retype(user, much(), '82');
    await user.type(form().getByLabelText('Another limit: who says so, where, since when'), 'Elm, ord. 14, 2025');
    await user.click(add());
    expect(present().rules?.local).toEqual([{ field: 'headroom.min', value: '82 in', note: 'Elm, ord. 14, 2025' }]);
    expect(form().getByText('These rules say 80 in, R311.7.2.')).toBeTruthy();
    const row = rowOf('Headroom, plumb from the nosing line');
    expect(readBy(row)).toContain('local limit: Elm, ord. 14, 2025; in place of 80 in, R311.7.2');
  });

  it.each([
    ['Height of a riser', '-8 in', /less than nothing, which limits no stair; write a length with its unit/],
    ['Height of a riser', '8 deg', /cannot be read as this limit; write a length with its unit/],
    ['Pitch of the stair over level, the most', '95 deg', /write an angle up to plumb/],
  ])('%s of %s is refused in a sentence, and nothing is lost', async (rule, value, sentence) => {
    const { user, present } = await openPage();
    await atStep(user, 'Check');
    await user.selectOptions(what(), rule);
    await retype(user, much(), value);
    await user.click(add());
    expect(form().getByText(sentence)).toBeTruthy();
    expect(much().value).toBe(value);
    expect(present().rules?.local).toBeUndefined();
  });

  it('that cross each other are refused; one that crosses the pack is said', async () => {
    const { user, present } = await openPage();
    await atStep(user, 'Check');
    await user.selectOptions(what(), 'Height of a riser, the least');
    await retype(user, much(), '8 in');
    await user.click(add());
    expect(present().rules?.local).toHaveLength(1);
    expect(form().getAllByText(/no stair can meet both/).length).toBeGreaterThan(0);
    await user.selectOptions(what(), 'Height of a riser');
    await retype(user, much(), '7 in');
    await user.click(add());
    expect(form().getByText(/riser\.min asks for at least 8 in and riser\.max for at most 7 in/)).toBeTruthy();
    expect(present().rules?.local).toHaveLength(1);
  });
});

describe('known local changes', () => {
  it('are those of the rules in force, from a copy, taken up and out by one touch each', async () => {
    const { user, planner, present } = await openPage();
    await atStep(user, 'Check');
    expect(form().getByText(/^From a copy: read them in the place’s own text/)).toBeTruthy();
    const take = await form().findByRole('button', { name: 'Take up the changes of New Jersey' });
    expect(form().queryByRole('button', { name: /New York|Ohio/ })).toBeNull();
    expect(readBy(take.closest('li'))).toContain('Height of a riser: 8 1/4 in in place of 7 3/4 in');
    await user.click(take);
    expect(present().rules?.local?.map(({ field: name, value }) => `${name} ${value}`)).toEqual([
      'riser.max 8.25 in',
      'tread.min 9 in',
      'winder.minAtWalkline 9 in',
      'handrail.height.min 30 in',
    ]);
    expect(rowOf('Height of a riser').textContent).toContain('New Jersey; from a copy');
    await user.click(form().getByRole('button', { name: 'Take out the changes of New Jersey' }));
    expect(present().rules).toEqual({ pack: 'irc-2021' });
    planner.actions.undo();
    expect(present().rules?.local).toHaveLength(4);
    planner.actions.undo();
    expect(present()).toEqual(demoJob);
  });
});
