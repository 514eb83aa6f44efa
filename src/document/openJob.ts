/**
 * Bytes → JobText, or every reason why not. Nothing of a refused file reaches the open job, and
 * no file makes this throw: size and depth are looked at before anything is parsed.
 */
import type { $ZodIssue } from 'zod/v4/core';
import type { JobText } from '../core/job/jobText';
import { failure, type Problem, problem, type Result } from '../core/result';
import { againstStairs } from './againstStairs';
import { nearestOf } from './nearest';
import { repeatedKey } from './repeatedKey';
import { jobSchema, KNOWN_KEYS } from './schema';

const MOST_BYTES = 1_000_000;
const MOST_LEVELS = 32;
export const FORMAT = 'pitchboard.job';
export const VERSION = 1;

/** @param content the file: bytes as read from disk, or its text */
export function openJob(content: Uint8Array | string): Result<JobText> {
  const bytes = typeof content === 'string' ? new TextEncoder().encode(content).byteLength : content.byteLength;
  if (bytes > MOST_BYTES) return refuseWhole('file.tooLarge', { most: MOST_BYTES / 1000 });
  const text = decode(content);
  if (text === null) return refuseWhole('file.notText');
  if (levelsOf(text) > MOST_LEVELS) return refuseWhole('file.tooDeep', { most: MOST_LEVELS });
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return refuseWhole('file.notJson');
  }
  const twice = repeatedKey(text);
  const key = String(twice?.at(-1)).slice(0, 60);
  return twice === null ? readJob(value) : failure([problem(placeOf(twice), 'key.twice', { key })]);
}

/** The same for a value that is already parsed, such as a kept draft. */
export function readJob(value: unknown): Result<JobText> {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return refuseWhole('file.notObject');
  const prototypeKey = placeOfPrototypeKey(value, '');
  if (prototypeKey !== null) return failure([problem(prototypeKey, 'file.prototypeKey')]);
  const { format, version } = value as Record<string, unknown>;
  if (format !== FORMAT) return refuseWhole('file.format', { format: FORMAT });
  if (typeof version === 'number' && version > VERSION) return refuseWhole('file.tooNew', { version, most: VERSION });
  if (version !== VERSION) return refuseWhole('file.version', { most: VERSION });
  const reading = jobSchema.safeParse(value);
  if (!reading.success) return failure(reading.error.issues.flatMap((issue) => problemsOf(issue, value)));
  return againstStairs(reading.data);
}

function refuseWhole(code: string, values: Problem['values'] = {}): Result<JobText> {
  return failure([problem('job', code, values)]);
}

function decode(content: Uint8Array | string): string | null {
  if (typeof content === 'string') return content;
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(content);
  } catch {
    return null;
  }
}

/** Deepest nesting of brackets outside of texts: a scan, because a parser would already recurse. */
function levelsOf(text: string): number {
  let level = 0;
  let deepest = 0;
  let inText = false;
  for (let i = 0; i < text.length; i += 1) {
    const char = text[i];
    if (inText && char === '\\') i += 1;
    else if (char === '"') inText = !inText;
    else if (!inText && (char === '{' || char === '[')) deepest = Math.max(deepest, ++level);
    else if (!inText && (char === '}' || char === ']')) level -= 1;
  }
  return deepest;
}

/** An own `__proto__` would re-parent a copy somewhere down the line; no honest file has one. */
function placeOfPrototypeKey(value: unknown, place: string): string | null {
  if (typeof value !== 'object' || value === null) return null;
  for (const [key, inner] of Object.entries(value)) {
    const at = Array.isArray(value) ? `${place}[${key}]` : place === '' ? key : `${place}.${key}`;
    const found = key === '__proto__' ? at : placeOfPrototypeKey(inner, at);
    if (found !== null) return found;
  }
  return null;
}

function problemsOf(issue: $ZodIssue, root: unknown): Problem[] {
  const place = placeOf(issue.path);
  if (issue.code === 'unrecognized_keys') return issue.keys.map((key) => unknownKey(issue.path, key));
  if (valueAt(root, issue.path) === undefined) return [problem(place, 'key.missing')];
  const known = [
    'length.noText',
    'value.text',
    'value.tooLong',
    'value.choice',
    'value.countForm',
    'value.finishForm',
    'value.list',
  ];
  if (!known.includes(issue.message)) return [problem(place, 'value.object')];
  const allowed = issue.code === 'invalid_value' ? issue.values.join(', ') : '';
  return [problem(place, issue.message, { allowed })];
}

function unknownKey(path: readonly PropertyKey[], key: string): Problem {
  const owner = path.filter((part) => typeof part === 'string').join('.');
  const nearest = nearestOf(key, KNOWN_KEYS[owner] ?? []);
  return problem(placeOf([...path, key]), 'key.unknown', { key: key.slice(0, 60), nearest });
}

function placeOf(path: readonly PropertyKey[]): string {
  const place = path.reduce<string>(
    (text, part) =>
      typeof part === 'number' ? `${text}[${part}]` : text === '' ? String(part) : `${text}.${String(part)}`,
    '',
  );
  return place === '' ? 'job' : place.slice(0, 200);
}

function valueAt(root: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (value, part) =>
      typeof value === 'object' && value !== null ? (value as Record<PropertyKey, unknown>)[part] : undefined,
    root,
  );
}
