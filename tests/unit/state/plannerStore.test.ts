import { beforeEach, describe, expect, test, vi } from 'vitest';
import type { Clock, Draft, DraftKeeper, DraftTrouble, KeptDraft, LoadedDraft } from '../../../src/state/draft';
import { canRedo, canUndo, createPlanner, job, type Planner, saveStatus } from '../../../src/state/plannerStore';
import { draftOf, jobNamed, renamed } from './sampleJobs';

const first = jobNamed('first');

/** A keeper whose every save waits until the test answers it. */
class SlowKeeper implements DraftKeeper {
  readonly saves: { readonly draft: Draft; readonly answer: (kept: KeptDraft) => Promise<void> }[] = [];
  loaded: Promise<LoadedDraft> = Promise.resolve({ kind: 'none' });
  takenOver = false;

  load(): Promise<LoadedDraft> {
    return this.loaded;
  }

  save(draft: Draft): Promise<KeptDraft> {
    return new Promise((resolve) => {
      const answer = async (kept: KeptDraft): Promise<void> => {
        resolve(kept);
        await vi.advanceTimersByTimeAsync(0);
      };
      this.saves.push({ draft, answer });
    });
  }

  takeOver(): void {
    this.takenOver = true;
  }

  async succeed(): Promise<void> {
    await this.saves.at(-1)?.answer({ ok: true });
  }

  async fail(reason: DraftTrouble): Promise<void> {
    await this.saves.at(-1)?.answer({ ok: false, reason });
  }

  names(): (string | undefined)[] {
    return this.saves.map(({ draft }) => draft.history.present.name);
  }
}

const clock: Clock = {
  now: () => Date.now(),
  after(delayMs, run) {
    const timer = setTimeout(run, delayMs);
    return () => clearTimeout(timer);
  },
};

let drafts: SlowKeeper;
let planner: Planner;

async function begin(loaded: LoadedDraft = { kind: 'none' }): Promise<void> {
  drafts = new SlowKeeper();
  drafts.loaded = Promise.resolve(loaded);
  planner = createPlanner({ firstJob: first, drafts, clock });
  await planner.actions.start();
}

const state = () => planner.store.getState();
const rename = (name: string, gesture: string | null = null) => planner.actions.edit(renamed(name), gesture);

beforeEach(async () => {
  vi.useFakeTimers({ now: 50_000 });
  await begin();
});

describe('the job', () => {
  test('starts with the first job and nothing to undo', () => {
    expect(job(state())).toBe(first);
    expect([canUndo(state()), canRedo(state())]).toEqual([false, false]);
    expect(state().draft).toEqual({ status: 'none', at: null });
  });

  test('edit, undo, redo', () => {
    rename('second');
    expect([job(state()).name, canUndo(state()), canRedo(state())]).toEqual(['second', true, false]);
    planner.actions.undo();
    expect([job(state()), canUndo(state()), canRedo(state())]).toEqual([first, false, true]);
    planner.actions.redo();
    expect(job(state()).name).toBe('second');
  });

  test('a gesture is one step until it ends', () => {
    rename('s', 'name');
    rename('se', 'name');
    planner.actions.endGesture();
    rename('sec', 'name');
    planner.actions.undo();
    expect(job(state()).name).toBe('se');
    planner.actions.undo();
    expect(job(state())).toBe(first);
  });

  test('opening a file is one step, and the open job is one undo away', () => {
    rename('mine');
    planner.actions.replaceJob(jobNamed('theirs'), 'theirs.pitchboard.json');
    expect(saveStatus(state())).toBe('same-as-file');
    planner.actions.undo();
    expect(job(state()).name).toBe('mine');
  });

  test('a stair that is gone is not the one shown', () => {
    planner.actions.selectStair(1);
    expect(state().stairIndex).toBe(1);
    planner.actions.edit((current) => ({ ...current, stairs: current.stairs.slice(0, 1) }), null);
    expect(state().stairIndex).toBe(0);
    planner.actions.selectStair(7);
    expect(state().stairIndex).toBe(0);
    planner.actions.selectStair(Number.NaN);
    expect(state().stairIndex).toBe(0);
  });
});

