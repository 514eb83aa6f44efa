/** React's way into the store; the store itself knows no React. */
import { createContext, useContext, useSyncExternalStore } from 'react';
import type { LateFiles } from '../platform/lateFiles';
import type { Planner, PlannerState } from '../state/plannerStore';
import type { TypingDesk } from './fields/typing';

/** The file edges of the browser; a test hands in its own. */
export type FileEdges = Omit<LateFiles, 'fetchAhead'>;

export interface Bench {
  readonly planner: Planner;
  readonly files: FileEdges;
  readonly typing: TypingDesk;
}

export const BenchContext = createContext<Bench | null>(null);

export function useBench(): Bench {
  const bench = useContext(BenchContext);
  if (bench === null) throw new Error('A part of the page was used outside of the page');
  return bench;
}

/** @param select must give the same object while nothing of it has changed */
export function usePlannerState<T>(select: (state: PlannerState) => T): T {
  const { store } = useBench().planner;
  return useSyncExternalStore(store.subscribe, () => select(store.getState()));
}
