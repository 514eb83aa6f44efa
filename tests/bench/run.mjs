/**
 * `npm run bench`: every figure is a ratio to something measured in the same run; goals are printed
 * beside them and never asserted in the gate.
 */
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { brotliCompressSync, constants } from 'node:zlib';
import { benchPage } from './page.mjs';

const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
const { build } = await import('vite');
const scratch = await mkdtemp(join(tmpdir(), 'pitchboard-bench-'));

try {
  (await benched('core', 'benchCore')).forEach(say);
  (await benched('paper', 'benchPaper')).forEach(say);
  say(await firstLoad());
  (await benchPage({ root, folder: join(scratch, 'app') })).forEach(say);
} finally {
  await rm(scratch, { recursive: true, force: true });
}

function say({ name, ratio, goal }) {
  const verdict = ratio <= goal ? 'reached' : 'NOT reached';
  console.log(`${ratio.toFixed(2).padStart(8)}  goal ${String(goal).padStart(5)}  ${verdict.padEnd(12)} ${name}`);
}

/** @param name of a file here, and the function in it that gives the figures */
async function benched(name, measure) {
  const outDir = join(scratch, name);
  await build({
    root,
    configFile: false,
    logLevel: 'silent',
    ssr: { noExternal: true },
    build: {
      ssr: join(root, `tests/bench/${name}.ts`),
      outDir,
      emptyOutDir: true,
      minify: false,
      target: 'node20',
      rolldownOptions: { output: { codeSplitting: false } },
    },
  });
  return (await import(pathToFileURL(join(outDir, `${name}.js`)).href))[measure]();
}

/** JavaScript until the main job is usable, against a React "hello world" built the same way. */
async function firstLoad() {
  const hello = join(scratch, 'hello');
  await writeFile(join(scratch, 'index.html'), '<div id="root"></div><script type="module" src="/hello.js"></script>');
  await writeFile(
    join(scratch, 'hello.js'),
    `import { createElement } from 'react'; import { createRoot } from 'react-dom/client';
createRoot(document.getElementById('root')).render(createElement('h1', null, 'Hello'));`,
  );
  const resolve = {
    alias: ['react-dom/client', 'react'].map((name) => ({ find: name, replacement: join(root, 'node_modules', name) })),
  };
  await build({
    root: scratch,
    configFile: false,
    logLevel: 'silent',
    resolve,
    build: { outDir: hello, emptyOutDir: true },
  });
  const app = join(scratch, 'app');
  await build({ root, logLevel: 'silent', build: { outDir: app, emptyOutDir: true } });
  const [appSize, helloSize] = [await scriptBytes(app), await scriptBytes(hello)];
  const kb = (bytes) => (bytes / 1000).toFixed(1);
  return {
    name: `first load of JavaScript, brotli: ${kb(appSize)} kB / React hello ${kb(helloSize)} kB`,
    ratio: appSize / helloSize,
    goal: 1.8,
  };
}

/** What the page asks for before it shows: its own script and what that leans on, as index.html lists them. */
async function scriptBytes(folder) {
  const page = await readFile(join(folder, 'index.html'), 'utf8');
  const scripts = [...new Set([...page.matchAll(/assets\/[^"]+\.js/g)].map(([path]) => path))];
  const sizes = await Promise.all(scripts.map(async (path) => brotli(await readFile(join(folder, path)))));
  return sizes.reduce((sum, size) => sum + size, 0);
}

function brotli(bytes) {
  return brotliCompressSync(bytes, { params: { [constants.BROTLI_PARAM_QUALITY]: 11 } }).length;
}
