/**
 * Brings the TypeScript of a headless command into a form that Node can run, then hands over.
 * Standard output is left to the command alone.
 */
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, renameSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { ensureInstalled, InstallError, ROOT } from './install.mjs';

const BUNDLES = join(ROOT, '.cache', 'commands');
/** The screens take no part in a command; their changes need no new bundle. */
const LEFT_OUT = join(ROOT, 'src', 'ui');
/** Long enough for any command that still reads an older bundle to have ended. */
const KEPT_MS = 3_600_000;
/** 2 says that the job was refused; this says that the command itself could not start. */
const BROKEN = 1;

/** @param name of the script in package.json and of its file in src/cli */
export async function launch(name) {
  try {
    ensureInstalled();
    const bundle = await freshBundle(name);
    // npm starts scripts in the project's folder; a file name is meant from where the user stands.
    if (process.env.npm_lifecycle_event === name && process.env.INIT_CWD) process.chdir(process.env.INIT_CWD);
    const { main } = await import(pathToFileURL(bundle).href);
    process.exitCode = await main(process.argv.slice(2));
  } catch (error) {
    console.error(error instanceof InstallError ? error.message : `The ${name} command broke: ${error.message}`);
    if (process.env.PITCHBOARD_DEBUG) console.error(error);
    process.exitCode = BROKEN;
  }
}

/**
 * A bundle lives in a folder named after the state of its sources and is never changed once it
 * is there, so commands that run side by side see a whole one or none.
 */
async function freshBundle(name) {
  const folder = join(BUNDLES, `${name}-${sourceState()}`);
  const file = join(folder, `${name}.mjs`);
  if (existsSync(file)) return file;
  const making = join(BUNDLES, `making-${name}-${process.pid}`);
  await bundleInto(making, name);
  try {
    renameSync(making, folder);
  } catch (error) {
    // Another command was first with the same sources: its bundle is as good as ours.
    if (!existsSync(file)) throw error;
    rmSync(making, { recursive: true, force: true });
  }
  removeOld(folder);
  return file;
}

function sourceState() {
  const hash = createHash('sha256');
  for (const path of [...filesUnder(join(ROOT, 'src')), join(ROOT, 'package-lock.json')]) {
    const { mtimeMs, size } = statSync(path);
    hash.update(`${path}\n${mtimeMs}\n${size}\n`);
  }
  return hash.digest('hex').slice(0, 16);
}

function filesUnder(folder) {
  if (folder === LEFT_OUT) return [];
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    return entry.isDirectory() ? filesUnder(path) : [path];
  });
}

async function bundleInto(outDir, name) {
  mkdirSync(BUNDLES, { recursive: true });
  const { build } = await import('vite');
  await build({
    root: ROOT,
    configFile: false,
    logLevel: 'silent',
    publicDir: false,
    // Bundling the libraries too costs once here and saves their loading at every start.
    ssr: { noExternal: true },
    build: {
      ssr: join(ROOT, 'src', 'cli', `${name}.ts`),
      outDir,
      target: 'node20',
      minify: false,
      rolldownOptions: { output: { entryFileNames: `${name}.mjs`, codeSplitting: false } },
    },
  });
}

function removeOld(current) {
  for (const name of readdirSync(BUNDLES)) {
    const folder = join(BUNDLES, name);
    if (folder === current) continue;
    try {
      if (Date.now() - statSync(folder).mtimeMs > KEPT_MS) rmSync(folder, { recursive: true, force: true });
    } catch {
      // Another command tidied it away first.
    }
  }
}
