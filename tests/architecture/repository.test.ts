import { describe, expect, it } from 'vitest';
import { folderNameFaults, lockFaults, traceFaults } from './repositoryRules';
import { filesUnder, textOfFile } from './tree';

describe('the project', () => {
  const paths = filesUnder('');

  it('names its folders by subject', () => expect(folderNameFaults(paths)).toEqual([]));
  it('ties its lock file to no host', () => expect(lockFaults(textOfFile('package-lock.json'))).toEqual([]));
  it('bears no trace of a machine', () => {
    const readable = paths.filter((path) => !/\.(png|jpe?g|webp|pdf|ttf|woff2?|ico|zip)$/.test(path));
    expect(readable.flatMap((path) => traceFaults(path, textOfFile(path)))).toEqual([]);
  });
});

describe('the rules find what breaks them', () => {
  // Put together here, so that this file itself bears no trace.
  const onMachine = (folder: string) => ['', folder, 'somebody', 'job.json'].join('/');

  it.each(['utils', 'helpers', 'common', 'shared', 'types'])('a folder called %s', (name) => {
    expect(folderNameFaults([`src/${name}/a.ts`])).toHaveLength(1);
    expect(folderNameFaults([`src/core/${name}/deep/a.ts`])).toHaveLength(1);
    expect(folderNameFaults([`src/core/${name}.ts`])).toEqual([]);
  });

  it.each(['work', 'root', 'home', 'Users'])('a path under %s', (folder) => {
    const path = onMachine(folder);
    expect(traceFaults('a.md', `first\nsee ${path}`)).toEqual([expect.stringContaining('a.md:2')]);
    expect(traceFaults('a.md', `open('${path}')`)).toHaveLength(1);
    expect(traceFaults('a.md', `https://example.org${path} and ./x${path}`)).toEqual([]);
  });

  it('the host of a registry', () => {
    const host = ['regis', 'try.example.org'].join('');
    expect(traceFaults('.npmrc', `source=https://${host}/`)).toHaveLength(1);
    expect(traceFaults('a.md', 'kept in the registry of deeds')).toEqual([]);
  });

  it('a lock file that is tied to a host', () => {
    const lock = (entry: object) => JSON.stringify({ packages: { 'node_modules/a': entry } });
    expect(lockFaults(lock({ version: '1.0.0', resolved: 'https://example.org/a.tgz' }))).toHaveLength(1);
    expect(lockFaults(lock({ version: '1.0.0' }))).toEqual([]);
    expect(lockFaults('{}')).toHaveLength(1);
  });
});
