/**
 * Rounding policies. Nothing inside the core is rounded; a number is rounded once, when it
 * leaves for a board, a saw or a page, by the policy that cannot hurt there:
 * nearest for marks, down for rips (a riser board 1/32 high lifts the tread off the stringer),
 * and toward the limit for what is judged (79.97 must not read as 80).
 */

export type Rounding = 'nearest' | 'down' | 'up';

/**
 * A value within this fraction of a step of the half-way point, or of the step itself, counts
 * as being on it: it absorbs the last bits of a float, and is far below anything that a tape shows.
 */
const STEP_SLACK = 1e-9;

/**
 * @param value any length; the same unit as the step
 * @param step the grid, more than zero
 * @returns how many steps: an integer, so that the caller can stay exact
 */
export function stepsIn(value: number, step: number, rounding: Rounding = 'nearest'): number {
  const steps = value / step;
  if (rounding === 'down') return positiveZero(Math.floor(steps + STEP_SLACK));
  if (rounding === 'up') return positiveZero(Math.ceil(steps - STEP_SLACK));
  return positiveZero(Math.floor(steps + 0.5 + STEP_SLACK));
}

/** The value on the grid, as a float in the same unit. */
export function roundTo(value: number, step: number, rounding: Rounding = 'nearest'): number {
  return stepsIn(value, step, rounding) * step;
}

function positiveZero(value: number): number {
  return value === 0 ? 0 : value;
}
