import type { JobText } from '../../../src/core/job/jobText';

/** Stands in for the document format: enough to tell a job from anything else. */
export function readSampleJob(value: unknown): JobText | null {
  const job = value as JobText | null;
  return job?.format === 'pitchboard.job' && Array.isArray(job.stairs) ? job : null;
}
