/**
 * Which length field the keypad writes into, and what stands there. It lives beside the store: nothing
 * of it is worth keeping. A field takes the pad in hand when it gets the focus and follows it until
 * the focus goes elsewhere than to the pad itself.
 */
import { createContext } from 'react';
import type { UnitSystem } from '../../core/units/length';
import type { Entry, PadUnit } from './keypadText';

/** What stands in the field; its unit is made out by the keys, which come late. */
export type Standing = Omit<Entry, 'unit'> & { readonly unit: PadUnit | null };

export interface FieldInHand {
  readonly input: HTMLInputElement;
  readonly own: PadUnit;
  /** Where a minus has a meaning. */
  readonly negative: boolean;
  write(text: string): void;
  leave(): void;
  /** Null where not knowing is no answer. */
  readonly notKnown: (() => void) | null;
}

export interface PadState {
  readonly hand: FieldInHand | null;
  readonly entry: Standing;
  /** Wanted: it is on screen while a field is in hand too. */
  readonly shown: boolean;
}

export interface KeypadDesk {
  readonly subscribe: (listener: () => void) => () => void;
  readonly state: () => PadState;
  take(hand: FieldInHand, text: string): void;
  /** What stands in the field now, whoever wrote it. */
  follow(input: HTMLInputElement, text: string): void;
  letGo(input: HTMLInputElement): void;
  /** A key was pressed: what stands in the field becomes another. */
  turn(change: (entry: Standing, hand: FieldInHand) => Entry): void;
  show(shown: boolean): void;
}

export const KeypadContext = createContext<KeypadDesk | null>(null);

export function createKeypadDesk(shown: boolean): KeypadDesk {
  let state: PadState = { hand: null, entry: standing('', false), shown };
  const listeners = new Set<() => void>();

  function become(next: Partial<PadState>): void {
    state = { ...state, ...next };
    for (const listener of listeners) listener();
  }

  return {
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    state: () => state,
    take(hand, text) {
      // The same field again, as after a look at another window: what was begun goes on.
      const fresh = state.hand?.input !== hand.input || state.entry.text !== text;
      become({ hand, entry: fresh ? standing(text, true) : state.entry });
    },
    follow(input, text) {
      const { hand, entry } = state;
      if (hand?.input === input && entry.text !== text) become({ entry: standing(text, false) });
    },
    letGo(input) {
      if (state.hand?.input === input) become({ hand: null });
    },
    turn(change) {
      const { hand, entry } = state;
      if (hand === null) return;
      const next = change(entry, hand);
      become({ entry: next });
      if (next.text !== entry.text) hand.write(next.text);
    },
    show: (next) => become({ shown: next }),
  };
}

/** @param fresh true for a field that is just taken in hand */
function standing(text: string, fresh: boolean): Standing {
  return { text, unit: null, fresh: fresh && text !== '' };
}

export function ownUnit(units: UnitSystem): PadUnit {
  return units === 'metric' ? 'mm' : 'in';
}
