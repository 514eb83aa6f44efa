/**
 * Puts the dependencies in place when they are missing or no longer those of the lock file.
 * Plain Node without dependencies: it has to run on a fresh clone. Everything it says goes to
 * standard error, since standard output belongs to the program that follows.
 */
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const ROOT = fileURLToPath(new URL('../..', import.meta.url));

const LOCK_FILE = join(ROOT, 'package-lock.json');
const STAMP = join(ROOT, 'node_modules', '.pitchboard-lock');
/** Written by npm as the last act of an install. */
const NPM_RECORD = join(ROOT, 'node_modules', '.package-lock.json');
const GUARD = join(ROOT, '.cache', 'installing');
const POLL_MS = 250;

/** An install that failed: its message is meant for the user, its stack is of no interest. */
export class InstallError extends Error {}

export function ensureInstalled() {
  if (isInstalled()) return;
  holdGuard();
  try {
    if (!isInstalled()) install();
  } finally {
    rmSync(GUARD, { recursive: true, force: true });
  }
}

function isInstalled() {
  const wanted = lockDigest();
  if (existsSync(STAMP)) return readFileSync(STAMP, 'utf8') === wanted;
  // Somebody ran npm by hand after the lock file last changed: that is as good as our own install.
  if (!existsSync(NPM_RECORD) || statSync(NPM_RECORD).mtimeMs < statSync(LOCK_FILE).mtimeMs) return false;
  writeFileSync(STAMP, wanted);
  return true;
}

function lockDigest() {
  return createHash('sha256').update(readFileSync(LOCK_FILE)).digest('hex');
}

function install() {
  console.error('Installing what Pitchboard is built with (once, and again when the list changes) ...');
  // A silent parent would hide the reason of a failure, and a production setting would leave out the build tools.
  const args = ['ci', '--include=dev', '--loglevel=error', '--no-fund', '--no-audit'];
  const npm = process.env.npm_execpath;
  const done = npm?.endsWith('.js')
    ? spawnSync(process.execPath, [npm, ...args], { cwd: ROOT, stdio: ['ignore', 2, 2] })
    : spawnSync('npm', args, { cwd: ROOT, stdio: ['ignore', 2, 2], shell: process.platform === 'win32' });
  if (done.status !== 0) {
    throw new InstallError('The install did not succeed; what npm said is above. It needs the network once.');
  }
  writeFileSync(STAMP, lockDigest());
}

/** Two commands started together on a fresh clone must not install over each other. */
function holdGuard() {
  mkdirSync(join(ROOT, '.cache'), { recursive: true });
  for (;;) {
    try {
      mkdirSync(GUARD);
      writeFileSync(join(GUARD, 'pid'), String(process.pid));
      return;
    } catch (error) {
      if (error.code !== 'EEXIST') throw error;
    }
    if (holderIsGone()) rmSync(GUARD, { recursive: true, force: true });
    else Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, POLL_MS);
  }
}

function holderIsGone() {
  try {
    process.kill(Number(readFileSync(join(GUARD, 'pid'), 'utf8')), 0);
    return false;
  } catch (error) {
    // Between the making of the folder and of the file there is no number yet: only an old folder is abandoned.
    if (error.code === 'ENOENT') return existsSync(GUARD) && Date.now() - statSync(GUARD).mtimeMs > 5000;
    return error.code === 'ESRCH';
  }
}
