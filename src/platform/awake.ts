/**
 * Keeps the screen from going dark while somebody works from it with both hands. A browser may lack
 * this, refuse it (a flat battery), or take it back when the page is hidden: it is asked again when the
 * page comes to the front, and what became of it is reported. Nothing here throws or rejects.
 */

export type Awake = 'asking' | 'on' | 'off';

/** What is asked of the browser's own; a test hands in another. */
export interface WakeLocks {
  request(type: 'screen'): Promise<WakeLock>;
}

interface WakeLock {
  release(): Promise<void>;
  addEventListener(type: 'release', listener: () => void): void;
}

/** @returns a function that lets the screen go dark again */
export function keepAwake(report: (awake: Awake) => void, locks: WakeLocks | undefined = browserLocks()): () => void {
  let held: WakeLock | null = null;
  let isWanted = true;

  if (locks === undefined) {
    report('off');
    return () => undefined;
  }
  const asked = locks;

  async function ask(): Promise<void> {
    if (document.visibilityState !== 'visible' || held !== null) return;
    report('asking');
    try {
      const lock = await asked.request('screen');
      if (isWanted) hold(lock);
      else await lock.release();
    } catch {
      if (isWanted) report('off');
    }
  }

  function hold(lock: WakeLock): void {
    held = lock;
    lock.addEventListener('release', () => {
      held = null;
      if (isWanted) report('off');
    });
    report('on');
  }

  const whenShown = (): void => void ask();
  document.addEventListener('visibilitychange', whenShown);
  void ask();
  return () => {
    isWanted = false;
    document.removeEventListener('visibilitychange', whenShown);
    // One that is gone already has nothing to give back.
    held?.release().catch(() => undefined);
  };
}

/** Missing in older browsers, and on a page that did not come over a secure way. */
function browserLocks(): WakeLocks | undefined {
  return 'wakeLock' in navigator ? navigator.wakeLock : undefined;
}
