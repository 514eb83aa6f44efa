import { screen, within } from '@testing-library/react';
import { describe, expect, it } from 'vitest';
import { demoJob } from '../../src/document/demoJob';
import { saveJob } from '../../src/document/saveJob';
import { demoWith, field, openPage, picked, retype } from './bench';

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

describe('saving a file', () => {
  it('writes the job under its name, and says that it has changed since', async () => {
    const { user, saved } = await openPage();
    expect(screen.getByText('not in a file yet')).toBeTruthy();
    await user.keyboard('{Control>}s{/Control}');
    expect(saved).toEqual([{ name: 'Boathouse-example-invented-figures.pitchboard.json', content: saveJob(demoJob) }]);
    expect(await screen.findByText(/^same as Boathouse/)).toBeTruthy();
    await retype(user, field('Nosing'), '1 in');
    expect(screen.getByText(/^changed since Boathouse/)).toBeTruthy();
  });
});

describe('the draft on the device', () => {
  it('is called kept only when it is', async () => {
    const { user } = await openPage();
    expect(screen.getByText('Nothing to keep yet')).toBeTruthy();
    await retype(user, field('Nosing'), '1 in');
    expect(await screen.findByText(/^Draft kept on this device at /)).toBeTruthy();
  });

  it('says that it is NOT kept, why, and what to do', async () => {
    const { user, saved } = await openPage({ kept: { ok: false, reason: 'quota' } });
    await retype(user, field('Nosing'), '1 in');
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
