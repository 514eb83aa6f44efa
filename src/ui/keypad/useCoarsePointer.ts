import { useSyncExternalStore } from 'react';

/** Whether the hand that points is a finger; a tablet with a mouse plugged in changes its mind. */
export function useCoarsePointer(): boolean {
  return useSyncExternalStore(subscribe, isCoarse);
}

function isCoarse(): boolean {
  return query()?.matches ?? false;
}

function subscribe(listener: () => void): () => void {
  const found = query();
  found?.addEventListener('change', listener);
  return () => found?.removeEventListener('change', listener);
}

function query(): MediaQueryList | null {
  return typeof matchMedia === 'function' ? matchMedia('(pointer: coarse)') : null;
}
