/** From typed text to the value that the job file keeps, one maker for each kind of field. */
import type { FinishText } from '../../core/job/jobText';
import { type UnitSystem, withUnit } from '../../core/units/length';
import type { Making } from './judgeTyping';
import type { Typed } from './typing';

const KEPT: Making = { ok: true, value: undefined };

export function makeLength(text: string, units: UnitSystem, takesFeet: boolean, mayBeLeftOut: boolean): Making {
  if (text.trim() === '' && mayBeLeftOut) return KEPT;
  const completed = withUnit(text, units, takesFeet);
  return completed.ok ? { ok: true, value: completed.text } : { ok: false, fault: completed.fault, found: text.trim() };
}

/** Where a minus has a meaning: a covering still to be stripped, a floor that is higher where the stair lands. */
const NEGATIVE = [
  'survey.footBelowReading',
  'survey.fallAlong',
  'survey.fallAcross',
  'survey.lowerToAdd',
  'survey.upperToAdd',
];

export function mayBeNegative(key: string): boolean {
  return NEGATIVE.includes(key);
}

export function makeFinish({ text, known }: Typed, units: UnitSystem): Making {
  if (known === undefined || known === 'unknown') return { ok: true, value: 'unknown' };
  if (text.trim() === '') return { ok: false, fault: 'finish.noLength', found: '' };
  const length = makeLength(text, units, false, false);
  return length.ok ? { ok: true, value: { length: length.value, known } } : length;
}

/** A whole number, `auto`, or nothing at all. */
export function makeCount(text: string): Making {
  const plain = text.trim().toLowerCase();
  if (plain === '') return KEPT;
  if (plain === 'auto') return { ok: true, value: 'auto' };
  if (/^\d{1,4}$/.test(plain)) return { ok: true, value: Number(plain) };
  return { ok: false, fault: 'count.unread', found: text };
}

export function makeWords(text: string, mayBeLeftOut: boolean): Making {
  return text === '' && mayBeLeftOut ? KEPT : { ok: true, value: text };
}

/** The length of a finish as text, and how sure it is. A bare length in a file counts as specified. */
export function finishParts(value: unknown): Required<Typed> {
  const finish = value as FinishText | undefined;
  if (finish === undefined || finish === 'unknown') return { text: '', known: 'unknown' };
  if (typeof finish === 'string') return { text: finish, known: 'specified' };
  return { text: finish.length, known: finish.known };
}

/** A value of the job as a field shows it: what is neither text nor number stands in no plain field. */
export function textOf(value: unknown, leftOut = ''): string {
  return typeof value === 'string' || typeof value === 'number' ? String(value) : leftOut;
}

/** Without the job's own unit, where typing the rest again would give the same text. */
export function withoutUnit(text: string, units: UnitSystem, takesFeet: boolean): string {
  const bare = text.replace(units === 'metric' ? / mm$/ : / in$/, '');
  const again = withUnit(bare, units, takesFeet);
  return again.ok && again.text === text ? bare : text;
}
