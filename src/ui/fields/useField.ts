/** One field and one key of the job: what stands in the field, and what becomes of a keystroke. */
import { useMemo, useSyncExternalStore } from 'react';
import type { JobText } from '../../core/job/jobText';
import type { Problem } from '../../core/result';
import { job as jobOf } from '../../state/plannerStore';
import { sameContent } from '../../state/sameContent';
import { unitsOf } from '../stairOnShow';
import { useBench, usePlannerState } from '../usePlanner';
import { valueAt } from './jobPlaces';
import { judgeMaking, type Making } from './judgeTyping';
import { fingerprint, type Typed, type TypingEntry } from './typing';

export interface FieldRules {
  readonly place: string;
  /** How the job's value stands in the field. */
  readonly show: (value: unknown) => Typed;
  readonly make: (typed: Typed, job: JobText) => Making;
  /** Changes that belong to the same step. */
  readonly also?: (job: JobText) => JobText;
}

export interface FieldHandle {
  readonly value: unknown;
  readonly typed: Typed;
  /** Why the typed text is not in use; empty while it is. */
  readonly problems: readonly Problem[];
  /** It was refused, the job has changed since, and it would fit now. */
  readonly fitsNow: boolean;
  change(typed: Typed): void;
  leave(): void;
  /** The same, but what was typed and is not in use stays in sight. */
  pause(): void;
}

const NONE: readonly Problem[] = [];

export function useField({ place, show, make, also }: FieldRules): FieldHandle {
  const { planner, typing } = useBench();
  const value = usePlannerState((state) => valueAt(jobOf(state), place));
  const entry = useSyncExternalStore(typing.subscribe, () => typing.all().get(place));
  // Only a field that something was typed in has to be judged anew with every job.
  const judged = usePlannerState((state) => (entry === undefined ? null : jobOf(state)));
  const verdict = useMemo(() => (judged === null ? undefined : entry?.judge(judged, place)), [entry, judged, place]);

  function take(next: TypingEntry): void {
    const present = jobOf(planner.store.getState());
    const found = next.judge(present, place);
    if (found.kind === 'fits' && !next.waits && !sameContent(found.job, present))
      planner.actions.edit(() => found.job, place);
    const now = jobOf(planner.store.getState());
    const inUse = found.kind === 'fits' && !next.waits ? { inUnits: unitsOf(now) } : {};
    typing.set(place, { ...next, beside: fingerprint(valueAt(now, place)), ...inUse });
  }

  return {
    value,
    typed: entry?.typed ?? show(value),
    problems: verdict?.kind === 'refused' ? verdict.problems : NONE,
    fitsNow: judged !== null && verdict?.kind === 'fits' && entry?.waits !== true && !sameContent(verdict.job, judged),
    change(typed) {
      const judge = (present: JobText, at: string) => judgeMaking(present, at, make(typed, present), also);
      const making = make(typed, jobOf(planner.store.getState()));
      const leftOut = making.ok && making.value === undefined;
      take({ typed, beside: '', judge, waits: leftOut && typed.text.trim() === '' });
    },
    leave() {
      if (entry !== undefined && verdict?.kind === 'fits') {
        take({ ...entry, waits: false });
        typing.clear(place);
      }
      planner.actions.endGesture();
    },
    pause: () => planner.actions.endGesture(),
  };
}
