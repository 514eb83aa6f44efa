/** Everything that is said of a survey's layouts: which there are, in order, or why there is none. */
import { type Conflict, findConflict } from './conflict';
import { type Order, type Ranked, rankLayouts } from './rank';
import { type SearchResult, searchLayouts } from './searchLayouts';
import { type Asked, type TriedOpening, type TriedWay, tryOpening, tryWay } from './tryWay';
import type { Search } from './wishes';

export interface Study {
  readonly search: Search;
  readonly result: SearchResult;
  readonly ranked: readonly Ranked[];
  /** Null while there is a layout. */
  readonly why: Why | null;
}

export interface Why {
  readonly conflict: Conflict;
  /** What was tried, and came out. */
  readonly ways: readonly TriedWay[];
  readonly opening: TriedOpening | null;
}

/**
 * @returns stops often enough for a page to stay smooth, and once with what there is before it is known why there is
 *   nothing; the last value is the study
 */
export function* studyLayouts(asked: Asked, order: Order): Generator<Study | undefined, Study> {
  const { search } = asked;
  const result = yield* searchLayouts(search);
  const ranked = yield* rankLayouts(search, result, order);
  const early: Study = { search, result, ranked, why: null };
  if (result.found.length > 0) return early;
  yield early;
  const conflict = yield* findConflict(search);
  if (conflict === null) return early;
  const ways: TriedWay[] = [];
  for (const way of conflict.ways) {
    const tried = tryWay(asked, conflict, way);
    if (tried !== null) ways.push(tried);
    yield;
  }
  return { search, result, ranked, why: { conflict, ways, opening: tryOpening(asked, conflict) } };
}
