/** What opening and saving need, apart from the page: it comes after the page has shown. */

import type { JobText } from '../../core/job/jobText';
import { planJob } from '../../core/plan/planStair';
import type { Problem } from '../../core/result';
import { openJob } from '../../document/openJob';
import { saveJob } from '../../document/saveJob';
import { BOOK, DEFAULT_PACK, loadPack } from '../../packs/ruleBook';
import { safeFileName } from '../../platform/fileName';
import '../localReader';

export interface Refusal {
  readonly name: string;
  readonly problems: readonly Problem[];
}

export type ReadFile =
  | { readonly kind: 'job'; readonly job: JobText }
  | { readonly kind: 'refused'; readonly refusal: Refusal };

/** A file is taken whole or not at all: every stair of it has to lay out. */
export async function readJobFile(name: string, bytes: Uint8Array): Promise<ReadFile> {
  const read = openJob(bytes);
  if (!read.ok) return { kind: 'refused', refusal: { name, problems: read.problems } };
  // Without its rules a job may not be laid out at all: they are fetched first, where there is a way.
  await loadPack(read.value.rules?.pack ?? DEFAULT_PACK).catch(() => undefined);
  const plans = planJob(read.value, BOOK);
  if (!plans.ok) return { kind: 'refused', refusal: { name, problems: plans.problems } };
  return { kind: 'job', job: read.value };
}

/** @param before the name of the file that the job was last saved to */
export function jobAsFile(job: JobText, before: string | null): { readonly name: string; readonly content: string } {
  return { name: before ?? safeFileName(job.name ?? ''), content: saveJob(job) };
}
