import { screen, within } from '@testing-library/react';
import { describe, expect, it } from 'vitest';
import { demoJob } from '../../src/document/demoJob';
import { emptyJob } from '../../src/document/emptyJob';
import { saveJob } from '../../src/document/saveJob';
import { atStep, demoWith, field, openPage, picked, retype } from './bench';

const otherJob = { ...demoJob, name: 'Granary' };

describe('opening a file', () => {
  it('takes a job whole, and can be undone', async () => {
    const { user, present } = await openPage({ picked: picked('granary.json', saveJob(otherJob)) });
    await user.click(screen.getByRole('button', { name: 'Open' }));
    expect(await screen.findByRole('heading', { level: 1, name: 'Granary' })).toBeTruthy();
    expect(screen.getByText(/same as granary\.json/)).toBeTruthy();
    await user.click(screen.getByRole('button', { name: 'Undo' }));
    expect(present()).toEqual(demoJob);
  });

  it('stays at the step in hand, and forgets what was typed into the job before', async () => {
    const { user } = await openPage({ picked: picked('granary.json', saveJob(otherJob)) });
    await atStep(user, 'Lay out');
    await retype(user, field('Board depth'), 'eleven');
    await user.click(screen.getByRole('button', { name: 'Open' }));
    expect(await screen.findByRole('heading', { level: 1, name: 'Granary' })).toBeTruthy();
    expect(screen.getByRole('heading', { level: 2, name: 'Lay out' })).toBeTruthy();
    expect(field('Board depth').value).toBe('11 1/4');
    expect(screen.queryByRole('region', { name: /not in use$/ })).toBeNull();
  });

  it.each([
    ['what is no JSON', 'a letter', ['this is not JSON']],
    ['a stair that has no geometry', impossible(), ['stairs[0].stringer.stockDepth', 'leave no wood below them']],
    ['every fault at once', twoFaults(), ['stairs[0].survey.rise', 'stairs[0].steps.run']],
  ])('refuses %s with all its reasons, and keeps the open job', async (_, text, reasons) => {
    const { user, present } = await openPage({ picked: picked('broken.json', text) });
    await user.click(screen.getByRole('button', { name: 'Open' }));
    const panel = await screen.findByRole('alertdialog', { name: '“broken.json” was not opened' });
    expect(document.activeElement).toBe(panel);
    for (const reason of reasons) expect(panel.textContent).toContain(reason);
    expect(present()).toBe(demoJob);
    await user.click(within(panel).getByRole('button'));
    expect(screen.queryByRole('alertdialog')).toBeNull();
  });
});

describe('a new job', () => {
  it('has one stair and asks for its rise first, in the units of the one before', async () => {
    const { user, present } = await openPage({ firstJob: { ...demoJob, units: 'metric', markStep: '1 mm' } });
    await atStep(user, 'Lay out');
    await user.click(screen.getByRole('button', { name: 'New job' }));
    expect(present()).toEqual(emptyJob('metric'));
    expect(screen.getByRole('heading', { level: 2, name: 'Measure' })).toBeTruthy();
    expect(screen.getByText(/^Begin with the rise/)).toBeTruthy();
    expect(screen.getByRole('button', { name: /^The rise/, expanded: true })).toBeTruthy();
    expect(field('Rise today').value).toBe('');
    expect(screen.getByText('not in a file yet')).toBeTruthy();
  });

  it('takes nothing of the one before with it, and undo brings that back', async () => {
    const { user, present } = await openPage();
    await retype(user, field('Rise today'), 'eight feet');
    await user.click(screen.getByRole('button', { name: 'New job' }));
    expect(field('Rise today').value).toBe('');
    expect(screen.queryByRole('region', { name: /not in use$/ })).toBeNull();
    await user.click(screen.getByRole('button', { name: 'Undo' }));
    expect(present()).toBe(demoJob);
    expect(field('Rise today').value).toBe('105 7/16');
    await user.click(screen.getByRole('button', { name: 'Redo' }));
    expect(present()).toEqual(emptyJob('imperial'));
  });
});

describe('saving a file', () => {
  it('writes the job under its name, and says that it has changed since', async () => {
    const { user, saved } = await openPage();
    expect(screen.getByText('not in a file yet')).toBeTruthy();
    await user.keyboard('{Control>}s{/Control}');
    expect(saved).toEqual([{ name: 'Boathouse-example-invented-figures.pitchboard.json', content: saveJob(demoJob) }]);
    expect(await screen.findByText(/^same as Boathouse/)).toBeTruthy();
    await retype(user, field('Rise today'), '106');
    expect(screen.getByText(/^changed since Boathouse/)).toBeTruthy();
  });
});

describe('the draft on the device', () => {
  it('is called kept only when it is', async () => {
    const { user } = await openPage();
    expect(screen.getByText('Nothing to keep yet')).toBeTruthy();
    await retype(user, field('Rise today'), '106');
    expect(await screen.findByText(/^Draft kept on this device at /)).toBeTruthy();
  });

  it('says that it is NOT kept, why, and what to do', async () => {
    const { user, saved } = await openPage({ kept: { ok: false, reason: 'quota' } });
    await retype(user, field('Rise today'), '106');
    expect(await screen.findByText('NOT kept on this device: it has no room left.')).toBeTruthy();
    await user.click(screen.getByRole('button', { name: 'Save to a file' }));
    expect(saved).toHaveLength(1);
  });
});

function impossible(): string {
  return saveJob(demoWith({ stringer: { stockDepth: '5 in' } }));
}

function twoFaults(): string {
  return saveJob(demoWith({ survey: { rise: '8.10' }, steps: { run: 'ten' } }));
}
