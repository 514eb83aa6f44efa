/** A place in the picture of all layouts is touched, looked at, and taken as the stair. */
import { expect, test } from './quiet';

test('a place that fits is touched and taken, as one step of undo', async ({ page }) => {
  await page.goto('./');
  await page.getByRole('navigation').getByRole('button', { name: 'Choose', exact: true }).click();
  const picture = page.getByRole('img', { name: /risers, runs from/ });
  await expect(picture).toBeVisible();
  // Parts that come late push the picture down: its own measures stay.
  await page.waitForLoadState('networkidle');
  // In the row of the stair in hand, a little to the right: the next sixteenth is the nearest that fits.
  const inHand = picture.locator('circle');
  const position = { x: Number(await inHand.getAttribute('cx')) + 16, y: Number(await inHand.getAttribute('cy')) };
  await picture.click({ position });
  const run = page.getByRole('slider', { name: 'Run looked at' });
  await expect(run).toHaveAttribute('aria-valuetext', /^14 risers, run 10\s1\/16\sin: fits$/);
  await page.getByRole('button', { name: 'Take 14 risers, run 10 1/16 in' }).first().click();
  await expect(page.getByText('14 risers, run 10 1/16 in: in hand.')).toHaveCount(1);
  const search = page.getByRole('region', { name: 'Every layout that fits' });
  await expect(search.getByRole('button', { name: 'In hand: 14 risers, run 10 1/16 in' })).toBeVisible();
  await run.focus();
  await page.keyboard.press('ArrowLeft');
  await expect(run).toHaveAttribute('aria-valuetext', /^14 risers, run 10\sin: fits$/);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByText('14 risers, run 10 in: in hand.')).toHaveCount(1);
});
