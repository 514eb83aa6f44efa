/**
 * What the keys of the length keypad make of a text: whole numbers, a mark of the tape, a thirty-second
 * light or heavy. The outcome is plain text, read and refused like any that is typed; the pad knows no
 * lengths of its own.
 */

export type PadUnit = 'in' | 'mm' | 'cm';

export interface Entry {
  readonly text: string;
  /** What the tape in hand is divided into; with it come its keys. */
  readonly unit: PadUnit;
  /** The text was there before: the next digit or mark begins a new one. */
  readonly fresh: boolean;
}

export type PadKey =
  | { readonly kind: 'digit'; readonly digit: string }
  /** A mark of the tape, 0 for even inches. */
  | { readonly kind: 'tape'; readonly sixteenths: number }
  /** A little more or less than the mark. */
  | { readonly kind: 'nudge'; readonly thirtySeconds: number }
  | { readonly kind: 'unit'; readonly unit: PadUnit }
  | { readonly kind: 'feet' | 'minus' | 'point' | 'half' | 'back' | 'clear' };

/** A text taken apart as far as the keys need it. */
interface Parts {
  readonly minus: boolean;
  /** Digits before the foot mark; null without one. */
  readonly feet: string | null;
  readonly digits: string;
  /** With its point: `.5`. */
  readonly decimals: string;
  readonly thirtySeconds: number;
  readonly unit: PadUnit;
}

const IN_INCH = 32;
const INCHES_IN_FOOT = 12;
/** Longer numbers are no tape's, and a nudge would lose their last digits. */
const MOST_DIGITS = 9;

