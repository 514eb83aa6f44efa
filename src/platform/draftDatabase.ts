/**
 * The connection to the database and the two ways through it. A connection can die while the
 * page lives: the browser's storage process crashes, or the user clears the site's data. A dead
 * handle fails for ever, so it is dropped after any trouble and opened anew.
 */
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { HeadValues, WritePlan } from './draftPlan';
import type { HeadRecord } from './draftRecords';

const NAME = 'pitchboard';
const VERSION = 1;

interface Schema extends DBSchema {
  jobs: { key: number; value: string };
  heads: { key: number; value: HeadRecord };
}

export type DraftDatabase = IDBPDatabase<Schema>;

export interface Connection {
  get(): Promise<DraftDatabase>;
  drop(): void;
}

export function createConnection(): Connection {
  let opening: Promise<DraftDatabase> | null = null;

  function drop(): void {
    // It may still be opening: whenever it arrives, nobody waits for it any more.
    void opening?.then((database) => database.close()).catch(() => undefined);
    opening = null;
  }

  /** `async`, so that a browser without IndexedDB rejects instead of throwing. */
  async function open(): Promise<DraftDatabase> {
    return openDB<Schema>(NAME, VERSION, {
      upgrade(database) {
        database.createObjectStore('jobs');
        database.createObjectStore('heads');
      },
      // Another window waits to bring a newer version in; holding on would block it.
      blocking: drop,
      terminated: drop,
    });
  }

  return {
    get() {
      opening ??= open();
      return opening;
    },
    drop,
  };
}

export async function readHeads(database: DraftDatabase): Promise<HeadValues> {
  const transaction = database.transaction('heads');
  void quiet(transaction.done);
  return Promise.all([quiet(transaction.store.get(0)), quiet(transaction.store.get(1))]);
}

/** All in one transaction; where that fails, one by one, so that a single bad record costs only itself. */
export async function readTexts(
  database: DraftDatabase,
  ids: ReadonlySet<number>,
): Promise<ReadonlyMap<number, unknown>> {
  try {
    return await readTextsAtOnce(database, ids);
  } catch {
    return readTextsOneByOne(database, ids);
  }
}

async function readTextsAtOnce(database: DraftDatabase, ids: ReadonlySet<number>): Promise<Map<number, unknown>> {
  const transaction = database.transaction('jobs');
  void quiet(transaction.done);
  const entries = [...ids].map((id) => quiet(transaction.store.get(id).then((text) => [id, text] as const)));
  return new Map(await Promise.all(entries));
}

async function readTextsOneByOne(database: DraftDatabase, ids: ReadonlySet<number>): Promise<Map<number, unknown>> {
  const texts = new Map<number, unknown>();
  let trouble: unknown;
  for (const id of ids) {
    try {
      const only = await readTextsAtOnce(database, new Set([id]));
      texts.set(id, only.get(id));
    } catch (error) {
      trouble = error;
    }
  }
  // Nothing at all: it is the connection and not the records.
  if (texts.size === 0 && trouble !== undefined) throw trouble;
  return texts;
}

/**
 * Reads and writes in one strict transaction: `complete` then means that the disk has it, and
 * no other window can write between the look and the write.
 * @param decide what to write; null to write nothing
 */
export async function writeStrictly(
  database: DraftDatabase,
  decide: (heads: HeadValues, ids: readonly number[]) => WritePlan | null,
): Promise<WritePlan | null> {
  const transaction = database.transaction(['jobs', 'heads'], 'readwrite', { durability: 'strict' });
  const done = quiet(transaction.done);
  try {
    const jobs = transaction.objectStore('jobs');
    const heads = transaction.objectStore('heads');
    const reads = [quiet(heads.get(0)), quiet(heads.get(1))] as const;
    const ids = await jobs.getAllKeys();
    const plan = decide(await Promise.all(reads), ids);
    // The order holds even where a browser commits half of it: jobs, then the head, then clearing up.
    const requests: Promise<unknown>[] = [];
    for (const [id, text] of plan?.puts ?? []) requests.push(quiet(jobs.put(text, id)));
    if (plan !== null) requests.push(quiet(heads.put(plan.head, plan.slot)));
    for (const id of plan?.deletes ?? []) requests.push(quiet(jobs.delete(id)));
    await Promise.all([...requests, done]);
    return plan;
  } catch (error) {
    const cause = transaction.error ?? error;
    abort(transaction);
    throw cause;
  }
}

function abort(transaction: { abort(): void }): void {
  try {
    transaction.abort();
  } catch {
    // It is over already.
  }
}

/** Several requests fail together when a transaction ends early; one of them is listened to. */
function quiet<T>(promise: Promise<T>): Promise<T> {
  promise.catch(() => undefined);
  return promise;
}
