import 'fake-indexeddb/auto';
import { screen, waitFor } from '@testing-library/react';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { demoJob } from '../../src/document/demoJob';
import type { SavedFile } from '../../src/platform/files';
import { keepPrinter } from '../../src/platform/printers';
import { FilesPart } from '../../src/ui/print/FilesPart';
import type { Order } from '../../src/workshop/order';
import { openPart } from './part';

vi.setConfig({ testTimeout: 60_000 });

const orders: Order[] = [];
let saving: SavedFile = { kind: 'saved', name: 'a.pdf' };
let broken = false;

vi.mock('../../src/workshop/workshop', () => ({
  orderFile: async (order: Order) => {
    orders.push(order);
    if (broken) throw new Error('broken');
    return { ok: true, value: { name: 'a.pdf', type: 'application/pdf', content: new Uint8Array(3) } };
  },
}));

beforeEach(() => {
  orders.length = 0;
  broken = false;
  saving = { kind: 'saved', name: 'a.pdf' };
});

async function openFiles() {
  return openPart(<FilesPart />, { save: async () => saving });
}

const packageKey = () => screen.getByRole('button', { name: /^Package for the crew/ });
const box = (name: string) => screen.getByLabelText<HTMLInputElement>(name);

describe('making a file', () => {
  it('orders what is chosen, from the job that is shown', async () => {
    const { user } = await openFiles();
    await user.click(box('Cautions'));
    await user.selectOptions(screen.getByLabelText('Paper'), 'A3');
    await user.click(packageKey());
    expect(await screen.findByText('a.pdf is made.')).toBeTruthy();
    expect(orders).toMatchObject([{ kind: 'package', job: demoJob, stair: 0, choice: { paper: 'a3', revision: 'A' } }]);
    expect(orders[0]?.sheets).toContain('cover');
    expect(orders[0]?.sheets).not.toContain('cautions');
  });

  it('says what became of it: cancelled, not written, or not made', async () => {
    const { user } = await openFiles();
    saving = { kind: 'cancelled' };
    await user.click(packageKey());
    expect(await screen.findByText(/^Not saved: no place was chosen/)).toBeTruthy();
    saving = { kind: 'failed' };
    await user.click(packageKey());
    expect(await screen.findByText(/could not be made or written/)).toBeTruthy();
    saving = { kind: 'saved', name: 'a.pdf' };
    broken = true;
    await user.click(packageKey());
    expect(await screen.findByText(/could not be made or written/)).toBeTruthy();
  });

  it('has no package without a sheet', async () => {
    const { user } = await openFiles();
    for (const sheet of screen.getAllByRole('checkbox')) await user.click(sheet);
    expect(packageKey()).toHaveProperty('disabled', true);
    expect(screen.getByText('A package needs one sheet at least.')).toBeTruthy();
  });
});

describe('a printer', () => {
  async function measure(user: Awaited<ReturnType<typeof openFiles>>['user'], short: string, long: string) {
    for (const [label, text] of [
      ['Bar along the short side measures', short],
      ['Bar along the short side measures and says', '7'],
      ['Bar along the long side measures', long],
      ['Bar along the long side measures and says', '10'],
    ] as const) {
      await user.clear(box(label));
      await user.type(box(label), text);
    }
  }

  it('is corrected for, remembered by its name, and chosen again', async () => {
    const { user, close } = await openFiles();
    await measure(user, '6.93', '10.1');
    await user.type(box('Call this printer'), 'Office');
    await user.click(screen.getByRole('button', { name: 'Remember it on this device' }));
    expect(await screen.findByText(/^Kept on this device, and chosen/)).toBeTruthy();
    await user.click(packageKey());
    await waitFor(() => expect(orders).toHaveLength(1));
    expect(orders[0]?.choice.correction?.short).toBeCloseTo(0.99, 12);
    expect(orders[0]?.choice.correction?.long).toBeCloseTo(1.01, 12);
    close();
    const again = await openFiles();
    await again.user.selectOptions(await screen.findByLabelText('Printer'), 'Office');
    await again.user.click(packageKey());
    await waitFor(() => expect(orders).toHaveLength(2));
    expect(orders[1]?.choice.correction).toMatchObject({ short: orders[0]?.choice.correction?.short });
  });

  it('that is chosen and measured again is put right by what is left of its error', async () => {
    await keepPrinter({ name: 'Attic', short: 0.98, long: 1 });
    const { user } = await openFiles();
    await user.selectOptions(await screen.findByLabelText('Printer'), 'Attic');
    await measure(user, '7.07', '10');
    await user.click(packageKey());
    await waitFor(() => expect(orders).toHaveLength(1));
    expect(orders[0]?.choice.correction?.short).toBeCloseTo(0.98 * 1.01, 12);
  });

  it('that is off by more than a tenth is refused with the reason, and is not kept', async () => {
    const { user } = await openFiles();
    await measure(user, '6', '10');
    await user.type(box('Call this printer'), 'Far off');
    expect(screen.getByText(/more than 10 % is no printer’s error/)).toBeTruthy();
    expect(screen.getByRole('button', { name: 'Remember it on this device' })).toHaveProperty('disabled', true);
  });
});
