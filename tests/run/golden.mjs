/** `npm run golden`: writes the golden files anew and shows what moved, for a person to judge. */
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import '../../src/cli/checkNode.mjs';
import { ensureInstalled, ROOT } from '../../src/cli/install.mjs';

if (process.env.CI) {
  console.error('Golden files are written by a person who looks at the difference, never by an unattended run.');
  process.exit(1);
}
ensureInstalled();
const inRoot = { cwd: ROOT, stdio: 'inherit' };
const vitest = join(ROOT, 'node_modules', 'vitest', 'vitest.mjs');
const written = spawnSync(process.execPath, [vitest, 'run', '--project', 'golden'], {
  ...inRoot,
  env: { ...process.env, PITCHBOARD_GOLDEN: 'write' },
});
spawnSync('git', ['--no-pager', 'diff', '--stat', '--', 'tests/golden', 'docs'], inRoot);
spawnSync('git', ['status', '--short', '--untracked-files=all', '--', 'tests/golden', 'docs'], inRoot);
process.exitCode = written.status ?? 1;
