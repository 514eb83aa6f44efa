import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { createDrafts } from '../../../src/platform/drafts';
import type { Draft, DraftKeeper, KeptDraft, LoadedDraft } from '../../../src/state/draft';
import { draftOf, jobNamed } from '../state/sampleJobs';
import { type Fault, type Faults, injectFaults } from './faults';
import { jobNumbers } from './rawDatabase';
import { readSampleJob } from './readSampleJob';

const NAMES = ['QuotaExceededError', 'UnknownError', 'InvalidStateError', 'AbortError', 'DataError'] as const;

const FAULTS: readonly Fault[] = [
  ...NAMES.map((name) => ({ kind: 'throws', name }) as const),
  ...NAMES.map((name) => ({ kind: 'fails', name }) as const),
  { kind: 'silent' },
  { kind: 'dies' },
];

const jobs = ['0', '1', '2', '3', '4'].map(jobNamed);
const [old, first, second, third, fourth] = jobs as [never, never, never, never, never];

/** Each one has the job and all steps before it, so that a mixed one would show. */
const drafts: readonly Draft[] = [
  draftOf(old),
  draftOf(first, [old]),
  draftOf(second, [old, first]),
  draftOf(third, [old, first, second]),
  draftOf(fourth, [old, first, second, third]),
];

let faults: Faults | null = null;

function stopFaults(): void {
  faults?.remove();
  faults = null;
}

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
});

afterEach(() => {
  stopFaults();
  patience = LONG;
});

/** Only silence has to be waited out; elsewhere a busy machine must not look like silence. */
const LONG = 5000;
const SHORT = 120;
let patience = LONG;

const open = (patienceMs = patience): DraftKeeper => createDrafts({ readJob: readSampleJob, patienceMs });

interface Visit {
  readonly loaded: LoadedDraft;
  readonly kept: readonly KeptDraft[];
}

/** Loads, then saves drafts 1, 2 and 3 in turn. Rejects only if the code under test does. */
async function visit(): Promise<Visit> {
  const keeper = open();
  const loaded = await keeper.load();
  const kept: KeptDraft[] = [];
  for (const draft of drafts.slice(1, 4)) kept.push(await keeper.save(draft));
  return { loaded, kept };
}

/** How many calls a visit without faults makes. */
async function callsOfVisit(): Promise<number> {
  globalThis.indexedDB = new IDBFactory();
  await open().save(drafts[0] as Draft);
  faults = injectFaults({ kind: 'silent' }, () => false);
  await visit();
  const count = faults.count();
  stopFaults();
  return count;
}

/** The index of the draft that is there, which must be one of them from end to end. */
async function draftThere(): Promise<number> {
  const loaded = await open(LONG).load();
  if (loaded.kind !== 'found') throw new Error(`No draft: ${JSON.stringify(loaded)}`);
  expect(loaded.loss).toBeNull();
  const index = drafts.findIndex(({ at }) => at === loaded.draft.at);
  expect(loaded.draft).toEqual(drafts[index]);
  return index;
}

describe.each(FAULTS)('$kind $name', (fault) => {
  beforeEach(() => {
    patience = fault.kind === 'silent' ? SHORT : LONG;
  });

  test('at the k-th call, for every k', async () => {
    const calls = await callsOfVisit();
    expect(calls).toBeGreaterThan(30);
    for (let k = 1; k <= calls; k += 1) {
      globalThis.indexedDB = new IDBFactory();
      await open().save(drafts[0] as Draft);
      faults = injectFaults(fault, (call) => call === k);
      const { loaded, kept } = await visit();
      stopFaults();
      const there = await draftThere();
      const acknowledged = kept.findLastIndex(({ ok }) => ok) + 1;
      expect(there, `call ${k}`).toBeGreaterThanOrEqual(acknowledged);
      // One fault costs one save at most; a draft that could not be read costs all, and stays.
      if (loaded.kind === 'found') expect(kept.filter(({ ok }) => !ok).length, `call ${k}`).toBeLessThanOrEqual(1);
      else expect(there, `call ${k}`).toBe(0);
    }
  });

  test('from the k-th call on, and storage then works again', async () => {
    const calls = await callsOfVisit();
    for (let k = 1; k <= calls; k += 5) {
      globalThis.indexedDB = new IDBFactory();
      await open().save(drafts[0] as Draft);
      const keeper = open();
      await keeper.load();
      faults = injectFaults(fault, (call) => call >= k);
      const kept = [await keeper.save(drafts[1] as Draft), await keeper.save(drafts[2] as Draft)];
      stopFaults();
      expect(await draftThere(), `call ${k}`).toBeGreaterThanOrEqual(kept.findLastIndex(({ ok }) => ok) + 1);
      expect(await keeper.save(drafts[4] as Draft), `call ${k}`).toEqual({ ok: true });
      expect(await draftThere(), `call ${k}`).toBe(4);
    }
  });
});

