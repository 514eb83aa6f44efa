/**
 * Finds a Chromium-like browser for the browser tests. What is asked of the machine is handed
 * in, so that the order of the decisions can be tested without any browser.
 */
import { spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import { delimiter, join } from 'node:path';

const KNOWN_NAMES = [
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
  'microsoft-edge',
  'microsoft-edge-stable',
  'chrome',
];

const WHAT_TO_DO =
  'No browser was found for the browser tests. Install Chromium so that "chromium" is on the PATH, ' +
  'or set PITCHBOARD_BROWSER to the program of a Chromium-based browser.';

const DOWNLOAD_MS = 150_000;
const APT_MS = 240_000;

/**
 * @param {import('./browser.d.mts').Machine} machine what may be asked of the machine
 * @param {{ mayInstall?: boolean }} options only the gate may bring a browser; the config never does
 * @returns {import('./browser.d.mts').BrowserFound} the program, or the sentence that says what to do
 */
export function findBrowser(machine, { mayInstall = false } = {}) {
  const wish = machine.wish();
  // A wish that cannot be met is said: testing with another browser than the named one would mislead.
  if (wish) return machine.runs(wish) ? found(wish) : none(`PITCHBOARD_BROWSER names ${wish}, which does not run.`);
  const present = onPath(machine) ?? downloaded(machine);
  if (present) return found(present);
  if (!mayInstall) return none(WHAT_TO_DO);
  if (machine.download()) {
    const program = downloaded(machine);
    if (program) return found(program);
  }
  if (machine.isDebianRoot() && (machine.aptInstall() || (machine.aptUpdate() && machine.aptInstall()))) {
    const program = onPath(machine);
    if (program) return found(program);
  }
  return none(WHAT_TO_DO);
}

function onPath(machine) {
  return KNOWN_NAMES.map((name) => machine.which(name)).find((program) => program && machine.runs(program));
}

function downloaded(machine) {
  const program = machine.playwrightProgram();
  return program && machine.runs(program) ? program : undefined;
}

function found(program) {
  return { program };
}

function none(sentence) {
  return { sentence };
}

/** The machine that this runs on. */
export const thisMachine = {
  wish: () => process.env.PITCHBOARD_BROWSER,
  which(name) {
    const endings = process.platform === 'win32' ? ['.exe'] : [''];
    const folders = (process.env.PATH ?? '').split(delimiter).filter(Boolean);
    return folders.flatMap((folder) => endings.map((ending) => join(folder, name + ending))).find(isProgram);
  },
  // A download without the system libraries it leans on is there but cannot start.
  runs(program) {
    if (process.platform === 'win32') return existsSync(program);
    return spawnSync(program, ['--version'], { stdio: 'ignore', timeout: 20_000 }).status === 0;
  },
  playwrightProgram() {
    const { chromium } = createRequire(import.meta.url)('playwright-core');
    const program = chromium.executablePath();
    return program && existsSync(program) ? program : undefined;
  },
  download() {
    const cli = createRequire(import.meta.url).resolve('playwright-core/cli.js');
    return quietly(process.execPath, [cli, 'install', 'chromium'], DOWNLOAD_MS);
  },
  isDebianRoot: () => process.getuid?.() === 0 && existsSync('/etc/debian_version'),
  aptInstall: () => quietly('apt-get', ['install', '-y', '--no-install-recommends', 'chromium'], APT_MS),
  aptUpdate: () => quietly('apt-get', ['update'], APT_MS),
};

function isProgram(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

function quietly(command, args, timeout) {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  return spawnSync(command, args, { stdio: 'ignore', timeout, env }).status === 0;
}
