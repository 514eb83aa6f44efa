import { act, screen, waitFor, within } from '@testing-library/react';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { demoJob } from '../../src/document/demoJob';
import { type Awake, keepAwake } from '../../src/platform/awake';
import { usePlannerState } from '../../src/ui/usePlanner';
import { frameFor, longestOf, scaleIn } from '../../src/ui/walk/numberFrame';
import { StartWalk } from '../../src/ui/walk/StartWalk';
import { tickOf, tickState, withoutTick, withTick } from '../../src/ui/walk/ticks';
import { WalkScreen } from '../../src/ui/walk/WalkScreen';
import { demoWith } from './bench';
import { openPart } from './part';

const BOTH = (
  <>
    <StartWalk list="marks" />
    <StartWalk list="rips" />
    <StartWalk list="setting" />
    <StartWalk list="pole" />
    <WalkScreen />
  </>
);

/** As the page has it: the walk in place of all else. */
function Screens() {
  return usePlannerState(({ walk }) => walk !== null) ? <WalkScreen /> : BOTH;
}

async function walkMarks() {
  const opened = await openPart(BOTH);
  await opened.user.click(screen.getByRole('button', { name: /^One mark at a time/ }));
  return opened;
}

function heading(): string {
  return screen.getByRole('heading', { level: 1 }).textContent;
}

/** What a screen reader is told. */
function spoken(): string {
  return document.getElementById('walk-spoken')?.textContent ?? '';
}

describe('walking through the numbers', () => {
  it('is not there until it is asked for', async () => {
    await openPart(BOTH);
    expect(screen.queryByRole('main')).toBeNull();
    expect(screen.getByRole('button', { name: /^One mark at a time.*0 of 31 ticked off/ })).toBeTruthy();
  });

  it('goes by arrows, and ticks off with the space bar', async () => {
    const { user, planner } = await walkMarks();
    expect(document.activeElement).toBe(screen.getByRole('main', { name: 'Marks on the board, one at a time' }));
    expect(heading()).toBe('Gauge line');
    await user.keyboard('{ArrowRight}');
    expect(heading()).toBe('Tip 1');
    await user.keyboard(' ');
    expect(heading()).toBe('Corner 1');
    await user.keyboard('{ArrowLeft}');
    expect(heading()).toBe('Tip 1');
    expect(screen.getByRole('button', { name: 'Marked' }).getAttribute('aria-pressed')).toBe('true');
    expect(planner.store.getState().ticked).toEqual({ loft: ['marks/tip-1@158.75'] });
    await user.keyboard('{Escape}');
    expect(planner.store.getState().walk).toBeNull();
  });

  it('stays where it is at either end', async () => {
    const { user, planner } = await walkMarks();
    await user.keyboard('{ArrowLeft}');
    expect(heading()).toBe('Gauge line');
    act(() => planner.actions.look({ walk: { list: 'marks', at: 999 } }));
    expect(heading()).toBe('Kicker notch, width');
    await user.keyboard('{ArrowRight}');
    expect(heading()).toBe('Kicker notch, width');
  });

  it('goes by large areas, and never unticks on the way', async () => {
    const { user } = await walkMarks();
    await user.click(screen.getByRole('button', { name: 'Marked, next' }));
    expect(heading()).toBe('Tip 1');
    await user.click(screen.getByRole('button', { name: 'Back' }));
    await user.click(screen.getByRole('button', { name: 'Next' }));
    await user.click(screen.getByRole('button', { name: 'Skip' }));
    expect(heading()).toBe('Corner 1');
    expect(screen.getByRole('button', { name: /^3 of 31, 30 left/ })).toBeTruthy();
    // What was touched has given the focus back: the space bar goes on, and does not press it again.
    await user.keyboard(' ');
    expect(heading()).toBe('Tip 2');
  });

  it('unticks by ticking again', async () => {
    const { user, planner } = await walkMarks();
    const tick = screen.getByRole('button', { name: 'Marked' });
    await user.click(tick);
    expect(tick.getAttribute('aria-pressed')).toBe('true');
    await user.click(tick);
    expect(tick.getAttribute('aria-pressed')).toBe('false');
    expect(planner.store.getState().ticked['loft']).toEqual([]);
  });

  it('leads back to what was left out, and then out', async () => {
    const { user, planner } = await openPart(BOTH);
    await user.click(screen.getByRole('button', { name: /^One rip at a time/ }));
    await user.keyboard('{ArrowRight}');
    await user.keyboard('  ');
    await user.click(screen.getByRole('button', { name: 'Ripped', pressed: false }));
    await user.click(screen.getByRole('button', { name: 'To the first one left' }));
    expect(heading()).toBe('Treads');
    await user.keyboard(' ');
    act(() => planner.actions.look({ walk: { list: 'rips', at: 3 } }));
    await user.click(screen.getByRole('button', { name: 'Done' }));
    expect(planner.store.getState().walk).toBeNull();
  });
});

