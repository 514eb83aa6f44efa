/** One folder of the core at a time, named by the runner beside this file. */
const folder = process.env.PITCHBOARD_MUTATED ?? 'units';

export default {
  packageManager: 'npm',
  plugins: ['@stryker-mutator/vitest-runner'],
  testRunner: 'vitest',
  // The tests reach the core through their samples, which the runner does not follow.
  vitest: { configFile: 'tests/mutation/vitest.config.ts', related: false },
  mutate: [`src/core/${folder}/**/*.ts`],
  tsconfigFile: 'none.json',
  ignorePatterns: ['dist', '.cache', 'coverage', 'reports', 'test-results', 'docs', 'public'],
  // A constant is changed before any test begins, so that each would cost the whole suite; tables are read by eye.
  ignoreStatic: true,
  concurrency: 2,
  // On a busy machine a slow answer must not pass for a mutant that hangs.
  timeoutMS: 30_000,
  reporters: ['clear-text', 'progress', 'html', 'json'],
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false },
  htmlReporter: { fileName: `reports/mutation/${folder}.html` },
  jsonReporter: { fileName: `reports/mutation/${folder}.json` },
  tempDirName: '.stryker-tmp',
  cleanTempDir: 'always',
};
