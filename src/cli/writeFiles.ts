/**
 * Several files into one folder, all or none: they are written beside their places first and moved there
 * when the last one is whole. Folders are made one by one, since there are places where making a whole way
 * at once never comes back.
 */
import { mkdir, rename, rm, stat, writeFile } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';

export interface NamedFile {
  readonly name: string;
  readonly content: Uint8Array;
}

/** @returns whether all of them are there; if not, none is, and no folder that was not there before */
export async function writeFiles(files: readonly NamedFile[], folder: string): Promise<boolean> {
  const made: string[] = [];
  const aside = join(folder, `.being-written-${process.pid}`);
  try {
    await makeFolder(resolve(folder), made);
    await mkdir(aside);
    for (const { name, content } of files) await writeFile(join(aside, name), content);
    for (const { name } of files) if (await isFolder(join(folder, name))) throw new Error(`${name} is a folder`);
    for (const { name } of files) await rename(join(aside, name), join(folder, name));
    await rm(aside, { recursive: true });
    return true;
  } catch {
    const left = made.length === 0 ? [aside] : [made[0] as string];
    for (const path of left) await rm(path, { recursive: true, force: true }).catch(() => undefined);
    return false;
  }
}

/** @param made gets every folder that had to be made, the outermost first */
async function makeFolder(path: string, made: string[]): Promise<void> {
  if (await isFolder(path)) return;
  const outer = dirname(path);
  if (outer !== path) await makeFolder(outer, made);
  await mkdir(path);
  made.push(path);
}

async function isFolder(path: string): Promise<boolean> {
  try {
    return (await stat(path)).isDirectory();
  } catch {
    return false;
  }
}
