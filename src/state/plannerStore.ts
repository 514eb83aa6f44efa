/**
 * The one store: what the user decided and how they look at it. Layouts, findings and drawings
 * are worked out from `job(state)` where they are needed and never stored.
 */
import { createStore, type StoreApi } from 'zustand/vanilla';
import type { JobText } from '../core/job/jobText';
import type { Clock, Draft, DraftKeeper, DraftLoss, DraftTrouble, JobFile, LoadedDraft, Terms, Theme } from './draft';
import { createDraftWriter, type DraftReport } from './draftWriter';
import type { History } from './history';
import * as steps from './history';
import { compareWithFile, type SaveStatus } from './saveStatus';
import { FIRST_VIEW, type View, viewFrom, viewOf } from './view';

export interface DraftState {
  readonly status: 'loading' | 'none' | 'writing' | 'kept' | 'failed';
  /** When the newest kept draft was written; null when there is none. */
  readonly at: number | null;
  /** Only with `failed`. */
  readonly reason?: DraftTrouble | 'unreadable';
  /** Set when the draft that was found at the start had lost something. */
  readonly loss?: DraftLoss;
}

export interface PlannerState extends View {
  readonly history: History;
  readonly file: JobFile;
  readonly draft: DraftState;
}

export interface PlannerActions {
  /** Brings back the draft of the last visit; call it once, before or after the first paint. */
  start(): Promise<void>;
  edit(change: (job: JobText) => JobText, gesture: string | null): void;
  endGesture(): void;
  undo(): void;
  redo(): void;
  replaceJob(job: JobText, fileName: string | null): void;
  /** @param savedJob what was written to the file, where the job may have moved on since */
  markSaved(fileName: string, savedJob?: JobText): void;
  setTheme(theme: Theme): void;
  setTerms(terms: Terms): void;
  selectStair(stairIndex: number): void;
  /** Any of the other settings; never a step of undo. */
  look(view: Partial<Omit<View, 'stairIndex' | 'theme' | 'terms'>>): void;
  /** The page may be about to go. */
  hurryDraft(): void;
  /** After `other-draft`: keep this window's job in place of the other one. */
  takeOverDraft(): void;
}

export interface PlannerOptions {
  /** Shown when the browser holds no draft. */
  readonly firstJob: JobText;
  readonly drafts: DraftKeeper;
  readonly clock: Clock;
  readonly view?: Partial<View>;
}

export interface Planner {
  readonly store: StoreApi<PlannerState>;
  readonly actions: PlannerActions;
}

export function createPlanner({ firstJob, drafts, clock, view }: PlannerOptions): Planner {
  const store = createStore<PlannerState>()(() => firstState(firstJob, view));
  const writer = createDraftWriter({
    save: (draft) => drafts.save(draft),
    clock,
    newest: () => draftOf(store.getState(), clock.now()),
    report: (report) => store.setState((state) => ({ draft: reported(state.draft, report) })),
  });

  function change(next: (state: PlannerState) => Partial<PlannerState>): void {
    const before = store.getState();
    const changed = { ...before, ...next(before) };
    if (!differs(before, changed)) return;
    // In one step with the change: no subscriber may see a new job beside an old "kept".
    store.setState({ ...changed, stairIndex: stairWithin(changed), draft: awaiting(before.draft) });
    if (before.draft.status !== 'loading') writer.changed();
  }

  function changeHistory(next: (history: History) => History): void {
    change(({ history }) => ({ history: next(history) }));
  }

  async function start(): Promise<void> {
    const before = store.getState();
    const loaded = await drafts.load();
    const touched = differs(before, store.getState());
    store.setState((state) => afterLoad(before, state, loaded));
    if (!touched) return;
    store.setState((state) => ({ draft: awaiting(state.draft) }));
    writer.changed();
  }

  const actions: PlannerActions = {
    start,
    edit: (make, gesture) => changeHistory((history) => steps.edit(history, make(history.present), gesture)),
    endGesture() {
      const { history } = store.getState();
      const ended = steps.endGesture(history);
      // That a gesture has ended is nothing to be kept; that it was no step is.
      if (ended.past === history.past) store.setState({ history: ended });
      else changeHistory(() => ended);
    },
    undo: () => changeHistory(steps.undo),
    redo: () => changeHistory(steps.redo),
    replaceJob: (job, fileName) =>
      change(({ history }) => ({
        history: steps.edit(history, job, null),
        file: { name: fileName, savedJob: fileName === null ? null : job },
      })),
    markSaved: (name, savedJob) => change(({ history }) => ({ file: { name, savedJob: savedJob ?? history.present } })),
    setTheme: (theme) => change(() => ({ theme })),
    setTerms: (terms) => change(() => ({ terms })),
    selectStair: (stairIndex) => change(() => ({ stairIndex })),
    look: (view) => change(() => view),
    hurryDraft: writer.hurry,
    takeOverDraft() {
      drafts.takeOver();
      writer.changed();
    },
  };
  return { store, actions };
}

