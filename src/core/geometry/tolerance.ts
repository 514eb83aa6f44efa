/**
 * The only file with an epsilon. Lengths that went through a square root or an angle are
 * floats; these two functions own the case of equality for them: exactly on the limit meets it.
 * Distances are compared, never slopes or areas. What is rational is compared exactly, in `units/exact`.
 */

/** One nanometre, in millimetres: a thousandth of what a machinist can measure on wood's best day. */
const SAME_MM = 1e-6;

/** True if the length is no more than the limit; on the limit counts. Millimetres. */
export function atMost(length: number, limit: number): boolean {
  return length <= limit + SAME_MM;
}

/** True if the length is no less than the limit; on the limit counts. Millimetres. */
export function atLeast(length: number, limit: number): boolean {
  return length >= limit - SAME_MM;
}

/** True if there is something there: more than nothing, by more than the float's own dust. */
export function isPositive(length: number): boolean {
  return length > SAME_MM;
}
