/** Which of all layouts stand side by side, and how each is answered. */
import type { Alternative } from '../../core/choose/compareLayouts';

export type FitAnswer = 'meets' | 'breaks' | 'close' | 'none';

/** Law and sound building both count: what is hard to build does not fit either. */
export function answerOf({ outcome }: Alternative): FitAnswer {
  if (outcome === null) return 'none';
  if (outcome.breaksRules.length + outcome.breaksBuild.length > 0) return 'breaks';
  return outcome.counts.rule.close + outcome.counts.build.close > 0 ? 'close' : 'meets';
}

/**
 * The one in hand, one riser fewer and more at its run, the next shorter and longer run, and one that was
 * asked for; in the order of the whole list.
 */
export function neighboursOf(all: readonly Alternative[], lookedAt: string | null): readonly Alternative[] {
  const chosen = all.find((one) => one.chosen);
  if (chosen === undefined) return [];
  const runs = all.filter(({ risers }) => risers === chosen.risers);
  const at = runs.indexOf(chosen);
  const besideInRun = [runs[at - 1], runs[at + 1]];
  const besideInCount = all.filter(({ run, risers }) => run === chosen.run && Math.abs(risers - chosen.risers) === 1);
  return all.filter(
    (one) => one.chosen || one.id === lookedAt || besideInRun.includes(one) || besideInCount.includes(one),
  );
}

/** Rows and columns of the whole list. */
export function axesOf(all: readonly Alternative[]): { readonly counts: number[]; readonly runs: number[] } {
  const unique = (values: number[]) => [...new Set(values)].sort((a, b) => a - b);
  return { counts: unique(all.map(({ risers }) => risers)), runs: unique(all.map(({ run }) => run)) };
}

export type ShortReason = 'rise' | 'run' | 'head' | 'slope' | 'stride' | 'header' | 'throat' | 'marks' | 'other';

/** A rule's field by its beginning, in a word that fits a cell. */
const SHORT: readonly (readonly [beginning: string, reason: ShortReason])[] = [
  ['headroom', 'head'],
  ['riser', 'rise'],
  ['tread', 'run'],
  ['pitch', 'slope'],
  ['twoRPlusG', 'stride'],
  ['headerContact', 'header'],
  ['throat', 'throat'],
  ['stringer', 'throat'],
  ['asCut', 'marks'],
];

/** What closes it, each reason once: a head that is hit before anything else. */
export function reasonsOf({ outcome }: Alternative): readonly ShortReason[] {
  const broken = [...(outcome?.breaksRules ?? []), ...(outcome?.breaksBuild ?? [])];
  const found = broken.map((field) => SHORT.find(([beginning]) => field.startsWith(beginning))?.[1] ?? 'other');
  return [...new Set(found)].sort((a, b) => Number(b === 'head') - Number(a === 'head'));
}
