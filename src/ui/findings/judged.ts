/** The stair on show with its findings: worked out where they are looked at, once for each plan. */
import { type JudgedPlan, judgePlan, type StairPlan } from '../../core/plan/planStair';
import { BOOK } from '../../packs/ruleBook';
import { TAPE_DOUBT } from '../stairOnShow';

const known = new WeakMap<StairPlan, JudgedPlan>();

export function judged(plan: StairPlan): JudgedPlan {
  const judgedPlan = known.get(plan) ?? judgePlan(plan, BOOK, TAPE_DOUBT);
  known.set(plan, judgedPlan);
  return judgedPlan;
}
