import { act, fireEvent, screen, waitFor, within } from '@testing-library/react';
import { describe, expect, it } from 'vitest';
import { demoJob } from '../../src/document/demoJob';
import { useTaking } from '../../src/ui/choose/useAlternatives';
import { SearchPart } from '../../src/ui/search/SearchPart';
import { demoWith } from './bench';
import { openPart } from './part';

const survey = demoJob.stairs[0]?.survey;
if (survey === undefined) throw new Error('the example has no stair');

function Search() {
  const { take } = useTaking();
  return <SearchPart onTake={take} />;
}

async function openSearch(options: Parameters<typeof openPart>[1] = {}) {
  const part = await openPart(<Search />, options);
  await screen.findByText(/^All riser counts/);
  // How many there are is said first; the picture and the list follow.
  await screen.findByRole('heading', { name: 'Where a layout fits' });
  return part;
}

const list = () => within(screen.getByRole('region', { name: 'In order' }));
const items = () =>
  list()
    .getAllByRole('listitem')
    .filter((item) => item.classList.contains('search-item'));
const lookedAt = (name: string) => screen.getByRole('slider', { name }).getAttribute('aria-valuetext');

describe('every layout that fits', () => {
  it('says how many were looked at and how many fit, and lists them in order', async () => {
    await openSearch();
    // Four tops, 34 riser counts of 3 in and more, 257 runs from 4 to 20 in.
    expect(screen.getByText(/34,952 were looked at, 5 fit/)).toBeTruthy();
    expect(items()).toHaveLength(5);
    const [first, , third] = items();
    if (first === undefined || third === undefined) throw new Error('no items');
    expect(within(first).getByRole('heading', { name: '14 risers, run 10 in' })).toBeTruthy();
    expect(first.textContent).toContain('Hangs on a board that is the last riser');
    for (const name of ['Unit rise', 'Run', 'Two rises and a run', 'Pitch', 'Total run', 'Headroom, tightest']) {
      expect(within(first).getByText(name)).toBeTruthy();
    }
    expect(within(first).getByRole('button', { name: /^In hand/ })).toHaveProperty('disabled', true);
    expect(third.textContent).toContain('beaten by no. 1');
    expect(third.textContent).toContain('Too close to call: Headroom');
  });

  it('takes one as one step of undo, with all the keys that it changes', async () => {
    const { user, planner, present } = await openSearch();
    await user.click(
      list().getByRole('button', {
        name: 'Take 14 risers, run 10 1/16 in, Bears on the header; a riser board closes the top',
      }),
    );
    expect(present().stairs[0]?.steps?.run).toBe('10 1/16 in');
    expect(present().stairs[0]?.stringer?.top).toBe('header-behind-riser');
    expect(present().stairs[0]?.stringer).not.toHaveProperty('hanger');
    expect(planner.store.getState().history.past).toHaveLength(1);
    await waitFor(() =>
      expect(list().getByRole('button', { name: 'In hand: 14 risers, run 10 1/16 in' })).toBeTruthy(),
    );
    act(() => planner.actions.undo());
    expect(present()).toEqual(demoJob);
  });

  it('goes by another order when it is chosen, and can leave out what is beaten', async () => {
    const { user, planner } = await openSearch();
    await user.click(list().getByRole('checkbox', { name: 'Only those that none beats' }));
    expect(items()).toHaveLength(2);
    await user.selectOptions(list().getByLabelText('First'), 'lowest pitch');
    await waitFor(() => expect(items()[0]?.textContent).toContain('10 1/16'));
    expect(
      planner.store.getState().wishes['boathouse-loft'] ?? Object.values(planner.store.getState().wishes)[0],
    ).toEqual({
      by: 'pitch,stride,headroom',
    });
  });
});

