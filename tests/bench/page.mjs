/**
 * What a hand feels, measured in a browser on the built page: from a key to the drawing that it changed,
 * frames while a drawing is dragged and zoomed, and how long the page is held up while a package is made. The
 * processor is slowed to a quarter, as a tablet is; each figure stands beside the same done raw, in the same run.
 * The search for every layout is timed at full speed.
 */
import { preview } from 'vite';
import { findBrowser, thisMachine } from '../run/browser.mjs';
import { listenToAnswers, listenToKeys, rawKeys, watchFrames, watchLongTasks } from './pageProbes.mjs';

const SLOWED = 4;
const DESK = { width: 1440, height: 900 };
const ROUNDS = 20;
/** Milliseconds: after these nothing moves any more. */
const REST = { page: 6000, key: 450, raw: 250 };
const MOVES = 90;

/** @param {{ root: string, folder: string }} built the project, and where its page has been built to */
export async function benchPage({ root, folder }) {
  const found = findBrowser(thisMachine);
  if (!found.program) throw new Error(found.sentence);
  const server = await preview({
    root,
    logLevel: 'silent',
    build: { outDir: folder },
    preview: { port: 4399, strictPort: false, open: false },
  });
  const { chromium } = await import('playwright-core');
  const browser = await chromium.launch({
    executablePath: found.program,
    args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking'],
  });
  try {
    const address = `http://localhost:${server.httpServer.address().port}/`;
    return [
      ...(await keystrokes(browser, address)),
      ...(await frames(browser, address)),
      await tasksOfPackage(browser, address),
      ...(await answers(browser, address)),
    ];
  } finally {
    await browser.close();
    await server.close();
  }
}

async function openSlowly(browser, address) {
  const context = await browser.newContext({ viewport: DESK });
  const page = await context.newPage();
  await page.goto(address);
  await page.waitForTimeout(address === 'about:blank' ? 500 : REST.page);
  const session = await context.newCDPSession(page);
  return { page, slow: () => session.send('Emulation.setCPUThrottlingRate', { rate: SLOWED }) };
}

/** Two texts in turn, each with a stair of its own; between them the same attributes written by hand. */
async function keystrokes(browser, address) {
  const { page, slow } = await openSlowly(browser, address);
  const rise = page.getByRole('textbox', { name: 'Rise today', exact: true });
  await page.getByRole('button', { name: /^The rise/ }).click();
  await rise.fill('105.5');
  await page.waitForTimeout(REST.key);
  await page.evaluate(listenToKeys);
  await rise.focus();
  await page.keyboard.press('End');
  for (const [key, list] of [
    ['5', 'F9'],
    ['Backspace', 'F8'],
  ]) {
    await page.evaluate(() => window.heardByBench.record());
    await page.keyboard.press(key);
    await page.waitForTimeout(REST.key);
    const writes = await page.evaluate(rawKeys, list);
    if (writes < 100) throw new Error(`Only ${writes} attributes of the page changed with a key`);
  }
  await slow();
  const times = { page: [], raw: [] };
  for (let round = 0; round < ROUNDS; round += 1) {
    for (const [key, kind] of [
      ['5', 'page'],
      ['F8', 'raw'],
      ['F9', 'raw'],
      ['Backspace', 'page'],
    ]) {
      await page.evaluate(() => window.heardByBench.forget());
      await page.keyboard.press(key);
      await page.waitForTimeout(kind === 'page' ? REST.key : REST.raw);
      times[kind].push(await page.evaluate(() => window.heardByBench.painted()));
    }
  }
  await page.context().close();
  return [
    {
      name: `key to painted drawing at a quarter of the speed / the same attributes raw (medians ${ms(times.page, 0.5)} / ${ms(times.raw, 0.5)} ms)`,
      ratio: at(times.page, 0.5) / at(times.raw, 0.5),
      goal: 1.5,
    },
    {
      name: `the same, 95th percentile in ms (raw: ${ms(times.raw, 0.95)})`,
      ratio: at(times.page, 0.95),
      goal: 100,
    },
  ];
}