describe('the file', () => {
  test('was never saved, is the same, has changed, and is the same again', () => {
    expect(saveStatus(state())).toBe('never-saved-to-file');
    planner.actions.markSaved('stair.pitchboard.json');
    expect(saveStatus(state())).toBe('same-as-file');
    rename('second');
    expect(saveStatus(state())).toBe('changed-since-file');
    rename('first');
    expect(saveStatus(state())).toBe('same-as-file');
  });

  test('what was typed while the file was being written is a change', () => {
    const written = job(state());
    rename('later');
    planner.actions.markSaved('stair.pitchboard.json', written);
    expect(saveStatus(state())).toBe('changed-since-file');
  });

  test('a job from nowhere has no file', () => {
    planner.actions.markSaved('stair.pitchboard.json');
    planner.actions.replaceJob(jobNamed('sample'), null);
    expect(state().file).toEqual({ name: null, savedJob: null });
  });
});

describe('keeping the draft', () => {
  test('a write starts in the same turn as the edit', () => {
    rename('second');
    expect(drafts.names()).toEqual(['second']);
    expect(state().draft.status).toBe('writing');
  });

  test('kept is said only after the commit', async () => {
    rename('second');
    await vi.advanceTimersByTimeAsync(10_000);
    expect(state().draft.status).toBe('writing');
    await drafts.succeed();
    expect(state().draft).toEqual({ status: 'kept', at: 50_000 });
  });

  test('one write at a time, then the newest', async () => {
    for (const name of ['a', 'b', 'c', 'd']) rename(name);
    expect(drafts.names()).toEqual(['a']);
    await drafts.succeed();
    expect(state().draft.status).toBe('writing');
    expect(drafts.names()).toEqual(['a', 'd']);
    await drafts.succeed();
    expect(state().draft.status).toBe('kept');
    expect(drafts.names()).toEqual(['a', 'd']);
  });

  test('no subscriber sees a new job beside an old "kept"', async () => {
    rename('a');
    await drafts.succeed();
    const seen: string[] = [];
    planner.store.subscribe((now) => seen.push(`${job(now).name} ${now.draft.status}`));
    rename('b');
    await drafts.succeed();
    expect(seen).toEqual(['b writing', 'b kept']);
  });

  test('settings, the shown stair and the file are kept too', async () => {
    planner.actions.setTheme('sun');
    await drafts.succeed();
    planner.actions.setTerms('uk');
    await drafts.succeed();
    planner.actions.selectStair(1);
    await drafts.succeed();
    planner.actions.markSaved('a.json');
    expect(drafts.saves.at(-1)?.draft).toMatchObject({
      view: { theme: 'sun', terms: 'uk', stairIndex: 1 },
      file: { name: 'a.json', savedJob: first },
    });
  });

  test('what changes nothing writes nothing', () => {
    planner.actions.edit((current) => current, null);
    planner.actions.undo();
    planner.actions.setTheme('paper');
    planner.actions.endGesture();
    planner.actions.hurryDraft();
    expect(drafts.saves).toEqual([]);
  });
});

