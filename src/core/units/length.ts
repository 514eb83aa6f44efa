/**
 * Reads a length as people write what the tape says.
 *
 * The text is exact: `107 5/8 in` is 107.625 in and nothing near it. What could be read in
 * two ways is refused with the reason, never guessed: `8.10` on a site is eight feet ten to
 * one reader and eight point one to the other.
 *
 *   length  = [minus] ( feet [inches] | inches | metric )
 *   feet    = whole ( ft | ' )                    inches = number ( in | " )
 *   number  = whole | decimal | fraction | whole (space or dash) fraction
 */
import { add, type Exact, fraction, fromDecimal, inches, multiply, negate, sign, whole } from './exact';

export type UnitSystem = 'imperial' | 'metric';

export type LengthFault =
  | 'length.empty'
  | 'length.noText'
  | 'length.tooLong'
  | 'length.noUnit'
  | 'length.decimalComma'
  | 'length.feetDecimal'
  | 'length.feetOrDecimal'
  | 'length.zeroDenominator'
  | 'length.exponent'
  | 'length.improperFraction'
  | 'length.inchesOverFoot'
  | 'length.negative'
  | 'length.tooFar'
  | 'length.unread';

export type LengthReading =
  | { readonly ok: true; readonly length: Exact }
  | { readonly ok: false; readonly fault: LengthFault };

/** More than anyone writes for one length; keeps the exact fractions small. */
const LONGEST_TEXT = 40;
/** 10 km. Not a limit on stairs: beyond it the text is no reading at all. */
const FARTHEST_MM = 10_000_000n;

const FRACTION_GLYPHS: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅒': '1/10',
};

const METRIC_MM: Readonly<Record<string, Exact>> = { mm: whole(1), cm: whole(10), m: whole(1000) };

const NUMBER = String.raw`\d+(?:\.\d+)?|\.\d+`;
const FRACTION = String.raw`\d+ ?\/ ?\d+`;
const INCH_NUMBER = String.raw`(?:(?<whole>\d+)(?: ?- ?| ))?(?<fraction>${FRACTION})|(?<decimal>${NUMBER})`;
const INCH_UNIT = '(?:inches|inch|in|")';
const FOOT_UNIT = "(?:feet|foot|ft|')";

const METRIC = new RegExp(`^(?<number>${NUMBER}) ?(?<unit>mm|cm|m)$`);
const INCHES_ONLY = new RegExp(`^(?:${INCH_NUMBER}) ?${INCH_UNIT}$`);
const FEET_ONLY = new RegExp(String.raw`^(?<feet>\d+) ?${FOOT_UNIT}$`);
const FEET_INCHES = new RegExp(String.raw`^(?<feet>\d+) ?${FOOT_UNIT} ?-? ?(?:${INCH_NUMBER}) ?${INCH_UNIT}$`);
const FEET_WITH_POINT = new RegExp(String.raw`^(?:\d+\.\d*|\.\d+) ?${FOOT_UNIT}`);
const NO_UNIT = new RegExp(String.raw`^(?:\d+ ?${FOOT_UNIT} ?-? ?)?(?:${INCH_NUMBER})$`);

/**
 * Reads a length that carries its unit, as in a job file.
 * @param text what was written
 * @param mayBeNegative only where a minus has a meaning (a covering still to be stripped)
 * @returns exact millimetres, or why it is no length
 */
export function parseLength(text: unknown, mayBeNegative = false): LengthReading {
  if (typeof text !== 'string') return refuse('length.noText');
  if (text.length > LONGEST_TEXT) return refuse('length.tooLong');
  const plain = normalise(text);
  if (plain === '') return refuse('length.empty');
  const minus = plain.startsWith('-');
  const body = minus ? plain.slice(1).trimStart() : plain;
  const reading = readMetric(body) ?? readFeetInches(body) ?? refuse(diagnose(body));
  if (!reading.ok) return reading;
  if (reading.length.num / reading.length.den >= FARTHEST_MM) return refuse('length.tooFar');
  if (!minus) return reading;
  if (!mayBeNegative && sign(reading.length) !== 0) return refuse('length.negative');
  return { ok: true, length: negate(reading.length) };
}

