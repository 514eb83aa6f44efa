/** JobText → the file: keys in the order of the contract's table, so that two saves compare line by line. */
import type { JobText } from '../core/job/jobText';
import { KNOWN_KEYS } from './schema';

export function saveJob(job: JobText): string {
  return `${JSON.stringify(inOrder(job, ''), null, 2)}\n`;
}

function inOrder(value: unknown, owner: string): unknown {
  if (Array.isArray(value)) return value.map((item) => inOrder(item, owner));
  if (typeof value !== 'object' || value === null) return value;
  const keys = KNOWN_KEYS[owner] ?? Object.keys(value);
  const entries = keys
    .map((key) => [key, (value as Record<string, unknown>)[key]] as const)
    .filter(([, inner]) => inner !== undefined)
    .map(([key, inner]) => [key, inOrder(inner, owner === '' ? key : `${owner}.${key}`)] as const);
  return Object.fromEntries(entries);
}
