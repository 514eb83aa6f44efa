/**
 * What a bound would have to become, and the proof of it: the changed limits are written into a job and a
 * wish, the candidate is taken in it, and the plan has to break no rule and to keep every wish.
 */

import type { KeyChange } from '../choose/changeStair';
import { applyAlternative } from '../choose/compareLayouts';
import type { JobText, LocalRuleText } from '../job/jobText';
import type { StairLayout } from '../layout/layoutStair';
import { planStair, type RuleBook } from '../plan/planStair';
import { type Exact, inch, times, toMm, whole } from '../units/exact';
import { exactText } from '../units/exactText';
import { stepsIn } from '../units/rounding';
import { type Bound, boundsOf } from './bounds';
import { changesFor, RUN_GRID } from './candidate';
import type { Conflict, Way } from './conflict';
import { askSearch, type Search, soldLengths, type Wishes } from './wishes';

export interface Becoming {
  readonly bound: Bound;
  /** In the unit of what is asked; null for what would have to be allowed. */
  readonly becomes: number | null;
}

/** A layout that is to be had once these have become what they say. */
export interface TriedWay {
  readonly changes: readonly Becoming[];
  readonly candidate: Way['candidate'];
  /** What taking it writes into the job. */
  readonly keys: readonly KeyChange[];
}

/** An opening, framed, and the layout that has its headroom with it. */
export interface TriedOpening {
  readonly opening: Exact;
  readonly candidate: Way['candidate'];
  readonly keys: readonly KeyChange[];
}

export interface Asked {
  readonly job: JobText;
  readonly index: number;
  readonly book: RuleBook;
  readonly search: Search;
}

/** How often a figure that the grid or a strict limit still refuses is moved on by one step more. */
const MORE_STEPS = 2;

/** @returns null where the layout does not come out although every bound is moved to where it stood */
export function tryWay(asked: Asked, { sifter }: Conflict, { candidate, broken }: Way): TriedWay | null {
  const { job, index, search } = asked;
  const keys = changesFor(job, index, search.job, candidate);
  const depthAt = sifter.depthPlace(candidate.depth);
  const layout = sifter.layout(candidate.top, candidate.risers, candidate.steps, depthAt);
  if (layout === null) return null;
  for (let more = 0; more <= MORE_STEPS; more += 1) {
    const changes = broken.map((at) => become(sifter.bounds[at] as Bound, layout, search, more));
    if (isToBeHad(asked, changes, keys)) return { changes, candidate, keys };
  }
  return null;
}

/** @returns the opening, framed on the grid, with which the candidate has its headroom; null where it was tried in vain */
export function tryOpening(asked: Asked, { opening }: Conflict): TriedOpening | null {
  if (opening === null) return null;
  const { job, index, search } = asked;
  const grid = search.job.units === 'metric' ? whole(1) : inch(1 / 8);
  const steps = stepsIn(opening.needed, toMm(grid), 'up');
  for (let more = 0; more <= MORE_STEPS; more += 1) {
    const framed = times(grid, steps + more);
    const value = exactText(framed, search.job.units);
    const keys = [
      ...changesFor(job, index, search.job, opening.candidate),
      { key: 'survey.openingFraming', value } as const,
    ];
    if (isToBeHad(asked, [], keys)) return { opening: framed, candidate: opening.candidate, keys };
  }
  return null;
}

/** The figure that the layout has, on the grid of its unit, on the side where the layout keeps it. */
function become(bound: Bound, layout: StairLayout, search: Search, more: number): Becoming {
  const reached = bound.reached(layout);
  if (bound.asked === null || reached === null) return { bound, becomes: null };
  const step = stepOf(bound, search);
  const isMost = reached >= bound.asked;
  if (bound.id === 'wish.stock') {
    return { bound, becomes: soldLengths(search.job.units).find((length) => length >= reached) ?? reached };
  }
  const steps = stepsIn(reached, step, isMost ? 'up' : 'down') + (isMost ? more : -more);
  return { bound, becomes: steps * step };
}

function stepOf({ limit }: Bound, { job }: Search): number {
  if (limit === null) return toMm(RUN_GRID[job.units]);
  if (limit.unit === 'in') return 1 / 16;
  return limit.unit === 'deg' ? 1 / 10 : 1;
}

function isToBeHad(asked: Asked, changes: readonly Becoming[], keys: readonly KeyChange[]): boolean {
  const relaxed = relax(asked, changes);
  const job = applyAlternative(relaxed.job, asked.index, { changes: keys });
  const plan = planStair(job, asked.index, asked.book);
  if (!plan.ok || plan.value.findings.some(({ kind, status }) => kind === 'rule' && status === 'breaks')) return false;
  const search = askSearch(job, asked.index, asked.book, relaxed.wishes);
  if (!search.ok) return false;
  return boundsOf(search.value, plan.value.layout).every((bound) => bound.holds(plan.value.layout));
}

/** The job and the wishes with the bounds moved: rules as local ones. */
export function relax(
  { job: before, index, search }: Pick<Asked, 'job' | 'index' | 'search'>,
  changes: readonly Becoming[],
): { job: JobText; wishes: Wishes } {
  let { wishes } = search;
  const local: LocalRuleText[] = [];
  const cleared: Cleared[] = [];
  for (const { bound, becomes } of changes) {
    if (bound.limit !== null) local.push({ field: bound.id, value: ruleText(bound, becomes) });
    else if (becomes === null) continue;
    else if (bound.obstacle !== null) cleared.push({ at: bound.obstacle, clearance: onGrid(search, becomes) });
    else if (bound.id === 'wish.run') wishes = { ...wishes, runAvailable: onGrid(search, becomes) };
    else if (bound.id === 'wish.headroom') wishes = { ...wishes, headroom: onGrid(search, becomes) };
    else wishes = { ...wishes, stockLengths: [...wishes.stockLengths, becomes] };
  }
  const job = cleared.length === 0 ? before : withClearances(before, index, cleared, search);
  if (local.length === 0) return { job, wishes };
  const kept = (job.rules?.local ?? []).filter(({ field }) => local.every((rule) => rule.field !== field));
  return { job: { ...job, rules: { ...job.rules, local: [...kept, ...local] } }, wishes };
}

interface Cleared {
  readonly at: number;
  readonly clearance: Exact;
}

/** What hangs overhead, each with a clearance of its own where it has to become another. */
function withClearances(job: JobText, index: number, cleared: readonly Cleared[], search: Search): JobText {
  const stairs = job.stairs.map((stair, i) => {
    if (i !== index) return stair;
    const obstacles = stair.survey.obstacles?.map((obstacle, at) => {
      const own = cleared.find((each) => each.at === at);
      return own === undefined ? obstacle : { ...obstacle, clearance: exactText(own.clearance, search.job.units) };
    });
    return { ...stair, survey: { ...stair.survey, obstacles } };
  });
  return { ...job, stairs };
}

/** A float of whole steps, exactly. */
function onGrid({ job }: Search, mm: number): Exact {
  const grid = RUN_GRID[job.units];
  return times(grid, Math.round(mm / toMm(grid)));
}

/** As a local rule reads it. */
export function ruleText({ limit }: Bound, becomes: number | null): string {
  if (becomes === null) return 'yes';
  const figure = String(Number(becomes.toFixed(6)));
  return limit?.unit === 'in' || limit?.unit === 'mm' || limit?.unit === 'deg' ? `${figure} ${limit.unit}` : figure;
}
