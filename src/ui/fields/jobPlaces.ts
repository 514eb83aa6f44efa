/**
 * Reads and writes one key of a job by its place in the file: `stairs[0].survey.rise`, `markStep`,
 * `rules.local[1].value`. The same words name the place of a problem, so that both meet at the field.
 */
import type { JobText } from '../../core/job/jobText';
import { sameContent } from '../../state/sameContent';

/** The form shows these keys of one stair under its place in the list. */
export function placeInStair(index: number, key: string): string {
  return `stairs[${index}].${key}`;
}

/** Where a key stands that may belong to the stair or to the whole job. */
export function placeOfKey(index: number, key: string): string {
  return /^(survey|steps|stringer|carry)\./.test(key) ? placeInStair(index, key) : key;
}

/** `survey.rise` for `stairs[2].survey.rise`; the place itself for what belongs to the whole job. */
export function keyOfPlace(place: string): string {
  return place.replace(/^stairs\[\d+\]\./, '');
}

export function stairOfPlace(place: string): number | null {
  const found = /^stairs\[(\d+)\]/.exec(place);
  return found === null ? null : Number(found[1]);
}

export function valueAt(job: JobText, place: string): unknown {
  return pathOf(place).reduce<unknown>(
    (node, key) => (typeof node === 'object' && node !== null ? (node as Record<string, unknown>)[key] : undefined),
    job,
  );
}

/**
 * @param value undefined leaves the key out, and with it a group that held nothing else
 * @returns the same job where it holds that value already
 */
export function withValue(job: JobText, place: string, value: unknown): JobText {
  if (sameContent(valueAt(job, place), value)) return job;
  return put(job, pathOf(place), value) as JobText;
}

function put(node: unknown, path: readonly string[], value: unknown): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return value;
  if (Array.isArray(node)) return node.map((item, index) => (index === Number(key) ? put(item, rest, value) : item));
  const copy: Record<string, unknown> = { ...(node as Record<string, unknown> | undefined) };
  const next = put(copy[key], rest, value);
  if (isNothing(next)) delete copy[key];
  else copy[key] = next;
  return copy;
}

function isNothing(value: unknown): boolean {
  if (value === undefined) return true;
  return typeof value === 'object' && value !== null && !Array.isArray(value) && Object.keys(value).length === 0;
}

function pathOf(place: string): string[] {
  return place.replace(/\[(\d+)\]/g, '.$1').split('.');
}
