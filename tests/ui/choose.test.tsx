import { act, screen, waitFor, within } from '@testing-library/react';
import { describe, expect, it } from 'vitest';
import { compareLayouts } from '../../src/core/choose/compareLayouts';
import { demoJob } from '../../src/document/demoJob';
import { BOOK } from '../../src/packs/ruleBook';
import { ChooseScreen } from '../../src/ui/choose/ChooseScreen';
import { answerOf, neighboursOf } from '../../src/ui/choose/neighbours';
import { demoWith } from './bench';
import { openPart } from './part';

const survey = demoJob.stairs[0]?.survey;
if (survey === undefined) throw new Error('the example has no stair');
const SHORT_OPENING = demoWith({ survey: { ...survey, openingFraming: '124 in' } });

function side() {
  return within(screen.getByRole('region', { name: 'Side by side' }));
}

function card(name: string): HTMLElement {
  const found = side().getByRole('heading', { name }).closest('li');
  if (found === null) throw new Error(`no card for ${name}`);
  return found;
}

/** The figure of one row of a card, as it is read. */
function figure(of: HTMLElement, name: string): string {
  return within(of).getByText(name).nextElementSibling?.textContent ?? '';
}

describe('the neighbours side by side', () => {
  it('are one riser and one step of run either way, with the one in hand marked', async () => {
    await openPart(<ChooseScreen />);
    const names = side()
      .getAllByRole('heading', { level: 3 })
      .map((each) => each.getAttribute('aria-label'));
    expect(names).toEqual([
      '13 risers, run 10 in',
      '14 risers, run 9 3/4 in',
      '14 risers, run 10 in',
      '14 risers, run 10 1/4 in',
      '15 risers, run 10 in',
    ]);
    const inHand = side().getByRole('button', { name: 'In hand: 14 risers, run 10 in' });
    expect(inHand.getAttribute('aria-pressed')).toBe('true');
  });

  it('show their figures so that none looks better than it is, against the one in hand', async () => {
    await openPart(<ChooseScreen />);
    const inHand = card('14 risers, run 10 in');
    expect(figure(inHand, 'Unit rise')).toContain('7.540');
    expect(figure(inHand, 'Headroom, tightest')).toContain('80 11/16 heavy');
    expect(figure(inHand, 'Board to buy')).toBe('14 ft');
    const longer = card('14 risers, run 10 1/4 in');
    expect(figure(longer, 'Headroom, tightest')).toContain('Breaks');
    expect(figure(longer, 'Total run')).toContain('3 1/4 more than the one in hand');
    expect(within(longer).getByText('Headroom, plumb from the nosing line')).toBeTruthy();
    expect(
      within(longer).getByRole('img', { name: /^Outline: 14 risers of 7 1\/2 \+ in, run 10 1\/4 in/ }),
    ).toBeTruthy();
  });

  it('are taken with one touch, as one step of undo', async () => {
    const { user, planner, present } = await openPart(<ChooseScreen />);
    await user.click(side().getByRole('button', { name: 'Take 15 risers, run 10 in' }));
    expect(present().stairs[0]?.steps?.risers).toBe(15);
    expect(planner.store.getState().history.past).toHaveLength(1);
    expect(screen.getByText('15 risers, run 10 in: in hand.')).toBeTruthy();
    const taken = await side().findByRole('button', { name: 'In hand: 15 risers, run 10 in' });
    expect(document.activeElement).toBe(taken);
    await user.click(taken);
    expect(planner.store.getState().history.past).toHaveLength(1);
    act(() => planner.actions.undo());
    expect(present()).toEqual(demoJob);
  });
});

describe('a step either way', () => {
  it('moves risers and run, each press a step of undo', async () => {
    const { user, planner, present } = await openPart(<ChooseScreen />);
    await user.click(screen.getByRole('button', { name: 'One riser more' }));
    await user.click(screen.getByRole('button', { name: 'Run 1/4 in longer' }));
    expect(present().stairs[0]?.steps).toMatchObject({ risers: 15, run: '10 1/4 in' });
    expect(planner.store.getState().history.past).toHaveLength(2);
  });

  it('comes back to the grid from a run that is on none', async () => {
    const steps = { ...demoJob.stairs[0]?.steps, run: '10 1/16 in' };
    const { user, present } = await openPart(<ChooseScreen />, { firstJob: demoWith({ steps }) });
    await user.click(screen.getByRole('button', { name: 'Run 1/4 in shorter' }));
    expect(present().stairs[0]?.steps?.run).toBe('10 in');
  });

  it('is not taken where it leaves no stair, and says why', async () => {
    const steps = { ...demoJob.stairs[0]?.steps, run: '3 in', nosing: '1 3/8 in' };
    const { user, present } = await openPart(<ChooseScreen />, { firstJob: demoWith({ steps }) });
    await user.click(screen.getByRole('button', { name: 'Run 1/4 in shorter' }));
    expect(present().stairs[0]?.steps?.run).toBe('3 in');
    expect(screen.getByText('Not taken:')).toBeTruthy();
    await user.click(screen.getByRole('button', { name: 'Run 1/4 in longer' }));
    expect(screen.queryByText('Not taken:')).toBeNull();
  });
});

describe('the neighbours', () => {
  it('count what is hard to build too', () => {
    const all = compareLayouts(demoJob, 0, BOOK);
    const find = (id: string) => all.find((one) => one.id === id) as (typeof all)[number];
    expect(answerOf(find('14 x 254 mm'))).toBe('meets');
    expect(answerOf(find('12 x 254 mm'))).toBe('breaks');
    expect(neighboursOf(all).map(({ id }) => id)).toContain('15 x 254 mm');
    expect(neighboursOf(all).map(({ id }) => id)).not.toContain('16 x 228.6 mm');
    expect(neighboursOf([])).toEqual([]);
  });
});

describe('what would clear it', () => {
  it('is offered for what breaks, and taken as one step', async () => {
    const { user, planner, present } = await openPart(<ChooseScreen />, { firstJob: SHORT_OPENING });
    const cures = within(screen.getByRole('region', { name: 'What would clear it' }));
    expect(cures.getByText('is 78 7/16 in, at least 80 in')).toBeTruthy();
    // Enough that the tape's own doubt cannot turn the answer again: 126 1/8 in alone would be too close to call.
    const opening = cures.getByRole('button', { name: /^opening framed 126/ });
    const taken = /126 \S+ in/.exec(opening.textContent ?? '')?.[0];
    await user.click(opening);
    expect(present().stairs[0]?.survey.openingFraming).toBe(taken);
    expect(taken).not.toBe('126 1/8 in');
    expect(planner.store.getState().history.past).toHaveLength(1);
    await waitFor(() => expect(cures.getByText('Nothing that is checked breaks.')).toBeTruthy());
  });
});

describe('in other words and units', () => {
  it('speaks of going to the UK', async () => {
    const { planner } = await openPart(<ChooseScreen />);
    act(() => planner.actions.setTerms('uk'));
    expect(await side().findByRole('heading', { name: '14 risers, going 10 in' })).toBeTruthy();
    expect(screen.queryByText('Run')).toBeNull();
  });

  it('steps by 5 mm', async () => {
    const metric = { ...demoJob, units: 'metric', markStep: undefined } as const;
    const firstJob = { ...metric, stairs: demoWith({ steps: { risers: 14, run: '254 mm' } }).stairs };
    const { user, present } = await openPart(<ChooseScreen />, { firstJob });
    await user.click(screen.getByRole('button', { name: 'Run 5 mm longer' }));
    expect(present().stairs[0]?.steps?.run).toBe('255 mm');
  });
});
