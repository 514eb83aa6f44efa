import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { extensionOf, JOB_FILE_ENDING, safeFileName } from '../../../src/platform/fileName';

test.each([
  ['Boathouse', 'Boathouse.pitchboard.json'],
  ['Sail loft stair', 'Sail-loft-stair.pitchboard.json'],
  ['Dachgeschoß, Küche', 'Dachgescho-Kuche.pitchboard.json'],
  ['boathouse.pitchboard.json', 'boathouse.pitchboard.json'],
  ['boathouse.PITCHBOARD.JSON', 'boathouse.pitchboard.json'],
  ['boathouse.json', 'boathouse.pitchboard.json'],
  ['boathouse.pitchboard.json.json', 'boathouse.pitchboard.json'],
  ['../../etc/passwd', 'etc-passwd.pitchboard.json'],
  ['C:\\jobs\\a', 'C-jobs-a.pitchboard.json'],
  ['--force', 'force.pitchboard.json'],
  ['.hidden', 'hidden.pitchboard.json'],
  ['con', 'stair-con.pitchboard.json'],
  ['Lpt1.old', 'stair-Lpt1.old.pitchboard.json'],
  ['console', 'console.pitchboard.json'],
  ['a\n b\u0000\u202Egpj', 'a-b-gpj.pitchboard.json'],
  ['階段', 'stair.pitchboard.json'],
  ['', 'stair.pitchboard.json'],
  ['.json', 'stair.pitchboard.json'],
])('%j is saved as %s', (text, name) => {
  expect(safeFileName(text)).toBe(name);
});

test('another kind of file has another ending', () => {
  expect(safeFileName('boathouse.pitchboard.json', '.cut-list.csv')).toBe('boathouse.cut-list.csv');
});

test('the extension is the last part', () => {
  expect(extensionOf('a.pitchboard.json')).toBe('.json');
});

describe('any text', () => {
  const piece = fc.oneof(
    fc.string({ unit: 'binary' }),
    fc.string({ unit: 'grapheme' }),
    fc.string(),
    fc.constantFrom('con', 'NUL', 'com1', '.json', '.pitchboard', '.pitchboard.json', '..', '/', '\\', '-', '.', 'é'),
  );
  const text = fc.array(piece, { maxLength: 30 }).map((pieces) => pieces.join(''));
  const ending = fc.constantFrom(JOB_FILE_ENDING, '.pdf', '.cut-list.csv', '.dxf');
  const reserved = /^(con|prn|aux|nul|com\d|lpt\d)$/i;

  test('becomes a name that is safe everywhere', () => {
    fc.assert(
      fc.property(text, ending, (each, end) => {
        const name = safeFileName(each, end);
        expect(name).toMatch(/^[A-Za-z0-9_][A-Za-z0-9._-]*$/);
        expect(name.length).toBeLessThanOrEqual(80);
        expect(name.endsWith(end)).toBe(true);
        expect(name.length).toBeGreaterThan(end.length);
        expect(name.split('.')[0]).not.toMatch(reserved);
        expect(name).not.toContain('..');
      }),
      { numRuns: 2000 },
    );
  });

  test('stays the same when it is made safe again', () => {
    fc.assert(
      fc.property(text, ending, (each, end) => {
        const name = safeFileName(each, end);
        expect(safeFileName(name, end)).toBe(name);
      }),
      { numRuns: 2000 },
    );
  });
});
