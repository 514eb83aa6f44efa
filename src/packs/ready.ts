/**
 * The packs that can be planned with at once. One comes with the first page, where there is no room for the
 * reader of packs: that it reads is proven by a test.
 */
import type { RulePack } from '../core/codes/rules';
import type { Problem } from '../core/result';
import irc2021 from './codes/irc-2021.json';

export const DEFAULT_PACK = 'irc-2021';

export const READY = new Map<string, RulePack>([[DEFAULT_PACK, irc2021 as RulePack]]);

/** Packs that were fetched and could not be read, with what is wrong with them. */
export const REFUSED = new Map<string, readonly Problem[]>();
