/**
 * How tall the elevation may be, so that the risers under it stay in sight: at a desk what the window
 * leaves beside bar, steps and strip; on a tablet the upper part of it, with the fields below.
 */
import { useSyncExternalStore } from 'react';

const DESK_FROM = 1100;
/** Bar, steps, title and riser strip at a desk, in pixels. */
const TAKEN_AT_DESK = 530;
const LEAST_AT_DESK = 320;
const LEAST = 250;
const SHARE_OF_TABLET = 0.36;

export function useSightHeight(): number {
  return useSyncExternalStore(subscribe, heightNow);
}

function subscribe(changed: () => void): () => void {
  window.addEventListener('resize', changed);
  return () => window.removeEventListener('resize', changed);
}

function heightNow(): number {
  const { innerWidth, innerHeight } = window;
  if (innerWidth >= DESK_FROM) return Math.max(LEAST_AT_DESK, innerHeight - TAKEN_AT_DESK);
  return Math.round(Math.max(LEAST, innerHeight * SHARE_OF_TABLET));
}
