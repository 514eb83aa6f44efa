/** The packs that this build has, and the trade's proportion rules, each with its source. */
import type { TasteRule } from '../core/codes/findings';
import type { RulePack } from '../core/codes/rulePack';
import irc2021 from './codes/irc-2021.json';
import { readPack } from './readPack';

export const DEFAULT_PACK = 'irc-2021';

const PACKS: readonly RulePack[] = [readPack(irc2021)];

export function findPack(id: string): RulePack | undefined {
  return PACKS.find((pack) => pack.id === id);
}

export function allPacks(): readonly RulePack[] {
  return PACKS;
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
