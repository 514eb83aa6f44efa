/** What outlives a reload, and what may come in from outside. */
import type { Page } from '@playwright/test';
import { demoJob } from '../../src/document/demoJob';
import { saveJob } from '../../src/document/saveJob';
import { expect, test } from './quiet';
import { openPage } from './theJob';

const undo = (page: Page) => page.getByRole('button', { name: 'Undo' });
const rise = (page: Page) => page.getByRole('textbox', { name: 'Rise today', exact: true });
const toStep = (page: Page, name: string) =>
  page.getByRole('navigation').getByRole('button', { name, exact: true }).click();

test('a reload brings back the job, the way back and the step', async ({ page }) => {
  await openPage(page);
  await rise(page).fill('106');
  await rise(page).blur();
  await rise(page).fill('107 3/8');
  await rise(page).blur();
  await undo(page).click();
  await toStep(page, 'Check');
  await page.getByRole('combobox', { name: 'Light', exact: true }).selectOption('Dim');
  await kept(page);

  await page.reload();
  await expect(page.getByRole('heading', { level: 2, name: 'Check', exact: true })).toBeVisible();
  await expect(page.locator('html')).toHaveAttribute('data-theme', 'dim');
  await toStep(page, 'Measure');
  await expect(rise(page)).toHaveValue('106');
  await page.getByRole('button', { name: 'Redo' }).click();
  await expect(rise(page)).toHaveValue('107 3/8');
  await undo(page).click();
  await undo(page).click();
  await expect(rise(page)).toHaveValue('105 7/16');
  await expect(undo(page)).toBeDisabled();
});

test('a page that is thrown away in the middle of a walk comes back to the same number', async ({ page }) => {
  await openPage(page);
  await toStep(page, 'Lay out');
  await page.getByRole('button', { name: /^One mark at a time/ }).click();
  for (let marks = 0; marks < 3; marks += 1) await page.getByRole('button', { name: 'Marked, next' }).click();
  const spoken = page.locator('#walk-spoken');
  const before = await spoken.textContent();
  expect(before).toMatch(/\d/);
  // Nobody is asked and nothing is said: as when the system needs the memory.
  await page.waitForTimeout(300);
  await page.goto('about:blank');
  await page.goto('./');
  await expect(spoken).toHaveText(before as string);
});

test('a job file that is dropped on the page opens', async ({ page }) => {
  await openPage(page);
  await drop(page, 'granary.json', saveJob({ ...demoJob, name: 'Granary' }));
  await expect(page.getByRole('heading', { level: 1, name: 'Granary' })).toBeVisible();
  await expect(page).toHaveTitle(/^Granary/);
  await undo(page).click();
  await expect(page.getByRole('heading', { level: 1, name: demoJob.name as string })).toBeVisible();
});

const HOSTILE: readonly (readonly [what: string, content: string, reason: RegExp])[] = [
  [
    'a key that would change every object',
    saveJob(demoJob).replace('"version": 1,', '"version": 1, "__proto__": { "polluted": "yes" },'),
    /__proto__/,
  ],
  ['two megabytes', JSON.stringify({ ...demoJob, notes: 'x'.repeat(2_000_000) }), /larger than a job file can be/],
  ['no JSON', 'PK\u0003\u0004 a letter', /not JSON/],
  ['bytes that are no text', '\uD800', /not a text file/],
  ['a length that is no number', saveJob(demoJob).replace('105 7/16 in', 'NaN'), /stairs\[0\]\.survey\.rise/],
  ['a number that is none', saveJob(demoJob).replace('"risers": 14', '"risers": NaN'), /not JSON/],
  ['a tower of brackets', `${'['.repeat(100_000)}${']'.repeat(100_000)}`, /nested more than/],
  [
    'a script for a kind of top',
    saveJob(demoJob).replace('"hanger-is-riser"', '"<img src=x onerror=\\"document.title=1\\">"'),
    /stairs\[0\]\.stringer\.top/,
  ],
];

for (const [what, content, reason] of HOSTILE) {
  test(`a file with ${what} is refused, and the open job stays`, async ({ page }) => {
    await openPage(page);
    await rise(page).fill('106');
    await drop(page, 'hostile.json', content);
    const refusal = page.getByRole('alertdialog').or(page.locator('.notice'));
    await expect(refusal).toContainText('hostile.json');
    await expect(refusal).toContainText(reason);
    await expect(rise(page)).toHaveValue('106');
    expect(await page.evaluate(() => 'polluted' in {})).toBe(false);
    expect(await page.locator('img, script:not([src])').count()).toBe(0);
  });
}

test('a script in a name is text, on every page and in the name of the file', async ({ page }) => {
  const script = '<img src=x onerror="document.documentElement.dataset.ran=1"><script>document.title="ran"</script>';
  const stairs = demoJob.stairs.map((stair) => ({ ...stair, name: script }));
  await openPage(page);
  await page.getByLabel('Job name').fill(script);
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save' }).click();
  expect((await coming).suggestedFilename()).toMatch(/^[\w.-]+\.pitchboard\.json$/);
  await drop(page, 'names.json', saveJob({ ...demoJob, name: script, stairs }));
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(script);
  await expect(page.getByRole('button', { name: `Stairs: ${script}` })).toBeVisible();
  for (const step of ['Choose', 'Lay out', 'Cut', 'Set', 'Check', 'Print']) {
    await toStep(page, step);
    await expect(page.getByRole('heading', { level: 2, name: step, exact: true })).toBeVisible();
    await expect(page.getByText('Getting this step')).toHaveCount(0);
  }
  await expect(page.locator('.print-head')).toContainText(script);
  expect(await page.locator('img, script:not([src])').count()).toBe(0);
  expect(await page.evaluate(() => document.documentElement.dataset['ran'])).toBeUndefined();
});

async function kept(page: Page): Promise<void> {
  await expect(page.getByText(/^Draft kept on this device at /)).toBeVisible();
}

/** As a hand lets a file go over the page. */
async function drop(page: Page, name: string, content: string): Promise<void> {
  const data = await page.evaluateHandle(
    ([file, text]) => {
      const transfer = new DataTransfer();
      // Half of a pair of signs: text would not keep it, bytes do.
      const bytes = text === '\uD800' ? new Uint8Array([0xff, 0xfe, 0x00]) : text;
      transfer.items.add(new File([bytes], file, { type: 'application/json' }));
      return transfer;
    },
    [name, content] as const,
  );
  await page.dispatchEvent('body', 'dragover', { dataTransfer: data });
  await expect(page.getByText('Let go to open this job file')).toBeVisible();
  await page.dispatchEvent('body', 'drop', { dataTransfer: data });
  await expect(page.getByText('Let go to open this job file')).toHaveCount(0);
}
