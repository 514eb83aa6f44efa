/**
 * A key that is tapped takes no focus: the field keeps it, and with it the caret and what a screen
 * reader reads. Who goes into the pad with a keyboard leaves the field only when they leave the pad.
 */
import { type RefObject, useEffect } from 'react';
import type { FieldInHand, KeypadDesk } from './keypadDesk';

export function useHeldFocus(pad: RefObject<HTMLElement | null>, desk: KeypadDesk, hand: FieldInHand): void {
  useEffect(() => {
    const element = pad.current;
    if (element === null) return undefined;
    const hold = (event: Event) => event.preventDefault();
    const onFocusOut = ({ relatedTarget: to }: FocusEvent) => {
      if (to === hand.input || (to instanceof Element && to.closest('[data-keypad-part]') !== null)) return;
      hand.leave();
      desk.letGo(hand.input);
    };
    element.addEventListener('pointerdown', hold);
    element.addEventListener('mousedown', hold);
    element.addEventListener('focusout', onFocusOut);
    return () => {
      element.removeEventListener('pointerdown', hold);
      element.removeEventListener('mousedown', hold);
      element.removeEventListener('focusout', onFocusOut);
    };
  }, [pad, desk, hand]);
}
