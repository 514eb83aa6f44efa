import { defineConfig } from 'vitest/config';

const folder = process.env['PITCHBOARD_MUTATED'] ?? 'units';

/** A mutant is judged many times over: by the tests of its own folder, which answer in milliseconds, and by no others. */
export default defineConfig({
  test: { environment: 'node', include: [`tests/unit/${folder}/**/*.test.ts`] },
});
