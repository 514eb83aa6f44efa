/** Which neighbours stand side by side, and how each is answered. */
import type { Alternative } from '../../core/choose/compareLayouts';

type FitAnswer = 'meets' | 'breaks' | 'close' | 'none';

/** Law and sound building both count: what is hard to build does not fit either. */
export function answerOf({ outcome }: Alternative): FitAnswer {
  if (outcome === null) return 'none';
  if (outcome.breaksRules.length + outcome.breaksBuild.length > 0) return 'breaks';
  return outcome.counts.rule.close + outcome.counts.build.close > 0 ? 'close' : 'meets';
}

/** The one in hand, one riser fewer and more at its run, the next shorter and longer run; in the order of the whole list. */
export function neighboursOf(all: readonly Alternative[]): readonly Alternative[] {
  const chosen = all.find((one) => one.chosen);
  if (chosen === undefined) return [];
  const runs = all.filter(({ risers }) => risers === chosen.risers);
  const at = runs.indexOf(chosen);
  const besideInRun = [runs[at - 1], runs[at + 1]];
  const besideInCount = all.filter(({ run, risers }) => run === chosen.run && Math.abs(risers - chosen.risers) === 1);
  return all.filter((one) => one.chosen || besideInRun.includes(one) || besideInCount.includes(one));
}
