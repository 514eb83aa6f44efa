/** The list of a job's stairs: every change gives a new job and leaves the others as they were. */
import type { JobText, StairText } from '../core/job/jobText';

/** A new stair with nothing measured yet, after the last one. */
export function addStair(job: JobText, name: string): JobText {
  return { ...job, stairs: [...job.stairs, { id: freeId(job, 'stair'), name, survey: { rise: '' } }] };
}

/** A copy beside its model: another flight of the same house is mostly the same. */
export function duplicateStair(job: JobText, index: number, name: string): JobText {
  const model = job.stairs[index];
  if (model === undefined) return job;
  const copy: StairText = { ...model, id: freeId(job, model.id), name };
  return { ...job, stairs: [...job.stairs.slice(0, index + 1), copy, ...job.stairs.slice(index + 1)] };
}

/** The last stair stays: a job has at least one. */
export function removeStair(job: JobText, index: number): JobText {
  if (job.stairs.length < 2) return job;
  return { ...job, stairs: job.stairs.filter((_, at) => at !== index) };
}

export function renameStair(job: JobText, index: number, name: string): JobText {
  return { ...job, stairs: job.stairs.map((stair, at) => (at === index ? { ...stair, name } : stair)) };
}

/** @param by −1 towards the front, 1 towards the back; beyond the ends nothing moves */
export function moveStair(job: JobText, index: number, by: -1 | 1): JobText {
  const to = index + by;
  const [moved, other] = [job.stairs[index], job.stairs[to]];
  if (moved === undefined || other === undefined) return job;
  const stairs = [...job.stairs];
  stairs[index] = other;
  stairs[to] = moved;
  return { ...job, stairs };
}

/** `loft`, `loft-2`, `loft-3` …: the first that no stair has. */
function freeId(job: JobText, wanted: string): string {
  const taken = new Set(job.stairs.map(({ id }) => id));
  const stem = wanted.replace(/-\d+$/, '');
  let id = stem;
  for (let count = 2; taken.has(id); count += 1) id = `${stem}-${count}`;
  return id;
}
