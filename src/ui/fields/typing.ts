/**
 * What stands in the fields and is not (or not yet) the job's own text. It lives beside the store
 * and outlasts the fields, so that going from one part of the form to another loses nothing.
 */
import type { JobText } from '../../core/job/jobText';
import type { Problem } from '../../core/result';
import type { UnitSystem } from '../../core/units/length';
import { unitsOf } from '../stairOnShow';
import { keyOfPlace, placeInStair, stairOfPlace, valueAt } from './jobPlaces';

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
  /** @param place where the field's key stands in that job */
  readonly judge: (job: JobText, place: string) => Verdict;
  /** A field that was emptied is only left out once it is left: most hands empty it to type anew. */
  readonly waits: boolean;
  /** Set while the text is in use: a bare number is of these units, and of no others. */
  readonly inUnits?: UnitSystem;
}

export interface TypingDesk {
  readonly subscribe: (listener: () => void) => () => void;
  /** Every entry by its place; another map after every change. */
  readonly all: () => ReadonlyMap<string, TypingEntry>;
  set(place: string, entry: TypingEntry): void;
  clear(place: string): void;
  clearAll(): void;
  /**
   * What is typed goes with its stair, before the stairs of the job change their places.
   * @param to the new place of a stair in the list, or null for one that is taken out
   */
  moveStairs(to: (index: number) => number | null): void;
  /** Drops what was typed beside a value, or is in use in units, that the job no longer has. */
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
    moveStairs(to) {
      const moved = [...entries].flatMap(([place, entry]): [string, TypingEntry][] => {
        const from = stairOfPlace(place);
        if (from === null) return [[place, entry]];
        const next = to(from);
        return next === null ? [] : [[placeInStair(next, keyOfPlace(place)), entry]];
      });
      become(new Map(moved));
    },
    prune: (job) =>
      keep((place, { beside, inUnits = unitsOf(job) }) => {
        return fingerprint(valueAt(job, place)) === beside && inUnits === unitsOf(job);
      }),
  };
}
