/** Who may lean on whom. Every rule carries the sentence that a reader gets when it is broken. */
import { posix } from 'node:path';
import type { Import, SourceFacts } from './scan';

interface FolderRule {
  readonly folder: string;
  readonly may: readonly string[];
  /** May be named in types, but not run. */
  readonly mayInTypes?: readonly string[];
  /** Not even where a wider folder may. */
  readonly never?: readonly string[];
  readonly why: string;
}

interface LibraryRule {
  readonly library: RegExp;
  readonly places: readonly string[];
  readonly why: string;
}

const FOLDERS: readonly FolderRule[] = [
  {
    folder: 'src/core',
    may: ['src/core'],
    why: 'the core is the part that can be trusted and tested alone: it leans on nothing but itself',
  },
  {
    folder: 'src/core/units',
    may: ['src/core/units'],
    why: 'lengths come before everything; whatever they leaned on could not be built on them',
  },
  {
    folder: 'src/core/geometry',
    may: ['src/core/geometry', 'src/core/units'],
    why: 'points and lines know no stairs, so that they can be proven on their own',
  },
  ...['layout', 'stringer', 'check', 'plan', 'job'].map((part) => ({
    folder: `src/core/${part}`,
    may: ['src'],
    never: ['src/core/carry'],
    why: 'what a stringer carries moves no cut, and comes only with the step that asks for it',
  })),
  {
    folder: 'src/packs',
    may: ['src/packs'],
    mayInTypes: ['src/core'],
    why: 'a rule pack is data: it may take the shape of the core, but runs none of it',
  },
  {
    folder: 'src/document',
    may: ['src/document', 'src/core'],
    why: 'a job file must open without a screen, a store or a browser',
  },
  {
    folder: 'src/export',
    may: ['src/export', 'src/core', 'src/text'],
    why: 'what is written to a file comes from the drawing and the lists of the core, and from nothing on screen',
  },
  {
    folder: 'src/text',
    may: ['src/text', 'src/core', 'src/document', 'src/packs'],
    why: 'words are given to facts; they neither hold state nor show anything',
  },
  {
    folder: 'src/state',
    may: ['src/state', 'src/core', 'src/document'],
    mayInTypes: ['src/platform'],
    why: 'the store is handed its platform by main.tsx, so that it can be tested without a browser',
  },
  {
    folder: 'src/platform',
    may: ['src/platform', 'src/core', 'src/document'],
    mayInTypes: ['src/state'],
    why: 'a browser edge serves whoever calls it and must not know the screens or the store',
  },
  {
    folder: 'src/offline',
    may: ['src/offline'],
    why: 'the keeper of the files runs beside the page, and has to outlive whatever is wrong with it',
  },
  {
    folder: 'src/workshop',
    may: ['src/workshop', 'src/core', 'src/packs', 'src/export', 'src/text'],
    why: 'files are made from a job beside the page, where there is no screen and no store',
  },
  {
    folder: 'src/ui',
    may: [
      'src/workshop',
      'src/ui',
      'src/core',
      'src/packs',
      'src/document',
      'src/export',
      'src/state',
      'src/platform',
      'src/text',
    ],
    why: 'a screen has no business with the command line',
  },
  {
    folder: 'src/cli',
    may: ['src/cli', 'src/core', 'src/packs', 'src/document', 'src/export', 'src/text'],
    why: 'the command runs where there is no browser, and must never need one',
  },
];

