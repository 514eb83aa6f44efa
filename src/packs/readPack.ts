/**
 * A pack is refused when it is loaded, with the row named, not when a stair stands on it.
 *
 * A pack with a base lists only what differs from it: its rows take the place of the base's rows for
 * the same field and profile, or withdraw them. What is taken over keeps its figure, is marked no surer
 * than the pack says it is of that, and gets the section number that the newer edition gave it.
 */
import * as z from 'zod/mini';
import type { Confidence, RulePack, RuleRow } from '../core/codes/rulePack';
import type { Problem, Result } from '../core/result';
import { unitsOfField } from './fields';

const NO_FIGURE = ['text', 'rule', 'none', 'bool'];

const confidence = z.enum(['seen', 'copy', 'memory'], { error: 'has to say how sure it is' });
const field = z
  .string({ error: 'needs a field' })
  .check(z.minLength(1, { error: 'needs a field' }))
  .check(z.refine((name) => name === '' || unitsOfField(name) !== undefined, { error: 'is no field that is known' }));
const section = z.string({ error: 'needs a section' }).check(z.minLength(1, { error: 'needs a section' }));
const sources = z.array(z.string(), { error: 'needs a source' }).check(z.minLength(1, { error: 'needs a source' }));

const row = z
  .strictObject({
    field,
    value: z.union([z.number(), z.boolean(), z.string(), z.null()], { error: 'needs a value' }),
    unit: z.enum(
      ['in', 'in2', 'mm', 'deg', 'count', 'bool', '1:n', 'psf', 'lbf', 'fc', 'kN', 'kPa', 'text', 'rule', 'none'],
      { error: 'needs a unit that is known' },
    ),
    section,
    confidence,
    sources,
    profile: z.optional(z.string()),
    when: z.optional(z.enum(['open-risers', 'closed-risers'])),
    advice: z.optional(z.literal(true)),
    inclusive: z.optional(z.literal(true)),
    measured: z.optional(z.string().check(z.minLength(1, { error: 'says how it is measured, or leaves it out' }))),
  })
  .check(z.refine(valueFitsUnit, { error: 'a value and its unit have to fit: a number needs a unit of numbers' }))
  .check(
    z.refine(({ field, unit }) => unitsOfField(field)?.includes(unit) ?? true, {
      error: 'has a unit that its field is not measured in',
    }),
  );

const withdrawal = z.strictObject({
  field,
  withdrawn: z.literal(true),
  section,
  confidence,
  sources,
  profile: z.optional(z.string()),
});

