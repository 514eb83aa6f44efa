/** Builds the keeper of the program's files for use without a network, once those files are written. */
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { build, type Plugin } from 'vite';

const WORKER_FILE = 'offline.js';

/** At build time only: the last thing that is written, for it names all the others. */
export function keptOffline(): Plugin {
  let places = { root: '', folder: '' };
  return {
    name: 'kept-offline',
    apply: 'build',
    configResolved({ root, build: { outDir } }) {
      places = { root, folder: resolve(root, outDir) };
    },
    closeBundle: {
      order: 'post',
      sequential: true,
      async handler() {
        await buildWorker(places);
      },
    },
  };
}

async function buildWorker({ root, folder }: { readonly root: string; readonly folder: string }): Promise<void> {
  const files = sumsOf(folder);
  const version = sumOf(JSON.stringify(files)).slice(0, 12);
  await build({
    configFile: false,
    logLevel: 'silent',
    publicDir: false,
    define: { KEPT_VERSION: JSON.stringify({ version, files }) },
    build: {
      outDir: folder,
      emptyOutDir: false,
      target: 'es2022',
      lib: {
        entry: join(root, 'src', 'offline', 'worker.ts'),
        formats: ['iife'],
        name: 'keeper',
        fileName: () => WORKER_FILE,
      },
    },
  });
}

/** @returns of each file under the folder, by its path with slashes, its SHA-256 in base 64 */
function sumsOf(folder: string): Record<string, string> {
  const paths = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(folder.length + 1))
    .map((path) => path.replaceAll('\\', '/'))
    .filter((path) => path !== WORKER_FILE)
    .sort();
  return Object.fromEntries(paths.map((path) => [path, sumOf(readFileSync(join(folder, path)))]));
}

function sumOf(bytes: Buffer | string): string {
  return createHash('sha256').update(bytes).digest('base64');
}
