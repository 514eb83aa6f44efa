/**
 * Rule packs as data. A pack says which limits a code sets and where; it holds no expressions and
 * the program knows no jurisdiction: which fields can be judged, and how, is the closed set in
 * `judge.ts`. The data itself lies in src/packs, read by a schema that refuses a row without source.
 */
import type { LocalRuleText } from '../job/jobText';
import { failure, type Problem, problem, type Result, success } from '../result';
import { type Exact, fromNumber, inches, toInches, toMm } from '../units/exact';
import { parseLength } from '../units/length';

/** `1:n` holds n; `text`, `rule` and `none` carry no number to compare. */
export type RuleUnit =
  | 'in'
  | 'in2'
  | 'mm'
  | 'deg'
  | 'count'
  | 'bool'
  | '1:n'
  | 'psf'
  | 'lbf'
  | 'fc'
  | 'text'
  | 'rule'
  | 'none';

/** Read in the rule's own text; read only in a copy; recalled and not yet seen anywhere. */
export type Confidence = 'seen' | 'copy' | 'memory';

export interface RuleRow {
  readonly field: string;
  readonly value: number | boolean | string | null;
  readonly unit: RuleUnit;
  readonly section: string;
  readonly confidence: Confidence;
  readonly sources: readonly string[];
  /** The profile it holds for; left out: for all. */
  readonly profile?: string | undefined;
}

export interface RulePack {
  /** Lower case: what a job names. */
  readonly id: string;
  readonly title: string;
  readonly edition: string;
  readonly jurisdiction: string;
  readonly profiles: readonly string[];
  readonly sources: Readonly<Record<string, string>>;
  readonly rows: readonly RuleRow[];
}

/** One limit in force: a row of the pack, or what the user put in its place. */
export interface Limit {
  readonly field: string;
  readonly value: RuleRow['value'];
  readonly unit: RuleUnit;
  /** The value exactly: millimetres for a length, the number itself for a count; null for words. */
  readonly exact: Exact | null;
  readonly section: string;
  readonly source: string;
  readonly confidence: Confidence | 'local';
}

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

/**
 * @param findPack the packs that the program has, by lower-case id
 * @returns the limits in force, or the local rules whose value could not be read
 */
export function chooseRules(choice: RuleChoice, findPack: (id: string) => RulePack | undefined): Result<RuleSet> {
  const pack = findPack(choice.pack) ?? null;
  const profiles = pack?.profiles ?? [];
  const profile = chooseProfile(choice.profile, profiles);
  const rows = (pack?.rows ?? []).filter((row) => row.profile === undefined || row.profile === profile);
  const limits = new Map<string, Limit[]>();
  for (const row of rows) limits.set(row.field, [...(limits.get(row.field) ?? []), limitOfRow(row, pack as RulePack)]);
  const problems: Problem[] = [];
  (choice.local ?? []).forEach((local, index) => {
    const limit = limitOfLocal(local, limits.get(local.field)?.[0]?.unit);
    if (limit === null) problems.push(problem(`rules.local[${index}].value`, 'local.value', { found: local.value }));
    else limits.set(local.field, [limit]);
  });
  if (problems.length > 0) return failure(problems);
  const profileMissing = choice.profile !== undefined && !profiles.includes(choice.profile);
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
  };
}

function exactOf(value: number, unit: RuleUnit): Exact {
  return unit === 'in' ? inches(fromNumber(value)) : fromNumber(value);
}

/** A local value is a length, or a plain whole number where the rule counts something. */
function limitOfLocal(local: LocalRuleText, unit: RuleUnit | undefined): Limit | null {
  const source = local.note ?? '';
  const base = { field: local.field, section: '', source, confidence: 'local' as const };
  const reading = parseLength(local.value);
  if (reading.ok && (unit === undefined || unit === 'in' || unit === 'mm')) {
    const kept = unit ?? (/mm|cm|m\s*$/i.test(local.value) ? 'mm' : 'in');
    return { ...base, unit: kept, exact: reading.length, value: inRuleUnit(reading.length, kept) };
  }
  if (unit === 'in' || unit === 'mm' || !/^\d{1,6}(\.\d{1,6})?$/.test(local.value.trim())) return null;
  const value = Number(local.value);
  return { ...base, unit: unit ?? 'count', exact: fromNumber(value), value };
}
