/** A job in which nothing has been measured yet: one stair, whose first question is its rise. */
import type { JobText } from '../core/job/jobText';
import type { UnitSystem } from '../core/units/length';

export function emptyJob(units: UnitSystem): JobText {
  return { format: 'pitchboard.job', version: 1, units, stairs: [{ id: 'stair', survey: { rise: '' } }] };
}
