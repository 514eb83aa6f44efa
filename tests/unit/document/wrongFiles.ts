/** Ways to spoil a job file, and what was then refused. */
import { openJob } from '../../../src/document/openJob';
import { LOFT } from '../../fixtures/stairs';

export type Loose = Record<string, unknown>;

/** What was refused, as `place code`. */
export function faults(content: Uint8Array | string): string[] {
  const job = openJob(content);
  return job.ok ? [] : job.problems.map(({ place, code }) => `${place} ${code}`);
}

export const asText = (value: unknown): string => JSON.stringify(value);
export const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

/** The loft job with one thing changed anywhere in it. */
export function loft(change: (job: Loose, stair: Loose) => void): string {
  const job = structuredClone(LOFT) as unknown as Loose;
  change(job, (job['stairs'] as Loose[])[0] as Loose);
  return asText(job);
}
