/** A pack is refused when it is loaded, with the row named, not when a stair stands on it. */
import * as z from 'zod/mini';
import type { RulePack } from '../core/codes/rulePack';

const row = z
  .strictObject({
    field: z.string().check(z.minLength(1)),
    value: z.union([z.number(), z.boolean(), z.string(), z.null()]),
    unit: z.enum(['in', 'in2', 'mm', 'deg', 'count', 'bool', '1:n', 'psf', 'lbf', 'fc', 'text', 'rule', 'none']),
    section: z.string().check(z.minLength(1)),
    confidence: z.enum(['seen', 'copy', 'memory']),
    sources: z.array(z.string()).check(z.minLength(1)),
    profile: z.optional(z.string()),
  })
  .check(
    z.refine((read) => typeof read.value !== 'number' || !['text', 'rule', 'none', 'bool'].includes(read.unit), {
      error: 'a number needs a unit',
    }),
  );

const pack = z
  .strictObject({
    id: z.string().check(z.regex(/^[a-z0-9.-]+$/)),
    title: z.string(),
    edition: z.string(),
    jurisdiction: z.string(),
    profiles: z.array(z.string()),
    sources: z.record(z.string(), z.string()),
    rows: z.array(row),
  })
  .check(
    z.refine((read) => read.rows.every((each) => each.sources.every((source) => Object.hasOwn(read.sources, source))), {
      error: 'a row names a source that the pack does not list',
    }),
  );

/**
 * @param data parsed JSON of one pack
 * @returns the pack
 * @throws Error naming the row, for our own data: a pack that cannot be trusted must not load
 */
export function readPack(data: unknown): RulePack {
  const reading = pack.safeParse(data);
  if (reading.success) return reading.data;
  const [first] = reading.error.issues;
  throw new Error(`rule pack refused at ${first?.path.join('.')}: ${first?.message}`);
}
