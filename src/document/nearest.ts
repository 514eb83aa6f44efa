/** Which known word a mistyped one is nearest to: least letters changed, added or dropped. */
export function nearestOf(word: string, known: readonly string[]): string {
  let best = known[0] ?? '';
  let least = Number.POSITIVE_INFINITY;
  for (const candidate of known) {
    const changes = changesBetween(word.slice(0, 60).toLowerCase(), candidate.toLowerCase());
    if (changes < least) [best, least] = [candidate, changes];
  }
  return best;
}

/** Levenshtein's distance, one row at a time. */
function changesBetween(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, i) => i);
  for (let i = 1; i <= a.length; i += 1) {
    const next = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const swap = (row[j - 1] as number) + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(swap, (row[j] as number) + 1, (next[j - 1] as number) + 1));
    }
    row = next;
  }
  return row[b.length] as number;
}
