/** The wishes of the stair on show: kept with the view, each as it was typed. */
import { useCallback, useMemo } from 'react';
import type { Result } from '../../core/result';
import { type ReadWishes, readWishes, type WishKey, type WishTexts } from '../../core/search/readWishes';
import { BOOK } from '../../packs/ruleBook';
import { useStairNow } from '../stairOnShow';
import { useBench, usePlannerState } from '../usePlanner';

const NONE: WishTexts = {};

export interface WishDesk {
  readonly texts: WishTexts;
  readonly read: Result<ReadWishes>;
  /** What the search goes by: without those that do not read. */
  readonly inUse: ReadWishes;
  write(key: WishKey, text: string): void;
}

export function useWishes(): WishDesk {
  const { planner } = useBench();
  const { job, index, units } = useStairNow();
  const id = job.stairs[index]?.id ?? '';
  const texts: WishTexts = usePlannerState((state) => state.wishes[id] ?? NONE);
  const read = useMemo(() => readWishes(texts, units, BOOK), [texts, units]);
  const inUse = useMemo(() => {
    const refused = read.ok ? [] : read.problems.map(({ place }) => place);
    const sound = Object.fromEntries(Object.entries(texts).filter(([key]) => !refused.includes(key)));
    const again = readWishes(sound, units, BOOK);
    if (!again.ok) throw new Error('a wish that reads was refused');
    return again.value;
  }, [read, texts, units]);
  const write = useCallback(
    (key: WishKey, text: string) => {
      const { wishes } = planner.store.getState();
      planner.actions.look({ wishes: { ...wishes, [id]: { ...wishes[id], [key]: text } } });
    },
    [planner, id],
  );
  return useMemo(() => ({ texts, read, inUse, write }), [texts, read, inUse, write]);
}
