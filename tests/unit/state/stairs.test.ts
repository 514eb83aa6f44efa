import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { JobText } from '../../../src/core/job/jobText';
import { addStair, duplicateStair, moveStair, removeStair, renameStair } from '../../../src/state/stairs';

const jobOf = (...ids: string[]): JobText => ({
  format: 'pitchboard.job',
  version: 1,
  stairs: ids.map((id) => ({ id, name: id.toUpperCase(), survey: { rise: '100 in' } })),
});
const ids = (job: JobText) => job.stairs.map(({ id }) => id);

test('a new stair comes last, with an id that is free and nothing measured', () => {
  const job = addStair(jobOf('stair', 'stair-2'), 'Cellar');
  expect(job.stairs.at(-1)).toEqual({ id: 'stair-3', name: 'Cellar', survey: { rise: '' } });
});

test('a copy stands beside its model and is otherwise the same', () => {
  const job = duplicateStair(jobOf('loft', 'cellar'), 0, 'Loft, again');
  expect(ids(job)).toEqual(['loft', 'loft-2', 'cellar']);
  expect(job.stairs[1]).toEqual({ ...job.stairs[0], id: 'loft-2', name: 'Loft, again' });
});

test('a copy of a copy counts on from the same stem', () => {
  expect(ids(duplicateStair(jobOf('loft', 'loft-2'), 1, 'x'))).toEqual(['loft', 'loft-2', 'loft-3']);
});

test('the last stair stays', () => {
  const job = jobOf('loft');
  expect(removeStair(job, 0)).toBe(job);
  expect(ids(removeStair(jobOf('a', 'b', 'c'), 1))).toEqual(['a', 'c']);
});

test('stairs trade places, and nothing moves beyond the ends', () => {
  const job = jobOf('a', 'b', 'c');
  expect(ids(moveStair(job, 0, 1))).toEqual(['b', 'a', 'c']);
  expect(ids(moveStair(job, 2, -1))).toEqual(['a', 'c', 'b']);
  expect(moveStair(job, 0, -1)).toBe(job);
  expect(moveStair(job, 2, 1)).toBe(job);
});

test('a name changes one stair', () => {
  const job = renameStair(jobOf('a', 'b'), 1, 'Back stair');
  expect(job.stairs.map(({ name }) => name)).toEqual(['A', 'Back stair']);
});

test('an index that is not there changes nothing', () => {
  const job = jobOf('a', 'b');
  expect(duplicateStair(job, 5, 'x')).toBe(job);
  expect(ids(removeStair(job, 5))).toEqual(['a', 'b']);
});

test('whatever is done, ids stay unique and there is a stair', () => {
  const change = fc.record({ what: fc.constantFrom('add', 'copy', 'remove', 'up', 'down'), at: fc.nat(6) });
  fc.assert(
    fc.property(fc.array(change, { maxLength: 30 }), (changes) => {
      let job = jobOf('loft');
      for (const { what, at } of changes) {
        if (what === 'add') job = addStair(job, 'x');
        if (what === 'copy') job = duplicateStair(job, at, 'x');
        if (what === 'remove') job = removeStair(job, at);
        if (what === 'up') job = moveStair(job, at, -1);
        if (what === 'down') job = moveStair(job, at, 1);
        expect(new Set(ids(job)).size).toBe(job.stairs.length);
        expect(job.stairs.length).toBeGreaterThan(0);
      }
    }),
  );
});
