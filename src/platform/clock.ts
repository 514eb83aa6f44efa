import type { Clock } from '../state/draft';

export const browserClock: Clock = {
  now: () => Date.now(),
  after(delayMs, run) {
    const timer = setTimeout(run, delayMs);
    return () => clearTimeout(timer);
  },
};
