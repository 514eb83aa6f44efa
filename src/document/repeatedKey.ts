/**
 * A key that stands twice in one object. The reader of JSON takes the last one without a word, and a
 * rise that was corrected above an old one would be laid out as it was.
 */
import { visit } from 'jsonc-parser';

/** @param text valid JSON; @returns the path of the first repeated key, or null */
export function repeatedKey(text: string): readonly (string | number)[] | null {
  const open: Set<string>[] = [];
  let repeated: readonly (string | number)[] | null = null;
  visit(text, {
    onObjectBegin: () => void open.push(new Set()),
    onObjectEnd: () => void open.pop(),
    onObjectProperty(key, _offset, _length, _line, _column, pathOf) {
      const keys = open.at(-1);
      if (keys?.has(key) === true) repeated ??= [...pathOf(), key];
      keys?.add(key);
    },
  });
  return repeated;
}
