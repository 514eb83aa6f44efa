/**
 * Keeps the draft up with the store. A write starts at once after a change, without a timer,
 * because what waits for a timer is lost when the browser is killed. One write is in flight at
 * most; what changed meanwhile goes into the next one, so that typing never builds a queue.
 */
import type { Clock, Draft, DraftKeeper, DraftTrouble, KeptDraft } from './draft';

export type DraftReport =
  | { readonly status: 'writing' }
  | { readonly status: 'kept'; readonly at: number }
  | { readonly status: 'failed'; readonly reason: DraftTrouble };

export interface DraftWriterOptions {
  readonly save: DraftKeeper['save'];
  readonly clock: Clock;
  readonly newest: () => Draft;
  readonly report: (report: DraftReport) => void;
}

export interface DraftWriter {
  /** Something is not kept yet. */
  changed(): void;
  /** The page may be about to go: a retry that is waiting starts now. */
  hurry(): void;
}

/** The last one repeats until the write succeeds. */
const RETRY_DELAYS_MS = [200, 1000, 5000] as const;

/** Waiting does not cure these: only the user can decide. */
const FINAL_TROUBLES: readonly DraftTrouble[] = ['other-draft', 'newer-version'];

export function createDraftWriter({ save, clock, newest, report }: DraftWriterOptions): DraftWriter {
  let stale = false;
  let writing = false;
  let failures = 0;
  let callOffRetry: (() => void) | null = null;

  function stopWaiting(): void {
    callOffRetry?.();
    callOffRetry = null;
  }

  function failed(reason: DraftTrouble): void {
    stale = true;
    if (!FINAL_TROUBLES.includes(reason)) callOffRetry = clock.after(retryDelay(failures), write);
    failures += 1;
    report({ status: 'failed', reason });
  }

  function kept(at: number): void {
    failures = 0;
    report(stale ? { status: 'writing' } : { status: 'kept', at });
    if (stale) write();
  }

  function write(): void {
    stopWaiting();
    if (writing) return;
    writing = true;
    stale = false;
    const draft = newest();
    void attempt(save, draft).then((outcome) => {
      writing = false;
      if (outcome.ok) kept(draft.at);
      else failed(outcome.reason);
    });
  }

  return {
    changed() {
      stale = true;
      write();
    },
    hurry() {
      if (stale) write();
    },
  };
}

function retryDelay(failures: number): number {
  return RETRY_DELAYS_MS[Math.min(failures, RETRY_DELAYS_MS.length - 1)] ?? 0;
}

/** A keeper that breaks its word must not stop the writer for good. */
async function attempt(save: DraftKeeper['save'], draft: Draft): Promise<KeptDraft> {
  try {
    return await save(draft);
  } catch {
    return { ok: false, reason: 'unknown' };
  }
}
