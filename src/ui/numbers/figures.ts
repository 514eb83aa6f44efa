/** Lengths as the page shows them: a tape's number to 1/32 in, or millimetres to a half. */

import type { FigureText } from '../../core/drawing/drawing';
import { figureOf } from '../../core/drawing/figures';
import { type Exact, fraction, inch, mmToInches, toMm } from '../../core/units/exact';
import { formatFeet, formatLength, tapeText } from '../../core/units/format';
import type { UnitSystem } from '../../core/units/length';
import type { Rounding } from '../../core/units/rounding';
import { heldTogether } from './heldTogether';

const THIRTY_SECOND = inch(1 / 32);
const SIXTY_FOURTH = inch(1 / 64);
const TENTH_MM = fraction(1n, 10n);
const INCHES_IN_FOOT = 12;

/** On one line, as text: `7 9/16 +`, `191.5`. */
export function plainFigure(figure: FigureText): string {
  return figure.kind === 'tape' ? tapeText(figure.number) : figure.text;
}

/** With its unit, for sentences: `7 9/16 + in`. */
export function lengthText(mm: number, units: UnitSystem, rounding: Rounding = 'nearest'): string {
  return `${plainFigure(figureOf(mm, units, rounding))} ${units === 'metric' ? 'mm' : 'in'}`;
}

/** The same where it stands by itself, in a table: never torn at a line's end. */
export function cellText(mm: number, units: UnitSystem, rounding: Rounding = 'nearest'): string {
  return heldTogether(lengthText(mm, units, rounding));
}

/** Beside a tape's number where the next digit matters: `7.540`, `191.5`. */
export function decimalOf(mm: number, units: UnitSystem): string {
  return units === 'metric' ? mm.toFixed(1) : mmToInches(mm).toFixed(3);
}

/**
 * What was understood, in both systems: `8′ 11 5/8″ = 107 5/8″ = 2733.7 mm`. Where the tape has
 * no such mark the sign says so.
 */
export function echoOf(length: Exact): string {
  const mm = toMm(length);
  const onTape = isOnGrid(mm, SIXTY_FOURTH);
  const step = onTape ? SIXTY_FOURTH : THIRTY_SECOND;
  const inchesShown = formatLength(mm, step, 'imperial').replace(' in', '″');
  const feet = Math.abs(mmToInches(mm)) < INCHES_IN_FOOT ? '' : `${primes(formatFeet(mm, step))} = `;
  const metric = formatLength(mm, TENTH_MM, 'metric');
  return `${feet}${inchesShown} ${onTape ? '=' : '≈'} ${metric}`;
}

/** Metric where it was typed so reads on: 2733 mm is near a mark of the tape, not on it. */
function isOnGrid(mm: number, step: Exact): boolean {
  const steps = mm / toMm(step);
  return Math.abs(steps - Math.round(steps)) * toMm(step) < ECHO_MM;
}

/** Less than the least digit of the echo. */
const ECHO_MM = 0.001;

function primes(text: string): string {
  return text.replace("'", '′').replace('"', '″');
}
