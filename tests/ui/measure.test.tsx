import { act, screen, within } from '@testing-library/react';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { demoJob } from '../../src/document/demoJob';
import { planOf } from '../../src/ui/stairOnShow';
import { demoWith, describedBy } from './bench';
import { key, lengthField, openMeasure, untilPad } from './padBench';

vi.setConfig({ testTimeout: 30_000 });
afterEach(() => vi.unstubAllGlobals());

const survey = demoJob.stairs[0]?.survey ?? { rise: '' };

describe('an empty job', () => {
  it('asks for the rise first, with the stair as a guess', async () => {
    await openMeasure();
    expect(screen.getByText(/^Begin with the rise/)).toBeTruthy();
    const rise = screen.getByRole('region', { name: /^The rise/ });
    expect(await within(rise).findByRole('img', { name: /tape stands plumb/ })).toBeTruthy();
    expect(rise.querySelectorAll('.role-stringer')).toHaveLength(0);
    expect(within(rise).getByText('missing')).toBeTruthy();
    expect(await screen.findByText('Nothing has been measured yet.')).toBeTruthy();
  });

  it('becomes a stair in three readings and at most twelve taps beside digits', async () => {
    const { user, present } = await openMeasure();
    let taps = 0;
    const tap = async (target: HTMLElement) => {
      if (!/^\d$/.test(target.textContent)) taps += 1;
      await user.click(target);
    };
    const type = async (names: readonly string[]) => {
      for (const name of names) await tap(key(name));
    };
    await tap(lengthField('Reading on the left'));
    await untilPad();
    await type(['1', '0', '5', '7/16', 'Next: Reading in the centre']);
    await type(['1', '0', '5', '1/2', 'Next: Reading on the right']);
    await type(['1', '0', '5', '7/16', 'Take the middle one: 105 7/16 in']);
    expect(document.activeElement).toBe(lengthField('Lower floor to come'));
    await type(['5/8', 'Next: Upper floor to come', '3/4', 'Next: Tread thickness']);
    expect(taps).toBeLessThanOrEqual(12);
    expect(present().stairs[0]?.survey).toEqual({
      rise: '105 7/16 in',
      lowerToAdd: { length: '5/8 in', known: 'specified' },
      upperToAdd: { length: '3/4 in', known: 'specified' },
    });
    const plan = planOf(present(), 0);
    expect(plan.ok && plan.value.layout.flight.risers).toBe(14);
  });

  it('takes one reading for enough, and finishes that nobody has decided', async () => {
    const { user, present } = await openMeasure({ finger: false });
    await user.click(lengthField('Reading in the centre'));
    await user.paste("8' 9 7/16");
    await user.click(screen.getByRole('button', { name: 'Take 105 7/16 in' }));
    expect(present().stairs[0]?.survey.rise).toBe("8' 9 7/16 in");
    expect(planOf(present(), 0).ok).toBe(true);
    expect(screen.getByText('6 things are still missing')).toBeTruthy();
  });
});

describe('three readings', () => {
  const reading = async (texts: readonly string[], units?: 'metric') => {
    const firstJob = units === undefined ? demoJob : { ...demoJob, units };
    const bench = await openMeasure({ firstJob, finger: false });
    const names = ['Reading on the left', 'Reading in the centre', 'Reading on the right'];
    for (const [at, text] of texts.entries()) {
      await bench.user.click(lengthField(names[at] as string));
      await bench.user.paste(text);
    }
    return bench;
  };

  it('say how far they are apart, and when that is too far', async () => {
    await reading(['105 7/16', '105 1/2']);
    expect(screen.getByText(/^Highest less lowest: 1\/16 in\./)).toBeTruthy();
    expect(screen.queryByText(/Read them again/)).toBeNull();
  });

  it.each([
    [['105 7/16', '105 17/32'], undefined, 'More than 1/16 in apart'],
    [['2678', '2680'], 'metric' as const, 'More than 1.5 mm apart'],
  ])('%s ask to be read again', async (texts, units, words) => {
    await reading(texts, units);
    expect(screen.getByText(new RegExp(words))).toBeTruthy();
    expect(describedBy(lengthField('Reading on the left'))).toContain('do not agree');
  });

  it('are kept by stair, with their unit, and change nothing until one is taken', async () => {
    const { planner, present, user } = await reading(['105 1/2', '', '105 5/8']);
    expect(planner.store.getState().readings).toEqual({ loft: ['105 1/2 in', '', '105 5/8 in'] });
    expect(present()).toEqual(demoJob);
    await user.click(screen.getByRole('button', { name: 'Take the right: 105 5/8 in' }));
    expect(present().stairs[0]?.survey.rise).toBe('105 5/8 in');
    expect(screen.getByText('105 5/8 in is the rise in use.')).toBeTruthy();
    planner.actions.undo();
    expect(present()).toEqual(demoJob);
  });

  it('refuse what does not read, and ask at two readings', async () => {
    const { user, planner } = await reading(['eleven']);
    expect(lengthField('Reading on the left').ariaInvalid).toBe('true');
    expect(describedBy(lengthField('Reading on the left'))).toContain('is no length');
    await user.clear(lengthField('Reading on the left'));
    await user.paste('8.10');
    await user.click(screen.getByRole('button', { name: /8′ 10″/ }));
    expect(planner.store.getState().readings['loft']?.[0]).toBe(`8' 10"`);
  });

  it('are lengths of the units that they were typed in, also when the job has others', async () => {
    const { planner } = await reading(['105 1/2', '105 5/8']);
    act(() => planner.actions.edit((job) => ({ ...job, units: 'metric' }), null));
    expect(lengthField('Reading on the left').value).toBe('105 1/2 in');
    expect(lengthField('Reading in the centre').value).toBe('105 5/8 in');
  });

  it('stay as typed while they are typed', async () => {
    const { user, planner } = await reading([]);
    await user.type(lengthField('Reading on the left'), '105 7/16 in');
    expect(lengthField('Reading on the left').value).toBe('105 7/16 in');
    expect(planner.store.getState().readings['loft']?.[0]).toBe('105 7/16 in');
  });
});

