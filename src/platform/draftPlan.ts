/**
 * Decides what one save writes. Pure: the database is read before and written after.
 */
import type { JobText } from '../core/job/jobText';
import type { Draft } from '../state/draft';
import {
  checksumOf,
  type Head,
  type HeadRecord,
  type JobRef,
  readHead,
  refsOf,
  type Slot,
  writeHead,
} from './draftRecords';

export type HeadValues = readonly [unknown, unknown];

/** What this window believes the database to hold. */
export interface Known {
  /** The heads as texts; null for one that is missing or is no head. */
  readonly heads: readonly [string | null, string | null];
  /** The slot that must survive the next save; null while neither head can be read. */
  readonly newest: Slot | null;
  readonly generation: number;
  readonly refs: ReadonlyMap<JobText, JobRef>;
}

export interface WritePlan {
  readonly puts: readonly (readonly [id: number, text: string])[];
  readonly slot: Slot;
  readonly head: HeadRecord;
  /** Jobs that neither head needs any more, and what an interrupted save left behind. */
  readonly deletes: readonly number[];
  /** What will be true once it is committed. */
  readonly after: Known;
}

export const NOTHING_KNOWN: Known = { heads: [null, null], newest: null, generation: 0, refs: new Map() };

export function headTexts(values: HeadValues): Known['heads'] {
  return [headText(values[0]), headText(values[1])];
}

function headText(value: unknown): string | null {
  const text: unknown = typeof value === 'object' && value !== null && 'text' in value ? value.text : null;
  return typeof text === 'string' ? text : null;
}

export function sameHeads(known: Known, heads: Known['heads']): boolean {
  return known.heads[0] === heads[0] && known.heads[1] === heads[1];
}

/** Both heads as they are, the newer readable one to be kept, and none of the jobs known. */
export function knownFrom(values: HeadValues): Known {
  const generations = values.map((value) => readHead(value)?.generation ?? -1) as [number, number];
  const generation = Math.max(...generations);
  const newest = generation < 0 ? null : generations[0] === generation ? 0 : 1;
  return { heads: headTexts(values), newest, generation: Math.max(0, generation), refs: new Map() };
}

/**
 * @param base what the database holds
 * @param ids the numbers of all jobs in it
 */
export function planWrite(base: Known, values: HeadValues, ids: readonly number[], draft: Draft): WritePlan {
  const { puts, refs } = numberJobs(base, ids, draft);
  const slot: Slot = base.newest === 0 ? 1 : 0;
  const generation = base.generation + 1;
  const head = headFor(draft, refs, generation);
  const record = writeHead(head);
  const spared = readHead(values[slot === 0 ? 1 : 0]);
  const needed = new Set([...refsOf(head), ...(spared === null ? [] : refsOf(spared))].map(([id]) => id));
  const heads: Known['heads'] = slot === 0 ? [record.text, base.heads[1]] : [base.heads[0], record.text];
  const deletes = ids.filter((id) => !needed.has(id));
  return { puts, slot, head: record, deletes, after: { heads, newest: slot, generation, refs } };
}

interface NumberedJobs {
  readonly puts: readonly (readonly [number, string])[];
  readonly refs: ReadonlyMap<JobText, JobRef>;
}

/** A new number is above all that are there, so that no record is ever written over. */
function numberJobs(base: Known, ids: readonly number[], { history, file }: Draft): NumberedJobs {
  const puts: [number, string][] = [];
  const refs = new Map<JobText, JobRef>();
  let next = ids.reduce((highest, id) => Math.max(highest, id), 0) + 1;
  const saved = file.savedJob === null ? [] : [file.savedJob];
  for (const job of [...history.past, history.present, ...history.future, ...saved]) {
    if (refs.has(job)) continue;
    const known = base.refs.get(job);
    if (known !== undefined) {
      refs.set(job, known);
      continue;
    }
    const text = JSON.stringify(job);
    refs.set(job, [next, checksumOf(text)]);
    puts.push([next, text]);
    next += 1;
  }
  return { puts, refs };
}

function headFor(draft: Draft, refs: ReadonlyMap<JobText, JobRef>, generation: number): Head {
  const { at, history, file, view } = draft;
  const refFor = (job: JobText): JobRef => {
    const ref = refs.get(job);
    if (ref === undefined) throw new Error('A job of the draft was given no number');
    return ref;
  };
  return {
    format: 1,
    generation,
    at,
    past: history.past.map(refFor),
    present: refFor(history.present),
    future: history.future.map(refFor),
    saved: file.savedJob === null ? null : refFor(file.savedJob),
    fileName: file.name,
    view,
  };
}
