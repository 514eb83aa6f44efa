import { describe, expect, it } from 'vitest';
import { inchFaults, purityFaults } from './purityRules';
import { scan } from './scan';
import { scanSources } from './tree';

describe('the project', () => {
  const sources = scanSources();

  it('keeps out what does not belong', () => expect(sources.flatMap(purityFaults)).toEqual([]));
  it('writes the length of an inch once', () => expect(inchFaults(sources)).toEqual([]));
});

describe('the rules find what breaks them', () => {
  it.each([
    ['src/core/a.ts', 'const luck = Math.random();', 'the same stair'],
    ['src/core/a.ts', 'const now = Date.now();', 'the same stair'],
    ['src/core/a.ts', 'const now = new Date(0);', 'the same stair'],
    ['src/core/a.ts', "const pack = 'irc-2021';", 'no jurisdiction'],
    ['src/core/a.ts', 'const words = `see the IBC`;', 'no jurisdiction'],
    ['src/core/a.ts', 'const close = a < 1e-6;', 'tolerance'],
    ['src/core/a.ts', 'const close = a < 0.00001;', 'tolerance'],
    ['src/ui/a.ts', 'box.innerHTML = text;', 'markup'],
    ['src/ui/a.ts', "box['innerHTML'] = text;", 'markup'],
    ['src/ui/a.ts', "box.insertAdjacentHTML('afterend', text);", 'markup'],
    ['src/ui/a.tsx', 'const a = <p dangerouslySetInnerHTML={{ __html: text }} />;', 'markup'],
    ['src/ui/a.ts', "createElement('p', { dangerouslySetInnerHTML: { __html: text } });", 'markup'],
    ['src/ui/a.ts', 'eval(text);', 'as a program'],
    ['src/ui/a.ts', 'const run = new Function(text);', 'as a program'],
    ['src/platform/a.ts', "localStorage.setItem('a', text);", 'drafts'],
    ['src/platform/a.ts', "window.localStorage.setItem('a', text);", 'drafts'],
    ['src/platform/a.ts', "const kept = sessionStorage['a'];", 'drafts'],
    ['src/export/a.ts', "const link = document.createElement('a');", 'worker'],
    ['src/export/a.ts', 'function draw(on: SVGElement) { return on; }', 'worker'],
  ])('%s: %s', (path, text, why) => {
    expect(purityFaults(scan(path, text))).toContainEqual(expect.stringContaining(why));
  });

  it.each([
    ['src/ui/a.ts', 'const now = Date.now();'],
    ['src/core/a.ts', '// as in irc-2021, within 1e-6'],
    ['src/core/a.ts', "const words = 'adaptation of nibs and circles';"],
    ['src/core/a.ts', 'const half = 0.5; const nothing = 0; const step = 0.001;'],
    ['src/core/geometry/tolerance.ts', 'const SAME_MM = 1e-6;'],
    ['src/core/units/rounding.ts', 'const STEP_SLACK = 1e-9;'],
    ['src/packs/a.ts', "export const id = 'irc-2021';"],
    ['src/export/a.ts', 'function write(document: Sheet) { return document.pages; }'],
    ['src/export/a.ts', 'const node = { window: 1 }; use(node.window);'],
  ])('and leave alone what keeps to them: %s: %s', (path, text) => {
    expect(purityFaults(scan(path, text))).toEqual([]);
  });

  it.each(['25.4', '127n', '304.8', '0.0254'])('finds a second %s', (figure) => {
    const home = scan('src/core/units/exact.ts', 'export const MM_PER_INCH = 127n;');
    expect(inchFaults([home])).toEqual([]);
    expect(inchFaults([home, scan('src/export/pdf.ts', `const scale = 72 / ${figure};`)])).toHaveLength(2);
  });

  it('notices when there is no inch to watch', () => expect(inchFaults([])).toHaveLength(1));
});
