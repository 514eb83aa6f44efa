import { describe, expect, test } from 'vitest';
import { readPack } from '../../../src/packs/readPack';
import { allPacks, DEFAULT_PACK, findPack, TASTES } from '../../../src/packs/ruleBook';

const row = { field: 'riser.max', value: 7.75, unit: 'in', section: '1', confidence: 'seen', sources: ['A'] };
const pack = {
  id: 'test',
  title: 'T',
  edition: '2000',
  jurisdiction: 'nowhere',
  profiles: [],
  sources: { A: 'here' },
  rows: [row],
};
const withRow = (changes: object) => ({ ...pack, rows: [row, { ...row, ...changes }] });

describe('a pack is refused when it is read', () => {
  test('a good one is not', () => {
    expect(readPack(pack)).toEqual(pack);
    expect(readPack(withRow({ profile: 'dwelling' })).rows).toHaveLength(2);
  });

  test.each<[string, unknown]>([
    ['no object', null],
    ['an id in capitals', { ...pack, id: 'IRC-2021' }],
    ['no rows', { ...pack, rows: undefined }],
    ['a row without field', withRow({ field: '' })],
    ['a row without section', withRow({ section: '' })],
    ['a row without source', withRow({ sources: [] })],
    ['a row with a source that the pack does not list', withRow({ sources: ['B'] })],
    ['a source named like a property of every object', withRow({ sources: ['toString'] })],
    ['a number without a unit', withRow({ unit: 'none' })],
    ['a number as words', withRow({ unit: 'text' })],
    ['a unit that nobody knows', withRow({ unit: 'cubit' })],
    ['a row more sure than can be said', withRow({ confidence: 'certain' })],
    ['a key too many', withRow({ note: 'x' })],
  ])('%s', (_, data) => {
    expect(() => readPack(data)).toThrow(/rule pack refused at/);
  });

  test('the row is named', () => {
    expect(() => readPack(withRow({ section: '' }))).toThrow('rows.1.section');
  });
});

describe('the packs of this build', () => {
  test('are found by their id in lower case, and only so', () => {
    expect(findPack(DEFAULT_PACK)?.id).toBe(DEFAULT_PACK);
    expect(findPack(DEFAULT_PACK.toUpperCase())).toBeUndefined();
    expect(findPack('constructor')).toBeUndefined();
    expect(allPacks().map(({ id }) => id)).toContain(DEFAULT_PACK);
  });

  test('every row names a source that can be looked up, and no field of a length has two values for one profile', () => {
    for (const each of allPacks()) {
      for (const { sources } of each.rows) for (const source of sources) expect(each.sources[source]).toMatch(/./);
      const numbers = each.rows
        .filter(({ value }) => typeof value === 'number')
        .map(({ field, profile }) => `${field} ${profile ?? ''}`);
      expect(new Set(numbers).size).toBe(numbers.length);
    }
  });

  test('every proportion rule has a source and a band', () => {
    for (const taste of TASTES) {
      expect(taste.source).not.toBe('');
      expect(taste.low).toBeLessThan(taste.high);
    }
  });
});
