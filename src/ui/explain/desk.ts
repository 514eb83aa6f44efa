/** Who answers when a number is asked about: set up once for the page, found by every number on it. */
import { createContext, useContext } from 'react';
import type { Measure } from '../../core/explain/measures';
import { measureNamed } from '../../core/explain/measures';
import { isTextKey, type Speaker } from '../../text/say';
import { labelOf } from '../fields/fieldWords';
import { placeOfKey } from '../fields/jobPlaces';

export interface Desk {
  /** Says where a number comes from. */
  readonly explain: (measure: Measure) => void;
  /** To what a thing on a drawing is about: a number is explained, a field takes the focus. */
  readonly about: (about: string) => void;
}

export const DeskContext = createContext<Desk | null>(null);

/** Null where nobody answers: then numbers are only numbers. */
export function useDesk(): Desk | null {
  return useContext(DeskContext);
}

/** What a number or a key is called. */
export function nameOfAbout(say: Speaker, index: number, about: string): string {
  const measure = measureNamed(about);
  return measure === null ? labelOf(say, placeOfKey(index, about)) : nameOfMeasure(say, measure);
}

export function nameOfMeasure(say: Speaker, measure: Measure): string {
  const [name, step] = measure.split(':');
  const key = `number.${name}`;
  return isTextKey(key) ? say(key, { step: Number(step ?? 0) }) : measure;
}

/** Where a number stands on the page that explains them all. */
export function idOfMeasure(measure: Measure): string {
  return `why-${measure.replace(':', '-')}`;
}
