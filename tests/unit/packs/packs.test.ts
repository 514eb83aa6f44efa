import { describe, expect, test } from 'vitest';
import type { RulePack } from '../../../src/core/codes/rulePack';
import irc2021 from '../../../src/packs/codes/irc-2021.json';
import { readPack } from '../../../src/packs/readPack';
import { DEFAULT_PACK, findPack, loadPack, TASTES } from '../../../src/packs/ruleBook';
import { makeShelf } from '../../../src/packs/shelf';

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
const withRow = (changes: object) => ({ ...pack, rows: [row, { ...row, field: 'tread.min', ...changes }] });

function taken(data: unknown, base?: RulePack): RulePack {
  const reading = readPack(data, base);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.value;
}

function whyNot(data: unknown, base?: RulePack): string {
  const reading = readPack(data, base);
  return reading.ok
    ? 'taken'
    : reading.problems.map(({ place, values }) => `${place}: ${values['row']} ${values['why']}`).join('\n');
}

describe('a pack is refused when it is read', () => {
  test('a good one is not', () => {
    expect(taken(pack)).toEqual(pack);
    expect(
      taken(withRow({ profile: 'dwelling', when: 'open-risers', advice: true, inclusive: true })).rows,
    ).toHaveLength(2);
    expect(taken(withRow({ value: null, unit: 'none' })).rows).toHaveLength(2);
    expect(taken(withRow({ value: 'as wide as the flight', unit: 'rule' })).rows).toHaveLength(2);
    expect(taken(withRow({ field: 'openRiser.allowed', value: false, unit: 'bool' })).rows).toHaveLength(2);
    expect(taken(withRow({ measured: 'Nosing to nosing.' })).rows[1]?.measured).toBe('Nosing to nosing.');
    const readAt = [{ address: 'https://example.org/code', mark: 'memory' }];
    expect(taken({ ...pack, readAt }).readAt).toEqual(readAt);
  });

  test.each<[string, unknown, RegExp]>([
    ['no object', null, /^pack\.: /],
    ['an id in capitals', { ...pack, id: 'TEST' }, /^TEST\.id: .*lower-case/],
    ['no rows', { ...pack, rows: undefined }, /^test\.rows/],
    ['a key too many', { ...pack, colour: 'red' }, /^test\.colour: .*not known: colour/],
    ['a row that is nothing', { ...pack, rows: [null] }, /^test\.rows\[0\]/],
    ['a row without field', withRow({ field: '' }), /^test\.rows\[1\]\.field: .*needs a field/],
    [
      'a field that there is not',
      withRow({ field: 'tread.mni' }),
      /rows\[1\]\S*: tread\.mni is no field that is known/,
    ],
    ['a field named like a property of every object', withRow({ field: 'constructor' }), /is no field that is known/],
    [
      'a length in degrees',
      withRow({ unit: 'deg', value: 40 }),
      /tread\.min has a unit that its field is not measured in/,
    ],
    [
      'a count in inches',
      withRow({ field: 'flight.maxRisers', value: 18 }),
      /flight\.maxRisers has a unit that its field/,
    ],
    ['a limit under nothing', withRow({ value: -10 }), /have to fit/],
    ['a way of measuring that is not said', withRow({ measured: '' }), /rows\[1\]\.measured: tread\.min says how/],
    [
      'an address that cannot be trusted',
      { ...pack, readAt: [{ address: 'http://x', mark: 'read' }] },
      /readAt.*https/,
    ],
    ['an address without a mark', { ...pack, readAt: [{ address: 'https://x' }] }, /readAt.*how sure/],
    [
      'a withdrawn field that there is not',
      withRow({ field: 'tread.mni', withdrawn: true }),
      /is no field that is known/,
    ],
    ['a row without section', withRow({ section: '' }), /rows\[1\]\.section: tread\.min needs a section/],
    ['a row whose section is missing', withRow({ section: undefined }), /tread\.min needs a section/],
    ['a row without source', withRow({ sources: [] }), /rows\[1\]\.sources: tread\.min needs a source/],
    ['a row whose sources are missing', withRow({ sources: undefined }), /tread\.min needs a source/],
    ['a source that the pack does not list', withRow({ sources: ['B'] }), /tread\.min names a source .*: B$/],
    ['a source named like a property of every object', withRow({ sources: ['toString'] }), /toString/],
    ['a number without a unit', withRow({ unit: 'none' }), /tread\.min .*a number needs a unit/],
    ['a limit whose unit is missing', withRow({ unit: undefined }), /unit: tread\.min needs a unit/],
    ['a number as words', withRow({ unit: 'text' }), /a number needs a unit/],
    ['words as a number', withRow({ value: 'ten' }), /have to fit/],
    ['a yes that is a length', withRow({ value: true }), /have to fit/],
    ['nothing that is a length', withRow({ value: null }), /have to fit/],
    ['an angle past plumb', withRow({ value: 91, unit: 'deg' }), /have to fit/],
    ['an angle under level', withRow({ value: -1, unit: 'deg' }), /have to fit/],
    ['a unit that nobody knows', withRow({ unit: 'cubit' }), /needs a unit that is known/],
    ['a row more sure than can be said', withRow({ confidence: 'certain' }), /has to say how sure/],
    [
      'a key of a row too many',
      withRow({ note: 'x' }),
      /rows\[1\]\.note: tread\.min has a key that is not known: note/,
    ],
    ['a condition that nobody knows', withRow({ when: 'raining' }), /rows\[1\]\.when/],
    [
      'a least over its most',
      withRow({ field: 'riser.min', value: 8 }),
      /riser\.min its least is over its most in riser\.max/,
    ],
    ['the same for one profile', withRow({ field: 'riser.min', value: 8, profile: 'a' }), /least is over/],
    ['a withdrawn row without source', withRow({ withdrawn: true, sources: [] }), /needs a source/],
    ['a base that is not there', { ...pack, base: 'other' }, /needs its base/],
  ])('%s', (_, data, why) => {
    expect(whyNot(data)).toMatch(why);
  });

  test('counts of risers cross like lengths, other units and other profiles do not', () => {
    const counts = (least: number) => ({
      ...pack,
      rows: [
        { ...row, field: 'flight.minRisers', value: least, unit: 'count' },
        { ...row, field: 'flight.maxRisers', value: 18, unit: 'count' },
      ],
    });
    expect(whyNot(counts(18))).toBe('taken');
    expect(whyNot(counts(19))).toMatch(/minRisers/);
    expect(whyNot(withRow({ field: 'riser.min', value: 150, unit: 'mm' }))).toBe('taken');
    const apart = [
      { ...row, profile: 'a' },
      { ...row, field: 'riser.min', value: 8, profile: 'b' },
    ];
    expect(whyNot({ ...pack, rows: apart })).toBe('taken');
  });
});

