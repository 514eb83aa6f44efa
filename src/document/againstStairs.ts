/**
 * What a list of stairs must keep to beyond its shape. Apart from the schema, because the page asks
 * this at every keystroke and needs the schema only for files.
 */
import type { JobText } from '../core/job/jobText';
import { failure, problem, type Result, success } from '../core/result';

/** @returns the same job, or every reason against its list */
export function againstStairs(job: JobText): Result<JobText> {
  if (job.stairs.length === 0) return failure([problem('stairs', 'stairs.none')]);
  const seen = new Set<string>();
  const twice = job.stairs.flatMap((stair, index) => {
    const again = seen.has(stair.id);
    seen.add(stair.id);
    return again ? [problem(`stairs[${index}].id`, 'stairs.idTwice', { id: stair.id })] : [];
  });
  return twice.length > 0 ? failure(twice) : success(job);
}
