/**
 * Writes a length that the program found itself so that a job file holds it exactly: reading the
 * text back gives the very same fraction, whatever grid the length is on.
 */
import { type Exact, multiply, toInches, whole } from './exact';
import { decimalText } from './format';
import type { UnitSystem } from './length';

/** The finest division of an inch that is still written as one; a tape shows no finer. */
const FINEST_INCH = 64n;

/**
 * Inches as a tape reads where they are on one; else decimal millimetres, which hold every reading of
 * either system; else the bare fraction of an inch.
 * @param length not negative
 */
export function exactText(length: Exact, units: UnitSystem): string {
  const inInches = reduced(toInches(length));
  if (units === 'imperial' && FINEST_INCH % inInches.den === 0n) return `${mixed(inInches)} in`;
  const inMillionths = multiply(length, whole(1_000_000));
  if (inMillionths.num % inMillionths.den === 0n) return `${decimalText(length)} mm`;
  return `${mixed(inInches)} in`;
}

function mixed({ num, den }: Exact): string {
  const units = num / den;
  const rest = num % den;
  if (rest === 0n) return String(units);
  return units === 0n ? `${rest}/${den}` : `${units} ${rest}/${den}`;
}

function reduced({ num, den }: Exact): Exact {
  let [a, b] = [num, den];
  while (b !== 0n) [a, b] = [b, a % b];
  return { num: num / a, den: den / a };
}