describe('the picture', () => {
  it('is read as words, and gone through with two sliders and their keys', async () => {
    const { user } = await openSearch();
    const picture = screen.getByRole('img', { name: /13 to 15 risers, runs from 9 in to/ });
    expect(picture.getAttribute('aria-label')).toContain('14 risers: runs 10 in – 10 1/16 in fit.');
    expect(picture.getAttribute('aria-label')).toContain('15 risers: none fits.');
    expect(lookedAt('Run looked at')).toBe('14 risers, run 10 in: fits');
    await user.click(screen.getByRole('button', { name: '1/16 in longer' }));
    expect(lookedAt('Run looked at')).toBe('14 risers, run 10 1/16 in: fits');
    await user.click(screen.getByRole('button', { name: 'One riser more' }));
    expect(lookedAt('Risers looked at')).toBe('15 risers, run 10 1/16 in: does not fit');
    expect(screen.getByText(/^Headroom, plumb from the nosing line: is .* at least 80 in$/)).toBeTruthy();
    fireEvent.change(screen.getByRole('slider', { name: 'Risers looked at' }), { target: { value: '13' } });
    expect(screen.getByText(/^Height of a riser: is 8 1\/8 in, at most 7 3\/4 in$/)).toBeTruthy();
  });

  it('takes the nearest place that fits for where a finger comes down, and only that is looked at', async () => {
    const { user, present } = await openSearch();
    const picture = screen.getByRole('img', { name: /13 to 15 risers/ });
    picture.getBoundingClientRect = () => new DOMRect(0, 0, 720, 208);
    // The middle row; 10 in lies at (160 − 143.5) / 50 of the way from 70 to 706 and a little more.
    fireEvent.pointerUp(picture, { clientX: 300, clientY: 46 + 52 + 30 });
    expect(lookedAt('Run looked at')).toBe('14 risers, run 10 1/16 in: fits');
    expect(present()).toBe(demoJob);
    await user.click(screen.getByRole('button', { name: 'Take 14 risers, run 10 1/16 in' }));
    expect(present().stairs[0]?.steps?.run).toBe('10 1/16 in');
  });

  it('shows the same stair with another top', async () => {
    const { user } = await openSearch();
    await user.selectOptions(screen.getByLabelText('Top'), 'Carries a last tread level with the floor');
    expect(lookedAt('Run looked at')).toBe('14 risers, run 10 in: does not fit');
  });
});

describe('what the search keeps to', () => {
  it('is kept with its unit, and what does not read is said at its field and not in use', async () => {
    const { user, planner } = await openSearch();
    const run = screen.getByLabelText('Run available');
    await user.type(run, '130 3/4');
    await screen.findByText(/2 fit/);
    expect(Object.values(planner.store.getState().wishes)).toEqual([{ run: '130 3/4 in' }]);
    // A bare number is of the units that it was typed in, also while it is in hand.
    act(() => planner.actions.edit((job) => ({ ...job, units: 'metric' }), null));
    expect(run).toHaveProperty('value', '130 3/4 in');
    act(() => planner.actions.undo());
    await user.clear(run);
    await user.type(run, 'plenty');
    expect(await screen.findByText(/^Not in use: "plenty" is no length/)).toBeTruthy();
    await screen.findByText(/5 fit/);
  });

  it('leaves out tops that are not in question, in the list and in the picture', async () => {
    const { user, planner } = await openSearch();
    await user.click(screen.getByRole('checkbox', { name: 'Hangs on a board that is the last riser' }));
    await screen.findByText(/3 fit/);
    expect(Object.values(planner.store.getState().wishes)).toEqual([
      { tops: 'header-behind-riser,hanger-behind-riser,level-with-floor' },
    ]);
    const tops = () => within(screen.getByLabelText('Top')).getAllByRole('option');
    await waitFor(() => expect(tops()).toHaveLength(3));
    for (const name of [
      'Hangs on a board, with a riser board before it',
      'Carries a last tread level with the floor',
    ]) {
      await user.click(screen.getByRole('checkbox', { name }));
    }
    // The last one stays: without any top there is no stair.
    await user.click(screen.getByRole('checkbox', { name: 'Bears on the header; a riser board closes the top' }));
    await screen.findByText(/5 fit/);
  });

  it('takes depths of board in a list', async () => {
    const { user } = await openSearch();
    await user.type(screen.getByLabelText('Depths of board to be had'), '9 1/4, 11 1/4');
    await waitFor(() => expect(items()[0]?.textContent).toContain('board 9 1/4 in deep'));
  });
});

describe('where nothing fits', () => {
  it('says which limits conflict, what would have to give, and takes the opening that would do', async () => {
    const firstJob = demoWith({ survey: { ...survey, openingFraming: '120 in' } });
    const { user, present } = await openSearch({ firstJob });
    expect(await screen.findByRole('heading', { name: 'No layout fits' })).toBeTruthy();
    expect(screen.getByText('Headroom, plumb from the nosing line: at least 80 in')).toBeTruthy();
    expect(screen.getByText('Height of a riser: at most 7 3/4 in')).toBeTruthy();
    expect(screen.getByText('Run, nosing to nosing: at least 10 in')).toBeTruthy();
    expect(screen.queryByRole('region', { name: 'In order' })).toBeNull();
    await user.click(screen.getByRole('button', { name: 'Frame it so' }));
    expect(present().stairs[0]?.survey.openingFraming).toMatch(/^126/);
    expect(await screen.findByRole('region', { name: 'In order' })).toBeTruthy();
  });
});