/**
 * Completes what was typed into a field: a field takes the job's unit when none is written.
 * @param takesFeet true where a site would say feet; there a bare `8.10` has two readings
 * @returns the text with its unit, to be kept and read by `parseLength`, or the reason to ask
 */
export function withUnit(
  typed: string,
  units: UnitSystem,
  takesFeet: boolean,
): { readonly ok: true; readonly text: string } | { readonly ok: false; readonly fault: LengthFault } {
  const plain = normalise(typed);
  if (plain === '') return refuse('length.empty');
  if (!NO_UNIT.test(plain.replace(/^- ?/, ''))) return { ok: true, text: typed.trim() };
  if (units === 'metric') return { ok: true, text: `${typed.trim()} mm` };
  if (takesFeet && couldBeFeetAndInches(plain)) return refuse('length.feetOrDecimal');
  return { ok: true, text: `${typed.trim()} in` };
}

/** `8.10`, `8.6`: few feet, a point, and what could be 0 to 11 inches. `107.625` has one reading. */
export function couldBeFeetAndInches(plain: string): boolean {
  const match = /^(\d{1,2})\.(\d{1,2})$/.exec(plain);
  return match !== null && Number(match[1]) <= 20 && Number(match[2]) <= 11;
}

/** Straight marks, single spaces, plain fractions: the same text to a reader, one form to us. */
function normalise(text: string): string {
  return text
    .replace(/[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞⅒]/g, (glyph) => ` ${FRACTION_GLYPHS[glyph]}`)
    .replace(/[⁄∕]/g, '/')
    .replace(/''|[″“”‶]/g, '"')
    .replace(/[′‘’‵]/g, "'")
    .replace(/[−‐‑–—]/g, '-')
    .replace(/\s+/g, ' ')
    .trim()
    .toLowerCase();
}

function readMetric(body: string): LengthReading | null {
  const groups = METRIC.exec(body)?.groups;
  if (!groups) return null;
  return {
    ok: true,
    length: multiply(fromDecimal(groups['number'] as string), METRIC_MM[groups['unit'] as string] as Exact),
  };
}

function readFeetInches(body: string): LengthReading | null {
  const groups = (FEET_ONLY.exec(body) ?? INCHES_ONLY.exec(body) ?? FEET_INCHES.exec(body))?.groups;
  if (!groups) return null;
  const feet = groups['feet'];
  const inchPart = readInchNumber(groups);
  if (!inchPart.ok) return inchPart;
  if (feet === undefined) return { ok: true, length: inches(inchPart.length) };
  if (inchPart.length.num >= 12n * inchPart.length.den) return refuse('length.inchesOverFoot');
  return { ok: true, length: inches(add(multiply(whole(12), fromDecimal(feet)), inchPart.length)) };
}

function readInchNumber(groups: Readonly<Record<string, string | undefined>>): LengthReading {
  if (groups['decimal'] !== undefined) return { ok: true, length: fromDecimal(groups['decimal']) };
  const [top, bottom] = (groups['fraction'] ?? '0/1').split('/').map((part) => BigInt(part.trim())) as [bigint, bigint];
  if (bottom === 0n) return refuse('length.zeroDenominator');
  // 107 15/8 is a slip of the finger (5/8? 15/16?), not a way to write 108 7/8.
  if (groups['whole'] !== undefined && top >= bottom) return refuse('length.improperFraction');
  return { ok: true, length: add(fraction(BigInt(groups['whole'] ?? '0'), 1n), fraction(top, bottom)) };
}

/** Names the likeliest slip in a text that is no length. */
function diagnose(body: string): LengthFault {
  if (/\d,\d/.test(body)) return 'length.decimalComma';
  if (/\d ?e ?[-+]?\d/.test(body)) return 'length.exponent';
  if (FEET_WITH_POINT.test(body)) return 'length.feetDecimal';
  if (NO_UNIT.test(body)) return 'length.noUnit';
  return 'length.unread';
}

function refuse(fault: LengthFault): { readonly ok: false; readonly fault: LengthFault } {
  return { ok: false, fault };
}
