/** Stairs by names that would do harm if any writer took them for more than a name. */
import type { JobText } from '../../src/core/job/jobText';
import type { Result } from '../../src/core/result';
import type { ExportedFile, StairSource } from '../../src/export/stairFiles';
import { planOf } from '../fixtures/stairs';
import { SAY } from './sheets';

export const NAMES: readonly string[] = [
  '=HYPERLINK("http://example.invalid","x")',
  '+1+1',
  '@SUM(A1)',
  '-2+3',
  '<script>alert(1)</script>',
  'Oak & <b>ash</b> "quoted"',
  '100 % %%c %%d',
  'line\nbreak\r\nand\ttab',
  'forged\n0\nLINE\n8\nCUT',
  '\u202Eright to left\u202C \u05E9\u05DC\u05D5\u05DD',
  '\u0000\u0007\u001B[31mred',
  '/JavaScript (app.alert(1)) /URI (x) endstream endobj',
  ') Tj ET Q /Launch',
  '日本語 🪜 été ½ ⅝ ′ ″',
  'W'.repeat(500),
  'word '.repeat(100),
  '  ',
  '../../etc/passwd',
  'CON',
];

export function sourceOf(job: JobText): StairSource {
  return { job, plan: planOf(job), say: SAY };
}

export function named(base: JobText, name: string): JobText {
  const [stair] = base.stairs;
  return { ...base, name, stairs: [{ ...(stair as JobText['stairs'][number]), name }] };
}

export async function textOf(file: Promise<Result<ExportedFile>>): Promise<string> {
  const made = await file;
  if (!made.ok) throw new Error('refused');
  return new TextDecoder('utf-8', { ignoreBOM: true }).decode(made.value.content);
}

export async function made(file: Promise<Result<ExportedFile>>): Promise<ExportedFile> {
  const result = await file;
  if (!result.ok) throw new Error('refused');
  return result.value;
}
