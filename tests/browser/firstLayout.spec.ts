/** From nothing to a stair that can be trusted with a finger: counted, on the page as it is built. */
import { fingerOn } from './hands';
import { expect, test } from './quiet';
import { openPage } from './theJob';

/** Beside the digits. */
const MOST_TAPS = 12;

test.use({ viewport: { width: 768, height: 1024 }, hasTouch: true });

test('three readings and two floors to come are a stair, in at most twelve taps beside the digits', async ({
  page,
}) => {
  await openPage(page);
  await fingerOn(page).press('New job');
  const pad = page.getByRole('region', { name: /^Keypad for / });
  let taps = 0;
  const press = async (names: readonly string[]) => {
    for (const name of names) {
      if (!/^\d$/.test(name)) taps += 1;
      await pad.getByRole('button', { name, exact: true }).tap();
    }
  };
  await page.getByLabel('Reading on the left', { exact: true }).tap();
  taps += 1;
  await press(['1', '0', '5', '7/16', 'Next: Reading in the centre']);
  await press(['1', '0', '5', '1/2', 'Next: Reading on the right']);
  await press(['1', '0', '5', '7/16', 'Take the middle one: 105 7/16 in']);
  await press(['5/8', 'Next: Upper floor to come', '3/4', 'Next: Tread thickness']);
  expect(taps).toBeLessThanOrEqual(MOST_TAPS);
  await expect(page.getByRole('img', { name: /^Side elevation: 14 risers of 7 / })).toBeVisible();
  // While the keypad is there the risers are one line: first, last, and how far they are apart.
  await expect(page.locator('.strip-ends')).toBeVisible();
  await expect(page.locator('.strip-answer')).toContainText('spread');
});
