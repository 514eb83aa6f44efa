import 'fake-indexeddb/auto';
import { IDBDatabase, IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { JobText } from '../../../src/core/job/jobText';
import { checksumOf, type HeadRecord } from '../../../src/platform/draftRecords';
import { createDrafts } from '../../../src/platform/drafts';
import type { Draft, DraftKeeper, FoundDraft, LoadedDraft } from '../../../src/state/draft';
import { FIRST_VIEW } from '../../../src/state/view';
import { draftOf, jobNamed } from '../state/sampleJobs';
import { jobNumbers, rawStore, record, replaceRecord } from './rawDatabase';
import { readSampleJob } from './readSampleJob';

const [a, b, c, d] = [jobNamed('a'), jobNamed('b'), jobNamed('c'), jobNamed('d')];

const open = (): DraftKeeper => createDrafts({ readJob: readSampleJob, patienceMs: 2000 });

function found(loaded: LoadedDraft): FoundDraft {
  if (loaded.kind !== 'found') throw new Error(`No draft: ${JSON.stringify(loaded)}`);
  return loaded.draft;
}

async function keep(drafts: DraftKeeper, ...jobs: JobText[]): Promise<void> {
  for (const job of jobs) expect(await drafts.save(draftOf(job))).toEqual({ ok: true });
}

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
});

afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

test('there is none in a new browser', async () => {
  expect(await open().load()).toEqual({ kind: 'none' });
});

test('everything comes back as it was', async () => {
  const draft: Draft = {
    at: 1234,
    history: { past: [a, b], present: c, future: [d] },
    file: { name: 'boathouse.pitchboard.json', savedJob: b },
    view: { ...FIRST_VIEW, stairIndex: 1, theme: 'sun', terms: 'uk', walk: { list: 'marks', at: 4 } },
  };
  await open().save(draft);
  expect(await open().load()).toEqual({ kind: 'found', draft, loss: null });
});

test('a job that stands in two places is one object again', async () => {
  await open().save({ ...draftOf(a, [b]), file: { name: 'x', savedJob: b } });
  const draft = found(await open().load());
  expect(draft.file.savedJob).toBe(draft.history.past[0]);
});

test('every write is strict', async () => {
  const begun = vi.spyOn(IDBDatabase.prototype, 'transaction');
  await keep(open(), a, b);
  const writes = begun.mock.calls.filter(([, mode]) => mode === 'readwrite');
  expect(writes).toHaveLength(2);
  for (const [, , options] of writes) expect(options).toEqual({ durability: 'strict' });
});

describe('a write is small', () => {
  test('only a job that is new is written, and what no head needs is cleared away', async () => {
    const drafts = open();
    await drafts.save(draftOf(b, [a]));
    await drafts.save(draftOf(c, [a]));
    expect(await jobNumbers()).toEqual([1, 2, 3]);
    await drafts.save(draftOf(d, [a]));
    expect(await jobNumbers()).toEqual([1, 3, 4]);
  });

  test('a visit goes on with the records of the one before', async () => {
    await open().save(draftOf(b, [a]));
    const drafts = open();
    const { history } = found(await drafts.load());
    await drafts.save(draftOf(c, [...history.past, history.present]));
    expect(await jobNumbers()).toEqual([1, 2, 3]);
  });

  test('what an interrupted save left behind is cleared away', async () => {
    await keep(open(), a);
    await replaceRecord('jobs', 77, JSON.stringify(d));
    const drafts = open();
    await drafts.load();
    await drafts.save(draftOf(b));
    expect(await jobNumbers()).toEqual([1, 78]);
  });
});

describe('two heads take turns', () => {
  const damages: [string, (head: HeadRecord) => unknown][] = [
    ['a changed letter', ({ text, checksum }) => ({ text: text.replace('paper', 'baper'), checksum })],
    ['a text cut short', ({ text, checksum }) => ({ text: text.slice(0, -9), checksum })],
    ['no text', () => ({ checksum: 1 })],
    ['another kind of value', () => 'nonsense'],
    ['null', () => null],
    ['no JSON with a right checksum', () => ({ text: '{', checksum: checksumOf('{') })],
    ['another shape with a right checksum', () => ({ text: '{"format":1}', checksum: checksumOf('{"format":1}') })],
  ];

  test.each(damages)('%s in the newer head: the older draft comes back, and is not written over', async (_, damage) => {
    await keep(open(), a, b);
    await replaceRecord('heads', 1, damage((await record('heads', 1)) as HeadRecord));
    const drafts = open();
    const loaded = await drafts.load();
    expect([found(loaded).history.present, loaded]).toMatchObject([a, { loss: 'older-draft' }]);
    await keep(drafts, c);
    await replaceRecord('heads', 1, damage((await record('heads', 1)) as HeadRecord));
    expect(found(await open().load()).history.present).toEqual(a);
  });

  const jobDamages: [string, (text: string) => unknown][] = [
    ['a changed letter', (text) => text.replace('loft', 'lift')],
    ['another job', () => JSON.stringify(d)],
    ['another kind of value', () => 7],
  ];

  test.each(jobDamages)('%s in the newest job: the older draft comes back', async (_, damage) => {
    await keep(open(), a, b);
    await replaceRecord('jobs', 2, damage(JSON.stringify(b)));
    const drafts = open();
    const loaded = await drafts.load();
    expect([found(loaded).history.present, loaded]).toMatchObject([a, { loss: 'older-draft' }]);
    await keep(drafts, c);
    expect(found(await open().load()).history.present).toEqual(c);
  });

  test('a job that is missing', async () => {
    await keep(open(), a, b);
    await rawStore('jobs', (jobs) => jobs.delete(2));
    expect(found(await open().load()).history.present).toEqual(a);
  });

  test('a damaged step ends undo there and costs no more', async () => {
    await open().save(draftOf(d, [a, b, c]));
    await replaceRecord('jobs', 2, 'x');
    const loaded = await open().load();
    expect(loaded).toMatchObject({ loss: 'undo-steps', draft: { history: { past: [c], present: d } } });
  });

  test('a damaged step ends redo there', async () => {
    await open().save(draftOf(a, [], [b, c, d]));
    await rawStore('jobs', (jobs) => jobs.delete(3));
    expect(await open().load()).toMatchObject({ loss: 'undo-steps', draft: { history: { present: a, future: [b] } } });
  });

  test('both damaged is said, and the next save puts it right', async () => {
    await keep(open(), a, b);
    await replaceRecord('heads', 0, 'x');
    await replaceRecord('heads', 1, 'x');
    const drafts = open();
    expect(await drafts.load()).toEqual({ kind: 'damaged', reason: 'unreadable' });
    await keep(drafts, c, d);
    expect(await open().load()).toMatchObject({ kind: 'found', draft: { history: { present: d } }, loss: null });
  });

  test('a job that the document format refuses, or chokes on, is not one', async () => {
    await keep(open(), a);
    const choking = createDrafts({
      readJob: () => {
        throw new Error('choked');
      },
    });
    expect(await choking.load()).toEqual({ kind: 'damaged', reason: 'unreadable' });
    expect(await createDrafts({ readJob: () => null }).load()).toEqual({ kind: 'damaged', reason: 'unreadable' });
  });
});

