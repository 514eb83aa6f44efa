/** What the build knows of wood: fetched, and read, when something asks what a stringer can carry. */
import type { LumberBook } from '../../core/carry/lumber';
import { readLumber } from './readLumber';

let book: Promise<LumberBook> | undefined;

/** @returns the data; fails if it cannot be fetched, and then the next call tries again */
export function loadLumber(): Promise<LumberBook> {
  book ??= fetchLumber().catch((why: unknown) => {
    book = undefined;
    throw why;
  });
  return book;
}

async function fetchLumber(): Promise<LumberBook> {
  const { default: data } = await import('./lumber.json');
  const reading = readLumber(data);
  if (reading.ok) return reading.value;
  throw new Error(reading.problems.map(({ place, values }) => `${place} ${values['why']}`).join('; '));
}
