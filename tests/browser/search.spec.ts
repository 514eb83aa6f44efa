/** A place in the picture of all layouts is touched, looked at, and taken as the stair. */
import { expect, test } from './quiet';

test('a place that fits is touched and taken, as one step of undo', async ({ page }) => {
  await page.goto('./');
  await page.getByRole('navigation').getByRole('button', { name: 'Choose', exact: true }).click();
  const picture = page.getByRole('img', { name: /risers, runs from/ });
  await expect(picture).toBeVisible();
  const box = await picture.boundingBox();
  if (box === null) throw new Error('the picture has no place');
  // The middle one of three rows, a little right of where the example stands: the next sixteenth is the nearest that fits.
  const rows = { head: 46, row: 52 };
  const inHand = await picture.locator('circle').boundingBox();
  if (inHand === null) throw new Error('the stair in hand has no place');
  const position = { x: inHand.x + inHand.width / 2 - box.x + 16, y: rows.head + 1.5 * rows.row };
  await picture.click({ position });
  const run = page.getByRole('slider', { name: 'Run looked at' });
  await expect(run).toHaveAttribute('aria-valuetext', '14 risers, run 10 1/16 in: fits');
  await page.getByRole('button', { name: 'Take 14 risers, run 10 1/16 in' }).first().click();
  await expect(page.getByText('14 risers, run 10 1/16 in: in hand.')).toHaveCount(1);
  await run.focus();
  await page.keyboard.press('ArrowLeft');
  await expect(run).toHaveAttribute('aria-valuetext', '14 risers, run 10 in: fits');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByText('14 risers, run 10 in: in hand.')).toHaveCount(1);
});