const METRIC = /^(?<minus>- ?)?(?<digits>\d*)(?<decimals>\.\d*)? ?(?<unit>mm|cm)$/;
const BARE = /^(?<minus>- ?)?(?<digits>\d*)(?<decimals>\.\d*)?$/;
const INCHES =
  /^(?<minus>- ?)?(?:(?<feet>\d+) ?(?:'|ft)(?: |- ?)?)?(?:(?:(?<whole>\d+)(?: |-))?(?<top>\d+)\/(?<bottom>\d+)|(?<digits>\d*)(?<decimals>\.\d*)?) ?(?:in|")?$/;

/** @param fresh true for a field that is just taken in hand */
export function entryOf(text: string, own: PadUnit, fresh: boolean): Entry {
  return { text, unit: takeApart(text, own)?.unit ?? own, fresh: fresh && text !== '' };
}

/** The mark of the tape that is in the text, in sixteenths; null where none can be pointed at. */
export function markIn(text: string, own: PadUnit): number | null {
  const parts = takeApart(text, own);
  if (parts === null || parts.unit !== 'in' || parts.decimals !== '' || parts.thirtySeconds % 2 !== 0) return null;
  return parts.digits === '' && parts.feet === null && parts.thirtySeconds === 0 ? null : parts.thirtySeconds / 2;
}

/** @param own the unit that a bare number has in this job */
export function press(entry: Entry, key: PadKey, own: PadUnit): Entry {
  if (key.kind === 'clear') return { text: '', unit: entry.unit, fresh: false };
  if (key.kind === 'unit') return changeUnit(entry, key.unit, own);
  const anew = nothingYet(entry.unit);
  const found = takeApart(entry.text, own);
  if (found === null) return pressOnOtherText(entry, key, anew, own);
  // An empty text has no unit of its own: the one that was asked for holds.
  const old = entry.text === '' ? anew : found;
  return written(apply(entry.fresh && begins(key) ? anew : old, key), own);
}

/** A digit or a mark takes the place of a text that was there before; what mends it does not. */
function begins(key: PadKey): boolean {
  return key.kind === 'digit' || key.kind === 'point' || (key.kind === 'tape' && key.sixteenths !== 0);
}

/** What was typed by hand and is nothing that the keys could have made: taken back letter by letter, or begun anew. */
function pressOnOtherText(entry: Entry, key: PadKey, anew: Parts, own: PadUnit): Entry {
  if (key.kind === 'back') return entryOf(entry.text.slice(0, -1).trimEnd(), own, false);
  return begins(key) ? written(apply(anew, key), own) : entry;
}

/** A plain number keeps its digits; feet and fractions mean nothing on the other tape, so a new text begins there. */
function changeUnit(entry: Entry, unit: PadUnit, own: PadUnit): Entry {
  if (unit === entry.unit) return entry;
  const parts = takeApart(entry.text, own);
  const plain = parts !== null && parts.digits !== '' && parts.feet === null && parts.thirtySeconds === 0;
  if (!plain || entry.fresh || (unit === 'in' && parts.decimals !== '')) return { text: entry.text, unit, fresh: true };
  return written({ ...parts, unit }, own);
}

function apply(parts: Parts, key: PadKey): Parts {
  switch (key.kind) {
    case 'digit':
      return withDigit(parts, key.digit);
    case 'tape':
      return withMark(parts, key.sixteenths);
    case 'nudge':
      return nudged(parts, key.thirtySeconds);
    case 'feet':
      return withFeet(parts);
    case 'minus':
      return { ...parts, minus: !parts.minus };
    case 'point':
      return parts.unit === 'in' || parts.decimals !== '' ? parts : withDecimals(parts, '.');
    case 'half':
      return parts.unit === 'in' ? parts : withDecimals(parts, parts.decimals === '.5' ? '' : '.5');
    case 'back':
      return takenBack(parts);
    case 'clear':
    case 'unit':
      return parts;
  }
}

function withDigit(parts: Parts, digit: string): Parts {
  if (parts.decimals !== '') return { ...parts, decimals: parts.decimals + digit };
  return { ...parts, digits: parts.digits === '0' ? digit : parts.digits + digit };
}

function withMark(parts: Parts, sixteenths: number): Parts {
  const inches = parts.unit === 'in' ? parts : nothingYet('in');
  return { ...inches, decimals: '', thirtySeconds: sixteenths * 2 };
}

function withDecimals(parts: Parts, decimals: string): Parts {
  return { ...parts, digits: parts.digits === '' ? '0' : parts.digits, decimals };
}

/** The whole number so far becomes the feet; once more gives it back. */
function withFeet(parts: Parts): Parts {
  if (parts.unit !== 'in' || parts.decimals !== '') return parts;
  if (parts.feet === null) return parts.digits === '' ? parts : { ...parts, feet: parts.digits, digits: '' };
  return parts.digits === '' ? { ...parts, feet: null, digits: parts.feet } : parts;
}

/** Over the inch and the foot where it has to, never below nothing. */
function nudged(parts: Parts, by: number): Parts {
  const onTape = parts.decimals === '' ? parts.thirtySeconds : Number(`0${parts.decimals}`) * IN_INCH;
  if (parts.unit !== 'in' || !Number.isInteger(onTape)) return parts;
  if (parts.digits.length + (parts.feet ?? '').length > MOST_DIGITS) return parts;
  const inches = Number(parts.feet ?? '0') * INCHES_IN_FOOT + Number(parts.digits);
  const total = inches * IN_INCH + onTape + by;
  if (total < 0) return parts;
  const whole = Math.floor(total / IN_INCH);
  const rest = parts.feet === null ? whole : whole % INCHES_IN_FOOT;
  return {
    ...parts,
    feet: parts.feet === null ? null : String(Math.floor(whole / INCHES_IN_FOOT)),
    digits: rest === 0 && (total % IN_INCH !== 0 || parts.feet !== null) ? '' : String(rest),
    decimals: '',
    thirtySeconds: total % IN_INCH,
  };
}

/** The fraction as a whole, then digit by digit; a foot mark before the digits that stand before it. */
function takenBack(parts: Parts): Parts {
  if (parts.thirtySeconds !== 0) return { ...parts, thirtySeconds: 0 };
  if (parts.decimals !== '')
    return { ...parts, decimals: parts.decimals.length > 2 ? parts.decimals.slice(0, -1) : '' };
  if (parts.digits !== '') return { ...parts, digits: parts.digits.slice(0, -1) };
  if (parts.feet !== null) return { ...parts, feet: null, digits: parts.feet };
  return { ...parts, minus: false };
}

function nothingYet(unit: PadUnit): Parts {
  return { minus: false, feet: null, digits: '', decimals: '', thirtySeconds: 0, unit };
}

/** @returns null for a text that the keys could not have made */
function takeApart(text: string, own: PadUnit): Parts | null {
  const plain = text.trim().replace(/[′’]/g, "'").replace(/[″”]/g, '"').replace(/[−–]/g, '-').replace(/\s+/g, ' ');
  const metric = METRIC.exec(plain)?.groups ?? (own === 'in' ? undefined : BARE.exec(plain)?.groups);
  if (metric !== undefined) return { ...plainParts(metric), feet: null, thirtySeconds: 0, unit: unitIn(metric, own) };
  const groups = INCHES.exec(plain)?.groups;
  if (groups === undefined) return null;
  const thirtySeconds = thirtySecondsIn(groups);
  return thirtySeconds === null
    ? null
    : { ...plainParts(groups), feet: groups['feet'] ?? null, thirtySeconds, unit: 'in' };
}

function plainParts(groups: Readonly<Record<string, string | undefined>>) {
  return {
    minus: groups['minus'] !== undefined,
    digits: groups['whole'] ?? groups['digits'] ?? '',
    decimals: groups['decimals'] ?? '',
  };
}

function unitIn(groups: Readonly<Record<string, string | undefined>>, own: PadUnit): PadUnit {
  return groups['unit'] === 'cm' ? 'cm' : groups['unit'] === 'mm' ? 'mm' : own;
}

function thirtySecondsIn(groups: Readonly<Record<string, string | undefined>>): number | null {
  if (groups['bottom'] === undefined) return 0;
  const count = (Number(groups['top']) * IN_INCH) / Number(groups['bottom']);
  return Number.isInteger(count) && count < IN_INCH ? count : null;
}

/** A bare number is in the job's own unit; every other one says its own. */
function written(parts: Parts, own: PadUnit): Entry {
  const number = parts.digits + parts.decimals;
  const inches = [number, fractionText(parts.thirtySeconds)].filter((piece) => piece !== '').join(' ');
  const feet = parts.feet === null ? '' : `${parts.feet}'`;
  const suffix = inches === '' || parts.unit === own ? '' : ` ${parts.unit}`;
  const body = [feet, inches].filter((piece) => piece !== '').join(' ') + suffix;
  return { text: (parts.minus ? '-' : '') + body, unit: parts.unit, fresh: false };
}

function fractionText(thirtySeconds: number): string {
  if (thirtySeconds === 0) return '';
  let [top, bottom] = [thirtySeconds, IN_INCH];
  while (top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  return `${top}/${bottom}`;
}
