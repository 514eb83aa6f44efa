/** The project's own files, read once; what tools leave behind is no part of it. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type SourceFacts, scan } from './scan';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const LEFT_BY_TOOLS = new Set([
  'node_modules',
  '.git',
  '.cache',
  '.stryker-tmp',
  'dist',
  'coverage',
  'reports',
  'test-results',
  'playwright-report',
]);

export function filesUnder(folder: string): string[] {
  return readdirSync(join(ROOT, folder), { withFileTypes: true }).flatMap((entry) => {
    const path = folder === '' ? entry.name : `${folder}/${entry.name}`;
    if (entry.isDirectory()) return LEFT_BY_TOOLS.has(entry.name) ? [] : filesUnder(path);
    return [path];
  });
}

export function textOfFile(path: string): string {
  return readFileSync(join(ROOT, path), 'utf8');
}

export function scanSources(): SourceFacts[] {
  return filesUnder('src')
    .filter((path) => /\.(ts|tsx|mjs|css|json)$/.test(path) && !path.endsWith('tsconfig.json'))
    .map((path) => scan(path, textOfFile(path)));
}
