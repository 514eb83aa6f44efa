/** The job that Pitchboard is for, three ways; each ends in the same file. */
import type { Page } from '@playwright/test';
import { emptyJob } from '../../src/document/emptyJob';
import { openJob } from '../../src/document/openJob';
import { fingerOn, keyboardOn, screenReaderOn } from './hands';
import { expect, test } from './quiet';
import { doTheJob, openPage } from './theJob';

// One after the other and in one place, so that the files can be laid side by side at the end.
test.describe.configure({ mode: 'serial', timeout: 60_000 });
const files = new Map<string, string>();

test.describe('by single taps on a tablet', () => {
  test.use({ viewport: { width: 768, height: 1024 }, hasTouch: true });

  test('the main job, digits on the keypad of the page', async ({ page }) => {
    const heard = await listenTo(page);
    await openPage(page);
    files.set('taps', await doTheJob(page, fingerOn(page)));
    const { touches, mice, keys, most } = await heard();
    expect(touches).toBeGreaterThan(60);
    expect({ mice, keys, most }).toEqual({ mice: 0, keys: 0, most: 1 });
  });
});

test.describe('by the keyboard alone at a desk', () => {
  test.use({ viewport: { width: 1440, height: 900 } });

  test('the main job, no pointer at all', async ({ page }) => {
    const heard = await listenTo(page);
    await openPage(page);
    files.set('keys', await doTheJob(page, keyboardOn(page)));
    const { touches, mice, keys } = await heard();
    expect(keys).toBeGreaterThan(60);
    expect({ touches, mice }).toEqual({ touches: 0, mice: 0 });
  });
});

test.describe('by what a screen reader says', () => {
  test.use({ viewport: { width: 1024, height: 768 } });

  test('the main job, by roles and names', async ({ page }) => {
    await openPage(page);
    files.set('names', await doTheJob(page, screenReaderOn(page)));
  });
});

test('all three ways end in the same file, with what was measured in it and nothing else', () => {
  expect([...files.keys()]).toEqual(['taps', 'keys', 'names']);
  const [taps, ...others] = [...files.values()] as [string, string, string];
  for (const other of others) expect(other).toBe(taps);
  const read = openJob(taps);
  expect(read.ok && read.value).toEqual({
    ...emptyJob('imperial'),
    stairs: [
      {
        id: 'stair',
        survey: {
          rise: '105 7/16 in',
          lowerToAdd: { length: '5/8 in', known: 'specified' },
          upperToAdd: { length: '3/4 in', known: 'specified' },
          floorDepth: '13 1/4 in',
          headerDepth: '11 1/4 in',
          openingFraming: '127 in',
          widthFraming: '39 1/2 in',
        },
        steps: {
          risers: 14,
          run: '10 in',
          nosing: '1 1/8 in',
          treadThickness: { length: '1 1/16 in', known: 'specified' },
        },
        stringer: { kicker: { width: '3 1/2 in', height: '1 1/2 in' } },
      },
    ],
  });
});

/** What hands the page felt, so that no test does by another way what it says it does. */
async function listenTo(page: Page) {
  await page.addInitScript(() => {
    const heard = { touches: 0, mice: 0, keys: 0, most: 0 };
    Object.assign(window, { heardByTest: heard });
    addEventListener(
      'pointerdown',
      ({ pointerType }) => {
        if (pointerType === 'touch') heard.touches += 1;
        else heard.mice += 1;
      },
      true,
    );
    addEventListener(
      'touchstart',
      ({ touches }) => {
        heard.most = Math.max(heard.most, touches.length);
      },
      true,
    );
    addEventListener(
      'keydown',
      () => {
        heard.keys += 1;
      },
      true,
    );
  });
  return () =>
    page.evaluate(
      () => (window as never as { heardByTest: Record<'touches' | 'mice' | 'keys' | 'most', number> }).heardByTest,
    );
}
