/**
 * What to look at first. By what goes wrong when it is: someone falls, or the stair does; the first
 * or last riser trips; a head is hit; a hand finds nothing or gets stuck; and last, taste.
 * Common practice, no source.
 */
interface Ranked {
  readonly field: string;
  readonly kind: 'rule' | 'build' | 'taste';
}

export type Danger = 'falls' | 'uneven' | 'head' | 'hand' | 'other' | 'taste';

const ORDER: readonly Danger[] = ['falls', 'uneven', 'head', 'hand', 'other', 'taste'];

const FIRST_WORDS: Readonly<Record<Exclude<Danger, 'other' | 'taste'>, readonly string[]>> = {
  falls: [
    'guard',
    'openRiser',
    'riser',
    'tread',
    'nosing',
    'pitch',
    'twoRPlusG',
    'flight',
    'winder',
    'landing',
    'walkingSurface',
    'throat',
    'headerContact',
    'kicker',
    'stringer',
    'treadBoard',
    'load',
  ],
  uneven: ['variation', 'asCut'],
  head: ['headroom', 'obstacle'],
  hand: ['handrail', 'width'],
};

export function dangerOf({ field, kind }: Ranked): Danger {
  if (kind === 'taste') return 'taste';
  const [first] = field.split('.');
  return ORDER.find((danger) => wordsOf(danger).some((word) => word === first)) ?? 'other';
}

/** @returns a new list, worst first; what is equally bad keeps its order */
export function sortByDanger<T extends Ranked>(findings: readonly T[]): readonly T[] {
  return [...findings].sort((a, b) => ORDER.indexOf(dangerOf(a)) - ORDER.indexOf(dangerOf(b)));
}

function wordsOf(danger: Danger): readonly string[] {
  return danger === 'other' || danger === 'taste' ? [] : FIRST_WORDS[danger];
}
