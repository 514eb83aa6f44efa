/** Three readings of one rise: how far they lie apart, and which one to take. */
import { compare, type Exact, fromDecimal, inch, subtract } from '../../core/units/exact';
import { parseLength, type UnitSystem } from '../../core/units/length';

export const SPOTS = ['left', 'centre', 'right'] as const;
export type Spot = (typeof SPOTS)[number];

export interface Reading {
  readonly spot: Spot;
  readonly text: string;
  readonly length: Exact;
}

/** Two readings of one height by one hand agree within this. Common practice, no source. */
const AGREE: Readonly<Record<UnitSystem, Exact>> = { imperial: inch(1 / 16), metric: fromDecimal('1.5') };

/** @param texts left, centre, right, with their units; those that do not read are left out */
export function readingsIn(texts: readonly string[]): readonly Reading[] {
  return SPOTS.flatMap((spot, at) => {
    const text = texts[at] ?? '';
    const reading = parseLength(text);
    return reading.ok ? [{ spot, text, length: reading.length }] : [];
  });
}

/** @returns null while there is nothing to compare */
export function spreadOf(readings: readonly Reading[]): Exact | null {
  const sorted = inOrder(readings);
  const [least, most] = [sorted[0], sorted.at(-1)];
  return least === undefined || most === undefined || sorted.length < 2 ? null : subtract(most.length, least.length);
}

export function limitOfSpread(units: UnitSystem): Exact {
  return AGREE[units];
}

export function areApart(readings: readonly Reading[], units: UnitSystem): boolean {
  const spread = spreadOf(readings);
  return spread !== null && compare(spread, AGREE[units]) > 0;
}

/** The only one, or the middle one of three; of two that differ none is. */
export function middleOf(readings: readonly Reading[]): Reading | null {
  const sorted = inOrder(readings);
  const [first, second] = sorted;
  if (first === undefined) return null;
  if (sorted.length === 2 && second !== undefined) return compare(first.length, second.length) === 0 ? first : null;
  return sorted.length === 3 ? (second ?? null) : first;
}

function inOrder(readings: readonly Reading[]): readonly Reading[] {
  return [...readings].sort((a, b) => compare(a.length, b.length));
}
