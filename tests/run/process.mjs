/** Runs one tool, keeps what it says, and ends it when it hangs. */
import { spawn } from 'node:child_process';
import { ROOT } from '../../src/cli/install.mjs';

/** No layer comes near it: what takes longer has hung. */
const LIMIT_MS = 1_200_000;
const GRACE_MS = 3_000;

/** @returns {Promise<{ status: number | null, output: string }>} */
export function runNode(script, args, env = {}) {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, [script, ...args], {
      cwd: ROOT,
      env: { ...process.env, FORCE_COLOR: '0', NO_COLOR: '1', ...env },
      stdio: ['ignore', 'pipe', 'pipe'],
      // A group of its own, so that its workers and servers end with it.
      detached: process.platform !== 'win32',
    });
    let output = '';
    const keep = (chunk) => {
      output += chunk;
    };
    child.stdout.setEncoding('utf8').on('data', keep);
    child.stderr.setEncoding('utf8').on('data', keep);
    const limit = setTimeout(() => {
      keep(`\nStopped after ${LIMIT_MS / 1000} s without an end.\n`);
      endGroup(child, 'SIGTERM');
      setTimeout(() => endGroup(child, 'SIGKILL'), GRACE_MS).unref();
    }, LIMIT_MS);
    const interrupted = () => {
      endGroup(child, 'SIGTERM');
      process.exit(130);
    };
    process.once('SIGINT', interrupted);
    process.once('SIGTERM', interrupted);
    const finish = (status) => {
      clearTimeout(limit);
      process.off('SIGINT', interrupted);
      process.off('SIGTERM', interrupted);
      resolve({ status, output });
    };
    child.once('error', (error) => {
      keep(String(error));
      finish(null);
    });
    child.once('close', finish);
  });
}

function endGroup(child, signal) {
  try {
    if (process.platform === 'win32') child.kill(signal);
    else process.kill(-child.pid, signal);
  } catch {
    // It ended by itself in the meantime.
  }
}
