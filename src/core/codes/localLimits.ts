/**
 * What the user puts in place of a pack's figures. A local value is read as what the rule holds: in
 * the unit of the row that it replaces; without one, as the kind of figure that its field is judged by;
 * and where nobody judges it, as what the text itself says.
 */
import type { LocalRuleText } from '../job/jobText';
import type { Note } from '../layout/layoutStair';
import { failure, type Problem, problem, type Result, success } from '../result';
import { compare, type Exact, fromNumber, toInches, toMm } from '../units/exact';
import { parseLength } from '../units/length';
import { type FieldKind, kindOf, mostOf } from './fieldKinds';
import type { Limit, RuleUnit } from './rules';

type Figure = Pick<Limit, 'value' | 'unit' | 'exact'>;
type Reader = (text: string) => Figure | null;

const NUMBER = String.raw`(\d{1,6}(?:\.\d{1,6})?)`;
const UPRIGHT_DEG = 90;

/** Other units than a length's: how they are written, with the unit first for where none is known. */
const WRITTEN: Readonly<Partial<Record<RuleUnit, { readonly alone: RegExp; readonly named: RegExp }>>> = {
  deg: forms(`${NUMBER} ?(?:deg|degrees|°)`),
  '1:n': forms(`1 ?(?::|in) ?${NUMBER}`),
  psf: forms(`${NUMBER} ?psf`),
  lbf: forms(`${NUMBER} ?lbf`),
  fc: forms(`${NUMBER} ?fc`),
  kN: forms(`${NUMBER} ?kn`),
  kPa: forms(`${NUMBER} ?kpa`),
  in2: forms(`${NUMBER} ?(?:sq in|in2)`),
  count: forms(NUMBER),
};

const UNITS_OF_KIND: Readonly<Record<Exclude<FieldKind, 'length'>, RuleUnit>> = {
  angle: 'deg',
  count: 'count',
  yesNo: 'bool',
};

/** @returns a limit for each local rule, in their order, or those whose value could not be read */
export function readLocals(
  locals: readonly LocalRuleText[],
  inPack: ReadonlyMap<string, readonly Limit[]>,
): Result<readonly Limit[]> {
  const problems: Problem[] = [];
  const limits = locals.flatMap((local, index) => {
    const rows = inPack.get(local.field) ?? [];
    const model = rows.find(({ exact }) => exact !== null) ?? rows[0];
    const figure = readerFor(local.field, model?.unit)(local.value.trim());
    if (figure !== null) return [limitOf(local, figure, model)];
    const code = /^[-\u2212]/.test(local.value.trim()) ? 'local.negative' : 'local.value';
    const kind = wantedKind(local.field, model?.unit);
    problems.push(problem(`rules.local[${index}].value`, code, { found: local.value, kind }));
    return [];
  });
  return problems.length > 0 ? failure(problems) : success(limits);
}

/** A least over a most, both typed by the user: no stair can have both. The last one for a field stands. */
export function crossedLocals(limits: readonly Limit[], texts: readonly LocalRuleText[]): readonly Problem[] {
  const last = new Map(limits.map((limit, index) => [limit.field, index]));
  return [...last].flatMap(([field, at]) => {
    const most = mostOf(field);
    const other = most === null ? undefined : last.get(most);
    if (most === null || other === undefined || !isOver(limits[at] as Limit, limits[other] as Limit)) return [];
    const values = {
      least: field,
      leastValue: (texts[at] as LocalRuleText).value,
      most,
      mostValue: (texts[other] as LocalRuleText).value,
    };
    return [problem(`rules.local[${Math.max(at, other)}].value`, 'local.crossed', values)];
  });
}

/** What a text would have to be, in one word, for the sentence that refuses it. */
function wantedKind(field: string, unit: RuleUnit | undefined): string {
  if (unit === undefined || unit === 'text' || unit === 'rule' || unit === 'none') return kindOf(field) ?? 'any';
  if (isLength(unit)) return 'length';
  return KIND_OF_UNIT[unit] ?? 'load';
}

const KIND_OF_UNIT: Readonly<Partial<Record<RuleUnit, string>>> = {
  deg: 'angle',
  count: 'count',
  bool: 'yesNo',
  '1:n': 'slope',
};

interface Crossing {
  readonly least: Limit;
  readonly most: Limit;
}

/**
 * A local limit and one of the pack's that no stair can both meet. It is no mistake of the file's, for a
 * place may have changed one without the other: it is said, and the stair is laid out.
 */
