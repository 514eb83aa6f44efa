import { screen, within } from '@testing-library/react';
import { beforeAll, describe, expect, it } from 'vitest';
import { demoJob } from '../../src/document/demoJob';
import { atStep, field, openPage, retype, type User } from './bench';

beforeAll(() => {
  // The test browser knows dialogs, but not how to show one before everything else.
  HTMLDialogElement.prototype.showModal ??= function showModal(this: HTMLDialogElement) {
    this.open = true;
  };
  HTMLDialogElement.prototype.close ??= function close(this: HTMLDialogElement) {
    this.open = false;
  };
});

async function openList(user: User) {
  await user.click(screen.getByRole('button', { name: /^Stairs: / }));
  return within(await screen.findByRole('dialog', { name: 'Stairs of this job' }));
}

const namesOf = (stairs: readonly { readonly name?: string | undefined }[]) => stairs.map(({ name }) => name);

describe('the stairs of a job', () => {
  it('stand under the whole name of the job, of which the bar has room for two lines', async () => {
    const name = 'Boathouse at the lower slip, sail loft and gallery over the east workshop, phase 2';
    const { user } = await openPage({ firstJob: { ...demoJob, name } });
    expect(screen.getByRole('heading', { name }).title).toBe(name);
    const list = await openList(user);
    expect(list.getByText(name)).toBeTruthy();
  });

  it('are added one by one; the new one is on show and nothing of it is measured', async () => {
    const { user, present } = await openPage();
    const list = await openList(user);
    await user.click(list.getByRole('button', { name: 'Add a stair' }));
    await user.click(list.getByRole('button', { name: 'Close' }));
    expect(namesOf(present().stairs)).toEqual(['Sail loft stair', 'New stair']);
    expect(screen.getByRole('button', { name: 'Stairs: New stair' })).toBeTruthy();
    expect(field('Rise today').value).toBe('');
    await retype(user, field('Rise today'), '52');
    expect(present().stairs.map(({ survey }) => survey.rise)).toEqual(['105 7/16 in', '52 in']);
  });

  it.each([
    ['adding', { button: 'Add a stair', names: ['Sail loft stair', 'Cellar stair', 'New stair'] }],
    [
      'copying',
      { button: 'Copy Sail loft stair', names: ['Sail loft stair', 'Sail loft stair, copy', 'Cellar stair'] },
    ],
    ['moving down', { button: 'Move Sail loft stair down', names: ['Cellar stair', 'Sail loft stair'] }],
    ['moving up', { button: 'Move Cellar stair up', names: ['Cellar stair', 'Sail loft stair'] }],
    ['taking out', { button: 'Take out Sail loft stair', names: ['Cellar stair'] }],
  ])('come back from %s with one undo', async (_, { button, names }) => {
    const { user, present } = await openPage({ firstJob: twoStairs });
    const list = await openList(user);
    await user.click(list.getByRole('button', { name: button }));
    expect(namesOf(present().stairs)).toEqual(names);
    expect(new Set(present().stairs.map(({ id }) => id)).size).toBe(names.length);
    await user.keyboard('{Control>}z{/Control}');
    expect(present()).toBe(twoStairs);
  });

  it('are renamed in one step of undo, however many letters it took', async () => {
    const { user, present } = await openPage({ firstJob: twoStairs });
    const list = await openList(user);
    const name = list.getByRole('textbox', { name: 'Name of stair 2' });
    await user.clear(name);
    await user.type(name, 'Crypt');
    expect(present().stairs[1]?.name).toBe('Crypt');
    await user.keyboard('{Control>}z{/Control}');
    expect(present()).toBe(twoStairs);
  });

  it('stay the same one on show, wherever it is moved to', async () => {
    const { user } = await openPage({ firstJob: twoStairs });
    const list = await openList(user);
    await user.click(list.getByRole('button', { name: 'Move Sail loft stair down' }));
    expect(screen.getByRole('button', { name: 'Stairs: Sail loft stair' })).toBeTruthy();
    expect(field('Rise today').value).toBe('105 7/16');
  });

  it('show the next one when the one on show is taken out; the last one stays', async () => {
    const { user, present } = await openPage({ firstJob: twoStairs });
    const list = await openList(user);
    await user.click(list.getByRole('button', { name: 'Take out Sail loft stair' }));
    expect(field('Rise today').value).toBe('98');
    const last = list.getByRole<HTMLButtonElement>('button', { name: 'Take out Cellar stair' });
    expect(last.disabled).toBe(true);
    await user.click(last);
    expect(present().stairs).toHaveLength(1);
  });

  it('are shown one at a time, at the step in hand', async () => {
    const { user } = await openPage({ firstJob: twoStairs });
    await atStep(user, 'Set');
    const list = await openList(user);
    await user.click(list.getByRole('button', { name: 'Show' }));
    expect(screen.getByRole('heading', { level: 2, name: 'Set' })).toBeTruthy();
    expect(screen.getByRole('button', { name: 'Stairs: Cellar stair' })).toBeTruthy();
    await atStep(user, 'Measure');
    expect(field('Rise today').value).toBe('98');
  });

  it('keep their typed text apart: what is not in use in one is not said at another', async () => {
    const { user } = await openPage({ firstJob: twoStairs });
    await retype(user, field('Rise today'), 'eight feet');
    expect(await screen.findByRole('region', { name: 'One field is not in use' })).toBeTruthy();
    const list = await openList(user);
    await user.click(list.getByRole('button', { name: 'Show' }));
    expect(field('Rise today').value).toBe('98');
    expect(screen.queryByRole('region', { name: /not in use$/ })).toBeNull();
  });
});

const twoStairs = {
  ...demoJob,
  stairs: [...demoJob.stairs, { id: 'cellar', name: 'Cellar stair', survey: { rise: '98 in' } }],
};