describe('the way back', () => {
  it('gives the focus to the key that started the walk, where the screens come anew', async () => {
    const { user } = await openPart(<Screens />);
    await user.click(screen.getByRole('button', { name: /^One rip at a time/ }));
    await user.keyboard('{Escape}');
    expect(document.activeElement).toBe(screen.getByRole('button', { name: /^One rip at a time/ }));
  });
});

describe('the one number', () => {
  it('is said whole, with what it is and from where', async () => {
    const { user, planner } = await walkMarks();
    act(() => planner.actions.look({ walk: { list: 'marks', at: 5 } }));
    expect(spoken()).toBe('Tip 3: 31 and 5/16 inches from the board’s end');
    await user.keyboard('{Escape}');
    await user.click(screen.getByRole('button', { name: /^One rip at a time/ }));
    expect(spoken()).toBe('Treads, 13 boards: 11 and 1/8 inches from the fence to the blade');
  });

  it('says heavy for the odd thirty-second', async () => {
    const { planner } = await openPart(BOTH, { firstJob: { ...demoJob, markStep: '1/32 in' } });
    act(() => planner.actions.look({ walk: { list: 'setting', at: 0 } }));
    expect(spoken()).toBe('Header mark: 7 and 13/16 inches, heavy, down from the subfloor as it is today');
    expect(screen.getByText('heavy')).toBeTruthy();
  });

  it('is the only length on the screen, but for the tape’s own numbers', async () => {
    const { planner } = await openPart(BOTH);
    for (const list of ['marks', 'rips', 'setting', 'pole'] as const) {
      act(() => planner.actions.look({ walk: { list, at: 2 } }));
      const tape = document.querySelector('.walk-tape')?.textContent ?? '';
      expect(tape).toMatch(/^\d+$/);
      const texts = [...screen.getByRole('main').querySelectorAll('h1, .walk-words p, button, .walk-picture')];
      const numbers = texts
        .map((each) => each.textContent)
        .join(' ')
        .match(/\d+\/\d+|\d+ in\b|\d+ mm/g);
      expect(numbers, list).toBeNull();
    }
  });

  it('keeps one size for a whole list', () => {
    const tape = (whole: number, numerator: number, denominator: number) =>
      ({ kind: 'tape', number: { negative: false, whole, numerator, denominator, heavy: false } }) as const;
    const longest = longestOf([tape(6, 0, 1), tape(141, 9, 16)]);
    expect(longest).toEqual({ whole: 3, fraction: 2, heavy: false, decimals: 0 });
    expect(frameFor(longest, { width: 1140, height: 420 }).rows).toBe(1);
    // A tablet held upright: two rows give clearly larger figures.
    const upright = { width: 744, height: 613 };
    const frame = frameFor(longest, upright);
    expect(frame.rows).toBe(2);
    expect(72 * scaleIn(frame, upright) * 0.178).toBeGreaterThan(43);
    // Two figures and a fraction fit on one row at 48 mm and more.
    const rips = frameFor(longestOf([tape(11, 1, 8)]), upright);
    expect(72 * scaleIn(rips, upright) * 0.178).toBeGreaterThan(48);
  });
});

