/** The lumber data is refused when it is loaded, with the row named, and not when a stringer stands on it. */
import * as z from 'zod/mini';
import type { LumberBook } from '../../core/carry/lumber';
import type { Problem, Result } from '../../core/result';

const positive = z.number({ error: 'needs a number' }).check(z.positive({ error: 'needs more than nothing' }));
const sourced = {
  confidence: z.enum(['seen', 'copy', 'memory'], { error: 'has to say how sure it is' }),
  sources: z.array(z.string(), { error: 'needs a source' }).check(z.minLength(1, { error: 'needs a source' })),
};
const words = z.string({ error: 'needs words' }).check(z.minLength(1, { error: 'needs words' }));
const property = z.strictObject({
  on: z.enum(['bending', 'shear', 'bearing', 'stiffness'], { error: 'needs a property that is known' }),
  // A factor that raised a value for wet or incised wood would be a slip of the pen.
  factor: positive.check(z.lte(1, { error: 'lowers a value and never raises it' })),
  freeUpTo: z.optional(positive),
  ...sourced,
});
const share = z.strictObject({ factor: positive, least: positive, spacing: positive, ...sourced });

const lumber = z.strictObject({
  sources: z.record(z.string(), words),
  values: z.array(
    z.strictObject({
      species: words,
      grades: z.array(words).check(z.minLength(1, { error: 'needs a grade' })),
      nominal: z.optional(positive),
      bending: positive,
      shear: positive,
      bearing: positive,
      stiffness: positive,
      ...sourced,
    }),
  ),
  sizes: z.array(z.strictObject({ nominal: positive, depth: positive, ...sourced })),
  sizeFactors: z.array(z.strictObject({ nominal: positive, factor: positive, ...sourced })),
  wet: z.array(property),
  incised: z.array(property),
  duration: z.array(
    z.strictObject({
      name: z.enum(['permanent', 'occupancy', 'snow', 'construction'], { error: 'needs a duration that is known' }),
      factor: positive,
      ...sourced,
    }),
  ),
  repetitive: share,
  thickness: z.strictObject({ least: positive, most: positive, ...sourced }),
  loads: z.array(
    z.strictObject({
      what: z.enum(['live', 'point', 'dead'], { error: 'needs a load that is known' }),
      value: positive,
      unit: z.enum(['psf', 'lbf'], { error: 'needs a unit that is known' }),
      ...sourced,
    }),
  ),
  deflection: z.array(
    z.strictObject({ what: z.enum(['live', 'total'], { error: 'needs a load' }), part: positive, ...sourced }),
  ),
  published: z.array(
    z.strictObject({
      what: z.enum(['throat', 'depth', 'thickness', 'span', 'spacing', 'count'], { error: 'needs a thing' }),
      sense: z.enum(['least', 'most'], { error: 'is a least or a most' }),
      value: positive,
      unit: z.enum(['in', 'mm', 'count'], { error: 'needs a unit that is known' }),
      whose: words,
      support: z.optional(z.enum(['free-standing', 'along-walls'])),
      widerThan: z.optional(z.strictObject({ value: positive, unit: z.enum(['in', 'mm']) })),
      risers: z.optional(z.literal('closed')),
      ...sourced,
    }),
  ),
});

type LumberFile = z.infer<typeof lumber>;

/**
 * @param data parsed JSON of the lumber data
 * @returns the data with its sources in words, or every row that cannot be trusted
 */
export function readLumber(data: unknown): Result<LumberBook> {
  const reading = lumber.safeParse(data);
  if (!reading.success) {
    return refused(reading.error.issues.map(({ path, message }) => fault(path.map(String).join('.'), message)));
  }
  const { sources, ...file } = reading.data;
  const problems = [...unlisted(file, sources), ...gaps(file)];
  if (problems.length > 0) return refused(problems);
  return { ok: true, value: withSources(file, sources) as LumberBook };
}

/** Every source that a row names has to be listed. */
function unlisted(node: unknown, sources: LumberFile['sources'], path = ''): Problem[] {
  if (typeof node !== 'object' || node === null) return [];
  return Object.entries(node).flatMap(([key, value]: [string, unknown]) => {
    const place = path === '' ? key : `${path}.${key}`;
    if (key !== 'sources') return unlisted(value, sources, place);
    const unknown = (value as string[]).find((name) => !Object.hasOwn(sources, name));
    return unknown === undefined ? [] : [fault(place, `names a source that is not listed: ${unknown}`)];
  });
}

const PROPERTIES = ['bending', 'shear', 'bearing', 'stiffness'];

/** What the sums cannot do without. */
function gaps({ loads, deflection, wet, incised, duration, sizes, sizeFactors }: Omit<LumberFile, 'sources'>) {
  const needed: readonly (readonly [list: string, names: readonly unknown[], has: readonly unknown[]])[] = [
    ['loads', ['live', 'point', 'dead'], loads.map(({ what }) => what)],
    ['deflection', ['live', 'total'], deflection.map(({ what }) => what)],
    ['wet', PROPERTIES, wet.map(({ on }) => on)],
    ['incised', PROPERTIES, incised.map(({ on }) => on)],
    ['duration', ['permanent', 'occupancy', 'snow', 'construction'], duration.map(({ name }) => name)],
    ['sizeFactors', sizes.map(({ nominal }) => nominal), sizeFactors.map(({ nominal }) => nominal)],
  ];
  return needed.flatMap(([list, names, has]) =>
    names.filter((name) => !has.includes(name)).map((name) => fault(list, `has no row for ${String(name)}`)),
  );
}

function withSources(node: unknown, sources: LumberFile['sources']): unknown {
  if (Array.isArray(node)) return node.map((each: unknown) => withSources(each, sources));
  if (typeof node !== 'object' || node === null) return node;
  return Object.fromEntries(
    Object.entries(node).map(([key, value]: [string, unknown]) => [
      key,
      key === 'sources' ? (value as string[]).map((name) => sources[name]) : withSources(value, sources),
    ]),
  );
}

function fault(place: string, why: string): Problem {
  return { place: `lumber.${place}`, code: 'pack.refused', values: { pack: 'lumber', row: place, why } };
}

function refused(problems: readonly Problem[]): { readonly ok: false; readonly problems: readonly Problem[] } {
  return { ok: false, problems };
}
