/** `npm run mutation`, or `npm run mutation units`: the folders of the core where a wrong sign is a wrong cut, one by one. */
import { spawnSync } from 'node:child_process';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
const stryker = join(
  dirname(createRequire(import.meta.url).resolve('@stryker-mutator/core/package.json')),
  'bin',
  'stryker.js',
);
const asked = process.argv.slice(2);
const folders = asked.length > 0 ? asked : ['units', 'layout', 'stringer', 'codes'];

let worst = 0;
for (const folder of folders) {
  const { status } = spawnSync(process.execPath, [stryker, 'run', 'tests/mutation/stryker.config.mjs'], {
    cwd: root,
    stdio: 'inherit',
    env: { ...process.env, PITCHBOARD_MUTATED: folder },
  });
  worst = Math.max(worst, status ?? 1);
}
process.exitCode = worst;
