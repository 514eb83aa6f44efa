/** The packs that this build has, and the trade's proportion rules, each with its source. */
import type { RulePack } from '../core/codes/rulePack';
import type { TasteRule } from '../core/codes/rules';
import type { RuleBook } from '../core/plan/planStair';
import { DEFAULT_PACK, READY, REFUSED } from './ready';
import type { RefusedPack } from './shelf';

export { DEFAULT_PACK } from './ready';

/** @returns the pack if it is loaded: what is on show is planned at once, so loading comes before planning */
export function findPack(id: string): RulePack | undefined {
  return READY.get(id);
}

/** Makes a pack ready for `findPack`. Undefined for an id that this program does not have; fails if it cannot be fetched. */
export async function loadPack(id: string): Promise<RulePack | undefined> {
  return READY.get(id) ?? (await import('./latePacks')).LATE_PACKS.load(id);
}

/** The packs that are loaded; `PACK_LIST` has the names of all. */
export function allPacks(): readonly RulePack[] {
  return [...READY.values()];
}

export function refusedPacks(): readonly RefusedPack[] {
  return [...REFUSED].map(([id, problems]) => ({ id, problems }));
}

/** Advice, not law: a legal stair can fall outside all three. */
export const TASTES: readonly TasteRule[] = [
  {
    field: 'taste.twoRPlusG',
    low: 24,
    high: 25,
    source: 'US Army subcourse EN5156 (25 in); Hodgson, The Steel Square, 1917 (24 in)',
    confidence: 'seen',
  },
  { field: 'taste.rPlusG', low: 17, high: 19, source: 'US Army subcourse EN5156', confidence: 'seen' },
  { field: 'taste.rTimesG', low: 70, high: 75, source: 'trade rule; EN5156 prints about 75', confidence: 'memory' },
];

/** All of it, for whoever plans. */
export const BOOK: RuleBook = { findPack, defaultPack: DEFAULT_PACK, tastes: TASTES };

export { loadAmendments, localRulesOf } from './amendments';
export { loadLookup } from './lookup';
