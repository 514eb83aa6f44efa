/**
 * Whether a job that a field would make may take the place of the open one: only if it can be laid
 * out. A problem that the open job has already is nobody's fault now, or it could never be cured.
 */
import type { JobText } from '../../core/job/jobText';
import { type Problem, problem } from '../../core/result';
import { againstStairs } from '../../document/againstStairs';
import { planOf } from '../stairOnShow';
import { stairOfPlace, withValue } from './jobPlaces';
import type { Verdict } from './typing';

/** A field's text turned into what the job file would hold, or why it cannot be. */
export type Making =
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly fault: string; readonly found: string };

/**
 * @param also changes that belong to the same step, such as keys that a choice makes void
 */
export function judgeMaking(
  job: JobText,
  place: string,
  making: Making,
  also: (job: JobText) => JobText = (same) => same,
): Verdict {
  if (!making.ok) return refused([problem(place, making.fault, { found: making.found.slice(0, 60) })]);
  return judgeCandidate(job, also(withValue(job, place, making.value)), stairOfPlace(place));
}

/** @param stair the only one that the change can touch; null if it can touch them all */
export function judgeCandidate(job: JobText, candidate: JobText, stair: number | null): Verdict {
  const form = againstStairs(candidate);
  if (!form.ok) return refused(form.problems);
  const stairs = stair === null ? candidate.stairs.map((_, index) => index) : [stair];
  const before = new Set(stairs.flatMap((index) => problemsOf(job, index)).map(nameOf));
  const after = stairs.flatMap((index) => problemsOf(candidate, index)).filter((found) => !before.has(nameOf(found)));
  return after.length > 0 ? refused(after) : { kind: 'fits', job: candidate };
}

function problemsOf(job: JobText, index: number): readonly Problem[] {
  const plan = planOf(job, index);
  return plan.ok ? [] : plan.problems;
}

function nameOf({ place, code }: Problem): string {
  return `${place} ${code}`;
}

function refused(problems: readonly Problem[]): Verdict {
  return { kind: 'refused', problems };
}