describe('a pack that lists only what differs', () => {
  const base = taken({
    ...pack,
    id: 'base',
    profiles: ['a'],
    rows: [
      { ...row, section: 'R1.2.3' },
      { ...row, field: 'other', value: 'one', unit: 'text', section: 'R1.3, R1.4' },
      { ...row, field: 'other', value: 'two', unit: 'text', section: 'R1.5', confidence: 'copy' },
      { ...row, field: 'width.min', profile: 'a', section: 'R2' },
      { ...row, field: 'tread.min', confidence: 'memory', section: '9' },
    ],
  });
  const over = {
    ...pack,
    base: 'base',
    profiles: ['b'],
    sources: { B: 'there' },
    rows: [{ ...row, value: 8, sources: ['B'], section: 'S' }],
  };

  test('has its rows in their place, and the others of its base', () => {
    const whole = taken(over, base);
    expect(whole.rows.map(({ field, value }) => [field, value])).toEqual([
      ['riser.max', 8],
      ['other', 'one'],
      ['other', 'two'],
      ['width.min', 7.75],
      ['tread.min', 7.75],
    ]);
    expect([whole.base, whole.profiles, whole.sources]).toEqual(['base', ['a', 'b'], { A: 'here', B: 'there' }]);
  });

  test('adds what its base lacks, for a profile of its own too', () => {
    const added = { ...row, field: 'width.min', value: 40, sources: ['B'] };
    const whole = taken({ ...over, rows: [added, { ...added, profile: 'b', value: 41 }] }, base);
    expect(whole.rows.filter(({ field }) => field === 'width.min').map(({ value }) => value)).toEqual([7.75, 40, 41]);
  });

  test('puts one row in place of several of its base', () => {
    const whole = taken(
      { ...over, rows: [{ ...row, field: 'other', value: 'three', unit: 'text', sources: ['B'] }] },
      base,
    );
    expect(whole.rows.filter(({ field }) => field === 'other').map(({ value }) => value)).toEqual(['three']);
  });

  test('withdraws a row', () => {
    const gone = { field: 'riser.max', withdrawn: true, section: 'S', confidence: 'seen', sources: ['B'] };
    expect(taken({ ...over, rows: [gone] }, base).rows.map(({ field }) => field)).not.toContain('riser.max');
    const other = { ...gone, field: 'width.min' };
    expect(taken({ ...over, rows: [other] }, base).rows.map(({ field }) => field)).toContain('width.min');
  });

  test('marks what it takes over no surer than it is of it', () => {
    const sure = (inherited?: string) =>
      taken({ ...over, ...(inherited === undefined ? {} : { inherited }) }, base).rows.map(
        ({ confidence }) => confidence,
      );
    expect(sure()).toEqual(['seen', 'seen', 'copy', 'seen', 'memory']);
    expect(sure('copy')).toEqual(['seen', 'copy', 'copy', 'copy', 'memory']);
    expect(sure('memory')).toEqual(['seen', 'memory', 'memory', 'memory', 'memory']);
  });

  test('gives what it takes over its new section numbers', () => {
    const renumbered = [
      ['R1.3', 'S3'],
      ['R1.*', 'S9'],
    ];
    expect(taken({ ...over, renumbered }, base).rows.map(({ section }) => section)).toEqual([
      'S',
      'S3, R1.4',
      'S9',
      'R2',
      '9',
    ]);
  });

  test('is refused when together they cross', () => {
    const least = { ...row, field: 'riser.min', value: 8, sources: ['B'] };
    expect(whyNot({ ...over, rows: [least] }, base)).toMatch(/least is over/);
  });
});

