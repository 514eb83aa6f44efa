import { expect, test } from '@playwright/test';

test('opens under its own policy, silently, and asks nobody but its own host', async ({ page, baseURL }) => {
  const spoken: string[] = [];
  const foreign: string[] = [];
  const own = new URL(baseURL as string).origin;
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') spoken.push(message.text());
  });
  page.on('pageerror', (error) => spoken.push(error.message));
  page.on('request', (request) => {
    const { origin, protocol } = new URL(request.url());
    if (origin !== own && protocol !== 'blob:') foreign.push(request.url());
  });
  await page.addInitScript(() => {
    // Written to the console, because a list on the page would be lost with a reload.
    document.addEventListener('securitypolicyviolation', (violation) => {
      console.error(`Policy broken: ${violation.violatedDirective} by ${violation.blockedURI}`);
    });
  });

  const answer = await page.goto('./');
  await expect(page).toHaveTitle(/Pitchboard/);
  // The policy stands before the encoding in the page; too long a policy would push that out of sight.
  expect(await page.evaluate(() => document.characterSet)).toBe('UTF-8');
  await expect(page.locator('#root > *').first()).toBeVisible();
  await page.waitForLoadState('networkidle');

  expect(answer?.headers()['content-security-policy']).toContain("default-src 'none'");
  await expect(page.locator('meta[http-equiv="Content-Security-Policy"]')).toHaveCount(1);
  expect(spoken).toEqual([]);
  expect(foreign).toEqual([]);
});

test('the policy is in force: nothing comes from elsewhere, no text becomes a script', async ({ page }) => {
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
