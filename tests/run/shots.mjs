/**
 * `npm run shots`: builds the page, serves it, and takes the pictures that README and the docs show.
 * The pictures are of the example stair, so that nobody's house is in them.
 */
import { spawn, spawnSync } from 'node:child_process';
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import '../../src/cli/checkNode.mjs';
import { ensureInstalled, ROOT } from '../../src/cli/install.mjs';
import { findBrowser, thisMachine } from './browser.mjs';

const FOLDER = join(ROOT, 'docs', 'shots');
const PORT = 4397;
const DESK = { width: 1440, height: 900 };
const TABLET = { width: 768, height: 1024 };
const PHONE = { width: 375, height: 800 };

/** name, size, light, step, and whether to go into one-number mode from there */
const SHOTS = [
  { name: 'desk', size: DESK, light: 'paper', step: 'Measure' },
  { name: 'tablet', size: TABLET, light: 'paper', step: 'Lay out' },
  { name: 'desk-choose', size: DESK, light: 'paper', step: 'Choose' },
  { name: 'desk-lay-out', size: DESK, light: 'paper', step: 'Lay out' },
  { name: 'desk-cut', size: DESK, light: 'paper', step: 'Cut' },
  { name: 'desk-set', size: DESK, light: 'paper', step: 'Set' },
  { name: 'desk-check', size: DESK, light: 'paper', step: 'Check' },
  { name: 'desk-print', size: DESK, light: 'paper', step: 'Print' },
  { name: 'tablet-choose', size: TABLET, light: 'paper', step: 'Choose' },
  { name: 'tablet-measure-sun', size: TABLET, light: 'sun', step: 'Measure' },
  { name: 'tablet-measure-dim', size: TABLET, light: 'dim', step: 'Measure' },
  { name: 'tablet-one-number-sun', size: TABLET, light: 'sun', step: 'Lay out', walk: true },
  { name: 'tablet-one-number-dim', size: TABLET, light: 'dim', step: 'Lay out', walk: true },
  { name: 'phone-measure', size: PHONE, light: 'paper', step: 'Measure' },
  { name: 'phone-one-number', size: PHONE, light: 'paper', step: 'Lay out', walk: true },
];

ensureInstalled();
const found = findBrowser(thisMachine);
if (!found.program) {
  console.error(found.sentence);
  process.exit(1);
}
const vite = join(ROOT, 'node_modules', 'vite', 'bin', 'vite.js');
const built = spawnSync(process.execPath, [vite, 'build'], { cwd: ROOT, stdio: ['ignore', 'ignore', 'inherit'] });
if (built.status !== 0) process.exit(built.status ?? 1);
const server = spawn(process.execPath, [vite, 'preview', '--port', String(PORT), '--strictPort'], {
  cwd: ROOT,
  stdio: 'ignore',
});

try {
  await untilServed();
  mkdirSync(FOLDER, { recursive: true });
  const { chromium } = await import('playwright-core');
  const browser = await chromium.launch({
    executablePath: found.program,
    args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking'],
  });
  for (const shot of SHOTS) await take(browser, shot);
  await browser.close();
} finally {
  server.kill('SIGTERM');
}

async function take(browser, { name, size, light, step, walk = false }) {
  // A context of its own each: no picture shows what another one left in the draft.
  const context = await browser.newContext({ viewport: size, hasTouch: size !== DESK });
  const page = await context.newPage();
  // The bar says when the draft was kept: the same in every picture, or each would differ each time.
  await page.clock.setFixedTime(new Date(2026, 0, 5, 9, 30));
  await page.goto(`http://localhost:${PORT}/`);
  if (light !== 'paper') await page.getByRole('combobox', { name: 'Light', exact: true }).selectOption(light);
  const steps = page.getByRole('navigation', { name: 'Steps of the job' });
  await steps.getByRole('button', { name: step, exact: true }).click();
  if (walk) {
    await page.getByRole('button', { name: /One mark at a time/ }).click();
    await page.getByRole('button', { name: /Marked, next/ }).waitFor();
    for (let i = 0; i < 6; i += 1) await page.keyboard.press('ArrowRight');
  }
  await page.waitForLoadState('networkidle');
  await page.waitForTimeout(400);
  await page.screenshot({ path: join(FOLDER, `${name}.png`) });
  await context.close();
  console.log(`docs/shots/${name}.png`);
}

async function untilServed() {
  for (let tries = 0; tries < 100; tries += 1) {
    const answer = await fetch(`http://localhost:${PORT}/`).catch(() => null);
    if (answer?.ok) return;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  throw new Error('the page was not served');
}
