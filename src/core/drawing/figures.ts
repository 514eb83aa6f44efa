/** Lengths as the figures of a drawing: inches as a tape reads, or millimetres as digits. */
import { type Exact, fraction, inch, times, toMm } from '../units/exact';
import { decimalText, tapeNumber } from '../units/format';
import type { UnitSystem } from '../units/length';
import { type Rounding, stepsIn } from '../units/rounding';
import type { FigureText } from './drawing';

const SHOWN_STEP = { imperial: inch(1 / 32), metric: fraction(1n, 2n) } as const;

/**
 * @param mm what is shown
 * @param rounding toward the limit for what is judged, else nearest
 * @param step another grid than the usual 1/32 in or 0.5 mm
 */
export function figureOf(
  mm: number,
  units: UnitSystem,
  rounding: Rounding = 'nearest',
  step: Exact = SHOWN_STEP[units],
): FigureText {
  if (units === 'imperial') return { kind: 'tape', number: tapeNumber(mm, step, rounding) };
  return { kind: 'digits', text: decimalText(times(step, stepsIn(mm, toMm(step), rounding))) };
}
