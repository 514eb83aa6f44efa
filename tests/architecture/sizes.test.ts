import { describe, expect, it } from 'vitest';
import { EXCEPTIONS } from './exceptions';
import { scan } from './scan';
import { sizeFaults } from './sizeRules';
import { scanSources } from './tree';

const lines = (count: number) => 'x();\n'.repeat(count);
const tooLong = (path: string, text: string) => sizeFaults([scan(path, text)], []);

describe('the project', () => {
  it('stays readable', () => expect(sizeFaults(scanSources(), EXCEPTIONS)).toEqual([]));
});

describe('the limits', () => {
  it('hold a file to 400 lines, and data to none', () => {
    expect(tooLong('src/core/a.ts', lines(400))).toEqual([]);
    expect(tooLong('src/core/a.ts', lines(401))).toEqual([expect.stringContaining('401 lines; a file over 400')]);
    expect(tooLong('src/packs/a.ts', lines(401))).toEqual([]);
  });

  it.each([
    ['a function', (body: string) => `function long() {\n${body}}`, 'long has 81'],
    ['an arrow', (body: string) => `const long = () => {\n${body}};`, 'long has 81'],
    ['a wrapped function', (body: string) => `const long = wrap(() => {\n${body}});`, 'long has 81'],
    ['a method', (body: string) => `class A {\nlong() {\n${body}}\n}`, 'long has 81'],
    [
      'a nested function',
      (body: string) => `function outer() { return wrap(function long() {\n${body}}); }`,
      'long has 81',
    ],
    ['an unnamed function', (body: string) => `wrap(() => {\n${body}});`, 'unnamed has 81'],
  ])('hold %s to 80 lines', (_, make, words) => {
    expect(tooLong('src/core/a.ts', make(lines(78)))).toEqual([]);
    expect(tooLong('src/core/a.ts', make(lines(79)))).toContainEqual(expect.stringContaining(words));
  });

  it('hold a component to 150 lines', () => {
    const make = (count: number) => `const Sheet = memo(function Sheet() {\n${lines(count)}});`;
    expect(tooLong('src/ui/Sheet.tsx', make(148))).toEqual([]);
    expect(tooLong('src/ui/Sheet.tsx', make(149))).toEqual([expect.stringContaining('a component over 150')]);
    expect(tooLong('src/ui/Sheet.tsx', make(149).replaceAll('Sheet()', 'sheet()'))).toEqual([
      expect.stringContaining('a function over 80'),
    ]);
  });
});

describe('an exception', () => {
  const source = scan('src/core/a.ts', `function long() {\n${lines(88)}}`);
  const judged = (given: number, reason = 'a closed table', name = 'long') =>
    sizeFaults([source], [{ path: 'src/core/a.ts', name, lines: given, reason }]);

  it('lets be what it names', () => expect(judged(90)).toEqual([]));
  it('may not grow', () => expect(judged(89)).toEqual([expect.stringContaining('may only shrink')]));
  it('falls with what it names', () => expect(judged(91)).toEqual([expect.stringContaining('write that number')]));
  it('needs a reason', () => expect(judged(90, ' ')).toEqual([expect.stringContaining('no reason')]));
  it('goes when it is not needed', () => {
    expect(judged(90, 'gone', 'other')).toContainEqual(expect.stringContaining('remove it'));
  });
});
