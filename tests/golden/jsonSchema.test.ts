import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import * as z from 'zod/mini';
import { jobSchema, KNOWN_KEYS } from '../../src/document/schema';

const FILE = fileURLToPath(new URL('../../docs/job-file.schema.json', import.meta.url));

/**
 * The job file as JSON Schema, for editors and for other programs. It says which keys there are and
 * what kind each holds; whether a text is a length only the program itself can tell. Made here and
 * not in src, so that the page does not carry what it has no use for.
 */
function jobJsonSchema(): object {
  const { $schema, ...keys } = z.toJSONSchema(jobSchema, { target: 'draft-2020-12', io: 'input' });
  return {
    $schema,
    title: 'Pitchboard job, version 1',
    description: 'Every key is described in docs/job-file.md. Made from src/document/schema.ts; not written by hand.',
    ...keys,
  };
}

if (process.env['PITCHBOARD_GOLDEN'] === 'write') {
  writeFileSync(FILE, `${JSON.stringify(jobJsonSchema(), null, 2)}\n`);
}

/** Every object that the schema describes, as the list of its keys. */
function objectsIn(schema: unknown): { keys: string[]; closed: boolean }[] {
  if (typeof schema !== 'object' || schema === null) return [];
  const { properties, additionalProperties } = schema as Record<string, unknown>;
  const inner = Object.values(schema).flatMap(objectsIn);
  if (typeof properties !== 'object' || properties === null) return inner;
  return [{ keys: Object.keys(properties), closed: additionalProperties === false }, ...inner];
}

it('is the schema that docs/job-file.schema.json holds', () => {
  expect(JSON.parse(readFileSync(FILE, 'utf8'))).toEqual(jobJsonSchema());
});

it('knows the keys that the reader knows, and no others', () => {
  const objects = objectsIn(jobJsonSchema());
  for (const keys of Object.values(KNOWN_KEYS)) expect(objects.map((one) => one.keys)).toContainEqual(keys);
  expect(objects.filter(({ closed }) => !closed)).toEqual([]);
});