describe('where packs stand ready', () => {
  const late = (data: unknown, base?: string) => ({
    ...(base === undefined ? {} : { base }),
    load: () => Promise.resolve({ default: data }),
  });

  test('a bad one is listed with its reasons and takes no other down', async () => {
    const shelf = makeShelf(new Map([['good', taken({ ...pack, id: 'good' })]]), {
      bad: late({ ...pack, id: 'bad', rows: [{}] }),
      later: late({ ...pack, id: 'later' }),
      worse: late(null),
      onBad: late({ ...pack, id: 'onBad', base: 'bad' }, 'bad'),
    });
    expect(await shelf.load('bad')).toBeUndefined();
    expect(shelf.find('bad')).toBeUndefined();
    expect(shelf.find('good')?.id).toBe('good');
    expect((await shelf.load('later'))?.id).toBe('later');
    expect(await shelf.load('worse')).toBeUndefined();
    expect(await shelf.load('worse')).toBeUndefined();
    expect(await shelf.load('onBad')).toBeUndefined();
    expect(shelf.refused().map(({ id }) => id)).toEqual(['bad', 'worse', 'onBad']);
    expect(shelf.refused()[0]?.problems.length).toBeGreaterThan(0);
    expect(shelf.ready().map(({ id }) => id)).toEqual(['good', 'later']);
  });

  test('is read the first time that it is asked for, and then kept', async () => {
    let fetched = 0;
    const shelf = makeShelf(new Map(), {
      later: {
        load: () => {
          fetched += 1;
          return Promise.resolve({ default: { ...pack, id: 'later' } });
        },
      },
    });
    expect([shelf.find('later'), fetched]).toEqual([undefined, 0]);
    const [one, other] = await Promise.all([shelf.load('later'), shelf.load('later')]);
    expect(one).toBe(other);
    const before = fetched;
    expect(await shelf.load('later')).toBe(one);
    expect([shelf.find('later'), fetched]).toEqual([one, before]);
  });

  test('what could not be fetched can be asked for again', async () => {
    let reachable = false;
    const shelf = makeShelf(new Map(), {
      far: {
        load: () =>
          reachable ? Promise.resolve({ default: { ...pack, id: 'far' } }) : Promise.reject(new Error('offline')),
      },
    });
    await expect(shelf.load('far')).rejects.toThrow('offline');
    expect(shelf.refused()).toEqual([]);
    reachable = true;
    expect((await shelf.load('far'))?.id).toBe('far');
  });

  test('what there is not, or is a property of every object, is not there', async () => {
    const shelf = makeShelf(new Map(), {});
    expect([shelf.find('constructor'), await shelf.load('constructor')]).toEqual([undefined, undefined]);
  });
});

describe('the packs of this build', () => {
  test('the one that comes with the page reads like the others, and to the same pack', () => {
    expect(taken(irc2021)).toEqual(findPack(DEFAULT_PACK));
  });

  test('are found by their id in lower case, and only so', async () => {
    expect(findPack(DEFAULT_PACK)?.id).toBe(DEFAULT_PACK);
    expect(await loadPack(DEFAULT_PACK)).toBe(findPack(DEFAULT_PACK));
    expect(findPack(DEFAULT_PACK.toUpperCase())).toBeUndefined();
    expect(findPack('constructor')).toBeUndefined();
  });

  test('every proportion rule has a source and a band', () => {
    for (const taste of TASTES) {
      expect(taste.source).not.toBe('');
      expect(taste.low).toBeLessThan(taste.high);
    }
  });
});
