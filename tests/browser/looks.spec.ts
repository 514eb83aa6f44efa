/** What eyes and fingers need, in every light and at every size that the page is made for. */
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { STEPS, THEMES, type Theme } from '../../src/state/view';
import { stepsEn } from '../../src/text/steps.en';
import { ratioOf } from './contrast';
import { controlsBelow } from './hitBoxes';
import { textsOnTexts } from './inkBoxes';
import { paintedTexts } from './paint';
import { expect, test } from './quiet';

const SIZES = {
  desk: { viewport: { width: 1440, height: 900 }, hasTouch: false },
  tablet: { viewport: { width: 768, height: 1024 }, hasTouch: true },
} as const;
const WIDTHS = [320, 375, 768, 1024, 1440, 1920];
const FINGER = 48;
/** In the sun a screen gives back less than half of what it shows. */
const LEAST_RATIO: Readonly<Record<Theme, number>> = { paper: 7, dim: 7, sun: 12 };

test.describe.configure({ timeout: 120_000 });

for (const [size, use] of Object.entries(SIZES)) {
  test.describe(size, () => {
    test.use(use);

    for (const theme of THEMES) {
      test(`${theme}: every step and a walk keep to the accessibility rules and can be read`, async ({ page }) => {
        await open(page, theme);
        for (const step of STEPS) {
          await goTo(page, step);
          await expectReadable(page, theme, step);
          await expectNoViolation(page, step);
        }
        await startWalk(page);
        await expectReadable(page, theme, 'walk');
        await expectNoViolation(page, 'walk');
      });
    }

    test('every key, field and link is as large as a finger', async ({ page }) => {
      await open(page, 'paper');
      for (const step of STEPS) {
        await goTo(page, step);
        await expectLarge(page, step);
      }
      await startWalk(page);
      await expectLarge(page, 'walk');
    });

    test('so it is in trouble: a draft, text that is not in use, a file that was refused', async ({ page }) => {
      await open(page, 'paper');
      await getIntoTrouble(page);
      await expectLarge(page, 'trouble');
      await expectReadable(page, 'paper', 'trouble');
      await expectNoViolation(page, 'trouble');
    });
  });
}

for (const units of ['imperial', 'metric'] as const) {
  test(`nothing goes beyond the page, and no text stands on another, at any width (${units})`, async ({ page }) => {
    await open(page, 'paper');
    await page.getByRole('form').getByLabel('Units').selectOption(units);
    for (const step of STEPS) {
      await page.setViewportSize({ width: 1440, height: 900 });
      await goTo(page, step);
      let texts = 0;
      for (const width of WIDTHS) {
        await page.setViewportSize({ width, height: 900 });
        await settle(page);
        expect.soft(await widthsOf(page), `${step} at ${width}`).toEqual({ beyond: [] });
        const found = await page.evaluate(textsOnTexts);
        expect.soft(found.overlaps, `${step} at ${width}`).toEqual([]);
        texts += found.texts;
      }
      expect(texts, `texts that were looked at: ${step}`).toBeGreaterThan(30);
    }
  });
}

test('what is wrong is found: the measures of this file on a page made for it', async ({ page }) => {
  await page.goto('./');
  await page.evaluate(() => {
    const bad = document.createElement('div');
    const drawing = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
    for (const [x, words] of [
      [10, 'first'],
      [20, 'second'],
    ] as const) {
      const text = document.createElementNS('http://www.w3.org/2000/svg', 'text');
      text.setAttribute('x', String(x));
      text.setAttribute('y', '20');
      text.textContent = words;
      drawing.append(text);
    }
    const button = document.createElement('button');
    button.textContent = 'small and pale';
    Object.assign(button.style, { minHeight: '20px', height: '20px', color: 'rgb(140, 140, 140)' });
    const wide = document.createElement('div');
    Object.assign(wide.style, { minWidth: '3000px', minHeight: '1px' });
    bad.append(drawing, button, wide);
    document.body.replaceChildren(bad);
  });
  expect((await page.evaluate(textsOnTexts)).overlaps).toEqual([expect.stringContaining('“first” and “second”')]);
  expect((await page.evaluate(controlsBelow, FINGER)).small).toEqual([
    expect.objectContaining({ what: 'button. “small and pale”', height: 20 }),
  ]);
  expect(lowIn(await page.evaluate(paintedTexts), 7)).toEqual([expect.stringContaining('“small and pale”')]);
  expect((await widthsOf(page)).beyond).not.toEqual([]);
});

