import { test as unwatched } from '@playwright/test';
import { expect, test } from './quiet';

test('opens under its own policy, silently, and asks nobody but its own host', async ({ page }) => {
  const answer = await page.goto('./');
  await expect(page).toHaveTitle(/Pitchboard/);
  // The policy stands before the encoding in the page; too long a policy would push that out of sight.
  expect(await page.evaluate(() => document.characterSet)).toBe('UTF-8');
  await expect(page.locator('#root > *').first()).toBeVisible();
  await page.waitForLoadState('networkidle');

  expect(answer?.headers()['content-security-policy']).toContain("default-src 'none'");
  await expect(page.locator('meta[http-equiv="Content-Security-Policy"]')).toHaveCount(1);
});

unwatched('the policy is in force: nothing comes from elsewhere, no text becomes a script', async ({ page }) => {
  await page.goto('./');
  const broken = await page.evaluate(
    () =>
      new Promise<string>((resolve) => {
        document.addEventListener('securitypolicyviolation', (violation) => resolve(violation.effectiveDirective));
        new Image().src = 'https://elsewhere.invalid/picture.png';
      }),
  );
  expect(broken).toBe('img-src');
  const made = await page.evaluate(() => {
    try {
      document.createElement('script').textContent = 'document.title = "ran"';
      return 'a script';
    } catch (refusal) {
      return (refusal as Error).name;
    }
  });
  expect(made).toBe('TypeError');
});
