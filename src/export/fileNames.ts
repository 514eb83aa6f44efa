/** Names of exported files: what every file system takes, and nothing that could pose as a path or a device. */

const LONGEST = 80;
/** Windows keeps these for devices, whatever follows the first dot. */
const RESERVED = /^(con|prn|aux|nul|conin|conout|clock|com[0-9]|lpt[0-9])$/i;

/**
 * @param name what the user calls it
 * @param what the rest, with its ending, in `[a-z0-9.-]`: `cut-list.csv`
 */
export function exportName(name: string, what: string): string {
  const ascii = name
    .normalize('NFKD')
    .replace(/\p{Mark}+/gu, '')
    .replace(/[^A-Za-z0-9_-]+/g, '-');
  const stem = trimmed(trimmed(ascii).slice(0, LONGEST - what.length - 1));
  if (stem === '') return `stair-${what}`;
  return `${RESERVED.test(stem) ? `stair-${stem}` : stem}-${what}`;
}

function trimmed(text: string): string {
  return text.replace(/^[-_]+|[-_]+$/g, '');
}
