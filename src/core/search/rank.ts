/**
 * The order in which layouts stand, and which of them are beaten. The user names criteria; the first decides,
 * the next where it leaves two alike, and so on. Figures count to what a tape shows (1/16 in, 1 mm, a tenth of
 * a degree): a smaller difference is none.
 *
 * Where all criteria leave two alike: the top that the stair has now, then fewer risers, then the shorter run.
 *
 * One is beaten where another is at least as good by every named criterion and better by one.
 */
import { toMm } from '../units/exact';
import { RUN_GRID } from './candidate';
import { openingFor } from './quick';
import type { Found, SearchResult } from './searchLayouts';
import { headroomAsked, type Search } from './wishes';

export const CRITERIA = [
  'cautions',
  'stride',
  'unitRise',
  'headroom',
  'totalRun',
  'board',
  'pitch',
  'throat',
  'headerContact',
  'opening',
] as const;
export type Criterion = (typeof CRITERIA)[number];

export interface Order {
  readonly criteria: readonly Criterion[];
  /** Two rises and a run, and a unit rise, that are wished for: millimetres. */
  readonly stride: number;
  readonly unitRise: number;
}

export interface Ranked {
  readonly found: Found;
  /** The best of those that beat it; null where none does. */
  readonly beatenBy: Found | null;
}

const TENTHS_OF_DEGREE = 1800 / Math.PI;
/** What is not known is no better than the worst. */
const WORST = Number.MAX_SAFE_INTEGER;

/** How many are scored, or asked whether they are beaten, before a page may do something else. */
const AT_A_TIME = 256;

/** @returns stops now and then; the last value has the best first */
export function* rankLayouts(
  search: Search,
  { found }: Pick<SearchResult, 'found'>,
  order: Order,
): Generator<undefined, readonly Ranked[]> {
  const scored: { readonly one: Found; readonly score: readonly number[] }[] = [];
  for (const one of found) {
    scored.push({ one, score: order.criteria.map((name) => scoreOf(search, one, name, order)) });
    if (scored.length % AT_A_TIME === 0) yield;
  }
  const nowTop = search.job.stringer.top;
  const byTop = (one: Found) => (one.top === nowTop ? -1 : search.wishes.tops.indexOf(one.top));
  scored.sort((a, b) => {
    for (let i = 0; i < a.score.length; i += 1) {
      const by = (a.score[i] as number) - (b.score[i] as number);
      if (by !== 0) return by;
    }
    return byTop(a.one) - byTop(b.one) || a.one.risers - b.one.risers || a.one.steps - b.one.steps;
  });
  // What beats another stands before it, so only those that nothing has beaten yet have to be asked.
  const unbeaten: typeof scored = [];
  const ranked: Ranked[] = [];
  for (const each of scored) {
    const better = unbeaten.find((other) => beats(other.score, each.score));
    if (better === undefined) unbeaten.push(each);
    ranked.push({ found: each.one, beatenBy: better?.one ?? null });
    if (ranked.length % AT_A_TIME === 0) yield;
  }
  return ranked;
}

/** @returns less is better: whole steps of what a tape shows */
export function scoreOf(search: Search, found: Found, criterion: Criterion, order: Order): number {
  const { quick } = found;
  const grid = toMm(RUN_GRID[search.job.units]);
  const least = (mm: number) => Math.round(mm / grid);
  const most = (mm: number | null) => (mm === null ? WORST : -Math.round(mm / grid));
  switch (criterion) {
    case 'cautions':
      return found.cautions;
    case 'stride':
      return least(Math.abs(2 * quick.unitRise + quick.run - order.stride));
    case 'unitRise':
      return least(Math.abs(quick.unitRise - order.unitRise));
    case 'headroom':
      return most(quick.headroom);
    case 'totalRun':
      return least(quick.headerX);
    case 'board':
      return least(found.stockLength);
    case 'pitch':
      return Math.round(Math.atan2(quick.unitRise, quick.run) * TENTHS_OF_DEGREE);
    case 'throat':
      return most(quick.throat);
    case 'headerContact':
      return most(quick.contact);
    case 'opening': {
      const asked = headroomAsked(search);
      const needed = asked === null ? null : openingFor(quick, toMm(asked));
      return needed === null ? WORST : least(needed);
    }
  }
}

function beats(one: readonly number[], other: readonly number[]): boolean {
  let isBetter = false;
  for (let i = 0; i < one.length; i += 1) {
    const by = (one[i] as number) - (other[i] as number);
    if (by > 0) return false;
    if (by < 0) isBetter = true;
  }
  return isBetter;
}
