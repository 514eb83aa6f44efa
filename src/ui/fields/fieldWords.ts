/** The words of a field: its label, its hint, and why what was typed is not in use. */
import type { JobText } from '../../core/job/jobText';
import type { Problem } from '../../core/result';
import { isTextKey, type Speaker, sayProblem } from '../../text/say';
import { unitsOf } from '../stairOnShow';
import { keyOfPlace, stairOfPlace } from './jobPlaces';

const OVERHEAD = /^survey\.obstacles\[(\d+)\]\.(\w+)$/;
const LOCAL = /^rules\.local\[(\d+)\]\.(field|value|note)$/;

export function labelOf(say: Speaker, place: string): string {
  const local = LOCAL.exec(place);
  if (local !== null) return sayKey(say, `local.${local[2]}`, { number: Number(local[1]) + 1 });
  const key = keyOfPlace(place);
  const overhead = OVERHEAD.exec(key);
  if (overhead !== null) return sayKey(say, `overhead.${overhead[2]}`, { number: Number(overhead[1]) + 1 });
  const inStair = stairOfPlace(place) !== null;
  return sayKey(say, inStair && !key.includes('.') ? `field.stair.${key}` : `field.${key}`);
}

export function hintOf(say: Speaker, place: string): string {
  const key = keyOfPlace(place);
  const overhead = OVERHEAD.exec(key);
  const inStair = stairOfPlace(place) !== null;
  const own = overhead === null ? null : `overhead.hint.${overhead[2]}`;
  const name = own ?? (inStair && !key.includes('.') ? `hint.stair.${key}` : `hint.${key}`);
  return isTextKey(name) ? say(name) : '';
}

/** One sentence for each problem; those of another field or stair say whose they are. */
export function sentencesOf(say: Speaker, problems: readonly Problem[], place: string, job: JobText): string[] {
  const units = unitsOf(job);
  return problems.map((found) => {
    const sentence = sayProblem(say, found, units);
    const stair = stairOfPlace(found.place);
    if (found.place === place) return sentence;
    if (stair !== null && stair !== stairOfPlace(place)) return inStair(stair, sentence);
    return `${say('fault.elsewhere', { field: labelOf(say, found.place) })} ${sentence}`;
  });

  function inStair(stair: number, sentence: string): string {
    const named = job.stairs[stair];
    return `${say('fault.otherStair', { stair: named?.name ?? named?.id ?? String(stair + 1) })} ${sentence}`;
  }
}

/** Text for a key that is put together; the key itself where there is none, so that a gap is seen. */
function sayKey(say: Speaker, key: string, values?: Parameters<Speaker>[1]): string {
  return isTextKey(key) ? say(key, values) : key;
}

/** An id that a label, a hint and a link can point at. */
export function idOf(place: string): string {
  return `at-${place.replace(/[^A-Za-z0-9]+/g, '-')}`;
}
