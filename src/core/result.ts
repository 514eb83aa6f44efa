/**
 * What can go wrong with input, as data. The core never throws for bad input and never
 * words a message: it names the place and the reason, and `text/` says it in a language.
 */

/** The values that a message about the problem needs, already fit to be shown. */
export type ProblemValues = Readonly<Record<string, string | number>>;

export interface Problem<Code extends string = string> {
  /** Where it is, as a path in the job file: `stairs[0].survey.rise`, or `job` for the whole. */
  readonly place: string;
  readonly code: Code;
  readonly values: ProblemValues;
}

export type Result<T, E = readonly Problem[]> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: E };

export function success<T>(value: T): { readonly ok: true; readonly value: T } {
  return { ok: true, value };
}

export function failure<E>(problems: E): { readonly ok: false; readonly problems: E } {
  return { ok: false, problems };
}

export function problem<Code extends string>(place: string, code: Code, values: ProblemValues = {}): Problem<Code> {
  return { place, code, values };
}

/** Our own mistake, not the user's: stops at once instead of passing on a wrong number. */
export function invariant(condition: boolean, why: string): asserts condition {
  if (!condition) throw new Error(`Pitchboard invariant broken: ${why}`);
}