export function job(state: PlannerState): JobText {
  return state.history.present;
}

export function canUndo(state: PlannerState): boolean {
  return state.history.past.length > 0;
}

export function canRedo(state: PlannerState): boolean {
  return state.history.future.length > 0;
}

export function saveStatus(state: PlannerState): SaveStatus {
  return compareWithFile(job(state), state.file);
}

function firstState(firstJob: JobText, view: Partial<View> = {}): PlannerState {
  return {
    history: steps.startHistory(firstJob),
    ...FIRST_VIEW,
    ...view,
    file: { name: null, savedJob: null },
    draft: { status: 'loading', at: null },
  };
}

function draftOf(state: PlannerState, at: number): Draft {
  const { past, present, future } = state.history;
  return { at, history: { past, present, future }, file: state.file, view: viewOf(state) };
}

const VIEW_KEYS = Object.keys(FIRST_VIEW) as (keyof View)[];
const KEPT_KEYS = ['history', 'file', ...VIEW_KEYS] as const;

function differs(one: PlannerState, other: PlannerState): boolean {
  return KEPT_KEYS.some((key) => one[key] !== other[key]);
}

/** A stair may have been taken out of the job while it was the one shown. */
function stairWithin({ stairIndex, history }: PlannerState): number {
  return Math.max(0, Math.min(Math.trunc(stairIndex) || 0, history.present.stairs.length - 1));
}

/** A failure stays on show until a write succeeds. */
function awaiting(draft: DraftState): DraftState {
  return draft.status === 'loading' || draft.status === 'failed' ? draft : { ...draft, status: 'writing' };
}

function reported({ at, loss }: DraftState, report: DraftReport): DraftState {
  return { at, ...(loss === undefined ? {} : { loss }), ...report };
}

/** Each setting as the draft has it, unless the user has touched it since. */
function viewAfterLoad(before: PlannerState, state: PlannerState, kept: View): View {
  const touched = VIEW_KEYS.filter((key) => state[key] !== before[key]).map((key) => [key, state[key]]);
  return { ...kept, ...Object.fromEntries(touched) };
}

/**
 * What was done while the draft was being read goes on top of it, so that neither is lost.
 * @param before the state when reading began
 */
function afterLoad(before: PlannerState, state: PlannerState, loaded: LoadedDraft): Partial<PlannerState> {
  if (loaded.kind === 'none') return { draft: { status: 'none', at: null } };
  if (loaded.kind === 'damaged') return { draft: { status: 'failed', at: null, reason: loaded.reason } };
  const { draft, loss } = loaded;
  const edited = job(state) !== job(before);
  const found: History = { ...draft.history, gesture: null };
  const history = edited ? steps.edit(found, job(state), state.history.gesture) : found;
  const merged: PlannerState = {
    ...state,
    history,
    file: state.file === before.file ? draft.file : state.file,
    ...viewAfterLoad(before, state, viewFrom(draft.view)),
    stairIndex: edited ? state.stairIndex : viewFrom(draft.view).stairIndex,
    draft: { status: 'kept', at: draft.at, ...(loss === null ? {} : { loss }) },
  };
  return { ...merged, stairIndex: stairWithin(merged) };
}