describe('the list', () => {
  it('opens from the count, says what is ticked off, and goes where it is touched', async () => {
    const { user } = await walkMarks();
    await user.keyboard('  ');
    await user.click(screen.getByRole('button', { name: '3 of 31, 29 left. Open the list' }));
    const list = within(screen.getByRole('dialog', { name: 'Marks on the board, one at a time' }));
    expect(list.getAllByRole('listitem')).toHaveLength(31);
    expect(list.getByRole('button', { name: /^Tip 1\s*ticked off/ })).toBeTruthy();
    expect(document.activeElement?.textContent).toBe('Corner 1');
    await user.click(list.getByRole('button', { name: 'Tip 9' }));
    expect(screen.queryByRole('dialog')).toBeNull();
    expect(heading()).toBe('Tip 9');
  });

  it('closes with Escape before the walk does', async () => {
    const { user, planner } = await walkMarks();
    await user.click(screen.getByRole('button', { name: /Open the list$/ }));
    await user.keyboard('{Escape}');
    expect(screen.queryByRole('dialog')).toBeNull();
    expect(planner.store.getState().walk).toEqual({ list: 'marks', at: 0 });
  });

  it('unticks all for another board, asked twice', async () => {
    const { user, planner } = await walkMarks();
    await user.keyboard('   ');
    act(() =>
      planner.actions.look({
        ticked: { loft: [...(planner.store.getState().ticked['loft'] ?? []), 'rips/tread-rip@1'] },
      }),
    );
    await user.click(screen.getByRole('button', { name: /Open the list$/ }));
    await user.click(screen.getByRole('button', { name: 'Untick all, for another board' }));
    await user.click(screen.getByRole('button', { name: 'Yes, untick all 3' }));
    expect(planner.store.getState().ticked).toEqual({ loft: ['rips/tread-rip@1'] });
  });
});

describe('after a call, a lock or a crash', () => {
  it('it is exactly where it was', async () => {
    const { user, saved, close } = await walkMarks();
    await user.keyboard('    ');
    expect(heading()).toBe('Corner 2');
    await waitFor(() => expect(saved.at(-1)?.view.walk).toEqual({ list: 'marks', at: 4 }));
    close();
    const kept = saved.at(-1);
    if (kept === undefined) throw new Error('nothing was kept');
    await openPart(BOTH, { kept });
    expect(heading()).toBe('Corner 2');
    expect(screen.getByRole('button', { name: '5 of 31, 27 left. Open the list' })).toBeTruthy();
  });

  it('starts again at the first that is left', async () => {
    const { user } = await walkMarks();
    await user.keyboard('  {Escape}');
    await user.click(screen.getByRole('button', { name: /^One mark at a time.*2 of 31 ticked off/ }));
    expect(heading()).toBe('Corner 1');
  });
});

