/** The layouts to choose from, worked out when there is a moment, and the taking of one. */
import { useCallback, useMemo, useState } from 'react';
import type { KeyChange } from '../../core/choose/changeStair';
import { type Alternative, applyAlternative, compareLayouts } from '../../core/choose/compareLayouts';
import type { JobText } from '../../core/job/jobText';
import type { Problem } from '../../core/result';
import { BOOK } from '../../packs/ruleBook';
import { job as jobOf } from '../../state/plannerStore';
import { planOf, TAPE_DOUBT, useStair } from '../stairOnShow';
import { useBench } from '../usePlanner';

const NONE: readonly Problem[] = [];

export function useAlternatives(): readonly Alternative[] {
  // The plan stands for the rules it was made with: when they come, it is another one.
  const { job, index, plan } = useStair();
  return useMemo(
    () => (plan.ok || plan.problems.length > 0 ? compareLayouts(job, index, BOOK, TAPE_DOUBT) : []),
    [job, index, plan],
  );
}

/** What changes; told from the job as it is when it is taken, where what is on show may be of an older one. Null: nothing to take. */
export type Takeable = readonly KeyChange[] | ((present: JobText, index: number) => readonly KeyChange[] | null);

export interface Taking {
  /** Why the last change was not taken; empty when it was. */
  readonly refusals: readonly Problem[];
  /** One step of undo, or none where the stair would not lay out. */
  take(changes: Takeable): boolean;
}

export function useTaking(): Taking {
  const { planner } = useBench();
  const { index } = useStair();
  const [refusals, setRefusals] = useState(NONE);
  const take = useCallback(
    (takeable: Takeable) => {
      const present = jobOf(planner.store.getState());
      const changes = typeof takeable === 'function' ? takeable(present, index) : takeable;
      if (changes === null) return false;
      const next = applyAlternative(present, index, { changes });
      const plan = planOf(next, index);
      setRefusals(plan.ok ? NONE : plan.problems);
      if (plan.ok) planner.actions.edit(() => next, null);
      return plan.ok;
    },
    [planner, index],
  );
  return { refusals, take };
}
