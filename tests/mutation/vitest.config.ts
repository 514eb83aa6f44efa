import { defineConfig } from 'vitest/config';

const folder = process.env['PITCHBOARD_MUTATED'] ?? 'units';

/** Rules are judged where the rows of packs are held against their limits, too; feet on a slope where its layout is. */
const ALSO: Readonly<Record<string, readonly string[]>> = {
  stringer: ['tests/unit/layout/slope.test.ts', 'tests/unit/layout/acrossFlight.test.ts'],
  codes: ['tests/unit/packs/everyRow.test.ts', 'tests/published/codeBoundaries.test.ts'],
};

/** A mutant is judged many times over: by the tests of its own folder, which answer in milliseconds, and by few others. */
export default defineConfig({
  test: { environment: 'node', include: [`tests/unit/${folder}/**/*.test.ts`, ...(ALSO[folder] ?? [])] },
});
