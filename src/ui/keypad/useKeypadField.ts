/** A length field's side of the keypad: takes it in hand with the focus, and tells it what stands there. */
import { type FocusEvent, useContext, useEffect, useLayoutEffect, useRef, useSyncExternalStore } from 'react';
import { useWords } from '../stairOnShow';
import { type FieldInHand, KeypadContext, type KeypadDesk, ownUnit } from './keypadDesk';
import { useCoarsePointer } from './useCoarsePointer';

export interface PadRules {
  readonly negative?: boolean;
  readonly notKnown?: (() => void) | undefined;
}

interface KeypadField {
  readonly text: string;
  readonly rules: PadRules;
  readonly write: (text: string) => void;
  readonly leave: () => void;
}

/** Keys of the pad and the button that opens it are no other place: the field stays in hand there. */
const PAD = '[data-keypad-part]';

export function useKeypadField({ text, rules, write, leave }: KeypadField) {
  const desk = useContext(KeypadContext);
  const { units } = useWords();
  const coarse = useCoarsePointer();
  const input = useRef<HTMLInputElement>(null);
  // What is in hand outlives a drawing of the field: it always speaks to the newest one.
  const newest = useRef({ write, leave, rules });
  useLayoutEffect(() => {
    newest.current = { write, leave, rules };
  });
  const inHand = useDesk(desk, ({ hand }) => hand !== null && hand.input === input.current);
  const shown = useDesk(desk, (state) => state.shown);
  useEffect(() => {
    if (input.current !== null) desk?.follow(input.current, text);
  }, [desk, text]);
  useEffect(() => {
    const element = input.current;
    return () => {
      if (element !== null) desk?.letGo(element);
    };
  }, [desk]);

  function take(): void {
    const element = input.current;
    if (desk === null || element === null) return;
    const hand: FieldInHand = {
      input: element,
      own: ownUnit(units),
      negative: rules.negative === true,
      write: (next) => newest.current.write(next),
      leave: () => newest.current.leave(),
      notKnown: rules.notKnown === undefined ? null : () => newest.current.rules.notKnown?.(),
    };
    desk.take(hand, text);
    if (coarse && shown) requestAnimationFrame(() => element.select());
  }

  /** Out of the field, or out of the button beside it: the two are one place. */
  function onBlur(event: FocusEvent<HTMLElement>): void {
    const to = event.relatedTarget;
    if (to !== null && to === input.current) return;
    if (desk !== null && to instanceof Element && to.closest(PAD) !== null) return;
    leave();
    // A window that is left keeps its focused element, and comes back to it.
    if (document.activeElement !== event.currentTarget && input.current !== null) desk?.letGo(input.current);
  }

  /** The button is gone once the pad is there: the focus goes to where the pad writes. */
  function open(): void {
    desk?.show(true);
    input.current?.focus();
  }

  return {
    input,
    take,
    onBlur,
    inHand,
    inputMode: coarse && shown && desk !== null ? ('none' as const) : ('text' as const),
    /** There is a pad that could be opened, and it is not open. */
    offered: desk !== null && inHand && !shown,
    open,
  };
}

function useDesk<T extends boolean>(desk: KeypadDesk | null, select: (state: ReturnType<KeypadDesk['state']>) => T) {
  return useSyncExternalStore(desk?.subscribe ?? never, () => (desk === null ? false : select(desk.state())));
}

function never(): () => void {
  return () => undefined;
}
