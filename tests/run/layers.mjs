/** The layers of the gate, cheapest first: what each runs and how its result is counted. */
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { ROOT } from '../../src/cli/install.mjs';
import { findBrowser, thisMachine } from './browser.mjs';
import { countCoverage, countPlaywright, countSingle, countVitest, outcome } from './counting.mjs';
import { runNode } from './process.mjs';

const REPORTS = join(ROOT, '.cache', 'gate');
const BIN = {
  tsc: 'typescript/bin/tsc',
  biome: '@biomejs/biome/bin/biome',
  oxlint: 'oxlint/bin/oxlint',
  knip: 'knip/bin/knip.js',
  vite: 'vite/bin/vite.js',
  vitest: 'vitest/vitest.mjs',
  playwright: '@playwright/test/cli.js',
};

export const LAYERS = [
  single('types', 'Types', 'tsc', ['-b']),
  single('biome', 'Form and accessibility', 'biome', [
    'check',
    '--max-diagnostics=50',
    '--diagnostic-level=warn',
    '--error-on-warnings',
    '.',
  ]),
  single('oxlint', 'Lint with types', 'oxlint', ['--type-aware', '--deny-warnings', '.']),
  single('knip', 'Dead files, exports and dependencies', 'knip', []),
  tests('architecture', 'Who may import whom, sizes, and the gate itself', ['architecture']),
  {
    key: 'unit',
    heading: 'Unit tests and published figures, with coverage',
    async run() {
      const folder = join(REPORTS, `coverage-${process.pid}`);
      // The verdict on coverage is read from its report, so that it counts apart from the tests.
      const options = [
        '--coverage',
        '--coverage.reporter=json',
        '--coverage.thresholds.branches=0',
        `--coverage.reportsDirectory=${folder}`,
      ];
      const { parts, output, report } = await vitest('unit', ['unit', 'published'], options);
      const coverage = countCoverage(readReport(join(folder, 'coverage-final.json')), ROOT);
      rmSync(folder, { recursive: true, force: true });
      return { parts: [...parts, expectFiles(report, 'unit'), expectFiles(report, 'published'), coverage], output };
    },
  },
  tests('properties', 'Properties that hold for any stair', ['properties']),
  tests('golden', 'Golden files', ['golden']),
  tests('exports', 'Exports read back', ['exports']),
  tests('ui', 'Screens without a browser', ['dom']),
  single('build', 'Build', 'vite', ['build', '--logLevel', 'warn']),
  { key: 'browser', heading: 'In a browser', run: browserTests },
];

function single(key, heading, tool, args) {
  return {
    key,
    heading,
    async run() {
      const done = await runTool(tool, args);
      return { parts: [countSingle(done)], output: done.output };
    },
  };
}

function tests(key, heading, projects) {
  return { key, heading, run: () => vitest(key, projects, []) };
}

async function vitest(key, projects, extra) {
  const file = reportFile(key);
  const chosen = projects.flatMap((project) => ['--project', project]);
  const reporters = ['--reporter=dot', '--reporter=json', `--outputFile.json=${file}`];
  const done = await runTool('vitest', ['run', ...chosen, ...reporters, ...extra]);
  const report = readReport(file);
  return { parts: [countVitest(report, done.status)], output: done.output, report };
}

/** Two projects share a run: the tests of one must not cover up that the other has none. */
function expectFiles(report, project) {
  const there = report?.testResults?.some((file) => file.name.replaceAll('\\', '/').includes(`/tests/${project}/`));
  return there ? outcome(0, 0) : outcome(0, 1, 0, [`No test was found in tests/${project}.`]);
}

async function browserTests() {
  const { program, sentence } = findBrowser(thisMachine, { mayInstall: true });
  if (!program) return { parts: [outcome(0, 1, 0, [sentence])], output: '' };
  const file = reportFile('browser');
  const done = await runTool(
    'playwright',
    ['test', '--config', 'tests/browser/playwright.config.ts', '--reporter=list,json'],
    {
      PITCHBOARD_BROWSER: program,
      PITCHBOARD_TEST_PORT: String(await freePort()),
      PLAYWRIGHT_JSON_OUTPUT_FILE: file,
    },
  );
  return { parts: [countPlaywright(readReport(file), done.status)], output: done.output };
}

function runTool(tool, args, env = {}) {
  return runNode(join(ROOT, 'node_modules', BIN[tool]), args, env);
}

function reportFile(key) {
  mkdirSync(REPORTS, { recursive: true });
  const file = join(REPORTS, `${key}-${process.pid}.json`);
  rmSync(file, { force: true });
  return file;
}

function readReport(file) {
  if (!existsSync(file)) return undefined;
  try {
    return JSON.parse(readFileSync(file, 'utf8'));
  } catch {
    // Half a report is none.
    return undefined;
  } finally {
    rmSync(file, { force: true });
  }
}

function freePort() {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.once('error', reject);
    server.listen(0, () => {
      const { port } = server.address();
      server.close(() => resolve(port));
    });
  });
}
