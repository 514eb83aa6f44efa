/** The search for the stair on show: begun anew whenever stair, rules or wishes change, and done in slices. */
import { useEffect, useMemo, useState } from 'react';
import type { Problem } from '../../core/result';
import type { ReadWishes } from '../../core/search/readWishes';
import { type Study, studyLayouts } from '../../core/search/study';
import type { Asked } from '../../core/search/tryWay';
import { askSearch } from '../../core/search/wishes';
import { BOOK } from '../../packs/ruleBook';
import { TAPE_DOUBT, useStairNow } from '../stairOnShow';
import { inSlices } from './slices';

export interface Studied {
  readonly asked: Asked;
  readonly study: Study;
  /** False while it is not yet known why there is no layout. */
  readonly isWhole: boolean;
}

export interface StudyOnShow {
  /** The newest that is done, which may be of what stood there a moment ago. */
  readonly studied: Studied | null;
  readonly isWorking: boolean;
  readonly problems: readonly Problem[];
}

const NONE: readonly Problem[] = [];

export function useStudy({ wishes, order }: ReadWishes): StudyOnShow {
  // It looks at once, while the rest of the page follows: the answer of the last key must not wait for a table.
  const { job, index, plan } = useStairNow();
  // The plan stands for the rules it was made with: when they come, it is another one.
  const asking = useMemo(
    () => (plan.ok || plan.problems.length > 0 ? askSearch(job, index, BOOK, wishes, TAPE_DOUBT) : null),
    [job, index, plan, wishes],
  );
  const asked = useMemo<Asked | null>(
    () => (asking?.ok ? { job, index, book: BOOK, search: asking.value } : null),
    [asking, job, index],
  );
  const [studied, setStudied] = useState<Studied | null>(null);
  useEffect(() => {
    if (asked === null) return undefined;
    const show = (isWhole: boolean) => (study: Study) => setStudied({ asked, study, isWhole });
    return inSlices(studyLayouts(asked, order), show(true), show(false));
  }, [asked, order]);
  return {
    studied: asked === null ? null : studied,
    isWorking: asked !== null && (studied?.asked !== asked || !studied.isWhole),
    problems: asking === null || asking.ok ? NONE : asking.problems,
  };
}
