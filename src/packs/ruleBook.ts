/** The packs that this build has, and the trade's proportion rules, each with its source. */
import type { RulePack } from '../core/codes/rulePack';
import type { TasteRule } from '../core/codes/rules';
import irc2021 from './codes/irc-2021.json';
import { makeShelf, type RefusedPack } from './shelf';

export const DEFAULT_PACK = 'irc-2021';

/**
 * One comes with the first page, where there is no room for the reader of packs: that it reads is
 * proven by a test. The others are fetched, and read, when a job asks for them.
 */
const shelf = makeShelf(
  { [DEFAULT_PACK]: irc2021 as RulePack },
  {
    'irc-2024': { base: 'irc-2021', load: () => import('./codes/irc-2024.json') },
    'irc-2018': { base: 'irc-2021', load: () => import('./codes/irc-2018.json') },
    'irc-2015': { base: 'irc-2021', load: () => import('./codes/irc-2015.json') },
    'ibc-2024': { base: 'ibc-2021', load: () => import('./codes/ibc-2024.json') },
    'ibc-2021': { load: () => import('./codes/ibc-2021.json') },
    'osha-1910.25': { load: () => import('./codes/osha-1910.25.json') },
    'osha-1926.1052': { load: () => import('./codes/osha-1926.1052.json') },
    'ada-2010': { load: () => import('./codes/ada-2010.json') },
    'adk-2013': { load: () => import('./codes/adk-2013.json') },
    'ncc-2022': { load: () => import('./codes/ncc-2022.json') },
    'as-1657': { load: () => import('./codes/as-1657.json') },
    'nbc-2020': { load: () => import('./codes/nbc-2020.json') },
    'nbc-2015': { base: 'nbc-2020', load: () => import('./codes/nbc-2015.json') },
    'nbc-2010': { base: 'nbc-2020', load: () => import('./codes/nbc-2010.json') },
    'din-18065': { load: () => import('./codes/din-18065.json') },
    'nz-d1as1': { load: () => import('./codes/nz-d1as1.json') },
  },
);

/** @returns the pack if it is loaded: what is on show is planned at once, so loading comes before planning */
export function findPack(id: string): RulePack | undefined {
  return shelf.find(id);
}

/** Makes a pack ready for `findPack`. Undefined for an id that this program does not have; fails if it cannot be fetched. */
export function loadPack(id: string): Promise<RulePack | undefined> {
  return shelf.load(id);
}

/** The packs that are loaded; `PACK_LIST` has the names of all. */
export function allPacks(): readonly RulePack[] {
  return shelf.ready();
}

export function refusedPacks(): readonly RefusedPack[] {
  return shelf.refused();
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

export { loadAmendments, localRulesOf } from './amendments';
export { loadLookup } from './lookup';
