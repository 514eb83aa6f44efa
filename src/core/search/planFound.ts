/** What is found, planned: what is shown of a layout is what one gets by taking it. */
import type { KeyChange } from '../choose/changeStair';
import { changeStair } from '../choose/changeStair';
import { type Figures, figuresOf } from '../choose/figures';
import type { Finding } from '../codes/findings';
import type { JobText } from '../job/jobText';
import { readStair } from '../job/readStair';
import { planStair, type RuleBook } from '../plan/planStair';
import { type Exact, toMm } from '../units/exact';
import { type Candidate, changesFor } from './candidate';
import { openingFor } from './quick';
import type { Found } from './searchLayouts';
import type { Asked } from './tryWay';
import { headroomAsked, type Search } from './wishes';

/** A found one, planned as taking it would plan it. */
export interface Planned {
  readonly keys: readonly KeyChange[];
  /** The opening is for the headroom that the search asks, the board one of those that can be bought. */
  readonly figures: Figures;
  /** What is hard or unwise to build, and what the tape's doubt could turn. */
  readonly cautions: readonly Finding[];
}

/** @returns null where it does not come out of the plan as it was found: then it is not shown */
export function planFound(
  job: JobText,
  index: number,
  book: RuleBook,
  search: Search,
  found: Found,
  tapeDoubt: Exact | 'usual' | null = null,
): Planned | null {
  const keys = changesFor(job, index, search.job, found);
  const plan = planStair(changeStair(job, index, keys), index, book, tapeDoubt);
  if (!plan.ok || plan.value.findings.some(({ kind, status }) => kind === 'rule' && status === 'breaks')) return null;
  const cautions = plan.value.findings.filter(
    ({ kind, status }) => (kind === 'build' && status === 'breaks') || (kind !== 'taste' && status === 'close'),
  );
  const asked = headroomAsked(search);
  const openingNeeded = asked === null ? null : openingFor(found.quick, toMm(asked));
  return { keys, figures: { ...figuresOf(plan.value), openingNeeded, stockLength: found.stockLength }, cautions };
}

/**
 * What taking a layout writes into a job that may have been changed since it was found: every key that says something
 * else by now, so that one gets the layout that was shown.
 * @returns null where it is no longer that stair, is counted in other units, or does not read
 */
export function changesNow(
  present: JobText,
  index: number,
  { job, index: askedIndex, search }: Pick<Asked, 'job' | 'index' | 'search'>,
  candidate: Candidate,
): readonly KeyChange[] | null {
  if (index !== askedIndex || present.stairs[index]?.id !== job.stairs[index]?.id) return null;
  const read = readStair(present, index);
  if (!read.ok || read.value.units !== search.job.units) return null;
  return changesFor(present, index, read.value, candidate);
}