describe('one thing at a time', () => {
  it('opens by its head, by its way on, and by the focus that comes to a field of it', async () => {
    const { user } = await openMeasure({ firstJob: demoJob, finger: false });
    const isOpen = (name: RegExp) => screen.getByRole('button', { name, expanded: true });
    expect(isOpen(/^Where it lands/)).toBeTruthy();
    await user.click(screen.getByRole('button', { name: 'Next: The opening' }));
    expect(isOpen(/^The opening/)).toBeTruthy();
    expect(document.activeElement).toBe(lengthField('Opening, framed'));
    await user.click(screen.getByRole('button', { name: /^The widths/ }));
    expect(isOpen(/^The widths/)).toBeTruthy();
    lengthField('Header depth').focus();
    expect(await screen.findByRole('button', { name: /^The header/, expanded: true })).toBeTruthy();
    expect(screen.getAllByRole('img')).toHaveLength(1);
  });

  it('lists what is missing and what that means', async () => {
    const { floorDepth: _, ...rest } = survey;
    await openMeasure({ firstJob: demoWith({ survey: { ...rest, upperToAdd: 'unknown' } }) });
    expect(screen.getByText('2 things are still missing')).toBeTruthy();
    const heads = screen.getAllByRole('button', { expanded: false }).map((head) => head.textContent);
    expect(heads).toContain('Depth of the upper floormissingno headroom is worked out');
    expect(heads.find((head) => head.startsWith('Floors and treads'))).toContain('not known yet');
  });

  it('says what is odd, and uses it', async () => {
    const { user, present } = await openMeasure({ firstJob: demoJob, finger: false });
    await user.click(lengthField('Upper floor to come'));
    await user.clear(lengthField('Upper floor to come'));
    await user.paste('3');
    expect(present().stairs[0]?.survey.upperToAdd).toEqual({ length: '3 in', known: 'specified' });
    expect(screen.getByText(/^Upper floor to come: 3 in is unusual/)).toBeTruthy();
  });

  it('goes on with Enter, over the readings to the one that is taken', async () => {
    const { user, present } = await openMeasure({ finger: false });
    await user.click(lengthField('Reading on the left'));
    await user.paste('105 7/16');
    await user.keyboard('{Enter}{Enter}{Enter}');
    expect(present().stairs[0]?.survey.rise).toBe('105 7/16 in');
    expect(document.activeElement).toBe(lengthField('Lower floor to come'));
  });
});

describe('a finish that is not known', () => {
  it('shows what each likely thickness does to the first and last riser', async () => {
    await openMeasure({ firstJob: demoWith({ survey: { ...survey, upperToAdd: 'unknown' } }), finger: false });
    lengthField('Upper floor to come').focus();
    const table = await screen.findByRole('table', { name: /^If the upper floor to come is/ });
    const rows = within(table).getAllByRole('row').slice(1);
    expect(rows).toHaveLength(6);
    expect(rows[0]?.textContent).toContain('nothing');
    expect(rows[0]?.textContent).toContain('Meets');
    expect(rows[5]?.textContent).toContain('Breaks');
    expect(screen.queryByRole('table', { name: /^If the lower floor/ })).toBeNull();
  });
});

describe('reading back', () => {
  it('says everything in both systems', async () => {
    await openMeasure({ firstJob: demoWith({ survey: { ...survey, upperToAdd: 'unknown' } }) });
    const back = within(await screen.findByRole('region', { name: 'Read back' }));
    const rows = back.getAllByRole('row').map((row) => row.textContent);
    expect(rows).toContain('Rise today8′ 9 7/16″ = 105 7/16″2678.1');
    expect(rows).toContain('Upper floor to comenot known yet');
    expect(rows.some((row) => row.startsWith('Wallboard'))).toBe(false);
  });
});
