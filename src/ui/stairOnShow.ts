/** The stair that the page shows, laid out once for all who look at it. */
import { createContext, useContext } from 'react';
import type { LocalReader } from '../core/codes/inForce';
import type { RulePack } from '../core/codes/rules';
import type { JobText } from '../core/job/jobText';
import { planUnjudged, type StairPlan } from '../core/plan/planUnjudged';
import type { Result } from '../core/result';
import type { UnitSystem } from '../core/units/length';
import { BOOK, DEFAULT_PACK, findPack } from '../packs/ruleBook';
import type { Speaker } from '../text/say';

/** On screen an answer that the tape's own doubt could turn is said to be too close to call. */
export const TAPE_DOUBT = 'usual';

export interface StairOnShow {
  readonly job: JobText;
  readonly index: number;
  readonly plan: Result<StairPlan>;
  readonly units: UnitSystem;
  readonly say: Speaker;
}

/** What stays the same while somebody types: whoever needs no more of the stair is not drawn anew at every key. */
export type StairWords = Pick<StairOnShow, 'say' | 'units' | 'index'>;

export const WordsContext = createContext<StairWords | null>(null);

export function useWords(): StairWords {
  const words = useContext(WordsContext);
  if (words === null) throw new Error('A part of the page was used without a stair');
  return words;
}

/** As it is at this very key: for the drawing, the keys of Choose and the search. */
export const StairNowContext = createContext<StairOnShow | null>(null);

export function useStairNow(): StairOnShow {
  const stair = useContext(StairNowContext);
  if (stair === null) throw new Error('A part of the page was used without a stair');
  return stair;
}

/** The same in the frames after it, when the drawing has been painted. */
export const StairContext = createContext<StairOnShow | null>(null);

export function useStair(): StairOnShow {
  const stair = useContext(StairContext);
  if (stair === null) throw new Error('A part of the page was used without a stair');
  return stair;
}

/** Few jobs have local rules: who reads them comes with the first that does, or with the place to type them. */
let locals: LocalReader | null = null;

export function bringLocals(reader: LocalReader): void {
  locals = reader;
}

/** True for a job that cannot be planned before the reader of local rules has come. */
export function waitsForLocals(job: JobText): boolean {
  return locals === null && (job.rules?.local ?? []).length > 0;
}

/**
 * A keystroke is planned before it is taken and again when it is shown: the second time is free.
 * A plan counts for the pack that it was made with, and the reader of local rules: either may have come only since.
 */
const plans = new WeakMap<JobText, Map<number, Planned>>();

interface Planned {
  readonly pack: RulePack | undefined;
  readonly locals: LocalReader | null;
  readonly plan: Result<StairPlan>;
}

export function planOf(job: JobText, index: number, pack = packOf(job)): Result<StairPlan> {
  const known = plans.get(job) ?? new Map<number, Planned>();
  plans.set(job, known);
  const before = known.get(index);
  const isStill = before !== undefined && before.pack === pack && before.locals === locals;
  const planned = isStill ? before : { pack, locals, plan: planUnjudged(job, index, { ...BOOK, locals }) };
  known.set(index, planned);
  return planned.plan;
}

function packOf(job: JobText): RulePack | undefined {
  return findPack(job.rules?.pack ?? DEFAULT_PACK);
}

export function unitsOf(job: JobText): UnitSystem {
  return job.units ?? 'imperial';
}
