/**
 * A proposal is a few keys of the job with new values, never a second kind of job: taking it up means
 * writing those keys, and everything else that was typed stays as it was typed.
 */
import type { JobText, StairText, StringerTop } from '../job/jobText';

/** What a cure or a neighbour changes. */
export type StepChange =
  | { readonly key: 'steps.risers'; readonly value: number }
  | { readonly key: 'steps.run' | 'steps.nosing' | 'survey.openingFraming'; readonly value: string };

/** Undefined: left out from then on, so that what is usual counts. */
export type KeyChange =
  | StepChange
  | { readonly key: 'stringer.stockDepth' | 'survey.floorDepth'; readonly value: string }
  | { readonly key: 'stringer.top'; readonly value: StringerTop }
  | { readonly key: 'stringer.hanger' | 'stringer.topTreadRun'; readonly value: undefined };

/** @returns the job with the keys of one stair changed; the same job where there is nothing to change */
export function changeStair(job: JobText, index: number, changes: readonly KeyChange[]): JobText {
  if (changes.length === 0) return job;
  return { ...job, stairs: job.stairs.map((stair, i) => (i === index ? changes.reduce(withKey, stair) : stair)) };
}

function withKey(stair: StairText, { key, value }: KeyChange): StairText {
  const [part, name] = key.split('.') as ['steps' | 'survey' | 'stringer', string];
  if (value === undefined) {
    const { [name]: _, ...rest } = { ...stair[part] } as Record<string, unknown>;
    return { ...stair, [part]: rest };
  }
  return { ...stair, [part]: { ...stair[part], [name]: value } };
}
