/**
 * A name that every file system takes and that cannot pose as a path, an option or a device.
 */

export const JOB_FILE_ENDING = '.pitchboard.json';

const MAX_LENGTH = 80;

/** Windows keeps these for devices, whatever follows the first dot. */
const RESERVED = /^(con|prn|aux|nul|conin|conout|clock|com[0-9]|lpt[0-9])(\.|$)/i;

/**
 * @param text what the user calls it: a job's name, or a file name
 * @param ending with its dot, in `[A-Za-z0-9._-]`
 */
export function safeFileName(text: string, ending: string = JOB_FILE_ENDING): string {
  const stem = bare(bare(asciiOf(text), ending).slice(0, MAX_LENGTH - ending.length), ending);
  if (stem === '') return `stair${ending}`;
  return RESERVED.test(stem) ? safeFileName(`stair-${stem}`, ending) : `${stem}${ending}`;
}

/** Accents go and their letters stay; anything else outside the set becomes one dash. */
function asciiOf(text: string): string {
  return text
    .normalize('NFKD')
    .replace(/\p{Mark}+/gu, '')
    .replace(/[^A-Za-z0-9._-]+/g, '-')
    .replace(/\.{2,}/g, '.');
}

/**
 * Without its ending, so that a file that is opened and saved again does not grow a second one,
 * and without what is unsafe at either end: a leading dot hides a file, a leading dash looks like
 * an option, a trailing dot is dropped by Windows.
 */
function bare(name: string, ending: string): string {
  let stem = name;
  for (;;) {
    const lower = stem.toLowerCase();
    const known = [ending, JOB_FILE_ENDING, '.json'].find((each) => lower.endsWith(each.toLowerCase()));
    const shorter = (known === undefined ? stem : stem.slice(0, -known.length)).replace(/^[.-]+|[.-]+$/g, '');
    if (shorter === stem) return stem;
    stem = shorter;
  }
}

/** The last part with its dot, as a save dialog wants it. */
export function extensionOf(name: string): string {
  return name.slice(name.lastIndexOf('.'));
}
