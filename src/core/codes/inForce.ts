/**
 * Which limits are in force: the rows of a pack for one profile, and what the user has put in their place.
 * Local rules are read by who is handed in, since the page begins without them.
 */
import type { LocalRuleText } from '../job/jobText';
import type { Note } from '../layout/layoutStair';
import { failure, type Result, success } from '../result';
import { type Exact, fromNumber, inches, toInches, toMm } from '../units/exact';
import type { Limit, RulePack, RuleRow, RuleUnit } from './rules';

export interface RuleSet {
  /** Null: the job names a pack that this program does not have. */
  readonly pack: RulePack | null;
  readonly packId: string;
  readonly profile: string | null;
  /** True if the job asks for a profile that the pack does not have. */
  readonly profileMissing: boolean;
  readonly limits: readonly Limit[];
}

export interface RuleChoice {
  readonly pack: string;
  readonly profile?: string | undefined;
  readonly local?: readonly LocalRuleText[] | undefined;
}

/** What the rules need to read what the user has put in place of a pack's figures; a job without such rules does not. */
export interface LocalReader {
  /** @returns a limit for each local rule, or those that cannot be read or exclude each other */
  readonly read: (
    locals: readonly LocalRuleText[],
    inPack: ReadonlyMap<string, readonly Limit[]>,
  ) => Result<readonly Limit[]>;
  /** What has to be said of local rules that are in force. */
  readonly notes: (limits: readonly Limit[]) => readonly Note[];
}

/**
 * @param findPack the packs that the program has, by lower-case id
 * @param reader null where it has not come yet: rules of a job that needs it are not there either
 * @returns the limits in force, or the local rules whose value could not be read
 */
export function rulesInForce(
  choice: RuleChoice,
  findPack: (id: string) => RulePack | undefined,
  reader: LocalReader | null,
): Result<RuleSet> {
  const pack = findPack(choice.pack) ?? null;
  const profiles = pack?.profiles ?? [];
  const profile = chooseProfile(choice.profile, profiles);
  const rows = (pack?.rows ?? []).filter((row) => row.profile === undefined || row.profile === profile);
  const limits = new Map<string, Limit[]>();
  for (const row of rows) limits.set(row.field, [...(limits.get(row.field) ?? []), limitOfRow(row, pack as RulePack)]);
  const profileMissing = choice.profile !== undefined && !profiles.includes(choice.profile);
  const { local = [] } = choice;
  const locals = local.length === 0 ? success([]) : (reader?.read(local, limits) ?? failure([]));
  if (!locals.ok) return locals;
  for (const limit of locals.value) limits.set(limit.field, [limit]);
  return success({ pack, packId: choice.pack, profile, profileMissing, limits: [...limits.values()].flat() });
}

/** @returns the number that a field is limited to, exactly, or null where there is none */
export function limitFor(rules: RuleSet, field: string): Exact | null {
  return rules.limits.find((limit) => limit.field === field)?.exact ?? null;
}

/** A length in the unit of its rule, for showing beside the rule: a float. */
export function inRuleUnit(mm: Exact, unit: RuleUnit): number {
  return unit === 'in' ? toMm(toInches(mm)) : toMm(mm);
}

function chooseProfile(asked: string | undefined, profiles: readonly string[]): string | null {
  if (asked !== undefined && profiles.includes(asked)) return asked;
  return profiles.find((profile) => profile === 'dwelling' || profile === 'private') ?? profiles[0] ?? null;
}

function limitOfRow(row: RuleRow, pack: RulePack): Limit {
  return {
    field: row.field,
    value: row.value,
    unit: row.unit,
    exact: typeof row.value === 'number' ? exactOf(row.value, row.unit) : null,
    section: row.section,
    source: `${pack.title}, ${pack.edition}`,
    confidence: row.confidence,
    when: row.when,
    advice: row.advice,
    inclusive: row.inclusive,
    measured: row.measured,
  };
}

function exactOf(value: number, unit: RuleUnit): Exact {
  return unit === 'in' ? inches(fromNumber(value)) : fromNumber(value);
}
