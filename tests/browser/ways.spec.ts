/** Ways from a word about a field into the field, where its step has not been fetched yet. */
import { expect, test } from './quiet';
import { openPage } from './theJob';

test('the draft leads into a field of a step that was never shown', async ({ page }) => {
  await openPage(page);
  await page.getByRole('button', { name: /^Floors and treads to come/ }).click();
  await page.getByLabel('Tread thickness: how sure').selectOption('Not known yet');
  await page.getByRole('region', { name: 'Draft' }).getByRole('link', { name: 'Tread thickness' }).click();
  await expect(page.getByRole('textbox', { name: 'Tread thickness', exact: true })).toBeFocused();
});

test('what is missing leads from any step into its field', async ({ page }) => {
  await openPage(page);
  await page.getByRole('button', { name: 'New job' }).click();
  await page.getByRole('navigation').getByRole('button', { name: 'Print', exact: true }).click();
  await page.getByRole('form').getByRole('link', { name: 'Rise today' }).click();
  await expect(page.getByRole('textbox', { name: 'Rise today', exact: true })).toBeFocused();
});

test('a jump down the page is over at once: nothing slides away under a finger', async ({ page }) => {
  await openPage(page);
  const below = await page.evaluate(() => {
    const end = [...document.querySelectorAll('.desk-form button')].at(-1);
    const topOfEnd = () => (end === undefined ? Number.NaN : end.getBoundingClientRect().top - innerHeight);
    const before = topOfEnd();
    end?.scrollIntoView({ block: 'start' });
    // Still in the same breath: whatever slides has not begun to.
    return { before, after: topOfEnd() };
  });
  expect(below.before).toBeGreaterThan(0);
  expect(below.after).toBeLessThan(0);
});