describe('a number that has changed', () => {
  it('is unticked by itself, says so, and is ticked again when the change is undone', async () => {
    const { user, planner } = await walkMarks();
    await user.keyboard('   {ArrowLeft}');
    expect(heading()).toBe('Corner 1');
    const other = demoWith({ steps: { ...demoJob.stairs[0]?.steps, run: '9 3/4 in' } });
    act(() => planner.actions.edit(() => other, null));
    const tick = screen.getByRole('button', { name: 'Marked' });
    expect(tick.getAttribute('aria-pressed')).toBe('false');
    expect(screen.getByText('This number has changed since it was ticked off.')).toBeTruthy();
    act(() => planner.actions.undo());
    expect(tick.getAttribute('aria-pressed')).toBe('true');
    expect(screen.queryByText('This number has changed since it was ticked off.')).toBeNull();
  });

  it('is ticked at one number only', () => {
    const before = withTick([], 'marks', { id: 'tip-1', value: 158.75 });
    const moved = { id: 'tip-1', value: 160.3375 };
    expect(tickState(before, 'marks', moved)).toBe('moved');
    expect(tickState(before, 'marks', { id: 'tip-11', value: 158.75 })).toBe('open');
    expect(tickState(before, 'pole', { id: 'tip-1', value: 158.75 })).toBe('open');
    expect(withTick(before, 'marks', moved)).toEqual(['marks/tip-1@160.338']);
    expect(withoutTick(before, 'marks', moved)).toEqual([]);
    expect(tickOf('marks', { id: 'tip-1', value: 88.89999999999999 })).toBe('marks/tip-1@88.9');
  });

  it('leaves the walk within a list that has grown shorter', async () => {
    const { planner } = await openPart(BOTH);
    act(() => planner.actions.look({ walk: { list: 'pole', at: 26 } }));
    expect(heading()).toBe('Upper floor, finished');
    act(() => planner.actions.edit(() => demoWith({ steps: { ...demoJob.stairs[0]?.steps, risers: 13 } }), null));
    expect(heading()).toBe('Upper floor, finished');
    expect(screen.getByRole('button', { name: /^25 of 25/ })).toBeTruthy();
  });
});

describe('UK terms', () => {
  it('are used throughout', async () => {
    const { planner } = await openPart(BOTH);
    act(() => {
      planner.actions.setTerms('uk');
      planner.actions.look({ walk: { list: 'setting', at: 0 } });
    });
    expect(heading()).toBe('Trimmer mark');
    expect(screen.getByRole('button', { name: /^Storey rod/ })).toBeTruthy();
  });
});

describe('the screen', () => {
  afterEach(() => vi.restoreAllMocks());

  const lockThat = (release = vi.fn(async () => undefined)) => {
    const listeners: (() => void)[] = [];
    return {
      lock: { release, addEventListener: (_: 'release', listener: () => void) => void listeners.push(listener) },
      takeAway: () => {
        for (const listener of listeners) listener();
      },
    };
  };

  it('is held awake, asked for again when the page comes back, and let go', async () => {
    const reports: Awake[] = [];
    const { lock, takeAway } = lockThat();
    const request = vi.fn(async () => lock);
    const letGo = keepAwake((awake) => reports.push(awake), { request });
    await waitFor(() => expect(reports).toEqual(['asking', 'on']));
    takeAway();
    expect(reports.at(-1)).toBe('off');
    document.dispatchEvent(new Event('visibilitychange'));
    await waitFor(() => expect(reports.at(-1)).toBe('on'));
    expect(request).toHaveBeenCalledTimes(2);
    letGo();
    expect(lock.release).toHaveBeenCalledOnce();
    document.dispatchEvent(new Event('visibilitychange'));
    expect(request).toHaveBeenCalledTimes(2);
  });

  it('may go dark where the browser refuses or cannot, and nothing throws', async () => {
    const reports: Awake[] = [];
    const refuse = async () => Promise.reject(new Error('battery'));
    keepAwake((awake) => reports.push(awake), { request: refuse })();
    const letGo = keepAwake((awake) => reports.push(awake), { request: refuse });
    await waitFor(() => expect(reports.at(-1)).toBe('off'));
    letGo();
    keepAwake((awake) => reports.push(awake))();
    expect(reports.at(-1)).toBe('off');
  });

  it('gives back what comes too late', async () => {
    const { lock } = lockThat();
    const letGo = keepAwake(() => undefined, { request: async () => lock });
    letGo();
    await waitFor(() => expect(lock.release).toHaveBeenCalledOnce());
  });

  it('says in words whether it stays awake', async () => {
    await walkMarks();
    expect(screen.getByText(/^The screen may go dark/)).toBeTruthy();
  });
});
