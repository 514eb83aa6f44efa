/** Findings in words: the rule, what is there, what is asked, and where it is written. */
import '../../text/lateFindings';
import type { Finding } from '../../core/codes/findings';
import { fraction, inch, toMm } from '../../core/units/exact';
import { decimalText, tapeNumber, tapeText } from '../../core/units/format';
import type { Rounding } from '../../core/units/rounding';
import { isTextKey, type Speaker, type TextKey } from '../../text/say';

const THIRTY_SECOND = inch(1 / 32);

export function ruleWords(say: Speaker, field: string): string {
  const key = `finding.${field}`;
  return isTextKey(key) ? say(key) : say('finding.unnamed', { field });
}

/** Which way a figure must be rounded so that it never looks better than it is. */
function roundingFor(finding: Finding): Rounding {
  const { field, actual, limit, kind } = finding;
  if (kind === 'taste') {
    if (finding.status === 'meets' || typeof limit !== 'number' || actual === null) return 'nearest';
    return actual < limit ? 'down' : 'up';
  }
  return asksAtMost(field) ? 'up' : 'down';
}

/** Fields are named after what they limit; these words at the end, or in it, mean "no more than". */
function asksAtMost(field: string): boolean {
  return /\.max|\.less|spread$|requiredAbove/.test(field);
}

export function actualWords(say: Speaker, finding: Finding): string {
  const { actual } = finding;
  if (actual === null) return '';
  return say('finding.actual', { value: amount(say, finding, actual, roundingFor(finding)) });
}

export function limitWords(say: Speaker, finding: Finding): string {
  const { limit, field, kind } = finding;
  if (limit === null) return '';
  const value = typeof limit === 'number' ? amount(say, finding, limit, 'nearest') : plainWords(say, limit);
  if (typeof limit !== 'number') return say('finding.limit.plain', { value });
  if (kind === 'taste') return finding.status === 'meets' ? '' : say('finding.limit.near', { value });
  if (field.endsWith('Sphere')) return say('finding.limit.less', { value });
  if (/requiredFrom/.test(field)) return say('finding.limit.from', { value });
  if (/requiredAbove/.test(field)) return say('finding.limit.above', { value });
  if (asksAtMost(field) || /maxVerticalRise|maxRisers/.test(field)) return say('finding.limit.max', { value });
  if (/\.min|minDepth|minWidth|minAtWalkline|minNarrow|minRisers/.test(field) || kind === 'build') {
    return say('finding.limit.min', { value });
  }
  return say('finding.limit.plain', { value });
}

function plainWords(say: Speaker, value: boolean | string): string {
  if (typeof value === 'string') return value;
  return say(value ? 'finding.yes' : 'finding.no');
}

function amount(say: Speaker, { unit }: Finding, value: number, rounding: Rounding): string {
  if (unit === 'in') return `${tapeText(tapeNumber(value * toMm(inch(1)), THIRTY_SECOND, rounding))} in`;
  const figure = tidy(value);
  const key = UNIT_WORDS[unit];
  if (key !== undefined) return say(key, { value: figure });
  return PLAIN_UNITS.includes(unit) ? figure : `${figure} ${unit}`;
}

const UNIT_WORDS: Readonly<Record<string, TextKey>> = {
  in2: 'unit.sqin',
  deg: 'unit.deg',
  '1:n': 'unit.slope',
  fc: 'unit.fc',
};

/** Counts and words carry no unit; every other one is written as the trade writes it: mm, psf, lbf. */
const PLAIN_UNITS: readonly string[] = ['count', 'bool', 'text', 'rule', 'none'];

/** At most one decimal. */
function tidy(value: number): string {
  return decimalText(fraction(BigInt(Math.round(value * 10)), 10n));
}

/** @param pack whose name stands over the list already, and is not said again on every row */
export function sourceWords(say: Speaker, { source, section, confidence }: Finding, pack: string): string {
  if (confidence === 'local') return source === '' ? say('finding.local') : say('finding.localNote', { note: source });
  if (confidence === 'practice') return say('confidence.practice');
  const named = source === pack ? '' : source;
  return [named, section, say(`confidence.${confidence}`)].filter((part) => part !== '').join(', ');
}
