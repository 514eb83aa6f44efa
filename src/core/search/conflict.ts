/**
 * Why there is no layout: which bounds cannot all be kept, and what each of them would have to become.
 *
 * Method: every candidate of the frame breaks some set of bounds. A set of bounds conflicts where each
 * candidate breaks one of them; the smallest such set is the proof, and taking any one bound out of it would
 * leave a candidate that keeps the rest of it. What a bound would have to become is read off the candidate that breaks
 * it with the fewest others, and among those by the least; then it is tried, on a job that says so.
 */
import { type Exact, toMm } from '../units/exact';
import type { Candidate } from './candidate';
import { openingFor } from './quick';
import { Sifter } from './searchLayouts';
import { headroomAsked, type Search } from './wishes';

/** A candidate, and by place in the list all the bounds that it breaks. */
export interface Way {
  readonly candidate: Candidate;
  readonly broken: readonly number[];
}

export interface Conflict {
  readonly sifter: Sifter;
  readonly looked: number;
  /** Places of the bounds that cannot all be kept; empty where no candidate leaves a stair at all. */
  readonly bounds: readonly number[];
  /** One for each of them, in the same order. */
  readonly ways: readonly Way[];
  /** The candidate that only lacks headroom, and would with the shortest opening have it. */
  readonly opening: { readonly candidate: Candidate; readonly needed: number } | null;
}

interface Group extends Way {
  readonly away: number;
}

/** @returns stops after each riser count of each top; null where there is a layout after all */
export function* findConflict(search: Search): Generator<undefined, Conflict | null> {
  const sifter = new Sifter(search);
  const { frame } = sifter;
  const groups = new Map<string, Group>();
  const openings = new ShortestOpening(search, sifter);
  let looked = 0;
  for (const top of search.wishes.tops) {
    for (let risers = frame.fewest; risers <= frame.most; risers += 1) {
      for (let steps = frame.leastSteps; steps <= frame.mostSteps; steps += 1) {
        looked += 1;
        for (let depthAt = 0; depthAt < sifter.depthCount; depthAt += 1) {
          const broken = sifter.broken(top, risers, steps, depthAt);
          if (broken === null) continue;
          if (broken.length === 0) return null;
          const candidate = sifter.candidate(top, risers, steps, depthAt);
          const quick = sifter.quick(top, risers, steps, depthAt);
          const away = broken.reduce((sum, at) => sum + shortOf(sifter, at, quick), 0);
          const key = broken.join();
          const best = groups.get(key);
          if (best === undefined || away < best.away) groups.set(key, { candidate, broken, away });
          openings.look(candidate, broken, quick);
        }
      }
      yield;
    }
  }
  const all = [...groups.values()];
  const bounds = smallestConflict(all);
  return {
    sifter,
    looked,
    bounds,
    ways: bounds.map((at) => nearestWay(all, at)),
    opening: openings.best,
  };
}

/** By how much of what is asked a bound is missed; for a yes or no, by all of it. */
function shortOf(sifter: Sifter, at: number, quick: Parameters<Sifter['bounds'][number]['margin']>[0]): number {
  const bound = sifter.bounds[at] as Sifter['bounds'][number];
  const margin = bound.margin(quick);
  if (!Number.isFinite(margin)) return 1;
  const asked = bound.limit?.exact ?? null;
  const size = Math.abs(asked === null ? (bound.asked ?? 1) : toMm(asked));
  return Math.max(0, -margin) / Math.max(size, 1);
}

/** What a longer opening can give; what hangs over the flight stays where it is. */
const OF_OPENING: readonly string[] = ['headroom.min', 'wish.headroom'];

class ShortestOpening {
  best: Conflict['opening'] = null;
  private readonly asked: Exact | null;

  constructor(
    search: Search,
    private readonly sifter: Sifter,
  ) {
    this.asked = headroomAsked(search);
  }

  look(candidate: Candidate, broken: readonly number[], quick: Parameters<typeof openingFor>[0]): void {
    if (this.asked === null || broken.some((at) => !OF_OPENING.includes(this.sifter.bounds[at]?.id ?? ''))) return;
    const needed = openingFor(quick, toMm(this.asked));
    if (needed !== null && needed < (this.best?.needed ?? Number.POSITIVE_INFINITY)) this.best = { candidate, needed };
  }
}

/** @returns places of the fewest bounds of which every candidate breaks one; with wishes rather than rules, where either will do */
function smallestConflict(groups: readonly Group[]): readonly number[] {
  const sets = groups.map(({ broken }) => broken);
  const least = sets.filter(
    (set) => !sets.some((other) => other.length < set.length && other.every((at) => set.includes(at))),
  );
  const places = [...new Set(least.flat())].sort((a, b) => b - a);
  for (let size = 1; size <= places.length; size += 1) {
    const found = firstHitting(least, places, size, []);
    if (found !== null) return [...found].sort((a, b) => a - b);
  }
  return [];
}

/** Goes through choices of so many places; each has to take one from the first set that is not hit yet. */
function firstHitting(
  sets: readonly (readonly number[])[],
  places: readonly number[],
  size: number,
  chosen: readonly number[],
): readonly number[] | null {
  const open = sets.find((set) => !set.some((at) => chosen.includes(at)));
  if (open === undefined) return chosen;
  if (chosen.length === size) return null;
  for (const at of places) {
    if (!open.includes(at)) continue;
    const found = firstHitting(sets, places, size, [...chosen, at]);
    if (found !== null) return found;
  }
  return null;
}

function nearestWay(groups: readonly Group[], at: number): Way {
  const having = groups.filter(({ broken }) => broken.includes(at));
  having.sort((a, b) => a.broken.length - b.broken.length || a.away - b.away);
  const { candidate, broken } = having[0] as Group;
  return { candidate, broken };
}