describe('two windows', () => {
  test('a window that has not seen the newest draft does not write over it', async () => {
    const [one, other] = [open(), open()];
    await one.load();
    await other.load();
    await keep(one, a);
    expect(await other.save(draftOf(b))).toEqual({ ok: false, reason: 'other-draft' });
    await keep(one, c);
    expect(found(await open().load()).history.present).toEqual(c);
  });

  test('a draft that was never read is not written over', async () => {
    await keep(open(), a);
    expect(await open().save(draftOf(b))).toEqual({ ok: false, reason: 'other-draft' });
  });

  test('taking over is the user’s choice, and the other window then stands back', async () => {
    const [one, other] = [open(), open()];
    await keep(one, a);
    other.takeOver();
    await keep(other, b, c);
    expect(await one.save(draftOf(d))).toEqual({ ok: false, reason: 'other-draft' });
    expect(found(await open().load()).history).toEqual({ past: [], present: c, future: [] });
  });

  test('taking over counts once', async () => {
    const [one, other] = [open(), open()];
    await keep(one, a);
    other.takeOver();
    await keep(other, b);
    one.takeOver();
    await keep(one, c);
    expect(await other.save(draftOf(d))).toEqual({ ok: false, reason: 'other-draft' });
  });

  test('two windows that go on from the same draft never share a record', async () => {
    await open().save(draftOf(b, [a]));
    const [one, other] = [open(), open()];
    await one.load();
    const seen = found(await other.load());
    await keep(one, c);
    other.takeOver();
    await other.save(draftOf(d, [...seen.history.past, seen.history.present]));
    expect(found(await open().load()).history).toEqual({ past: [a, b], present: d, future: [] });
  });

  test('a newer version has been here: nothing is touched', async () => {
    await new Promise((resolve) => {
      const request = indexedDB.open('pitchboard', 2);
      request.onsuccess = () => resolve(request.result.close());
    });
    expect(await open().load()).toEqual({ kind: 'damaged', reason: 'newer-version' });
    expect(await open().save(draftOf(a))).toEqual({ ok: false, reason: 'newer-version' });
  });

  test('a newer version that waits is not blocked', async () => {
    await keep(open(), a);
    const version = await new Promise((resolve) => {
      const request = indexedDB.open('pitchboard', 2);
      request.onsuccess = () => resolve(request.result.version);
    });
    expect(version).toBe(2);
  });
});

describe('saves called together', () => {
  test('are written in order', async () => {
    const drafts = open();
    const results = await Promise.all([a, b, c, d].map((job) => drafts.save(draftOf(job))));
    expect(results).toEqual(Array(4).fill({ ok: true }));
    expect(found(await drafts.load()).history.present).toEqual(d);
  });
});

describe('the browser', () => {
  test('without IndexedDB', async () => {
    vi.stubGlobal('indexedDB', undefined);
    const drafts = open();
    expect((await drafts.load()).kind).toBe('damaged');
    expect((await drafts.save(draftOf(a))).ok).toBe(false);
  });

  test('is asked once to keep the site’s data, after the first save', async () => {
    const persist = vi.fn(() => Promise.reject(new Error('no')));
    vi.stubGlobal('navigator', { storage: { persist } });
    const drafts = open();
    await drafts.load();
    expect(persist).not.toHaveBeenCalled();
    await keep(drafts, a, b);
    expect(persist).toHaveBeenCalledTimes(1);
  });

  test.each([
    ['no navigator', undefined],
    ['no storage manager', {}],
    ['no persist', { storage: {} }],
    [
      'a persist that throws',
      {
        storage: {
          persist: () => {
            throw new Error('no');
          },
        },
      },
    ],
  ])('with %s saves all the same', async (_, navigator) => {
    vi.stubGlobal('navigator', navigator);
    await keep(open(), a);
  });
});