function crossedWithPack(limits: readonly Limit[]): readonly Crossing[] {
  return limits.flatMap((least) => {
    const name = mostOf(least.field);
    const most = limits.find(({ field }) => field === name);
    if (most === undefined || (least.confidence === 'local') === (most.confidence === 'local')) return [];
    return isOver(least, most) ? [{ least, most }] : [];
  });
}

function isOver(least: Limit, most: Limit): boolean {
  if (least.exact === null || most.exact === null) return false;
  const alike = least.unit === most.unit || (isLength(least.unit) && isLength(most.unit));
  return alike && compare(least.exact, most.exact) > 0;
}

function limitOf({ field, note }: LocalRuleText, figure: Figure, model: Limit | undefined): Limit {
  return {
    field,
    ...figure,
    section: '',
    source: note ?? '',
    confidence: 'local',
    when: model?.when,
    inclusive: model?.inclusive,
    measured: model?.measured,
    replaced: model === undefined ? undefined : { value: model.value, unit: model.unit, section: model.section },
  };
}

function readerFor(field: string, unit: RuleUnit | undefined): Reader {
  if (unit === 'text' || unit === 'rule' || unit === 'none' || unit === undefined) {
    const kind = kindOf(field);
    if (kind === 'length') return (text) => readLength(text, unitIn(text));
    if (kind !== undefined) return readerIn(UNITS_OF_KIND[kind], 'alone');
    // A rule that is words may be replaced by other words: nobody compares them.
    const words: Reader = (text) => (text === '' ? null : { value: text, unit: 'text', exact: null });
    return (text) => asWritten(text) ?? (unit === 'text' || unit === 'rule' ? words(text) : null);
  }
  return isLength(unit) ? (text) => readLength(text, unit) : readerIn(unit, 'alone');
}

/** What a text says where neither a row nor a judge does. */
function asWritten(text: string): Figure | null {
  const length = readLength(text, unitIn(text));
  if (length !== null) return length;
  const units = [...(Object.keys(WRITTEN) as RuleUnit[]), 'bool' as const];
  return units.map((unit) => readerIn(unit, 'named')(text)).find((figure) => figure !== null) ?? null;
}

function readerIn(unit: RuleUnit, form: 'alone' | 'named'): Reader {
  if (unit === 'bool') return readYesNo;
  const written = WRITTEN[unit]?.[form];
  return (text) => {
    const digits = written
      ?.exec(text.toLowerCase())
      ?.slice(1)
      .find((part) => part !== undefined);
    if (digits === undefined || (unit === 'deg' && Number(digits) > UPRIGHT_DEG)) return null;
    return { value: Number(digits), unit, exact: fromNumber(Number(digits)) };
  };
}

function readYesNo(text: string): Figure | null {
  const said = text.toLowerCase();
  if (said !== 'yes' && said !== 'true' && said !== 'no' && said !== 'false') return null;
  return { value: said === 'yes' || said === 'true', unit: 'bool', exact: null };
}

function readLength(text: string, unit: 'in' | 'mm'): Figure | null {
  const reading = parseLength(text);
  if (!reading.ok) return null;
  return { value: shown(reading.length, unit), unit, exact: reading.length };
}

function shown(length: Exact, unit: 'in' | 'mm'): number {
  return toMm(unit === 'in' ? toInches(length) : length);
}

function unitIn(text: string): 'in' | 'mm' {
  return /m$/i.test(text) ? 'mm' : 'in';
}

function isLength(unit: RuleUnit): unit is 'in' | 'mm' {
  return unit === 'in' || unit === 'mm';
}

/** @param named the form with its unit; alone, the bare number does as well */
function forms(named: string): { readonly alone: RegExp; readonly named: RegExp } {
  return { named: new RegExp(`^${named}$`), alone: new RegExp(`^(?:${named}|${NUMBER})$`) };
}

/** What has to be said of the local rules that are in force. */
export function localNotes(limits: readonly Limit[]): readonly Note[] {
  // A mistyped field would otherwise stand among the unchecked rules, and the amendment be without effect.
  const unknown = limits.filter(
    ({ field, confidence, replaced }) => confidence === 'local' && !replaced && kindOf(field) === undefined,
  );
  const crossed = crossedWithPack(limits).map(({ least, most }) => {
    const values = { least: least.field, leastValue: said(least), most: most.field, mostValue: said(most) };
    return { code: 'note.localCrossed', values };
  });
  return [...unknown.map(({ field }) => ({ code: 'note.localUnknown', values: { field } })), ...crossed];
}

function said({ value, unit }: Limit): string {
  return unit === 'count' ? String(value) : `${String(value)} ${unit}`;
}