describe('when a write fails', () => {
  test('it says so at once, keeps the job, and tries again after 0.2, 1 and 5 s', async () => {
    rename('second');
    for (const [tries, delayMs] of [200, 1000, 5000, 5000].entries()) {
      await drafts.fail('quota');
      expect(state().draft).toEqual({ status: 'failed', at: null, reason: 'quota' });
      await vi.advanceTimersByTimeAsync(delayMs - 1);
      expect(drafts.saves).toHaveLength(tries + 1);
      await vi.advanceTimersByTimeAsync(1);
      expect(drafts.saves).toHaveLength(tries + 2);
      expect(state().draft.status).toBe('failed');
    }
    await drafts.succeed();
    expect(state().draft.status).toBe('kept');
    expect(drafts.names().at(-1)).toBe('second');
  });

  test('an edit tries at once and the waiting retry is called off', async () => {
    rename('second');
    await drafts.fail('unknown');
    rename('third');
    expect(drafts.names()).toEqual(['second', 'third']);
    await drafts.succeed();
    await vi.advanceTimersByTimeAsync(60_000);
    expect(drafts.saves).toHaveLength(2);
  });

  test('a success begins the delays anew', async () => {
    rename('a');
    await drafts.fail('unknown');
    await vi.advanceTimersByTimeAsync(200);
    await drafts.succeed();
    rename('b');
    await drafts.fail('unknown');
    await vi.advanceTimersByTimeAsync(200);
    expect(drafts.saves).toHaveLength(4);
  });

  test('a page that is about to go does not wait', async () => {
    rename('a');
    await drafts.fail('unavailable');
    planner.actions.hurryDraft();
    expect(drafts.saves).toHaveLength(2);
  });

  test('a keeper that throws is a failure like any other', async () => {
    drafts.save = () => {
      throw new Error('broken');
    };
    rename('a');
    await vi.advanceTimersByTimeAsync(0);
    expect(state().draft).toMatchObject({ status: 'failed', reason: 'unknown' });
  });

  test('the draft of another window is left alone until the user decides', async () => {
    rename('a');
    await drafts.fail('other-draft');
    await vi.advanceTimersByTimeAsync(60_000);
    expect(drafts.saves).toHaveLength(1);
    planner.actions.takeOverDraft();
    expect(drafts.takenOver).toBe(true);
    await drafts.succeed();
    expect(state().draft.status).toBe('kept');
  });

  test('when the draft was kept last stays known', async () => {
    rename('a');
    await drafts.succeed();
    vi.setSystemTime(90_000);
    rename('b');
    await drafts.fail('quota');
    expect(state().draft).toEqual({ status: 'failed', at: 50_000, reason: 'quota' });
  });
});

describe('the start', () => {
  const found = draftOf(jobNamed('now'), [jobNamed('before')], [jobNamed('after')]);

  test('brings back the job, undo, redo and the settings, and writes nothing', async () => {
    const view = { stairIndex: 1, theme: 'dim', terms: 'uk' } as const;
    const file = { name: 'a.json', savedJob: jobNamed('before') };
    await begin({ kind: 'found', draft: { ...found, view, file }, loss: null });
    expect(state()).toMatchObject({ ...view, file, draft: { status: 'kept', at: found.at } });
    expect(state().history).toEqual({ ...found.history, gesture: null });
    expect(drafts.saves).toEqual([]);
  });

  test('says what was lost, also after the next write', async () => {
    await begin({ kind: 'found', draft: found, loss: 'undo-steps' });
    expect(state().draft.loss).toBe('undo-steps');
    rename('next');
    await drafts.succeed();
    expect(state().draft).toMatchObject({ status: 'kept', loss: 'undo-steps' });
  });

  test('a damaged draft is said, and the next write puts it right', async () => {
    await begin({ kind: 'damaged', reason: 'unreadable' });
    expect(state().draft).toEqual({ status: 'failed', at: null, reason: 'unreadable' });
    expect(job(state())).toBe(first);
    rename('next');
    await drafts.succeed();
    expect(state().draft).toEqual({ status: 'kept', at: 50_000 });
  });

  test('nothing is written while the draft is being read, and an edit made meanwhile goes on top', async () => {
    drafts = new SlowKeeper();
    planner = createPlanner({ firstJob: first, drafts, clock });
    let answer: (loaded: LoadedDraft) => void = () => undefined;
    drafts.loaded = new Promise((resolve) => {
      answer = resolve;
    });
    const started = planner.actions.start();
    rename('early', 'name');
    planner.actions.setTheme('sun');
    expect([state().draft.status, drafts.saves.length]).toEqual(['loading', 0]);
    answer({ kind: 'found', draft: found, loss: null });
    await started;
    expect(state().history.past.map(({ name }) => name)).toEqual(['before', 'now']);
    expect([job(state()).name, state().theme, state().draft.status]).toEqual(['early', 'sun', 'writing']);
    rename('early bird', 'name');
    expect(state().history.past).toHaveLength(2);
    await drafts.succeed();
    await drafts.succeed();
    expect(state().draft.status).toBe('kept');
  });

  test('an edit undone while the draft is being read costs nothing', async () => {
    drafts = new SlowKeeper();
    drafts.loaded = Promise.resolve({ kind: 'found', draft: found, loss: null });
    planner = createPlanner({ firstJob: first, drafts, clock, view: { theme: 'dim', terms: 'uk' } });
    const started = planner.actions.start();
    rename('early');
    planner.actions.undo();
    await started;
    expect(state().history).toEqual({ ...found.history, gesture: null });
  });
});
