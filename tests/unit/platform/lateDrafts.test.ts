import { expect, it } from 'vitest';
import { createLateDrafts } from '../../../src/platform/lateDrafts';
import type { Draft, DraftKeeper } from '../../../src/state/draft';
import { FIRST_VIEW } from '../../../src/state/view';

const DRAFT: Draft = {
  at: 1,
  history: { past: [], present: { format: 'pitchboard.job', version: 1, stairs: [] }, future: [] },
  file: { name: null, savedJob: null },
  view: FIRST_VIEW,
};

function keeperWithLog() {
  const log: string[] = [];
  const keeper: DraftKeeper = {
    load: async () => {
      log.push('load');
      return { kind: 'none' };
    },
    save: async () => {
      log.push('save');
      return { ok: true };
    },
    takeOver: () => void log.push('take over'),
  };
  return { log, keeper };
}

it('fetches its keeper once, and hands everything on in order', async () => {
  const { log, keeper } = keeperWithLog();
  let fetched = 0;
  const drafts = createLateDrafts(async () => {
    fetched += 1;
    return keeper;
  });
  const loaded = drafts.load();
  drafts.takeOver();
  const saved = drafts.save(DRAFT);
  expect(await loaded).toEqual({ kind: 'none' });
  expect(await saved).toEqual({ ok: true });
  expect(log).toEqual(['load', 'take over', 'save']);
  expect(fetched).toBe(1);
});

it('says so when its keeper cannot be fetched, and asks for it again', async () => {
  const { log, keeper } = keeperWithLog();
  let isThere = false;
  const drafts = createLateDrafts(() => (isThere ? Promise.resolve(keeper) : Promise.reject(new Error('no network'))));
  expect(await drafts.load()).toEqual({ kind: 'damaged', reason: 'unavailable' });
  drafts.takeOver();
  expect(await drafts.save(DRAFT)).toEqual({ ok: false, reason: 'unavailable' });
  isThere = true;
  expect(await drafts.save(DRAFT)).toEqual({ ok: true });
  expect(log).toEqual(['save']);
});
