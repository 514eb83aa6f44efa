import fc from 'fast-check';
import { expect, test } from 'vitest';
import { sameContent } from '../../../src/state/sameContent';
import { compareWithFile } from '../../../src/state/saveStatus';
import { jobNamed } from './sampleJobs';

const saved = jobNamed('Boathouse');

test('without a file it was never saved to one', () => {
  expect(compareWithFile(saved, { name: null, savedJob: null })).toBe('never-saved-to-file');
  expect(compareWithFile(saved, { name: 'a.json', savedJob: null })).toBe('never-saved-to-file');
});

test('the same content is the same, whichever object holds it', () => {
  expect(compareWithFile(structuredClone(saved), { name: 'a.json', savedJob: saved })).toBe('same-as-file');
});

test('one changed letter is a change', () => {
  expect(compareWithFile(jobNamed('boathouse'), { name: 'a.json', savedJob: saved })).toBe('changed-since-file');
});

test('a key that is undefined is a key left out', () => {
  expect(sameContent({ a: 1, b: undefined }, { a: 1 })).toBe(true);
});

test.each([
  [{ a: [1, 2] }, { a: [2, 1] }],
  [{ a: [1] }, { a: { 0: 1 } }],
  [{ a: [1] }, { a: [1, 2] }],
  [{ a: null }, { a: {} }],
  [{ a: '1' }, { a: 1 }],
  [{ a: 1 }, {}],
])('%j is not %j', (one, other) => {
  expect(sameContent(one, other)).toBe(false);
  expect(sameContent(other, one)).toBe(false);
});

test('it agrees with comparing the texts, keys in order', () => {
  const json = fc.jsonValue({ maxDepth: 2 }).map((value) => JSON.parse(JSON.stringify(value)));
  fc.assert(
    fc.property(json, json, (one, other) => {
      expect(sameContent(one, structuredClone(one))).toBe(true);
      expect(sameContent(one, other)).toBe(sorted(one) === sorted(other));
    }),
  );
});

function sorted(value: unknown): string {
  return JSON.stringify(value, (_, part) =>
    typeof part === 'object' && part !== null && !Array.isArray(part)
      ? Object.fromEntries(Object.entries(part).sort(([one], [other]) => (one < other ? -1 : 1)))
      : part,
  );
}
