/** What some places put in place of a model code, ready to be taken up as local rules of a job. */
import type { Confidence } from '../core/codes/rulePack';
import type { LocalRuleText } from '../core/job/jobText';

export interface Amendment {
  readonly id: string;
  readonly jurisdiction: string;
  /** The pack that it amends. */
  readonly base: string;
  /** Never more than a copy: to be checked in the place's own text before anything is cut. */
  readonly confidence: Exclude<Confidence, 'seen'>;
  /** Where it was read. */
  readonly sources: readonly string[];
  readonly rows: readonly { readonly field: string; readonly value: number; readonly unit: 'in' | 'mm' }[];
}

export async function loadAmendments(): Promise<readonly Amendment[]> {
  const { default: file } = await import('./amendments.json');
  const where: Readonly<Record<string, string>> = file.sources;
  return (file.amendments as readonly Amendment[]).map((each) => ({
    ...each,
    sources: each.sources.map((source) => where[source] as string),
  }));
}

/**
 * @param note what stands beside each figure wherever it is shown: whose it is, and that it is from a copy
 * @returns local rules for a job that names the amendment's base
 */
export function localRulesOf(amendment: Amendment, note: string): readonly LocalRuleText[] {
  return amendment.rows.map(({ field, value, unit }) => ({ field, value: `${value} ${unit}`, note }));
}
