import { availableParallelism } from 'node:os';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vitest/config';

/** Where a wrong branch is a wrong cut: every one of them has to be walked by a test. */
const FULLY_COVERED = ['units', 'layout', 'stringer', 'codes', 'carry'].map((name) => `src/core/${name}/**/*.ts`);

const node = (name: string, include: string[], testTimeout = 20_000) => ({
  test: { name, environment: 'node' as const, include, testTimeout, setupFiles: ['tests/fixtures/seed.ts'] },
});

/** Files are written, read back and measured, on a machine that may be busy. Milliseconds. */
const FILES_TAKE = 60_000;

export default defineConfig({
  test: {
    // Left alone, the runner keeps one core for itself: on a machine with two that is half of the time.
    maxWorkers: availableParallelism(),
    projects: [
      node('unit', ['tests/unit/**/*.test.ts']),
      node('properties', ['tests/properties/**/*.test.ts']),
      node('published', ['tests/published/**/*.test.ts']),
      node('golden', ['tests/golden/**/*.test.ts']),
      node('exports', ['tests/exports/**/*.test.ts'], FILES_TAKE),
      node('architecture', ['tests/architecture/**/*.test.ts', 'tests/run/**/*.test.mjs']),
      {
        plugins: [react()],
        test: {
          name: 'dom',
          environment: 'jsdom',
          include: ['tests/ui/**/*.test.{ts,tsx}'],
          setupFiles: ['tests/ui/setup.ts'],
        },
      },
    ],
    coverage: {
      provider: 'v8',
      include: FULLY_COVERED,
      // A failing test must not hide what no test walks.
      reportOnFailure: true,
      reporter: ['json', 'text'],
      reportsDirectory: 'coverage',
      thresholds: { branches: 100 },
    },
  },
});
