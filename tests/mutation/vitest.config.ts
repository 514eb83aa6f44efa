import { defineConfig } from 'vitest/config';

/** A mutant is judged thousands of times over, so only by the tests that answer in milliseconds. */
export default defineConfig({
  test: {
    environment: 'node',
    include: ['tests/unit/**/*.test.ts', 'tests/published/**/*.test.ts'],
    exclude: ['tests/unit/{state,platform,document,export,cli,text,packs}/**'],
  },
});