/** The same moves over the drawing and over a page with nothing on it. */
async function frames(browser, address) {
  const found = { blank: { zoom: [], drag: [] }, page: { zoom: [], drag: [] } };
  for (const where of ['blank', 'page', 'blank', 'page']) {
    const { page, slow } = await openSlowly(browser, where === 'blank' ? 'about:blank' : address);
    const middle = where === 'blank' ? { x: 1000, y: 400 } : await middleOf(page);
    await slow();
    await page.evaluate(watchFrames);
    for (const [kind, move] of [
      ['zoom', zoom],
      ['drag', drag],
    ]) {
      await page.evaluate(() => window.framesOfBench.begin());
      await move(page, middle);
      found[where][kind].push(...(await page.evaluate(() => window.framesOfBench.end())));
    }
    await page.context().close();
  }
  return ['drag', 'zoom'].map((kind) => {
    const [page, blank] = [found.page[kind], found.blank[kind]];
    return {
      name: `frame while one ${kind}s, 95th percentile / on a blank page (${ms(page, 0.95)} / ${ms(blank, 0.95)} ms)`,
      ratio: at(page, 0.95) / at(blank, 0.95),
      goal: 1.2,
    };
  });
}

async function middleOf(page) {
  const box = await page.locator('.elevation .sight-place').boundingBox();
  if (box === null) throw new Error('There is no drawing to move');
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

async function zoom(page, { x, y }) {
  await page.mouse.move(x, y);
  for (let i = 0; i < MOVES; i += 1) await page.mouse.wheel(0, i % 30 < 15 ? -60 : 60);
  for (let i = 0; i < 12; i += 1) await page.mouse.wheel(0, -100);
}

async function drag(page, { x, y }) {
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let i = 0; i < MOVES; i += 1) await page.mouse.move(x + 120 * Math.sin(i / 8), y + 60 * Math.cos(i / 11));
  await page.mouse.up();
}

/** The package is made beside the page: no task of the page's own may be felt. The second one is measured, when all is fetched. */
async function tasksOfPackage(browser, address) {
  const { page, slow } = await openSlowly(browser, address);
  await page.evaluate(() => {
    // Without a dialog, which nobody would answer, the file goes to the downloads.
    window.showSaveFilePicker = undefined;
  });
  await page.getByRole('navigation').getByRole('button', { name: 'Print', exact: true }).click();
  const key = page.getByRole('button', { name: /^Package for the crew, PDF/ });
  await key.scrollIntoViewIfNeeded();
  const { x, y, width, height } = await key.boundingBox();
  const make = async () => {
    const download = page.waitForEvent('download', { timeout: 120_000 });
    // By its place: looking for it by name is a task of the page too, and none of ours.
    await page.mouse.click(x + width / 2, y + height / 2);
    await download;
    await page.waitForTimeout(REST.key);
  };
  await make();
  await slow();
  await page.waitForTimeout(REST.key);
  await page.evaluate(watchLongTasks);
  await make();
  const longest = await page.evaluate(() => window.longestOfBench());
  await page.context().close();
  // What is not over 50 ms no browser tells of.
  const found = longest === 0 ? 'none over 50 ms' : `${longest.toFixed(0)} ms`;
  return { name: `longest task of the page while a package is made, in ms (${found})`, ratio: longest, goal: 50 };
}

/** Every layout of the example, asked anew by a key in a wish; what fits, and nothing that does, in turn. */
async function answers(browser, address) {
  const { page } = await openSlowly(browser, address);
  await page.getByRole('navigation').getByRole('button', { name: 'Choose', exact: true }).click();
  await page.getByText('What the search keeps to', { exact: true }).click();
  const wish = page.getByRole('textbox', { name: 'Headroom wanted', exact: true });
  await wish.fill('80');
  await page.waitForTimeout(REST.page);
  await page.evaluate(listenToAnswers);
  await wish.focus();
  await page.keyboard.press('End');
  const found = { first: [], all: [], frames: [] };
  for (let round = 0; round < ROUNDS; round += 1) {
    for (const key of ['7', 'Backspace']) {
      await page.keyboard.press(key);
      await page.waitForTimeout(REST.key);
      const { first, all, frames } = await page.evaluate(() => window.answersOfBench());
      found.first.push(first);
      found.all.push(all);
      found.frames.push(frames);
    }
  }
  await page.context().close();
  return [
    {
      name: `key to first answers of the search, 95th percentile in ms (median ${ms(found.first, 0.5)}; picture and list ${ms(found.all, 0.5)}, ${ms(found.all, 0.95)})`,
      ratio: at(found.first, 0.95),
      goal: 100,
    },
    {
      name: `longest frame of a search in frames of 1/60 s, median (95th percentile ${at(found.frames, 0.95).toFixed(1)})`,
      ratio: at(found.frames, 0.5),
      goal: 1.5,
    },
  ];
}

function at(times, share) {
  const sorted = times.toSorted((one, other) => one - other);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))];
}

function ms(times, share) {
  return at(times, share).toFixed(1);
}
