/**
 * The store and the drafts together, against the plainest model: any sequence of edits, undo,
 * redo, visits that end in order and browsers that are killed.
 */
import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { browserClock } from '../../../src/platform/clock';
import { createDrafts } from '../../../src/platform/drafts';
import type { DraftKeeper } from '../../../src/state/draft';
import { createPlanner, type Planner, type PlannerState } from '../../../src/state/plannerStore';
import { jobNamed, renamed } from '../state/sampleJobs';
import { readSampleJob } from './readSampleJob';

type Step =
  | { readonly kind: 'edit'; readonly gesture: string | null }
  | { readonly kind: 'undo' | 'redo' | 'theme' | 'file' | 'open' | 'wait' | 'reload' | 'kill' }
  | { readonly kind: 'pause'; readonly turns: number };

const step: fc.Arbitrary<Step> = fc.oneof(
  { weight: 8, arbitrary: fc.record({ kind: fc.constant('edit' as const), gesture: fc.constantFrom(null, 'a', 'b') }) },
  { weight: 4, arbitrary: fc.record({ kind: fc.constantFrom('undo' as const, 'redo' as const) }) },
  { weight: 2, arbitrary: fc.record({ kind: fc.constantFrom('theme' as const, 'file' as const, 'open' as const) }) },
  { weight: 3, arbitrary: fc.record({ kind: fc.constant('pause' as const), turns: fc.integer({ min: 1, max: 12 }) }) },
  { weight: 1, arbitrary: fc.record({ kind: fc.constantFrom('wait' as const, 'reload' as const, 'kill' as const) }) },
);

/** What must survive, as plain text. */
function kept({ history, file, theme, terms, stairIndex }: PlannerState): string {
  const { past, present, future } = history;
  return JSON.stringify({ past, present, future, file, theme, terms, stairIndex });
}

/** A keeper that can be cut off in the middle, as a killed browser cuts it off. */
function killable(drafts: DraftKeeper): DraftKeeper & { kill(): void } {
  let alive = true;
  return {
    load: () => drafts.load(),
    save: async (draft) => {
      if (!alive) return new Promise(() => undefined);
      const result = await drafts.save(draft);
      return alive ? result : new Promise(() => undefined);
    },
    takeOver: () => drafts.takeOver(),
    kill: () => {
      alive = false;
    },
  };
}

class Session {
  private planner!: Planner;
  private drafts!: ReturnType<typeof killable>;
  /** Every state since the one that was last said to be kept. */
  private possible: string[] = [];
  private edits = 0;

  async begin(): Promise<void> {
    this.drafts = killable(createDrafts({ readJob: readSampleJob }));
    this.planner = createPlanner({ firstJob: jobNamed('first'), drafts: this.drafts, clock: browserClock });
    await this.planner.actions.start();
    this.planner.store.subscribe((state, before) => {
      if (kept(state) !== kept(before)) this.possible.push(kept(state));
      if (state.draft.status === 'kept' && before.draft.status !== 'kept') this.possible = [kept(state)];
      expect(state.draft.status).not.toBe('failed');
    });
    const now = kept(this.planner.store.getState());
    if (this.possible.length > 0) expect(this.possible).toContain(now);
    this.possible = [now];
  }

  async settle(): Promise<void> {
    while (this.planner.store.getState().draft.status === 'writing') await turn();
  }

  async take(each: Step): Promise<void> {
    const { actions } = this.planner;
    this.edits += 1;
    if (each.kind === 'edit') actions.edit(renamed(String(this.edits)), each.gesture);
    else if (each.kind === 'pause') for (let turns = each.turns; turns > 0; turns -= 1) await turn();
    else if (each.kind === 'undo') actions.undo();
    else if (each.kind === 'redo') actions.redo();
    else if (each.kind === 'theme') actions.setTheme(this.edits % 2 === 0 ? 'sun' : 'dim');
    else if (each.kind === 'file') actions.markSaved(`${this.edits}.json`);
    else if (each.kind === 'open') actions.replaceJob(jobNamed(`opened ${this.edits}`), 'opened.json');
    else await this.leave(each.kind);
  }

  private async leave(kind: 'wait' | 'reload' | 'kill'): Promise<void> {
    if (kind !== 'kill') await this.settle();
    if (kind === 'reload') expect(this.possible.at(-1)).toBe(kept(this.planner.store.getState()));
    if (kind === 'wait') return;
    this.drafts.kill();
    await this.begin();
  }
}

function turn(): Promise<void> {
  return new Promise((resolve) => setImmediate(resolve));
}

test('what was said to be kept is never lost, and what comes back is never mixed', { timeout: 60_000 }, async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(step, { maxLength: 60, size: 'max' }), async (steps) => {
      globalThis.indexedDB = new IDBFactory();
      const session = new Session();
      await session.begin();
      for (const each of steps) await session.take(each);
      await session.settle();
      await session.take({ kind: 'reload' });
    }),
    { numRuns: 400 },
  );
});

test('five hundred steps come back, one visit after another', { timeout: 60_000 }, async () => {
  globalThis.indexedDB = new IDBFactory();
  const session = new Session();
  await session.begin();
  for (let edits = 0; edits < 530; edits += 1) {
    await session.take({ kind: 'edit', gesture: null });
    if (edits % 100 === 99) await session.take({ kind: 'reload' });
  }
  await session.take({ kind: 'reload' });
});
