import { fileURLToPath } from 'node:url';
import { defineConfig } from '@playwright/test';
import { findBrowser, thisMachine } from '../run/browser.mjs';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
/** The gate hands in a free one; by hand this one is as good as any. */
const PORT = process.env.PITCHBOARD_TEST_PORT ?? '4318';

/** These say for themselves how large the screen is, or it is all the same to them: they are run once. */
const OWN_SIZES = /(mainJob|looks|memory|offline|firstLayout)\.spec\.ts/;

const browser = findBrowser(thisMachine);
if (!browser.program) throw new Error(browser.sentence);

export default defineConfig({
  testDir: '.',
  outputDir: '../../test-results',
  forbidOnly: true,
  fullyParallel: true,
  retries: 0,
  workers: 2,
  timeout: 30_000,
  // A slow machine may take its time to answer; a wrong answer still fails.
  expect: { timeout: 10_000 },
  use: {
    baseURL: `http://localhost:${PORT}/`,
    trace: 'off',
    launchOptions: {
      executablePath: browser.program,
      args: [
        '--no-sandbox',
        '--disable-gpu',
        '--disable-quic',
        '--no-first-run',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
      ],
    },
  },
  projects: [
    { name: 'desk', testIgnore: OWN_SIZES, use: { viewport: { width: 1440, height: 900 } } },
    { name: 'tablet', testIgnore: OWN_SIZES, use: { viewport: { width: 768, height: 1024 }, hasTouch: true } },
    { name: 'each', testMatch: OWN_SIZES },
  ],
  webServer: {
    command: `"${process.execPath}" node_modules/vite/bin/vite.js preview --port ${PORT} --strictPort`,
    cwd: ROOT,
    url: `http://localhost:${PORT}/`,
    reuseExistingServer: false,
    // Vite ends on this one; without it a preview may outlive a run that was broken off.
    gracefulShutdown: { signal: 'SIGTERM', timeout: 2000 },
  },
});
