/**
 * Version 1 of the job file as JSON Schema (draft 2020-12), for editors and for other programs.
 * It says what `schema` says and no more: which keys there are and what kind each holds. Whether a
 * text is a length, and whether the lengths make a stair, only the program itself can tell.
 *
 * Only a test imports this file, so that the page does not carry what it has no use for.
 */
import * as z from 'zod/mini';
import { jobSchema } from './schema';

export function jobJsonSchema(): object {
  const { $schema, ...keys } = z.toJSONSchema(jobSchema, { target: 'draft-2020-12', io: 'input' });
  return {
    $schema,
    title: 'Pitchboard job, version 1',
    description: 'Every key is described in docs/job-file.md. Made from src/document/schema.ts; not written by hand.',
    ...keys,
  };
}
