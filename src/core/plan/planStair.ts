/**
 * The whole pipeline for one stair: text → job → layout → sheet, checked by the second road, and its
 * findings. The commands, the exports and the tests call this; the page plans without judging first,
 * and judges where findings are shown.
 */
import { type Finding, findOn } from '../codes/findings';
import { doubtIn } from '../codes/measures';
import { LOCAL_READER } from '../codes/rulePack';
import type { TasteRule } from '../codes/rules';
import type { JobText } from '../job/jobText';
import { failure, type Result, success } from '../result';
import type { Exact } from '../units/exact';
import { type LayoutBook, planUnjudged, type StairPlan } from './planUnjudged';

export { limitsOf, type StairPlan } from './planUnjudged';

/** What the program knows of rules and taste; data from src/packs. */
export interface RuleBook extends Omit<LayoutBook, 'locals'> {
  readonly tastes: readonly TasteRule[];
}

export interface JudgedPlan extends StairPlan {
  readonly findings: readonly Finding[];
  /** How far each tape reading was taken to be out, in millimetres; null: not at all. */
  readonly tapeDoubt: Exact | null;
}

/** How far a tape reading may be out, in millimetres, or what the job says and else is usual in its units; null: not at all. */
export type TapeDoubt = Exact | 'usual' | null;

/**
 * @param tapeDoubt left out, readings count as they are and no answer is too close to call
 * @returns the plan, or what must change first; a layout that fails its own check never leaves
 */
export function planStair(
  job: JobText,
  index: number,
  book: RuleBook,
  tapeDoubt: TapeDoubt = null,
): Result<JudgedPlan> {
  const plan = planUnjudged(job, index, { ...book, locals: LOCAL_READER });
  return plan.ok ? success(judgePlan(plan.value, book, tapeDoubt)) : plan;
}

/** @returns the same plan with its findings */
export function judgePlan(plan: StairPlan, book: Pick<RuleBook, 'tastes'>, tapeDoubt: TapeDoubt = null): JudgedPlan {
  const { layout, rules } = plan;
  const doubt = doubtIn(layout.job, tapeDoubt);
  return { ...plan, findings: findOn(layout, rules, book.tastes, doubt), tapeDoubt: doubt };
}

/** @returns every stair's plan, or all problems of all stairs: all or nothing */
export function planJob(job: JobText, book: RuleBook): Result<readonly JudgedPlan[]> {
  const plans = job.stairs.map((_, index) => planStair(job, index, book));
  const problems = plans.flatMap((plan) => (plan.ok ? [] : plan.problems));
  if (problems.length > 0) return failure(withoutRepeats(problems));
  return success(plans.flatMap((plan) => (plan.ok ? [plan.value] : [])));
}

/** What is wrong with the rules or the mark step is found once for every stair. */
function withoutRepeats<T extends { place: string; code: string }>(problems: readonly T[]): T[] {
  const seen = new Set<string>();
  return problems.filter(({ place, code }) => !seen.has(`${place} ${code}`) && seen.add(`${place} ${code}`));
}
