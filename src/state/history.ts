/**
 * Undo as a list of whole jobs. A job is a few kilobytes and its unchanged parts are the same
 * objects in every entry, so that 500 of them cost little and no edit needs an inverse.
 */
import type { JobText } from '../core/job/jobText';
import { sameContent } from './sameContent';

export interface History {
  /** Oldest first: the last one is what undo returns to. */
  readonly past: readonly JobText[];
  readonly present: JobText;
  /** Nearest first: the first one is what redo returns to. */
  readonly future: readonly JobText[];
  /** The gesture that is still shaping `present`; null when the next edit begins a new step. */
  readonly gesture: string | null;
}

/** Past and future together; the oldest step is forgotten beyond it. */
export const MAX_STEPS = 500;

export function startHistory(job: JobText): History {
  return { past: [], present: job, future: [], gesture: null };
}

/**
 * @param gesture edits that follow each other with the same key are one step; null is a step by itself
 */
export function edit(history: History, job: JobText, gesture: string | null): History {
  if (job === history.present) return history;
  const continues = gesture !== null && gesture === history.gesture;
  const past = continues ? history.past : [...history.past, history.present].slice(-MAX_STEPS);
  return { past, present: job, future: [], gesture };
}

/** A gesture that came back to where it began, as text that is typed over by the same, was no step. */
export function endGesture(history: History): History {
  const { past, present, gesture } = history;
  if (gesture === null) return history;
  const before = past.at(-1);
  if (before === undefined || !sameContent(before, present)) return { ...history, gesture: null };
  return { ...history, past: past.slice(0, -1), present: before, gesture: null };
}

export function undo(history: History): History {
  const job = history.past.at(-1);
  if (job === undefined) return history;
  return {
    past: history.past.slice(0, -1),
    present: job,
    future: [history.present, ...history.future],
    gesture: null,
  };
}

export function redo(history: History): History {
  const [job, ...future] = history.future;
  if (job === undefined) return history;
  return { past: [...history.past, history.present], present: job, future, gesture: null };
}
