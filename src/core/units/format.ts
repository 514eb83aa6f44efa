/**
 * Writes lengths as a tape reads: `14 5/8`, with `+` ("heavy") for the odd thirty-second,
 * or millimetres to the grid that was asked for.
 */
import { type Exact, fraction, times, toInches, toMm } from './exact';
import type { UnitSystem } from './length';
import { type Rounding, stepsIn } from './rounding';

/** A number of inches as it stands on a tape. `heavy` is 1/32 more than the fraction says. */
export interface TapeNumber {
  readonly negative: boolean;
  readonly whole: number;
  /** 0 when there is no fraction. */
  readonly numerator: number;
  readonly denominator: number;
  readonly heavy: boolean;
}

/**
 * @param mm the exact length in millimetres
 * @param step the grid, exact (1/16 in, 1/32 in …)
 */
export function tapeNumber(mm: number, step: Exact, rounding: Rounding = 'nearest'): TapeNumber {
  const onGrid = reduce(toInches(times(step, stepsIn(mm, toMm(step), rounding))));
  const negative = onGrid.num < 0n;
  const num = negative ? -onGrid.num : onGrid.num;
  const whole = num / onGrid.den;
  const rest = num - whole * onGrid.den;
  const heavy = onGrid.den === 32n;
  const plain = heavy ? reduce(fraction(rest - 1n, 32n)) : fraction(rest, onGrid.den);
  return {
    negative,
    whole: Number(whole),
    numerator: Number(plain.num),
    denominator: Number(plain.den),
    heavy,
  };
}

/** `14 5/8`, `14 5/8 +`, `-3/8`, `0`: inches without their mark, for tables and drawings. */
export function tapeText(number: TapeNumber): string {
  const parts: string[] = [];
  if (number.whole !== 0 || (number.numerator === 0 && !number.heavy)) parts.push(String(number.whole));
  if (number.numerator !== 0) parts.push(`${number.numerator}/${number.denominator}`);
  if (number.heavy) parts.push(parts.length === 0 ? '0 +' : '+');
  return (number.negative ? '-' : '') + parts.join(' ');
}

/**
 * Writes a length so that `parseLength` reads the same grid point back.
 * @param step the grid to round to once
 * @returns `107 5/8 in`, `2733.5 mm`
 */
export function formatLength(mm: number, step: Exact, units: UnitSystem, rounding: Rounding = 'nearest'): string {
  const steps = stepsIn(mm, toMm(step), rounding);
  if (units === 'metric') return `${decimalText(times(step, steps))} mm`;
  return `${fractionText(toInches(times(step, steps)))} in`;
}

/** `8' 11 5/8"`: the same grid point in feet and inches, as read aloud on a site. */
export function formatFeet(mm: number, step: Exact, rounding: Rounding = 'nearest'): string {
  const total = reduce(toInches(times(step, stepsIn(mm, toMm(step), rounding))));
  const negative = total.num < 0n;
  const num = negative ? -total.num : total.num;
  const feet = num / (12n * total.den);
  const rest = fraction(num - feet * 12n * total.den, total.den);
  return `${negative ? '-' : ''}${feet}' ${fractionText(rest)}"`;
}

/** An exact number with at most 6 decimals, trailing zeros dropped: `2733.5`. */
export function decimalText(value: Exact): string {
  const negative = value.num < 0n;
  const scaled = ((negative ? -value.num : value.num) * 2_000_000n + value.den) / (2n * value.den);
  const digits = scaled.toString().padStart(7, '0');
  const decimals = digits.slice(-6).replace(/0+$/, '');
  const text = digits.slice(0, -6) + (decimals === '' ? '' : `.${decimals}`);
  return negative && text !== '0' ? `-${text}` : text;
}

function fractionText(value: Exact): string {
  const reduced = reduce(value);
  const negative = reduced.num < 0n;
  const num = negative ? -reduced.num : reduced.num;
  const whole = num / reduced.den;
  const rest = num - whole * reduced.den;
  const fractional = rest === 0n ? '' : `${rest}/${reduced.den}`;
  const text = [whole === 0n && fractional !== '' ? '' : String(whole), fractional]
    .filter((part) => part !== '')
    .join(' ');
  return negative ? `-${text}` : text;
}

function reduce(value: Exact): Exact {
  let a = value.num < 0n ? -value.num : value.num;
  let b = value.den;
  while (b !== 0n) [a, b] = [b, a % b];
  return { num: value.num / a, den: value.den / a };
}
