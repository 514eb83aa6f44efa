/**
 * The main job: from "New job" to a saved file, opened again. What is done is written once; how a hand
 * does it (by taps, by keys, by the names that a screen reader says) is handed in.
 */
import { readFile } from 'node:fs/promises';
import { type Download, expect, type Page } from '@playwright/test';
import type { StepName } from '../ui/bench';

export interface Hand {
  /** A key of the page with this name, wherever it is. */
  press(name: string): Promise<void>;
  toStep(name: StepName): Promise<void>;
  /** A length into the field with this label, as the tape says it. */
  length(label: string, text: string): Promise<void>;
  count(label: string, count: number): Promise<void>;
  /** One of the choices of a field. */
  choose(label: string, words: string): Promise<void>;
  undo(): Promise<void>;
  redo(): Promise<void>;
  save(): Promise<void>;
  open(): Promise<void>;
}

/** Without the dialog of the system, which no test can reach, the page hands a file to the downloads. */
export async function openPage(page: Page, address = './'): Promise<void> {
  // From now on, and not only from when one is waited for: a key is quicker than the wish to see its dialog.
  page.on('filechooser', () => undefined);
  await page.addInitScript(() => {
    Reflect.deleteProperty(window, 'showSaveFilePicker');
  });
  await page.goto(address);
  await expect(page.getByRole('button', { name: 'New job' })).toBeVisible();
  // The draft of the last visit has been looked for: what is done now is on top of it.
  await expect(page.getByText('Looking for a draft on this device')).toHaveCount(0);
}

/** @returns the file that was saved, as text */
export async function doTheJob(page: Page, hand: Hand): Promise<string> {
  await hand.press('New job');
  await measure(hand);
  await hand.toStep('Choose');
  await hand.count('Risers', 14);
  await hand.length('Run', '10');
  await hand.length('Nosing', '1 1/8');
  await hand.toStep('Lay out');
  await hand.choose('Kicker at the toe', 'Notched over a kicker');
  await hand.length('Kicker width', '3 1/2');
  await hand.length('Kicker height', '1 1/2');
  await expectMarks(page, hand);
  await undoAndRedo(page, hand);
  const saved = await saving(page, hand);
  await openAgain(page, hand, saved);
  return saved;
}

async function measure(hand: Hand): Promise<void> {
  await hand.length('Rise today', '105 7/16');
  await hand.length('Lower floor to come', '5/8');
  await hand.length('Upper floor to come', '3/4');
  await hand.length('Tread thickness', '1 1/16');
  await hand.length('Opening, framed', '127');
  await hand.length('Header depth', '11 1/4');
  await hand.length('Upper floor, whole depth', '13 1/4');
  await hand.length('Width, framed', '39 1/2');
}

async function expectMarks(page: Page, hand: Hand): Promise<void> {
  const marks = page.getByRole('region', { name: 'Marks on the board' });
  const tip = marks.getByRole('row').nth(1).getByRole('cell').first();
  await expect(tip).toHaveAccessibleName(/\b6\s1\/4\b/);
  await hand.toStep('Set');
  const top = page.getByRole('region', { name: 'Top end', exact: true });
  const mark = top.getByRole('row').filter({ hasText: 'mark on the header, below the subfloor as it is today' });
  await expect(mark).toHaveAccessibleName(/\b7\s7\/8\b/);
  await hand.toStep('Lay out');
}

/** Each field that was typed in is one step, and so is the choice before them. */
const STEPS_OF_THE_KICKER = 3;

async function undoAndRedo(page: Page, hand: Hand): Promise<void> {
  const kicker = page.getByLabel('Kicker at the toe');
  const shown = () => kicker.locator('option:checked').textContent();
  expect(await shown()).toBe('Notched over a kicker');
  for (let steps = 0; steps < STEPS_OF_THE_KICKER; steps += 1) await hand.undo();
  await expect.poll(shown).toBe('No kicker');
  await expect(page.getByLabel('Kicker width')).toHaveCount(0);
  for (let steps = 0; steps < STEPS_OF_THE_KICKER; steps += 1) await hand.redo();
  await expect.poll(shown).toBe('Notched over a kicker');
}

async function saving(page: Page, hand: Hand): Promise<string> {
  const coming = page.waitForEvent('download');
  await hand.save();
  return textOf(await coming);
}

/** Over another job, or the job that is open already would do. */
async function openAgain(page: Page, hand: Hand, saved: string): Promise<void> {
  await hand.press('New job');
  await expect(page.getByText(/^Begin with the rise/)).toBeVisible();
  const coming = page.waitForEvent('filechooser');
  await hand.open();
  await (await coming).setFiles({ name: 'again.json', mimeType: 'application/json', buffer: Buffer.from(saved) });
  await expect(page.getByText('again.json is open.')).toBeVisible();
  await expect(page.getByLabel('Rise today')).toHaveValue('105 7/16');
  expect(await saving(page, hand)).toBe(saved);
}

async function textOf(download: Download): Promise<string> {
  return readFile(await download.path(), 'utf8');
}
