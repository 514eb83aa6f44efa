/** Three ways to do the same job. What a hand has done is seen on the page itself, never taken for granted. */
import { expect, type Locator, type Page } from '@playwright/test';
import type { Hand } from './theJob';

/** One finger: taps on what is on screen. Numbers go through the page's own keypad. */
export function fingerOn(page: Page): Hand {
  const pad = page.getByRole('region', { name: /^Keypad for / });
  const tap = (target: Locator) => target.tap();
  const press = (name: string) => tap(key(page, name));

  /** By the pad's own way on where it leads there; by its place on the page where it does not. */
  async function intoField(label: string): Promise<void> {
    const next = pad.getByRole('button', { name: `Next: ${label}`, exact: true });
    if (await next.isVisible()) await tap(next);
    else {
      // The page moves up when the pad goes: it is put away first, as a hand would that looks for another field.
      if (await pad.isVisible()) await tap(pad.getByRole('button', { name: 'Close' }));
      const head = closedHeadOver(page, label);
      if ((await head.count()) > 0) await tap(head);
      await tap(page.getByLabel(label, { exact: true }));
    }
    await expect(page.getByRole('region', { name: `Keypad for ${label}`, exact: true })).toBeVisible();
  }

  async function typeOnPad(text: string): Promise<void> {
    const parts = text.split(' ');
    const whole = parts.find((part) => !part.includes('/')) ?? '';
    for (const digit of whole) await tap(pad.getByRole('button', { name: digit, exact: true }));
    for (const part of parts.filter((each) => each.includes('/')))
      await tap(pad.getByRole('button', { name: part, exact: true }));
  }

  return {
    press,
    async toStep(name) {
      if (await pad.isVisible()) await tap(pad.getByRole('button', { name: 'Close' }));
      await tap(inNav(page, name));
      await expectStep(page, name);
    },
    async length(label, text) {
      await intoField(label);
      await typeOnPad(text);
      await expect(page.getByLabel(label, { exact: true })).toHaveValue(text);
    },
    async count(label, wanted) {
      const field = page.getByLabel(label, { exact: true });
      // One up and down again, so that the count is the carpenter's and not left to the rules.
      await press(`${label}: one more`);
      while (Number(await field.inputValue()) > wanted) await press(`${label}: one fewer`);
      while (Number(await field.inputValue()) < wanted) await press(`${label}: one more`);
      await expect(field).toHaveValue(String(wanted));
    },
    async choose(label, words) {
      // The list that a tap opens is the system's own, out of reach of the page and of its tests.
      await page.getByLabel(label, { exact: true }).selectOption({ label: words });
    },
    undo: () => press('Undo'),
    redo: () => press('Redo'),
    save: () => press('Save'),
    open: () => press('Open'),
  };
}

/** Keys only: whatever has to be reached is reached with Tab, and everything has to show its focus. */
export function keyboardOn(page: Page): Hand {
  const { keyboard } = page;

  /** There is no key that is further away than this many stops. */
  const MOST_STOPS = 250;

  async function tabTo(target: Locator): Promise<void> {
    for (let stops = 0; stops < MOST_STOPS; stops += 1) {
      if (await hasFocus(target)) return;
      await keyboard.press('Tab');
    }
    throw new Error(`No Tab leads to ${target.toString()}`);
  }

  async function type(target: Locator, text: string): Promise<void> {
    await tabTo(target);
    await keyboard.press('ControlOrMeta+A');
    await keyboard.type(text);
    await expect(target).toHaveValue(text);
  }

  return {
    async press(name) {
      await tabTo(key(page, name));
      await keyboard.press('Enter');
    },
    async toStep(name) {
      await tabTo(inNav(page, name));
      await keyboard.press('Enter');
      await expectStep(page, name);
    },
    length: (label, text) => type(page.getByLabel(label, { exact: true }), text),
    count: (label, wanted) => type(page.getByLabel(label, { exact: true }), String(wanted)),
    async choose(label, words) {
      const field = page.getByLabel(label, { exact: true });
      await tabTo(field);
      const shown = () => field.locator('option:checked').textContent();
      const most = await field.locator('option').count();
      for (let at = 1; at < most && (await shown()) !== words; at += 1) await keyboard.press('ArrowDown');
      expect(await shown()).toBe(words);
    },
    undo: () => keyboard.press('ControlOrMeta+Z'),
    redo: () => keyboard.press('ControlOrMeta+Y'),
    save: () => keyboard.press('ControlOrMeta+S'),
    open: () => keyboard.press('ControlOrMeta+O'),
  };
}

/** By role and name, as a screen reader lists them: whoever uses one acts on what was read out. */
export function screenReaderOn(page: Page): Hand {
  const press = (name: string) => key(page, name).click();
  const write = async (label: string, text: string) => {
    const field = page.getByRole('textbox', { name: label, exact: true });
    await field.fill(text);
    await expect(field).toHaveAccessibleDescription(/./);
  };
  return {
    press,
    async toStep(name) {
      await inNav(page, name).click();
      await expectStep(page, name);
      await expect(inNav(page, name)).toHaveAttribute('aria-current', 'step');
    },
    length: write,
    count: (label, wanted) => write(label, String(wanted)),
    async choose(label, words) {
      await page.getByRole('combobox', { name: label, exact: true }).selectOption({ label: words });
    },
    undo: () => press('Undo'),
    redo: () => press('Redo'),
    save: () => press('Save'),
    open: () => press('Open'),
  };
}

function key(page: Page, name: string): Locator {
  return page.getByRole('button', { name, exact: true });
}

function inNav(page: Page, name: string): Locator {
  return page.getByRole('navigation', { name: 'Steps of the job' }).getByRole('button', { name, exact: true });
}

async function expectStep(page: Page, name: string): Promise<void> {
  await expect(page.getByRole('heading', { level: 2, name, exact: true })).toBeVisible();
  await expect(page.getByText('Getting this step')).toHaveCount(0);
}

/** The closed head of the thing to measure that a field belongs to; none where the field is in sight. */
function closedHeadOver(page: Page, label: string): Locator {
  return page
    .locator('.thing', { has: page.getByLabel(label, { exact: true }) })
    .locator('.thing-head')
    .getByRole('button', { expanded: false });
}

async function hasFocus(target: Locator): Promise<boolean> {
  return target.evaluateAll((found) => found.includes(document.activeElement as never));
}