const pack = z.strictObject({
  id: z.string().check(z.regex(/^[a-z0-9.-]+$/, { error: 'lower-case letters, digits, points and dashes' })),
  title: z.string(),
  edition: z.string(),
  jurisdiction: z.string(),
  readAt: z.optional(
    z.array(
      z.strictObject({
        address: z.string().check(z.regex(/^https:\/\//, { error: 'is an address that begins with https://' })),
        mark: z.enum(['read', 'page-below-read', 'cited', 'memory'], { error: 'has to say how sure it is' }),
      }),
    ),
  ),
  base: z.optional(z.string()),
  inherited: z.optional(confidence),
  renumbered: z.optional(z.array(z.tuple([z.string(), z.string()]))),
  profiles: z.array(z.string()),
  sources: z.record(z.string(), z.string()),
  // Told apart by one key, so that what is wrong with a row is said of that row and not of a choice of two.
  rows: z.array(z.unknown()),
});

type PackFile = z.infer<typeof pack>;
type Withdrawal = z.infer<typeof withdrawal>;

/**
 * @param data parsed JSON of one pack
 * @param base the pack that it names as its base
 * @returns the whole pack, or every row that cannot be trusted
 */
export function readPack(data: unknown, base?: RulePack): Result<RulePack> {
  const reading = pack.safeParse(data);
  if (!reading.success) return refused(reading.error.issues.map((issue) => fault(idOf(data), issue)));
  const file = reading.data;
  const read = file.rows.map((each, at) => readRow(file, each, at));
  const problems = read.flatMap((each) => (each.ok ? [] : each.problems));
  if (problems.length > 0) return refused(problems);
  if (file.base !== base?.id) {
    return refused([say(file.id, 'base', file.base ?? '', 'needs its base to be loaded first')]);
  }
  const whole = join(
    file,
    read.flatMap((each) => (each.ok ? [each.value] : [])),
    base,
  );
  const crossed = crossedPairs(whole);
  return crossed.length > 0 ? refused(crossed) : { ok: true, value: whole };
}

function readRow(file: PackFile, data: unknown, at: number): Result<RuleRow | Withdrawal> {
  const named = typeof data === 'object' && data !== null ? data : {};
  const reading = ('withdrawn' in named ? withdrawal : row).safeParse(data);
  const place = `rows[${at}]`;
  const name = 'field' in named && typeof named.field === 'string' ? named.field : '';
  if (!reading.success) {
    return refused(reading.error.issues.map((issue) => fault(file.id, issue, place, name)));
  }
  const unlisted = reading.data.sources.find((source) => !Object.hasOwn(file.sources, source));
  if (unlisted === undefined) return { ok: true, value: reading.data };
  return refused([say(file.id, `${place}.sources`, name, `names a source that the pack does not list: ${unlisted}`)]);
}

function valueFitsUnit({ value, unit }: { value: RuleRow['value']; unit: string }): boolean {
  if (typeof value === 'number') return !NO_FIGURE.includes(unit) && value >= 0 && (unit !== 'deg' || value <= 90);
  if (typeof value === 'boolean') return unit === 'bool';
  return value === null ? unit === 'none' : unit === 'text' || unit === 'rule';
}

/** Own rows stand where the base had theirs, so that a pack is read in the order of its base. */
function join(file: PackFile, rows: readonly (RuleRow | Withdrawal)[], base: RulePack | undefined): RulePack {
  const { id, title, edition, jurisdiction, readAt = base?.readAt } = file;
  const own = rows.filter((each): each is RuleRow => !('withdrawn' in each));
  const place = readAt === undefined ? {} : { readAt };
  const whole = {
    id,
    title,
    edition,
    jurisdiction,
    ...place,
    profiles: file.profiles,
    sources: file.sources,
    rows: own,
  };
  if (base === undefined) return whole;
  const replaced = new Set<RuleRow>();
  const kept = base.rows.flatMap((old) => {
    const news = own.filter((each) => isSame(each, old));
    if (!rows.some((each) => isSame(each, old))) return [takenOver(old, file)];
    const fresh = news.filter((each) => !replaced.has(each));
    for (const each of fresh) replaced.add(each);
    return fresh;
  });
  return {
    ...whole,
    base: base.id,
    profiles: [...new Set([...base.profiles, ...file.profiles])],
    sources: { ...base.sources, ...file.sources },
    rows: [...kept, ...own.filter((each) => !replaced.has(each))],
  };
}

function isSame(a: { field: string; profile?: string | undefined }, b: RuleRow): boolean {
  return a.field === b.field && a.profile === b.profile;
}

const SURE: readonly Confidence[] = ['seen', 'copy', 'memory'];

function takenOver(old: RuleRow, { inherited = 'seen', renumbered = [] }: PackFile): RuleRow {
  const confidence = SURE[Math.max(SURE.indexOf(old.confidence), SURE.indexOf(inherited))] as Confidence;
  return { ...old, confidence, section: newNumber(old.section, renumbered) };
}

/** The first that fits; a star stands for all that follows, where the numbers below did not stay alike. */
function newNumber(section: string, renumbered: readonly (readonly [string, string])[]): string {
  for (const [was, is] of renumbered) {
    const start = was.replace('*', '');
    if (section.startsWith(start)) return was.endsWith('*') ? is : section.replaceAll(start, is);
  }
  return section;
}

/** A least over its most would make every stair break one of the two. */
function crossedPairs({ id, rows }: RulePack): Problem[] {
  return rows.flatMap((least) => {
    const most = pairOf(least.field);
    const over = rows.find(
      (each) =>
        each.field === most &&
        each.unit === least.unit &&
        (each.profile === least.profile || each.profile === undefined || least.profile === undefined) &&
        Number(least.value) > Number(each.value),
    );
    return over === undefined ? [] : [say(id, least.field, least.field, `its least is over its most in ${over.field}`)];
  });
}

function pairOf(field: string): string | null {
  if (field.endsWith('.min')) return `${field.slice(0, -4)}.max`;
  return field === 'flight.minRisers' ? 'flight.maxRisers' : null;
}

interface Issue {
  readonly path: readonly PropertyKey[];
  readonly code?: string | undefined;
  readonly message: string;
  readonly keys?: readonly string[];
}

function fault(id: string, issue: Issue, place = '', name = ''): Problem {
  const keys = issue.keys?.join(', ');
  const key = [place, ...issue.path.map(String), ...(keys === undefined ? [] : [keys])].filter((part) => part !== '');
  return say(id, key.join('.'), name, keys === undefined ? issue.message : `has a key that is not known: ${keys}`);
}

function say(id: string, key: string, row: string, why: string): Problem {
  return { place: `${id}.${key}`, code: 'pack.refused', values: { pack: id, row, why } };
}

function idOf(data: unknown): string {
  return typeof data === 'object' && data !== null && 'id' in data ? String(data.id) : 'pack';
}

function refused(problems: readonly Problem[]): { readonly ok: false; readonly problems: readonly Problem[] } {
  return { ok: false, problems };
}
