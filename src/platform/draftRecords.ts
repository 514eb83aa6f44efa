/**
 * What a draft looks like in the database. Each job is written once, as text under a number of
 * its own; a small head lists the numbers in order. Two heads take turns, so that the one before
 * the newest is always whole. A head names each job by number and checksum: a record that was
 * damaged, or that is not the one meant, is never taken for it.
 */
import type { JobText } from '../core/job/jobText';
import type { FoundDraft } from '../state/draft';

export type JobRef = readonly [id: number, checksum: number];
export type Slot = 0 | 1;
export type ReadJob = (value: unknown) => JobText | null;

export interface Head {
  readonly format: 1;
  readonly generation: number;
  readonly at: number;
  readonly past: readonly JobRef[];
  readonly present: JobRef;
  readonly future: readonly JobRef[];
  readonly saved: JobRef | null;
  readonly fileName: string | null;
  /** As it was written: what of it this version knows is for the store to say. */
  readonly view: unknown;
}

export interface HeadRecord {
  readonly text: string;
  readonly checksum: number;
}

/** FNV-1a, 32 bits, over UTF-16 units: finds accidents, not malice. */
export function checksumOf(text: string): number {
  let hash = 0x811c9dc5;
  for (let index = 0; index < text.length; index += 1) {
    hash = Math.imul(hash ^ text.charCodeAt(index), 0x01000193);
  }
  return hash >>> 0;
}

export function writeHead(head: Head): HeadRecord {
  const text = JSON.stringify(head);
  return { text, checksum: checksumOf(text) };
}

export function readHead(record: unknown): Head | null {
  if (!isRecord(record)) return null;
  const { text, checksum } = record;
  if (typeof text !== 'string' || checksum !== checksumOf(text)) return null;
  return headFrom(parse(text));
}

/** Every job that a head needs. */
export function refsOf(head: Head): readonly JobRef[] {
  const saved = head.saved === null ? [] : [head.saved];
  return [...head.past, head.present, ...head.future, ...saved];
}

export interface ReadDraft {
  readonly draft: FoundDraft;
  /** Which job is which record, so that none is written twice. */
  readonly refs: ReadonlyMap<JobText, JobRef>;
  readonly stepsLost: boolean;
}

/**
 * The present job must be whole. Undo and redo end at the first step that is not: what lies
 * beyond it could only be reached by jumping over a step.
 */
export function readDraft(head: Head, texts: ReadonlyMap<number, unknown>, readJob: ReadJob): ReadDraft | null {
  const refs = new Map<JobText, JobRef>();
  const known = new Map<number, JobText>();
  const find = (ref: JobRef): JobText | null => {
    const job = known.get(ref[0]) ?? readRecord(texts.get(ref[0]), ref[1], readJob);
    if (job === null) return null;
    known.set(ref[0], job);
    refs.set(job, ref);
    return job;
  };
  const present = find(head.present);
  if (present === null) return null;
  const past = wholeUntilGap([...head.past].reverse(), find).reverse();
  const future = wholeUntilGap(head.future, find);
  const savedJob = head.saved === null ? null : find(head.saved);
  const history = { past, present, future };
  const draft = { at: head.at, history, file: { name: head.fileName, savedJob }, view: head.view };
  const stepsLost = past.length + future.length < head.past.length + head.future.length;
  return { draft, refs, stepsLost };
}

function wholeUntilGap(refs: readonly JobRef[], find: (ref: JobRef) => JobText | null): JobText[] {
  const jobs: JobText[] = [];
  for (const ref of refs) {
    const job = find(ref);
    if (job === null) break;
    jobs.push(job);
  }
  return jobs;
}

function readRecord(text: unknown, checksum: number, readJob: ReadJob): JobText | null {
  if (typeof text !== 'string' || checksumOf(text) !== checksum) return null;
  try {
    return readJob(JSON.parse(text));
  } catch {
    return null;
  }
}

function parse(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}

function headFrom(value: unknown): Head | null {
  if (!isRecord(value)) return null;
  const { format, generation, at, past, present, future, saved, fileName, view } = value;
  if (format !== 1 || !isNumber(generation) || !isNumber(at)) return null;
  if (!isRefList(past) || !isRef(present) || !isRefList(future)) return null;
  if (saved !== null && !isRef(saved)) return null;
  if (fileName !== null && typeof fileName !== 'string') return null;
  return { format, generation, at, past, present, future, saved, fileName, view };
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function isNumber(value: unknown): value is number {
  return Number.isSafeInteger(value) && (value as number) >= 0;
}

function isRef(value: unknown): value is JobRef {
  return Array.isArray(value) && value.length === 2 && value.every(isNumber);
}

function isRefList(value: unknown): value is readonly JobRef[] {
  return Array.isArray(value) && value.every(isRef);
}
