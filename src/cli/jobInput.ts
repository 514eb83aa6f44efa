/** What every command does with its input: read it, word what is wrong with it, refuse it. */
import { readFile, stat } from 'node:fs/promises';
import type { Problem } from '../core/result';
import type { UnitSystem } from '../core/units/length';
import { type Speaker, sayProblem } from '../text/say';

const REFUSED = 2;
/** Far over what is accepted: enough to say "too large" without reading a disk image into memory. */
const READ_AT_MOST = 2_000_000;

/** Where it is and what is wrong with it, on one line. */
export function problemLine(found: Problem, say: Speaker, units: UnitSystem = 'imperial'): string {
  return `${found.place}: ${sayProblem(say, found, units)}`.replace(/[\r\n]+/g, ' ');
}

/** @returns the exit status */
export function refuse(lines: readonly string[]): number {
  process.stderr.write(`${lines.join('\n')}\n`);
  return REFUSED;
}

export async function readBytes(path: string): Promise<Uint8Array | null> {
  try {
    const { size } = await stat(path);
    // A file that is refused for its size need not be read for it.
    return size > READ_AT_MOST ? new Uint8Array(READ_AT_MOST) : await readFile(path);
  } catch {
    return null;
  }
}
