import { describe, expect, test } from 'vitest';
import { FORMAT, openJob, readJob, VERSION } from '../../../src/document/openJob';
import { bare, changed, DECK, LOFT, SLAB } from '../../fixtures/stairs';
import { asText, bytes, faults, loft } from './wrongFiles';

describe('files that open', () => {
  test.each([
    ['the loft', LOFT],
    ['the deck', DECK],
    ['the slab', SLAB],
    ['the least', bare('metric', '2700 mm')],
  ])('%s, as text and as bytes', (_, job) => {
    expect(openJob(asText(job))).toEqual({ ok: true, value: job });
    expect(openJob(bytes(asText(job)))).toEqual({ ok: true, value: job });
  });

  test('bytes may begin with a mark of their order', () => {
    expect(faults(bytes(`\uFEFF${asText(LOFT)}`))).toEqual([]);
  });

  test('brackets and quotes inside a text are no nesting', () => {
    expect(
      faults(
        loft((job) => {
          job['name'] = `${'['.repeat(50)}"\\${'{'.repeat(50)}`;
        }),
      ),
    ).toEqual([]);
  });

  test('nothing is changed on the way: the text that was typed is kept', () => {
    const job = changed(LOFT, { survey: { rise: '  105-7/16"  ' } });
    const opened = openJob(asText(job));
    expect(opened.ok && opened.value.stairs[0]?.survey.rise).toBe('  105-7/16"  ');
  });
});

describe('files that are refused whole', () => {
  const deep = (levels: number) => `${'['.repeat(levels)}${']'.repeat(levels)}`;

  test.each<[string, Uint8Array | string, string]>([
    ['nothing', '', 'job file.notJson'],
    ['a comma too many', '{"format":"pitchboard.job",}', 'job file.notJson'],
    ['half a file', asText(LOFT).slice(0, 200), 'job file.notJson'],
    ['no text at all', new Uint8Array([0xff, 0xfe, 0x00]), 'job file.notText'],
    ['too long', ' '.repeat(1_000_001), 'job file.tooLarge'],
    ['too long in bytes', new Uint8Array(1_000_001), 'job file.tooLarge'],
    ['33 levels deep', deep(33), 'job file.tooDeep'],
    ['100,000 levels deep', deep(100_000), 'job file.tooDeep'],
    ['deep objects', '{"a":'.repeat(40), 'job file.tooDeep'],
    ['32 levels deep', deep(32), 'job file.notObject'],
    ['a list', '[]', 'job file.notObject'],
    ['null', 'null', 'job file.notObject'],
    ['a text', '"job"', 'job file.notObject'],
    ['a number', '1', 'job file.notObject'],
    ['an empty object', '{}', 'job file.format'],
    [
      'another format',
      loft((job) => {
        job['format'] = 'other.job';
      }),
      'job file.format',
    ],
    [
      'no format',
      loft((job) => {
        delete job['format'];
      }),
      'job file.format',
    ],
    [
      'a newer version',
      loft((job) => {
        job['version'] = 2;
      }),
      'job file.tooNew',
    ],
    [
      'version 1.5',
      loft((job) => {
        job['version'] = 1.5;
      }),
      'job file.tooNew',
    ],
    [
      'version 0',
      loft((job) => {
        job['version'] = 0;
      }),
      'job file.version',
    ],
    [
      'version "1"',
      loft((job) => {
        job['version'] = '1';
      }),
      'job file.version',
    ],
    [
      'no version',
      loft((job) => {
        delete job['version'];
      }),
      'job file.version',
    ],
    [
      'a rise written twice',
      asText(LOFT).replace('"survey":{', '"survey":{"rise":"99 in",'),
      'stairs[0].survey.rise key.twice',
    ],
    [
      'a rise written twice, once with an escape',
      asText(LOFT).replace('"survey":{', '"survey":{"\\u0072ise":"99 in",'),
      'stairs[0].survey.rise key.twice',
    ],
    ['a name written twice', asText(LOFT).replace('{', '{"name":"a","name":"b",'), 'name key.twice'],
    ['a prototype', asText(LOFT).replace('{', '{"__proto__":{},'), '__proto__ file.prototypeKey'],
    [
      'a prototype deep inside',
      asText(LOFT).replace('"survey":{', '"survey":{"__proto__":1,'),
      'stairs[0].survey.__proto__ file.prototypeKey',
    ],
  ])('%s', (_, content, fault) => {
    expect(faults(content)).toEqual([fault]);
  });

  test('1 MB and 32 levels are still read', () => {
    expect(faults(asText(LOFT).padEnd(1_000_000, ' '))).toEqual([]);
  });
});

describe('a value that is already parsed', () => {
  test('is read the same way', () => {
    expect(readJob(LOFT)).toEqual({ ok: true, value: LOFT });
    expect(readJob(undefined)).toMatchObject({ ok: false, problems: [{ place: 'job', code: 'file.notObject' }] });
  });

  test('a chain of objects that ends in nothing', () => {
    expect(readJob({ format: FORMAT, version: VERSION })).toMatchObject({
      ok: false,
      problems: [{ place: 'stairs', code: 'key.missing' }],
    });
  });
});
