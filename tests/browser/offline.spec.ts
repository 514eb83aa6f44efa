/** Once opened, the program opens again with no network at all; a newer version waits to be asked for. */
import { expect, type Page, test } from '@playwright/test';
import { screenReaderOn } from './hands';
import { type OwnHost, startHost } from './ownHost';
import { doTheJob, openPage } from './theJob';

let host: OwnHost;
test.beforeEach(async () => {
  host = await startHost();
});
test.afterEach(() => host.close());
test.use({ viewport: { width: 1024, height: 768 } });
test.describe.configure({ timeout: 90_000 });

test('opened once, then without any network: a reload, the whole job, its files', async ({ page }) => {
  await openOn(page);
  host.become('is gone');
  const before = host.asked.length;
  await openOn(page);
  await doTheJob(page, screenReaderOn(page));
  for (const step of ['Choose', 'Lay out', 'Cut', 'Set', 'Check', 'Print']) {
    await page.getByRole('navigation').getByRole('button', { name: step, exact: true }).click();
    await expect(page.getByRole('heading', { level: 2, name: step, exact: true })).toBeVisible();
    await expect(page.getByText('Getting this step')).toHaveCount(0);
  }
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: /PDF/ }).first().click();
  expect((await coming).suggestedFilename()).toMatch(/\.pdf$/);
  // The browser alone asks, whether there is a newer keeper.
  expect(host.asked.slice(before).filter((path) => path !== '/offline.js')).toEqual([]);
});

test('a newer version waits while somebody works, and begins when it is asked to', async ({ page }) => {
  await openOn(page);
  await page.getByRole('textbox', { name: 'Rise today', exact: true }).fill('106');
  await expect(page.getByText(/^Draft kept on this device at /)).toBeVisible();
  await host.bringOut('Second');
  await page.reload();
  expect(await versionOf(page)).not.toBe('Second');
  await page.getByRole('button', { name: 'Begin with it now' }).click({ timeout: 20_000 });
  await expect.poll(() => versionOf(page)).toBe('Second');
  await expect(page.getByRole('textbox', { name: 'Rise today', exact: true })).toHaveValue('106');
  await expect(page.getByRole('button', { name: 'Begin with it now' })).toHaveCount(0);
  host.become('is gone');
  await page.reload();
  expect(await versionOf(page)).toBe('Second');
  await expect(page.getByRole('textbox', { name: 'Rise today', exact: true })).toHaveValue('106');
});

test('a network that answers everything with its own page, and a torn version, leave the kept one alone', async ({
  page,
}) => {
  await openOn(page);
  host.become('wants a password');
  await page.reload();
  await expect(page.getByRole('button', { name: 'New job' })).toBeVisible();
  host.become('serves');
  await host.bringOut('Second');
  await host.tear('index.html');
  // Only the keeper still asks for the page itself.
  const asks = () => host.asked.filter((path) => path === '/').length;
  const before = asks();
  await page.reload();
  await expect.poll(asks, { timeout: 20_000 }).toBeGreaterThan(before);
  await expect(page.getByRole('button', { name: 'New job' })).toBeVisible();
  expect(await versionOf(page)).not.toBe('Second');
  expect(await page.evaluate(async () => (await caches.keys()).length)).toBe(1);
});

test('it can be kept on the home screen, with signs of its own', async ({ page }) => {
  await page.goto(host.address);
  const address = await page.locator('link[rel=manifest]').evaluate((link) => (link as HTMLLinkElement).href);
  const manifest = (await (await page.request.get(address)).json()) as {
    name: string;
    display: string;
    start_url: string;
    icons: { src: string; sizes: string }[];
  };
  expect(manifest).toMatchObject({ name: 'Pitchboard', display: 'standalone', start_url: './' });
  for (const { src, sizes } of manifest.icons) {
    const size = await page.evaluate(
      (path) =>
        new Promise<string>((resolve, reject) => {
          const image = new Image();
          image.onload = () => resolve(`${image.naturalWidth}x${image.naturalHeight}`);
          image.onerror = reject;
          image.src = path;
        }),
      new URL(src, address).href,
    );
    if (sizes !== 'any') expect(size).toBe(sizes);
  }
});

/** Until the device has it all. */
async function openOn(page: Page): Promise<void> {
  await openPage(page, host.address);
  await page.locator('summary', { hasText: 'View' }).click();
  await expect(page.getByText('Kept on this device: it opens without a network.', { exact: true })).toBeVisible({
    timeout: 20_000,
  });
  await page.locator('summary', { hasText: 'View' }).click();
}

function versionOf(page: Page): Promise<string | null> {
  return page.locator('meta[name=description]').getAttribute('content');
}
