/** Findings as the text of a printed list: what is there, what is asked, where it is written. */
import type { Finding } from '../core/codes/findings';
import { fraction, inch, toMm } from '../core/units/exact';
import { decimalText, tapeNumber, tapeText } from '../core/units/format';
import type { Rounding } from '../core/units/rounding';
import { isTextKey, type Speaker } from './say';

const SHOWN = inch(1 / 32);

export interface FindingText {
  readonly rule: string;
  readonly actual: string;
  readonly limit: string;
  readonly source: string;
}

export function findingText(say: Speaker, finding: Finding): FindingText {
  const { field, actual, limit } = finding;
  const key = `finding.${field}`;
  return {
    rule: isTextKey(key) ? say(key) : say('finding.unnamed', { field }),
    actual: actual === null ? '' : amount(say, finding.unit, actual, awayFromLimit(finding)),
    limit: limitText(say, finding, limit),
    source: sourceText(say, finding),
  };
}

/** Shown so that it never looks better than it is. */
function awayFromLimit({ field, actual, limit, kind }: Finding): Rounding {
  if (kind === 'taste') return typeof limit === 'number' && actual !== null && actual < limit ? 'down' : 'up';
  return atMost(field) ? 'up' : 'down';
}

function atMost(field: string): boolean {
  return /\.max|\.less|spread$|requiredAbove|^asCut/.test(field);
}

function limitText(say: Speaker, { field, kind, unit }: Finding, limit: Finding['limit']): string {
  if (limit === null) return '';
  if (typeof limit === 'string') return limit;
  if (typeof limit === 'boolean') return say(limit ? 'finding.yes' : 'finding.no');
  const value = amount(say, unit, limit, 'nearest');
  if (kind === 'taste') return say('finding.limit.near', { value });
  if (field.endsWith('Sphere')) return say('finding.limit.less', { value });
  if (/requiredFrom/.test(field)) return say('finding.limit.from', { value });
  if (/requiredAbove/.test(field)) return say('finding.limit.above', { value });
  if (atMost(field) || /maxVerticalRise|maxRisers/.test(field)) return say('finding.limit.max', { value });
  const least = kind === 'build' || /\.min|minDepth|minWidth|minAtWalkline|minNarrow|minRisers/.test(field);
  return least ? say('finding.limit.min', { value }) : value;
}

function amount(say: Speaker, unit: Finding['unit'], value: number, rounding: Rounding): string {
  const plain = decimalText(fraction(BigInt(Math.round(value * 10)), 10n));
  switch (unit) {
    case 'in':
      return `${tapeText(tapeNumber(value * toMm(inch(1)), SHOWN, rounding))} in`;
    case 'mm':
      return `${plain} mm`;
    case 'in2':
      return say('unit.sqin', { value: plain });
    case 'deg':
      return say('unit.deg', { value: plain });
    case '1:n':
      return say('unit.slope', { value: plain });
    case 'psf':
    case 'lbf':
    case 'fc':
      return say(`unit.${unit}`, { value: plain });
    case 'kN':
    case 'kPa':
      return `${plain} ${unit}`;
    case 'count':
    case 'bool':
    case 'text':
    case 'rule':
    case 'none':
      return plain;
  }
}

function sourceText(say: Speaker, { source, section, confidence }: Finding): string {
  if (confidence === 'practice') return say('confidence.practice');
  if (confidence === 'local') return source === '' ? say('finding.local') : say('finding.localNote', { note: source });
  return [section === '-' ? '' : section, say(`confidence.${confidence}`)].filter((part) => part !== '').join(', ');
}
