import type { JobText } from '../../core/job/jobText';
import { withValue } from '../fields/jobPlaces';
import { unitsOf } from '../stairOnShow';

/** The usual one first. Others that a file holds are kept and shown. */
export const MARK_STEPS: Readonly<Record<'imperial' | 'metric', readonly string[]>> = {
  imperial: ['1/16 in', '1/32 in', '1/8 in'],
  metric: ['0.5 mm', '1 mm'],
};

/** Marks on a millimetre grid cannot be read off an inch tape, nor the other way round. */
export function withFittingMarkStep(job: JobText): JobText {
  const fits = job.markStep === undefined || MARK_STEPS[unitsOf(job)].includes(job.markStep);
  return fits ? job : withValue(job, 'markStep', undefined);
}
