/**
 * What stands in the fields and is not (or not yet) the job's own text. It lives beside the store
 * and outlasts the fields, so that going from one part of the form to another loses nothing.
 */
import type { JobText } from '../../core/job/jobText';
import type { Problem } from '../../core/result';
import { valueAt } from './jobPlaces';

export interface Typed {
  readonly text: string;
  /** Only at a finish: how sure it is. */
  readonly known?: string;
}

/** What would become of the typed text, judged against the job as it is now. */
export type Verdict =
  | { readonly kind: 'fits'; readonly job: JobText }
  | { readonly kind: 'refused'; readonly problems: readonly Problem[] };

export interface TypingEntry {
  readonly typed: Typed;
  /** The job's value beside which this was typed; another one from outside replaces the text. */
  readonly beside: string;
  readonly judge: (job: JobText) => Verdict;
  /** A field that was emptied is only left out once it is left: most hands empty it to type anew. */
  readonly waits: boolean;
}

export interface TypingDesk {
  readonly subscribe: (listener: () => void) => () => void;
  /** Every entry by its place; another map after every change. */
  readonly all: () => ReadonlyMap<string, TypingEntry>;
  set(place: string, entry: TypingEntry): void;
  clear(place: string): void;
  clearAll(): void;
  /** Drops what was typed beside a value that the job no longer has. */
  prune(job: JobText): void;
}

export function fingerprint(value: unknown): string {
  return JSON.stringify(value) ?? '';
}

export function createTypingDesk(): TypingDesk {
  let entries: ReadonlyMap<string, TypingEntry> = new Map();
  const listeners = new Set<() => void>();

  function become(next: ReadonlyMap<string, TypingEntry>): void {
    entries = next;
    for (const listener of listeners) listener();
  }

  function keep(stays: (place: string, entry: TypingEntry) => boolean): void {
    const kept = [...entries].filter(([place, entry]) => stays(place, entry));
    if (kept.length < entries.size) become(new Map(kept));
  }

  return {
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    all: () => entries,
    set: (place, entry) => become(new Map(entries).set(place, entry)),
    clear: (place) => keep((other) => other !== place),
    clearAll: () => keep(() => false),
    prune: (job) => keep((place, { beside }) => fingerprint(valueAt(job, place)) === beside),
  };
}
