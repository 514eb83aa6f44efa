/** The stair that the page shows, laid out once for all who look at it. */
import { createContext, useContext } from 'react';
import type { JobText } from '../core/job/jobText';
import { planStair, type RuleBook, type StairPlan } from '../core/plan/planStair';
import type { Result } from '../core/result';
import type { UnitSystem } from '../core/units/length';
import { DEFAULT_PACK, findPack, TASTES } from '../packs/ruleBook';
import type { Speaker } from '../text/say';

export const BOOK: RuleBook = { findPack, defaultPack: DEFAULT_PACK, tastes: TASTES };

export interface StairOnShow {
  readonly job: JobText;
  readonly index: number;
  readonly plan: Result<StairPlan>;
  readonly units: UnitSystem;
  readonly say: Speaker;
}

export const StairContext = createContext<StairOnShow | null>(null);

export function useStair(): StairOnShow {
  const stair = useContext(StairContext);
  if (stair === null) throw new Error('A part of the page was used without a stair');
  return stair;
}

/** A keystroke is planned before it is taken and again when it is shown: the second time is free. */
const plans = new WeakMap<JobText, Map<number, Result<StairPlan>>>();

export function planOf(job: JobText, index: number): Result<StairPlan> {
  const known = plans.get(job) ?? new Map<number, Result<StairPlan>>();
  plans.set(job, known);
  const plan = known.get(index) ?? planStair(job, index, BOOK);
  known.set(index, plan);
  return plan;
}

export function unitsOf(job: JobText): UnitSystem {
  return job.units ?? 'imperial';
}
