/**
 * A keeper of drafts that is fetched when it is first asked: a page can be typed into before it is
 * there. What is handed over meanwhile waits for it in order, and is said to be kept only by itself.
 */
import type { DraftKeeper } from '../state/draft';

export function createLateDrafts(fetchKeeper: () => Promise<DraftKeeper>): DraftKeeper {
  let fetched: Promise<DraftKeeper> | null = null;

  /** One that could not be fetched is asked for again the next time. */
  function keeper(): Promise<DraftKeeper> {
    fetched ??= fetchKeeper().catch((error: unknown) => {
      fetched = null;
      throw error;
    });
    return fetched;
  }

  return {
    load: () =>
      keeper().then(
        (drafts) => drafts.load(),
        () => ({ kind: 'damaged', reason: 'unavailable' }),
      ),
    save: (draft) =>
      keeper().then(
        (drafts) => drafts.save(draft),
        () => ({ ok: false, reason: 'unavailable' }),
      ),
    takeOver() {
      keeper().then(
        (drafts) => drafts.takeOver(),
        () => undefined,
      );
    },
  };
}