const LIBRARIES: readonly LibraryRule[] = [
  {
    library: /^zod(\/|$)/,
    places: ['src/document/', 'src/packs/'],
    why: 'it stands at the boundary, where data comes in',
  },
  { library: /^jsonc-parser$/, places: ['src/document/'], why: 'a job file is read in one place' },
  { library: /^(react|react-dom)(\/|$)/, places: ['src/ui/', 'src/main.tsx'], why: 'only screens are drawn with it' },
  { library: /^zustand(\/|$)/, places: ['src/state/'], why: 'the store alone knows how it is kept' },
  { library: /^idb$/, places: ['src/platform/'], why: 'it is a browser edge' },
  { library: /^@lingui\//, places: ['src/text/'], why: 'only the words know how they are looked up' },
  {
    library: /^(jspdf|@tarikjabiri\/dxf)$/,
    places: ['src/export/'],
    why: 'a file format is written in one place, and fetched only when a file is asked for',
  },
  { library: /^node:/, places: ['src/cli/'], why: 'everything else runs in a browser' },
  { library: /^vite$/, places: ['src/cli/'], why: 'it serves the entry scripts, and is no part of the app' },
];

export function importFaults(sources: readonly SourceFacts[]): string[] {
  const known = new Set(sources.map((source) => source.path));
  return sources.flatMap((source) =>
    source.imports.flatMap((one) =>
      one.target.startsWith('.')
        ? folderFaults(source.path, one, resolve(source.path, one.target, known) ?? asWritten(source.path, one.target))
        : libraryFaults(source.path, one),
    ),
  );
}

function folderFaults(path: string, one: Import, target: string): string[] {
  return FOLDERS.filter(({ folder }) => path.startsWith(`${folder}/`)).flatMap((rule) => {
    const allowed = one.typeOnly ? [...rule.may, ...(rule.mayInTypes ?? [])] : rule.may;
    const isNever = rule.never?.some((folder) => target.startsWith(`${folder}/`)) ?? false;
    if (!isNever && allowed.some((folder) => target.startsWith(`${folder}/`))) return [];
    const inTypes = rule.mayInTypes?.some((folder) => target.startsWith(`${folder}/`)) ?? false;
    const what = inTypes ? `${target} for more than types` : target;
    return [`${path}:${one.line} imports ${what}, but ${rule.why} (${rule.folder}).`];
  });
}

function libraryFaults(path: string, one: Import): string[] {
  // The entry scripts load what they have just built, by an address that only they know.
  if (one.target === '(computed)') {
    return path.endsWith('.mjs') ? [] : [`${path}:${one.line} imports by a computed name, which no rule can follow.`];
  }
  const rules = LIBRARIES.filter(({ library }) => library.test(one.target));
  if (rules.length === 0) {
    return [
      `${path}:${one.line} imports ${one.target}, which has no folder of its own yet: give it one in importRules.ts.`,
    ];
  }
  if (rules.some(({ places }) => places.some((place) => path.startsWith(place)))) return [];
  const [{ places, why }] = rules as [LibraryRule];
  return [`${path}:${one.line} imports ${one.target}, which belongs in ${places.join(' or ')}: ${why}.`];
}

/** Any way that leads back to where it began, types included: such files can only be understood together. */
export function cycleFaults(sources: readonly SourceFacts[]): string[] {
  const graph = importGraph(sources);
  const done = new Set<string>();
  const faults: string[] = [];
  const follow = (path: string, trail: readonly string[]): void => {
    const at = trail.indexOf(path);
    if (at >= 0) {
      const ring = [...trail.slice(at), path].join(' -> ');
      faults.push(`${ring} is a circle: none of these can be read, tested or moved without the others.`);
      return;
    }
    if (done.has(path)) return;
    for (const next of graph.get(path) ?? []) follow(next, [...trail, path]);
    done.add(path);
  };
  for (const path of graph.keys()) follow(path, []);
  return faults;
}

/** Files that nothing leads to: they would be kept, read and mended for nobody. */
export function orphanFaults(sources: readonly SourceFacts[], entries: readonly string[]): string[] {
  const reached = new Set([...importGraph(sources).values()].flat());
  return sources
    .map((source) => source.path)
    .filter((path) => !reached.has(path) && !entries.includes(path) && !path.endsWith('.d.ts'))
    .map((path) => `${path} is imported by nothing and is no entry: nobody can reach what it does.`);
}

function importGraph(sources: readonly SourceFacts[]): Map<string, string[]> {
  const known = new Set(sources.map((source) => source.path));
  return new Map(
    sources.map(({ path, imports }) => [
      path,
      imports.flatMap(({ target }) => (target.startsWith('.') ? (resolve(path, target, known) ?? []) : [])),
    ]),
  );
}

function resolve(from: string, target: string, known: ReadonlySet<string>): string | undefined {
  const plain = asWritten(from, target);
  const stem = plain.replace(/\.js$/, '');
  return [plain, `${stem}.ts`, `${stem}.tsx`, `${stem}/index.ts`, `${stem}/index.tsx`].find((path) => known.has(path));
}

/** Without what the bundler is told after a question mark. */
function asWritten(from: string, target: string): string {
  return posix.join(posix.dirname(from), target.replace(/\?.*$/, ''));
}
