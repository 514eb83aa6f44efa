import type { JobText } from '../../../src/core/job/jobText';
import type { Draft } from '../../../src/state/draft';
import { FIRST_VIEW } from '../../../src/state/view';

export function jobNamed(name: string): JobText {
  return {
    format: 'pitchboard.job',
    version: 1,
    name,
    units: 'imperial',
    stairs: [
      { id: 'loft', survey: { rise: '105 7/16 in', upperToAdd: '3/4 in' }, steps: { risers: 14 } },
      { id: 'porch', survey: { rise: '31 1/2 in' } },
    ],
  };
}

export function renamed(name: string): (job: JobText) => JobText {
  return (job) => ({ ...job, name });
}

export function draftOf(present: JobText, past: readonly JobText[] = [], future: readonly JobText[] = []): Draft {
  return {
    at: 1000 + past.length,
    history: { past, present, future },
    file: { name: null, savedJob: null },
    view: FIRST_VIEW,
  };
}
