/**
 * Wishes as they are typed, on the page or behind a command: a text for each, lengths with their unit, lists
 * with commas. What is left out or empty is no wish.
 */
import type { RuleBook } from '../plan/planStair';
import { failure, type Problem, problem, type Result, success } from '../result';
import { divide, type Exact, inch, sign, toMm, whole } from '../units/exact';
import { parseLength, type UnitSystem } from '../units/length';
import { CRITERIA, type Criterion, type Order } from './rank';
import { soldLengths, TOPS, type Wishes } from './wishes';

export const WISH_KEYS = ['run', 'headroom', 'longest', 'depths', 'tops', 'by', 'stride', 'rise'] as const;
export type WishKey = (typeof WISH_KEYS)[number];
export type WishTexts = Readonly<Partial<Record<WishKey, string>>>;

export interface ReadWishes {
  readonly wishes: Wishes;
  readonly order: Order;
}

/** Beside two rises and a run, the first thing that one wishes of a stair. Common practice, no source. */
const USUAL_ORDER: readonly Criterion[] = ['cautions', 'stride', 'headroom'];
const USUAL_RISE: Readonly<Record<UnitSystem, Exact>> = { imperial: inch(7), metric: whole(180) };
/** Where the trade's own rule is not at hand: its middle. Common practice, no source. */
const USUAL_STRIDE = inch(24.5);
const MOST_CRITERIA = 4;

/** @returns wishes and order, or every text that does not read, its place being the wish's name */
export function readWishes(texts: WishTexts, units: UnitSystem, book: Pick<RuleBook, 'tastes'>): Result<ReadWishes> {
  const reader = new WishReader(texts);
  const longest = reader.length('longest');
  const sold = soldLengths(units);
  const wishes: Wishes = {
    runAvailable: reader.length('run'),
    headroom: reader.length('headroom'),
    stockLengths: longest === null ? sold : upTo(sold, toMm(longest)),
    stockDepths: reader.list('depths').flatMap((text) => reader.read('depths', text) ?? []),
    tops: reader.choices('tops', TOPS),
  };
  const criteria = reader.choices('by', CRITERIA, USUAL_ORDER);
  if (criteria.length > MOST_CRITERIA) {
    reader.problems.push(problem('by', 'wish.tooMany', { found: criteria.length, most: MOST_CRITERIA }));
  }
  const order: Order = {
    criteria,
    stride: toMm(reader.length('stride') ?? strideOf(book)),
    unitRise: toMm(reader.length('rise') ?? USUAL_RISE[units]),
  };
  return reader.problems.length > 0 ? failure(reader.problems) : success({ wishes, order });
}

/** The middle of what the trade's rule for two rises and a run asks. */
function strideOf({ tastes }: Pick<RuleBook, 'tastes'>): Exact {
  const rule = tastes.find(({ field }) => field === 'taste.twoRPlusG');
  return rule === undefined ? USUAL_STRIDE : divide(inch(rule.low + rule.high), whole(2));
}

/** Every length that is sold up to the longest, and that one itself. */
function upTo(sold: readonly number[], longest: number): readonly number[] {
  return [...sold.filter((length) => length < longest), longest];
}

class WishReader {
  readonly problems: Problem[] = [];

  constructor(private readonly texts: WishTexts) {}

  length(key: WishKey): Exact | null {
    const text = this.texts[key] ?? '';
    return text.trim() === '' ? null : this.read(key, text);
  }

  read(key: WishKey, text: string): Exact | null {
    const reading = parseLength(text);
    if (reading.ok && sign(reading.length) > 0) return reading.length;
    this.problems.push(problem(key, reading.ok ? 'value.notPositive' : reading.fault, { found: text.slice(0, 60) }));
    return null;
  }

  list(key: WishKey): readonly string[] {
    const parts = (this.texts[key] ?? '').split(',').map((part) => part.trim());
    return parts.filter((part) => part !== '');
  }

  /** @returns each once, in the order in which they were written; what is usual where none was */
  choices<T extends string>(key: WishKey, known: readonly T[], usual: readonly T[] = known): readonly T[] {
    const chosen = this.list(key).flatMap((text): T[] => {
      const choice = known.find((each) => each === text);
      if (choice === undefined)
        this.problems.push(problem(key, 'wish.choice', { found: text.slice(0, 60), known: known.join(', ') }));
      return choice === undefined ? [] : [choice];
    });
    return chosen.length === 0 ? usual : [...new Set(chosen)];
  }
}
