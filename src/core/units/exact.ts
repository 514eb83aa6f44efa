/**
 * Lengths as exact fractions of a millimetre.
 *
 * A tape reading in inches and a code limit in inches are both rational in millimetres
 * (1 in = 127/5 mm, by the international yard and pound agreement of 1959), and so are
 * sums, the unit rise H/N and the headroom over a nosing line. What is decided at a limit
 * is therefore decided on these, without any tolerance: 14 × 7 3/4 in meets 108 1/2 in
 * and misses 108 33/64 in. Square roots and angles leave this world through `toMm`.
 */

export interface Exact {
  readonly num: bigint;
  /** Always positive. Not reduced: a handful of operations never grows it far. */
  readonly den: bigint;
}

/** Millimetres in an inch: the one place where the number is written. */
const MM_PER_INCH: Exact = { num: 127n, den: 5n };

export const ZERO: Exact = { num: 0n, den: 1n };

export function fraction(num: bigint, den: bigint): Exact {
  return den < 0n ? { num: -num, den: -den } : { num, den };
}

/** A whole number of millimetres, or of anything else that is counted. */
export function whole(count: number): Exact {
  return { num: BigInt(count), den: 1n };
}

/**
 * Reads plain decimal digits exactly: "7.0625" is 70625/10000, never the nearest float.
 * @param digits digits with at most one point and an optional minus; the caller has checked the form
 */
export function fromDecimal(digits: string): Exact {
  const point = digits.indexOf('.');
  if (point < 0) return { num: BigInt(digits), den: 1n };
  const decimals = digits.length - point - 1;
  return { num: BigInt(digits.slice(0, point) + digits.slice(point + 1)), den: 10n ** BigInt(decimals) };
}

/** @param value a figure of a rule or a default, as written in the data (7.75 is exactly 7.75) */
export function fromNumber(value: number): Exact {
  const text = String(value);
  if (!text.includes('e')) return fromDecimal(text);
  const [mantissa = '0', exponent = '0'] = text.split('e');
  const scale = fraction(10n ** BigInt(Math.abs(Number(exponent))), 1n);
  return Number(exponent) < 0 ? divide(fromDecimal(mantissa), scale) : multiply(fromDecimal(mantissa), scale);
}

export function inches(value: Exact): Exact {
  return multiply(value, MM_PER_INCH);
}

/** A figure in inches as exact millimetres: `inch(7.75)`. */
export function inch(value: number): Exact {
  return inches(fromNumber(value));
}

export function toInches(length: Exact): Exact {
  return divide(length, MM_PER_INCH);
}

export function add(a: Exact, b: Exact): Exact {
  if (a.den === b.den) return { num: a.num + b.num, den: a.den };
  return { num: a.num * b.den + b.num * a.den, den: a.den * b.den };
}

export function subtract(a: Exact, b: Exact): Exact {
  return add(a, negate(b));
}

export function negate(a: Exact): Exact {
  return { num: -a.num, den: a.den };
}

export function multiply(a: Exact, b: Exact): Exact {
  return { num: a.num * b.num, den: a.den * b.den };
}

/** @param b never zero: callers have refused it before they divide */
export function divide(a: Exact, b: Exact): Exact {
  return fraction(a.num * b.den, a.den * b.num);
}

export function times(a: Exact, count: number): Exact {
  return { num: a.num * BigInt(count), den: a.den };
}

/** Negative, zero or positive as a is less than, equal to or more than b. */
export function compare(a: Exact, b: Exact): -1 | 0 | 1 {
  const left = a.num * b.den;
  const right = b.num * a.den;
  return left < right ? -1 : left > right ? 1 : 0;
}

export function sign(a: Exact): -1 | 0 | 1 {
  return a.num < 0n ? -1 : a.num > 0n ? 1 : 0;
}

/** The least whole number that is not less than a. */
export function ceiling(a: Exact): bigint {
  const quotient = a.num / a.den;
  return a.num > 0n && quotient * a.den !== a.num ? quotient + 1n : quotient;
}

/** The nearest float, in the unit of the fraction itself (millimetres, for a length). */
export function toMm(a: Exact): number {
  const num = Number(a.num);
  const den = Number(a.den);
  return Number.isFinite(num) && Number.isFinite(den) ? num / den : quotientOfLongOnes(a);
}

/** Bits that a float's exponent can carry, with room to spare. */
const FLOAT_BITS = 900;

/** Lengths written with dozens of digits multiply to numbers past any float: both lose the same low bits first. */
function quotientOfLongOnes({ num, den }: Exact): number {
  const spare = BigInt(Math.max(num.toString(2).length, den.toString(2).length) - FLOAT_BITS);
  return Number(num >> spare) / Number(den >> spare);
}

/** A figure of a US rule or default in inches, as a float of millimetres. */
export function inchMm(value: number): number {
  return toMm(inch(value));
}

/** A float of millimetres as a float of inches, for showing only. */
export function mmToInches(mm: number): number {
  return (mm * Number(MM_PER_INCH.den)) / Number(MM_PER_INCH.num);
}
