/**
 * Drafts in IndexedDB, with strict commits: a job must outlive a browser that is killed the
 * moment after "kept" was said, and local storage does not. The records are described in
 * `draftRecords`.
 *
 * Before it writes, a save looks whether the heads are those that this window read or wrote
 * last. If not, another window has been at work, and nothing is written over it.
 */
import type { JobText } from '../core/job/jobText';
import type { Draft, DraftKeeper, KeptDraft, LoadedDraft } from '../state/draft';
import {
  type Connection,
  createConnection,
  type DraftDatabase,
  readHeads,
  readTexts,
  writeStrictly,
} from './draftDatabase';
import {
  type HeadValues,
  headTexts,
  type Known,
  knownFrom,
  NOTHING_KNOWN,
  planWrite,
  sameHeads,
  type WritePlan,
} from './draftPlan';
import { type Head, type ReadDraft, type ReadJob, readDraft, readHead, refsOf, type Slot } from './draftRecords';
import { answerWithin, mayBeDeadConnection, OtherDraftError, troubleOf } from './draftTrouble';

export interface DraftOptions {
  /** The job that a stored value is, or null: the document format decides. */
  readonly readJob: (value: unknown) => JobText | null;
  /** How long storage may stay silent. */
  readonly patienceMs?: number;
}

interface Memory {
  known: Known;
  /** A save whose end was not seen: it may have been committed all the same. */
  attempted: Known | null;
  mayReplace: boolean;
  askedToPersist: boolean;
}

export function createDrafts({ readJob, patienceMs = 5000 }: DraftOptions): DraftKeeper {
  const connection = createConnection();
  const memory: Memory = { known: NOTHING_KNOWN, attempted: null, mayReplace: false, askedToPersist: false };
  let last: Promise<unknown> = Promise.resolve();

  /** One at a time: each save builds on what the one before has written. */
  function inTurn<T>(work: () => Promise<T>): Promise<T> {
    const result = last.then(work);
    last = result;
    return result;
  }

  return {
    load: () => inTurn(() => load(connection, memory, readJob, patienceMs)),
    save: (draft) => inTurn(() => save(connection, memory, draft, patienceMs)),
    takeOver() {
      memory.mayReplace = true;
    },
  };
}

async function load(
  connection: Connection,
  memory: Memory,
  readJob: ReadJob,
  patienceMs: number,
): Promise<LoadedDraft> {
  try {
    const stored = await withDatabase(connection, patienceMs, readStored);
    return newestReadable(stored, memory, readJob);
  } catch (error) {
    return { kind: 'damaged', reason: troubleOf(error) };
  }
}

async function save(connection: Connection, memory: Memory, draft: Draft, patienceMs: number): Promise<KeptDraft> {
  try {
    const plan = await withDatabase(connection, patienceMs, (database, isGivenUp) =>
      // A save that wakes up late must not put its older job over a newer one.
      writeStrictly(database, (heads, ids) => (isGivenUp() ? null : decide(memory, draft, heads, ids))),
    );
    if (plan === null) throw new OtherDraftError();
    memory.known = plan.after;
    memory.mayReplace = false;
    askToPersist(memory);
    return { ok: true };
  } catch (error) {
    return { ok: false, reason: troubleOf(error) };
  }
}

async function withDatabase<T>(
  connection: Connection,
  patienceMs: number,
  work: (database: DraftDatabase, isGivenUp: () => boolean) => Promise<T>,
): Promise<T> {
  const once = async (): Promise<T> => {
    let givenUp = false;
    const begin = (database: DraftDatabase): Promise<T> => work(database, () => givenUp);
    try {
      return await answerWithin(patienceMs, connection.get().then(begin));
    } catch (error) {
      givenUp = true;
      connection.drop();
      throw error;
    }
  };
  try {
    return await once();
  } catch (error) {
    if (!mayBeDeadConnection(error)) throw error;
    return once();
  }
}

function decide(memory: Memory, draft: Draft, heads: HeadValues, ids: readonly number[]): WritePlan | null {
  const base = baseFor(memory, heads);
  if (base === null) return null;
  const plan = planWrite(base, heads, ids, draft);
  memory.known = base;
  memory.attempted = plan.after;
  return plan;
}

function baseFor({ known, attempted, mayReplace }: Memory, heads: HeadValues): Known | null {
  const texts = headTexts(heads);
  if (attempted !== null && sameHeads(attempted, texts)) return attempted;
  if (sameHeads(known, texts)) return known;
  return mayReplace ? knownFrom(heads) : null;
}

interface Stored {
  readonly heads: HeadValues;
  readonly texts: ReadonlyMap<number, unknown>;
}

async function readStored(database: DraftDatabase): Promise<Stored> {
  const heads = await readHeads(database);
  const refs = heads.map(readHead).flatMap((head) => (head === null ? [] : refsOf(head)));
  return { heads, texts: await readTexts(database, new Set(refs.map(([id]) => id))) };
}

function newestReadable({ heads, texts }: Stored, memory: Memory, readJob: ReadJob): LoadedDraft {
  const known = knownFrom(heads);
  memory.known = known;
  memory.attempted = null;
  if (heads[0] === undefined && heads[1] === undefined) return { kind: 'none' };
  for (const { head, slot } of newestFirst(heads)) {
    const read = readDraft(head, texts, readJob);
    if (read === null) continue;
    memory.known = { ...known, newest: slot, refs: read.refs };
    return { kind: 'found', draft: read.draft, loss: lossOf(read, slot, heads, known) };
  }
  return { kind: 'damaged', reason: 'unreadable' };
}

function newestFirst(heads: HeadValues): readonly { readonly head: Head; readonly slot: Slot }[] {
  const slots: readonly Slot[] = [0, 1];
  return slots
    .flatMap((slot) => {
      const head = readHead(heads[slot]);
      return head === null ? [] : [{ head, slot }];
    })
    .sort((one, other) => other.head.generation - one.head.generation);
}

/** A head that is there and cannot be read may have been the newer one: then it is said. */
function lossOf(read: ReadDraft, slot: Slot, heads: HeadValues, known: Known): 'older-draft' | 'undo-steps' | null {
  const other = heads[slot === 0 ? 1 : 0];
  const otherUnreadable = other !== undefined && readHead(other) === null;
  if (slot !== known.newest || otherUnreadable) return 'older-draft';
  return read.stepsLost ? 'undo-steps' : null;
}

/** Without this a browser short of space may clear the site. Many answer no; nothing hangs on it. */
function askToPersist(memory: Memory): void {
  if (memory.askedToPersist) return;
  memory.askedToPersist = true;
  try {
    void globalThis.navigator?.storage?.persist?.().catch(() => undefined);
  } catch {
    // Some browsers refuse even the question.
  }
}
