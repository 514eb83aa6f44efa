/** One part of the page on a bench of its own: its store, its stair, and nothing round it. */
import { render } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { type ReactNode, useMemo } from 'react';
import type { JobText } from '../../src/core/job/jobText';
import { demoJob } from '../../src/document/demoJob';
import type { SavedFile } from '../../src/platform/files';
import type { Draft, DraftKeeper } from '../../src/state/draft';
import { createPlanner, job as jobOf } from '../../src/state/plannerStore';
import { speakerFor } from '../../src/text/say';
import { createTypingDesk } from '../../src/ui/fields/typing';
import { StairProvider } from '../../src/ui/StairProvider';
import { planOf, unitsOf } from '../../src/ui/stairOnShow';
import { BenchContext, usePlannerState } from '../../src/ui/usePlanner';

interface PartOptions {
  readonly firstJob?: JobText;
  /** What an earlier visit has left. */
  readonly kept?: Draft;
  readonly save?: (name: string) => Promise<SavedFile>;
}

export async function openPart(part: ReactNode, { firstJob = demoJob, kept, save }: PartOptions = {}) {
  const saved: Draft[] = [];
  const drafts: DraftKeeper = {
    load: async () => (kept === undefined ? { kind: 'none' } : { kind: 'found', draft: kept, loss: null }),
    save: async (draft) => {
      saved.push(draft);
      return { ok: true };
    },
    takeOver: () => undefined,
  };
  const planner = createPlanner({ firstJob, drafts, clock: { now: () => 0, after: () => () => undefined } });
  await planner.actions.start();
  const files = {
    pickFile: async () => ({ kind: 'cancelled' as const }),
    fileFromDrop: async () => ({ kind: 'cancelled' as const }),
    saveFile: save ?? (async (name: string): Promise<SavedFile> => ({ kind: 'saved', name })),
  };
  const bench = { planner, files, typing: createTypingDesk() };
  const user = userEvent.setup();
  const shown = render(
    <BenchContext value={bench}>
      <OnStair>{part}</OnStair>
    </BenchContext>,
  );
  return { planner, user, saved, close: shown.unmount, present: () => jobOf(planner.store.getState()) };
}

function OnStair({ children }: { readonly children: ReactNode }) {
  const job = usePlannerState(jobOf);
  const index = usePlannerState((state) => state.stairIndex);
  const terms = usePlannerState((state) => state.terms);
  const stair = useMemo(
    () => ({ job, index, plan: planOf(job, index), units: unitsOf(job), say: speakerFor(terms) }),
    [job, index, terms],
  );
  return <StairProvider value={stair}>{children}</StairProvider>;
}
