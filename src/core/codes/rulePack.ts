/**
 * Rule packs as data. A pack says which limits a code sets and where; it holds no expressions and
 * the program knows no jurisdiction: which fields can be judged, and how, is the closed set in
 * `judge.ts`. The data itself lies in src/packs, read by a schema that refuses a row without source.
 */
import { failure, type Result } from '../result';
import { type LocalReader, type RuleChoice, type RuleSet, rulesInForce } from './inForce';
import { crossedLocals, localNotes, readLocals } from './localLimits';
import type { RulePack } from './rules';

export { inRuleUnit, limitFor, type RuleChoice, type RuleSet } from './inForce';
export type { AddressMark, Confidence, Limit, RulePack, RuleRow, RuleUnit } from './rules';

export const LOCAL_READER: LocalReader = {
  read(locals, inPack) {
    const limits = readLocals(locals, inPack);
    if (!limits.ok) return limits;
    const crossed = crossedLocals(limits.value, locals);
    return crossed.length > 0 ? failure(crossed) : limits;
  },
  notes: localNotes,
};

/**
 * @param findPack the packs that the program has, by lower-case id
 * @returns the limits in force, or the local rules whose value could not be read
 */
export function chooseRules(choice: RuleChoice, findPack: (id: string) => RulePack | undefined): Result<RuleSet> {
  return rulesInForce(choice, findPack, LOCAL_READER);
}
