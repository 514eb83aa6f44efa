import type { DraftTrouble } from '../state/draft';

/** Says that a request to the browser's storage got no answer. */
class NoAnswerError extends Error {
  override readonly name = 'NoAnswerError';
}

export class OtherDraftError extends Error {
  override readonly name = 'OtherDraftError';
}

const TROUBLES: Readonly<Record<string, DraftTrouble>> = {
  QuotaExceededError: 'quota',
  VersionError: 'newer-version',
  OtherDraftError: 'other-draft',
  // Storage that is switched off, broken or gone.
  InvalidStateError: 'unavailable',
  UnknownError: 'unavailable',
  SecurityError: 'unavailable',
  NotFoundError: 'unavailable',
  AbortError: 'unavailable',
  NoAnswerError: 'unavailable',
  ReferenceError: 'unavailable',
};

/** The marks of a connection that died; a new one may work at once. */
const DEAD_CONNECTION: readonly string[] = ['InvalidStateError', 'UnknownError', 'AbortError'];

export function troubleOf(error: unknown): DraftTrouble {
  return TROUBLES[nameOf(error)] ?? 'unknown';
}

export function mayBeDeadConnection(error: unknown): boolean {
  return DEAD_CONNECTION.includes(nameOf(error));
}

function nameOf(error: unknown): string {
  return typeof error === 'object' && error !== null && 'name' in error ? String(error.name) : '';
}

/** Some failures of storage never answer; waiting for ever would look like work in progress. */
export async function answerWithin<T>(patienceMs: number, work: Promise<T>): Promise<T> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const silence = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new NoAnswerError()), patienceMs);
  });
  try {
    return await Promise.race([work, silence]);
  } finally {
    clearTimeout(timer);
  }
}
