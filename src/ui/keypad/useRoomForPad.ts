/** The page makes room for the pad, and the field in hand stays in sight above it. */
import { type RefObject, useLayoutEffect } from 'react';

export function useRoomForPad(pad: RefObject<HTMLElement | null>, input: HTMLElement, gloves: boolean): void {
  useLayoutEffect(() => {
    const root = document.documentElement;
    root.dataset['keypad'] = gloves ? 'gloves' : 'keys';
    return () => {
      delete root.dataset['keypad'];
      root.style.removeProperty('--keypad-height');
    };
  }, [gloves]);

  useLayoutEffect(() => {
    const element = pad.current;
    if (element === null) return undefined;
    const makeRoom = () => {
      document.documentElement.style.setProperty('--keypad-height', `${element.offsetHeight}px`);
      input.closest('.field')?.scrollIntoView({ block: 'nearest' });
    };
    makeRoom();
    if (typeof ResizeObserver === 'undefined') return undefined;
    const observer = new ResizeObserver(makeRoom);
    observer.observe(element);
    return () => observer.disconnect();
  }, [pad, input]);
}
