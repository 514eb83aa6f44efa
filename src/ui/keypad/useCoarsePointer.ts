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

/** Every length field asks at every key, a browser is asked once. */
let asked: { readonly of: typeof matchMedia; readonly list: MediaQueryList } | null = null;

function query(): MediaQueryList | null {
  if (typeof matchMedia !== 'function') return null;
  if (asked?.of !== matchMedia) asked = { of: matchMedia, list: matchMedia('(pointer: coarse)') };
  return asked.list;
}
