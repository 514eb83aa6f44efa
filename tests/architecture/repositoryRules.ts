/** What concerns the tree as a whole: names of folders, the lock file, traces of a machine. */

const CATCH_ALLS = ['utils', 'util', 'helpers', 'helper', 'common', 'shared', 'types', 'misc', 'lib'];

/** Roots that only one machine has; an address on the web has something before its first slash. */
const MACHINE_PATH = /(?<![\w./~-])\/(?:work|root|home|Users)\/|[A-Z]:\\Users\\/;
const REGISTRY_HOST = /\bregistry\.[\w-]+\.[a-z]{2,}|https?:\/\/[^\s/]*(?:registry|artifactory)/;

export function folderNameFaults(paths: readonly string[]): string[] {
  const folders = new Set(
    paths.flatMap((path) =>
      path
        .split('/')
        .slice(0, -1)
        .map((_, at, all) => all.slice(0, at + 1).join('/')),
    ),
  );
  return [...folders]
    .filter((folder) => CATCH_ALLS.includes(folder.split('/').at(-1)?.toLowerCase() ?? ''))
    .map(
      (folder) => `${folder} is a folder for anything: name it after its subject, or circles of imports grow in it.`,
    );
}

export function traceFaults(path: string, text: string): string[] {
  return text.split('\n').flatMap((line, index) => {
    const place = `${path}:${index + 1}`;
    if (MACHINE_PATH.test(line)) return [`${place} holds a path of one machine, which means nothing on any other.`];
    if (REGISTRY_HOST.test(line))
      return [`${place} names the host of a registry: where packages come from is each machine's own affair.`];
    return [];
  });
}

export function lockFaults(text: string): string[] {
  const { packages } = JSON.parse(text) as { packages?: Record<string, { resolved?: string; link?: boolean }> };
  if (!packages) return ['The lock file lists no packages.'];
  return Object.entries(packages)
    .filter(([, entry]) => entry.resolved !== undefined && !entry.link)
    .map(([name]) => `The lock file ties ${name} to one host: install with the settings in .npmrc and commit that.`);
}
