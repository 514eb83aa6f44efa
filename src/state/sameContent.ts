/**
 * Compares what a file would hold: a key that is undefined is a key left out. Parts that are the
 * same object are equal without a look, which is nearly all of them after one edit.
 */
export function sameContent(one: unknown, other: unknown): boolean {
  if (one === other) return true;
  if (!isObject(one) || !isObject(other) || Array.isArray(one) !== Array.isArray(other)) return false;
  const keys = new Set([...Object.keys(one), ...Object.keys(other)]);
  return [...keys].every((key) => sameContent(one[key], other[key]));
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}
