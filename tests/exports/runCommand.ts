/** A command run as it is from a shell: arguments in, exit status and what it says out; files in a folder of its own. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, vi } from 'vitest';
import type { JobText } from '../../src/core/job/jobText';

export interface Ran {
  readonly status: number;
  readonly out: string;
  readonly err: string;
}

/** @returns the folder, a way to put a job file there, and a way to run the command; all is cleared away afterwards */
export function commandBench(main: (args: readonly string[]) => Promise<number>) {
  const folder = mkdtempSync(join(tmpdir(), 'pitchboard-command-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  afterEach(() => vi.restoreAllMocks());

  async function run(...args: string[]): Promise<Ran> {
    const said = { stdout: '', stderr: '' };
    for (const name of ['stdout', 'stderr'] as const) {
      vi.spyOn(process[name], 'write').mockImplementation((text) => {
        said[name] += String(text);
        return true;
      });
    }
    const status = await main(args);
    vi.restoreAllMocks();
    return { status, out: said.stdout, err: said.stderr };
  }

  function jobFile(name: string, job: JobText | string): string {
    const path = join(folder, name);
    writeFileSync(path, typeof job === 'string' ? job : JSON.stringify(job));
    return path;
  }

  return { folder, run, jobFile };
}