async function open(page: Page, theme: Theme): Promise<void> {
  await page.goto('./');
  await expect(page.getByText('Looking for a draft on this device')).toHaveCount(0);
  await page.getByRole('combobox', { name: 'Light', exact: true }).selectOption(theme);
}

async function goTo(page: Page, step: (typeof STEPS)[number]): Promise<void> {
  const name = stepsEn[`step.${step}`];
  await page.getByRole('navigation').getByRole('button', { name, exact: true }).click();
  await expect(page.getByRole('heading', { level: 2, name, exact: true })).toBeVisible();
  await expect(page.getByText('Getting this step')).toHaveCount(0);
  await page.waitForLoadState('networkidle');
  await settle(page);
}

async function startWalk(page: Page): Promise<void> {
  await goTo(page, 'lay-out');
  await page.getByRole('button', { name: /^One mark at a time/ }).click();
  await expect(page.getByRole('main', { name: 'Marks on the board, one at a time' })).toBeVisible();
  await settle(page);
}

async function getIntoTrouble(page: Page): Promise<void> {
  await page.getByLabel('Upper floor to come: how sure').selectOption('Not known yet');
  await page.getByRole('textbox', { name: 'Rise today', exact: true }).fill('8.10');
  await goTo(page, 'lay-out');
  await page.getByRole('textbox', { name: 'Board depth', exact: true }).fill('eleven');
  await expect(page.getByRole('region', { name: '2 fields are not in use' })).toBeVisible();
  await expect(page.getByRole('region', { name: 'Draft' })).toBeVisible();
  const coming = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Open' }).click();
  await (await coming).setFiles({ name: 'torn.json', mimeType: 'application/json', buffer: Buffer.from('{') });
  await expect(page.getByRole('alertdialog')).toBeVisible();
  await settle(page);
}

/** The drawings follow in the frames after a change, when there is a moment. */
async function settle(page: Page): Promise<void> {
  await page.evaluate(
    () =>
      new Promise<void>((resolve) => {
        let quiet = 0;
        const watcher = new MutationObserver(() => {
          quiet = 0;
        });
        watcher.observe(document.body, { subtree: true, childList: true, attributes: true, characterData: true });
        const look = () => {
          quiet += 1;
          if (quiet > 5) {
            watcher.disconnect();
            resolve();
          } else requestAnimationFrame(look);
        };
        look();
      }),
  );
}

async function expectNoViolation(page: Page, where: string): Promise<void> {
  // In one go, and with no page beside it to gather in. Contrast is measured by `expectReadable`, and harder.
  const axe = new AxeBuilder({ page }).setLegacyMode().options({ resultTypes: ['violations'] });
  const { violations, passes } = await axe.disableRules(['color-contrast']).analyze();
  const found = violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`);
  expect.soft(found, where).toEqual([]);
  expect(passes.length, where).toBeGreaterThan(10);
}

async function expectReadable(page: Page, theme: Theme, where: string): Promise<void> {
  const painted = await page.evaluate(paintedTexts);
  expect(painted.length, where).toBeGreaterThan(10);
  expect.soft(lowIn(painted, LEAST_RATIO[theme]), where).toEqual([]);
}

function lowIn(painted: Awaited<ReturnType<typeof paintedTexts>>, least: number): string[] {
  return painted.flatMap((text) => {
    const ratio = ratioOf(text);
    return ratio >= least ? [] : [`${ratio.toFixed(2)} ${text.what}: ${text.color} on ${text.under.join(', ')}`];
  });
}

async function expectLarge(page: Page, where: string): Promise<void> {
  const { all, small } = await page.evaluate(controlsBelow, FINGER);
  expect(all, where).toBeGreaterThan(5);
  expect.soft(small, where).toEqual([]);
}

/** The page, and at a desk its two columns, which scroll each by itself. */
async function widthsOf(page: Page): Promise<{ beyond: string[] }> {
  return page.evaluate(() => {
    const places = [document.documentElement, ...document.querySelectorAll<HTMLElement>('.desk-form, .desk-side')];
    return {
      beyond: places
        .filter(({ scrollWidth, clientWidth }) => scrollWidth > clientWidth && clientWidth > 0)
        .map((place) => `${place.className || 'page'}: ${place.scrollWidth} in ${place.clientWidth}`),
    };
  });
}
