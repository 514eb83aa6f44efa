import { useEffect, useReducer } from 'react';
import type { RulePack } from '../core/codes/rules';
import type { JobText } from '../core/job/jobText';
import { DEFAULT_PACK, findPack, loadPack } from '../packs/ruleBook';
import { waitsForLocals } from './stairOnShow';

/** The pack of the job on show; it is fetched where it is not here yet, and the page is drawn anew when it comes. */
export function useJobPack(job: JobText): RulePack | undefined {
  const id = job.rules?.pack ?? DEFAULT_PACK;
  const [, drawAnew] = useReducer((count: number) => count + 1, 0);
  useEffect(() => {
    if (findPack(id) !== undefined) return undefined;
    let isWanted = true;
    const arrived = () => {
      if (isWanted) drawAnew();
    };
    // Without a network the job stays open, and its findings say that nothing was checked.
    loadPack(id).then(arrived, () => undefined);
    return () => {
      isWanted = false;
    };
  }, [id]);
  const isWaiting = waitsForLocals(job);
  useEffect(() => {
    // It lies beside the page itself; where it does not come, the job cannot be laid out by its rules.
    if (isWaiting) import('./localReader').then(drawAnew, () => undefined);
  }, [isWaiting]);
  return findPack(id);
}
