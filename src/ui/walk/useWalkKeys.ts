/** The keys of a walk: arrows go, space ticks off and goes on, Escape closes what is uppermost. */
import { useEffect } from 'react';

interface WalkKeys {
  readonly back: () => void;
  readonly skip: () => void;
  readonly tickAndNext: () => void;
  readonly leave: () => void;
  readonly closeList: () => void;
  readonly isListOpen: boolean;
}

export function useWalkKeys(keys: WalkKeys): void {
  useEffect(() => {
    function onKeyDown(event: KeyboardEvent): void {
      if (event.ctrlKey || event.metaKey || event.altKey) return;
      const run = runFor(event, keys);
      if (run === null) return;
      event.preventDefault();
      run();
    }
    document.addEventListener('keydown', onKeyDown);
    return () => document.removeEventListener('keydown', onKeyDown);
  });
}

function runFor(event: KeyboardEvent, keys: WalkKeys): (() => void) | null {
  if (event.key === 'Escape') return keys.isListOpen ? keys.closeList : keys.leave;
  if (keys.isListOpen) return null;
  switch (event.key) {
    case 'ArrowRight':
    case 'ArrowDown':
      return keys.skip;
    case 'ArrowLeft':
    case 'ArrowUp':
      return keys.back;
    case ' ':
      // Held down it would tick off what nobody has marked; on a key that was tabbed to it presses that key.
      return event.repeat || isOnButton(event) ? null : keys.tickAndNext;
    default:
      return null;
  }
}

function isOnButton({ target }: KeyboardEvent): boolean {
  return target instanceof Element && target.closest('button') !== null;
}