describe('a connection that died', () => {
  test.each(['InvalidStateError', 'UnknownError'])('with %s is opened anew within the same save', async (name) => {
    const keeper = open();
    await keeper.save(drafts[0] as Draft);
    faults = injectFaults({ kind: 'throws', name }, (call) => call === 1);
    expect(await keeper.save(drafts[1] as Draft)).toEqual({ ok: true });
  });
});

describe('the reason is said', () => {
  test.each([
    ['QuotaExceededError', 'quota'],
    ['UnknownError', 'unavailable'],
    ['InvalidStateError', 'unavailable'],
    ['SecurityError', 'unavailable'],
    ['DataError', 'unknown'],
  ])('%s is %s', async (name, reason) => {
    for (const kind of ['throws', 'fails'] as const) {
      const keeper = open();
      faults = injectFaults({ kind, name }, () => true);
      expect(await keeper.save(drafts[0] as Draft)).toEqual({ ok: false, reason });
      expect(await keeper.load()).toEqual({ kind: 'damaged', reason });
      stopFaults();
    }
  });

  test('silence is unavailable', async () => {
    const keeper = open(SHORT);
    faults = injectFaults({ kind: 'silent' }, () => true);
    expect(await keeper.save(drafts[0] as Draft)).toEqual({ ok: false, reason: 'unavailable' });
  });
});

describe('nothing is kept before the end of the transaction', () => {
  /** Runs in the moment in which a record has been put and the transaction is still open. */
  function afterPut(store: 'jobs' | 'heads', run: (transaction: never) => void): void {
    const real = IDBObjectStore.prototype.put;
    IDBObjectStore.prototype.put = function (...args) {
      const request = real.apply(this, args);
      if (this.name === store) request.onsuccess = () => run(this.transaction as never);
      return request;
    };
    faults = {
      count: () => 0,
      remove: () => {
        IDBObjectStore.prototype.put = real;
      },
    };
  }

  test.each(['jobs', 'heads'] as const)('the disk is full after %s were put', async (store) => {
    const keeper = open();
    for (const draft of drafts.slice(0, 2)) await keeper.save(draft);
    afterPut(store, (transaction: { _abort(name: string): void }) => transaction._abort('QuotaExceededError'));
    expect(await keeper.save(drafts[2] as Draft)).toEqual({ ok: false, reason: 'quota' });
    stopFaults();
    expect(await draftThere()).toBe(1);
  });

  test('the end is never heard', async () => {
    const keeper = open(SHORT);
    afterPut('heads', (transaction: { dispatchEvent: unknown }) => {
      transaction.dispatchEvent = () => true;
    });
    expect(await keeper.save(drafts[1] as Draft)).toEqual({ ok: false, reason: 'unavailable' });
    stopFaults();
    expect(await keeper.save(drafts[2] as Draft)).toEqual({ ok: true });
  });

  test('a put that is refused takes back those before it', async () => {
    await open().save(drafts[0] as Draft);
    const before = await jobNumbers();
    const real = IDBObjectStore.prototype.put;
    IDBObjectStore.prototype.put = function (...args) {
      if (this.name === 'heads') throw new DOMException('', 'DataError');
      return real.apply(this, args);
    };
    const keeper = open();
    await keeper.load();
    expect(await keeper.save(drafts[3] as Draft)).toEqual({ ok: false, reason: 'unknown' });
    IDBObjectStore.prototype.put = real;
    expect(await jobNumbers()).toEqual(before);
  });
});

test('a single record that cannot be read costs only itself', async () => {
  await open().save(drafts[3] as Draft);
  const real = IDBObjectStore.prototype.get;
  IDBObjectStore.prototype.get = function (key) {
    // The first step's record is number 1; the heads are 0 and 1.
    return this.name === 'jobs' && key === 1
      ? (this as unknown as { get(key: unknown): IDBRequest }).get({ unfit: true })
      : real.call(this, key);
  };
  try {
    const loaded = await open().load();
    expect(loaded).toMatchObject({ kind: 'found', loss: 'undo-steps' });
    expect(loaded.kind === 'found' && loaded.draft.history).toEqual({
      past: [first, second],
      present: third,
      future: [],
    });
  } finally {
    IDBObjectStore.prototype.get = real;
  }
});

test('a save that wakes up late does not put its older job over a newer one', async () => {
  const keeper = open(20);
  const real = IDBFactory.prototype.open;
  IDBFactory.prototype.open = function (...args) {
    IDBFactory.prototype.open = real;
    const request = real.apply(this, args);
    const listen = request.addEventListener.bind(request);
    request.addEventListener = (type: string, heard: (event: Event) => void) =>
      listen(type, type === 'success' ? (event) => setTimeout(() => heard(event), 60) : heard);
    return request;
  };
  expect(await keeper.save(drafts[1] as Draft)).toEqual({ ok: false, reason: 'unavailable' });
  expect(await keeper.save(drafts[2] as Draft)).toEqual({ ok: true });
  await new Promise((resolve) => setTimeout(resolve, 100));
  expect(await draftThere()).toBe(2);
});
