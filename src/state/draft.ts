/**
 * What the browser keeps between visits, and the door through which the store reaches it.
 * The door is described here and built in `platform/`, so that the store runs without a browser.
 */
import type { JobText } from '../core/job/jobText';
import type { History } from './history';
import type { View } from './view';

export type { Terms, Theme, View } from './view';

export interface JobFile {
  readonly name: string | null;
  /** The job as the file holds it; null until there is such a file. */
  readonly savedJob: JobText | null;
}

export interface Draft {
  /** Milliseconds since 1970, when the draft was handed over to be kept. */
  readonly at: number;
  readonly history: Pick<History, 'past' | 'present' | 'future'>;
  readonly file: JobFile;
  readonly view: View;
}

/** A draft as it was found: its view is read by the store, which knows the settings of today. */
export interface FoundDraft extends Omit<Draft, 'view'> {
  readonly view: unknown;
}

/**
 * `other-draft`: the browser holds a draft that this window neither wrote nor read, from another
 * window for instance; it is left alone. `newer-version`: a newer Pitchboard has been here.
 */
export type DraftTrouble = 'quota' | 'unavailable' | 'unknown' | 'other-draft' | 'newer-version';

/** What could not be brought back: the newest draft, or the far end of undo and redo. */
export type DraftLoss = 'older-draft' | 'undo-steps';

export type LoadedDraft =
  | { readonly kind: 'none' }
  | { readonly kind: 'found'; readonly draft: FoundDraft; readonly loss: DraftLoss | null }
  | { readonly kind: 'damaged'; readonly reason: DraftTrouble | 'unreadable' };

export type KeptDraft = { readonly ok: true } | { readonly ok: false; readonly reason: DraftTrouble };

/** None of these throws or rejects. */
export interface DraftKeeper {
  load(): Promise<LoadedDraft>;
  /** Resolves with `ok` only when the draft has reached the disk. */
  save(draft: Draft): Promise<KeptDraft>;
  /** The next save replaces whatever is there, after the user has chosen so. */
  takeOver(): void;
}

export interface Clock {
  now(): number;
  /** @returns a function that calls it off */
  after(delayMs: number, run: () => void): () => void;
}
