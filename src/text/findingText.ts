/**
 * Findings in words, for screen and paper alike: the rule, how it is measured, what is there, what is
 * asked, how much is left, and where it is written.
 */
import type { Finding } from '../core/codes/findings';
import { fraction, inch, toMm } from '../core/units/exact';
import { decimalText, tapeNumber, tapeText } from '../core/units/format';
import { type Rounding, stepsIn } from '../core/units/rounding';
import { isTextKey, type Speaker, type TextKey } from './say';

const THIRTY_SECOND = inch(1 / 32);
/** Figures that are no length on a tape are shown to this. */
const DECIMAL = 0.1;
/** Two floats that were one figure. */
const NOTHING = 1e-9;

export function ruleWords(say: Speaker, field: string): string {
  const [kind, number] = field.split('.');
  if (kind === 'obstacle') return say('finding.obstacle', { number: number ?? '' });
  const key = `finding.${field}`;
  return isTextKey(key) ? say(key) : say('finding.unnamed', { field });
}

/** From where to where, and with what left out; empty for what is not measured. */
export function measuredWords(say: Speaker, { field, measured }: Finding): string {
  if (measured !== undefined) return measured;
  const key = `measured.${field}`;
  return isTextKey(key) ? say(key) : '';
}

/** The bare figure; empty where there is none. */
export function actualText(say: Speaker, finding: Finding): string {
  const { actual, unit } = finding;
  return actual === null ? '' : amount(say, unit, actual, roundingFor(finding));
}

export function actualWords(say: Speaker, finding: Finding): string {
  const value = actualText(say, finding);
  return value === '' ? '' : say('finding.actual', { value });
}

export function limitWords(say: Speaker, finding: Finding): string {
  const { limit, field, kind, unit } = finding;
  if (limit === null) return unit === 'none' ? say('finding.setsNone') : '';
  if (typeof limit !== 'number') return say('finding.limit.plain', { value: figureText(say, limit, unit) });
  const value = amount(say, unit, limit, 'nearest');
  if (kind === 'taste') return finding.status === 'meets' ? '' : say('finding.limit.near', { value });
  if (field.endsWith('Sphere')) return say('finding.limit.less', { value });
  if (/requiredFrom/.test(field)) return say('finding.limit.from', { value });
  if (/requiredAbove/.test(field)) return say('finding.limit.above', { value });
  if (asksAtMost(field) || /maxVerticalRise|maxRisers/.test(field)) return say('finding.limit.max', { value });
  if (kind === 'build' || /^obstacle|\.min|minDepth|minWidth|minAtWalkline|minNarrow|minRisers/.test(field)) {
    return say('finding.limit.min', { value });
  }
  return say('finding.limit.plain', { value });
}

/**
 * How far the figure is on its own side of the limit, or past it: never shown as more room than there is,
 * nor as less that is missing. Empty where nothing was compared, or nothing is limited.
 */
export function marginWords(say: Speaker, finding: Finding): string {
  const { actual, limit, unit, kind, status, field } = finding;
  const isCompared =
    kind !== 'taste' && status !== 'not-checked' && !/requiredFrom|requiredAbove|bothSides/.test(field);
  if (!isCompared || actual === null || typeof limit !== 'number') return '';
  const most = isMost(field);
  const room = most ? limit - actual : actual - limit;
  if (Math.abs(room) < NOTHING) return status === 'breaks' ? '' : say('finding.margin.none');
  const size = Math.abs(room);
  const least = unit === 'in' ? toMm(THIRTY_SECOND) / toMm(inch(1)) : DECIMAL;
  const rounding = room > 0 ? 'down' : 'up';
  const value =
    size < least && room > 0
      ? say('finding.margin.less', { value: amount(say, unit, least, 'nearest') })
      : amount(say, unit, size, rounding);
  if (room > 0) return say('finding.margin.room', { value });
  return say(most ? 'finding.margin.over' : 'finding.margin.short', { value });
}

/** What the pack says where a local rule stands in its place. */
export function replacedWords(say: Speaker, { replaced }: Finding): string {
  if (replaced === null) return '';
  const { value, unit, section } = replaced;
  const figure = value === null ? say('finding.setsNone') : figureText(say, value, unit);
  return say('finding.replaced', { value: figure, section });
}

/** @param pack whose name stands over the list already, and is not said again on every row */
export function sourceWords(say: Speaker, { source, section, confidence }: Finding, pack: string): string {
  if (confidence === 'local') return source === '' ? say('finding.local') : say('finding.localNote', { note: source });
  if (confidence === 'practice') return say('confidence.practice');
  const named = source === pack ? '' : source;
  return [named, section, say(`confidence.${confidence}`)].filter((part) => part !== '').join(', ');
}

/** A figure of a rule as it stands, in its own unit. */
export function figureText(say: Speaker, value: number | boolean | string, unit: Finding['unit']): string {
  if (typeof value === 'number') return amount(say, unit, value, 'nearest');
  return typeof value === 'string' ? value : say(value ? 'finding.yes' : 'finding.no');
}

/** Which way a figure must be rounded so that it never looks better than it is. */
function roundingFor({ field, actual, limit, kind, status }: Finding): Rounding {
  if (kind === 'taste') {
    if (status === 'meets' || typeof limit !== 'number' || actual === null) return 'nearest';
    return actual < limit ? 'down' : 'up';
  }
  return isMost(field) ? 'up' : 'down';
}

/** Fields are named after what they limit; these words at the end, or in it, mean "no more than". */
function asksAtMost(field: string): boolean {
  return /\.max|\.less|spread$|requiredAbove|^asCut/.test(field);
}

function isMost(field: string): boolean {
  return asksAtMost(field) || /maxVerticalRise|maxRisers|Sphere$/.test(field);
}

function amount(say: Speaker, unit: Finding['unit'], value: number, rounding: Rounding): string {
  if (unit === 'in') {
    const shown = tapeText(tapeNumber(value * toMm(inch(1)), THIRTY_SECOND, rounding));
    // A thirty-second alone is no nothing with a bit: it is said as it is.
    return `${shown === '0 +' ? '1/32' : shown} in`;
  }
  const figure = tidy(value, rounding);
  const key = UNIT_WORDS[unit];
  if (key !== undefined) return say(key, { value: figure });
  return PLAIN_UNITS.includes(unit) ? figure : `${figure} ${unit}`;
}

const UNIT_WORDS: Readonly<Partial<Record<Finding['unit'], TextKey>>> = {
  in2: 'unit.sqin',
  deg: 'unit.deg',
  '1:n': 'unit.slope',
  fc: 'unit.fc',
  psf: 'unit.psf',
  lbf: 'unit.lbf',
};

/** Counts and words carry no unit; every other one is written as the trade writes it: mm, kPa. */
const PLAIN_UNITS: readonly Finding['unit'][] = ['count', 'bool', 'text', 'rule', 'none'];

/** At most one decimal. */
function tidy(value: number, rounding: Rounding): string {
  return decimalText(fraction(BigInt(stepsIn(value, DECIMAL, rounding)), 10n));
}
