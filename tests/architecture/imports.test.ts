import { describe, expect, it } from 'vitest';
import { cycleFaults, importFaults, orphanFaults } from './importRules';
import { scan } from './scan';
import { scanSources } from './tree';

const ENTRIES = [
  'src/main.tsx',
  'src/offline/worker.ts',
  'src/cli/layout.ts',
  'src/cli/start.mjs',
  'src/cli/offlineWorker.ts',
  'src/cli/run.mjs',
  'src/cli/layouts.ts',
  'src/cli/sheets.ts',
  'src/cli/runLayouts.mjs',
  'src/cli/runSheets.mjs',
];

const planted = (files: Readonly<Record<string, string>>) =>
  Object.entries(files).map(([path, text]) => scan(path, text));

describe('the project', () => {
  const sources = scanSources();

  it('has sources to look at', () => {
    expect(sources.length).toBeGreaterThan(10);
    expect(sources.flatMap((source) => source.imports).length).toBeGreaterThan(10);
  });

  it('keeps to who may import whom', () => expect(importFaults(sources)).toEqual([]));
  it('has no circle of imports', () => expect(cycleFaults(sources)).toEqual([]));
  it('has no file that nothing leads to', () => expect(orphanFaults(sources, ENTRIES)).toEqual([]));
});

describe('the rules find what breaks them', () => {
  it.each([
    ['src/core/job/a.ts', "import { x } from '../../ui/x';", 'trusted'],
    ['src/core/job/a.ts', "export * from '../../packs/x';", 'trusted'],
    ['src/core/codes/a.ts', "import type { P } from '../../packs/x';", 'trusted'],
    ['src/core/job/a.ts', "import { z } from 'zod';", 'boundary'],
    ['src/core/units/a.ts', "import { success } from '../result';", 'before everything'],
    ['src/core/geometry/a.ts', "import { job } from '../job/job';", 'know no stairs'],
    ['src/packs/a.ts', "import { judge } from '../core/codes/judge';", 'for more than types'],
    ['src/document/a.ts', "import { store } from '../state/store';", 'without a screen'],
    ['src/export/a.ts', "import { pen } from '../ui/pen';", 'nothing on screen'],
    ['src/text/a.ts', "import { store } from '../state/store';", 'hold state'],
    ['src/state/a.ts', "import { drafts } from '../platform/drafts';", 'for more than types'],
    ['src/state/a.ts', "const late = () => import('../ui/App');", 'without a browser'],
    ['src/platform/a.ts', "import { App } from '../ui/App';", 'must not know the screens'],
    ['src/ui/a.ts', "import { main } from '../cli/layout';", 'command line'],
    ['src/cli/a.ts', "import type { Store } from '../state/store';", 'no browser'],
    ['src/ui/a.ts', "import { openDB } from 'idb';", 'browser edge'],
    ['src/ui/a.ts', "import { createStore } from 'zustand/vanilla';", 'knows how it is kept'],
    ['src/state/a.ts', "import { useState } from 'react';", 'only screens'],
    ['src/ui/a.ts', "import { i18n } from '@lingui/core';", 'looked up'],
    ['src/document/a.ts', "import { readFileSync } from 'node:fs';", 'in a browser'],
    ['src/ui/a.ts', "import { gadget } from 'gadget';", 'no folder of its own'],
    ['src/ui/a.ts', 'const late = (name: string) => import(name);', 'computed'],
    ['src/state/a.ts', "type Late = import('../ui/App').App;", 'without a browser'],
    ['src/core/stringer/a.ts', "import type { Carry } from '../carry/screenCarry';", 'moves no cut'],
    ['src/core/a.ts', "new Worker(new URL('../ui/worker.ts', import.meta.url));", 'trusted'],
  ])('%s: %s', (path, text, why) => {
    expect(importFaults(planted({ [path]: text }))).toEqual([expect.stringContaining(why)]);
  });

  it.each([
    ['src/core/layout/a.ts', "import { add } from '../units/exact';"],
    ['src/core/geometry/a.ts', "import { add } from '../units/exact';"],
    ['src/packs/a.ts', "import type { RulePack } from '../core/codes/rulePack';"],
    ['src/packs/a.ts', "import { type RulePack } from '../core/codes/rulePack';"],
    ['src/state/a.ts', "import type { Drafts } from '../platform/drafts';"],
    ['src/ui/a.tsx', "// import '../cli/layout'\nconst words = \"import x from '../cli/layout'\";"],
  ])('and leave alone what keeps to them: %s: %s', (path, text) => {
    expect(importFaults(planted({ [path]: text }))).toEqual([]);
  });

  it('finds a circle, through types and index files too', () => {
    const files = {
      'src/ui/a.ts': "import { b } from './b';",
      'src/ui/b/index.ts': "import type { C } from '../c';",
      'src/ui/c.tsx': "export { a } from './a';",
    };
    expect(cycleFaults(planted(files))).toEqual([expect.stringContaining('a circle')]);
    expect(cycleFaults(planted({ ...files, 'src/ui/c.tsx': '' }))).toEqual([]);
  });

  it('finds a file that imports itself', () => {
    expect(cycleFaults(planted({ 'src/ui/a.ts': "import './a';" }))).toHaveLength(1);
  });

  it('finds a file that nothing leads to', () => {
    const files = planted({
      'src/main.tsx': "import './look.css'; import data from './data.json';",
      'src/look.css': "@import './pens.css';",
      'src/pens.css': '',
      'src/data.json': '{}',
      'src/lost.ts': "import './found';",
      'src/found.ts': '',
    });
    expect(orphanFaults(files, ['src/main.tsx'])).toEqual([expect.stringContaining('src/lost.ts')]);
  });

  it('stops at a file that it cannot read', () => {
    expect(() => scan('src/a.ts', 'const = ;')).toThrow('cannot be parsed');
  });
});
