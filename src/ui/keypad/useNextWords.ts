/** What comes after the field in hand, kept up while the page changes: a key may have brought or taken it. */
import { useCallback, useSyncExternalStore } from 'react';
import { nextStop } from './nextStop';

export interface NextWords {
  readonly words: string;
  readonly isButton: boolean;
}

const BUTTON = 'button:';

/** @returns null after the last field */
export function useNextWords(input: HTMLInputElement): NextWords | null {
  const subscribe = useCallback(
    (listener: () => void) => {
      const observer = new MutationObserver(listener);
      observer.observe(input.closest('form') ?? document.body, { subtree: true, childList: true, characterData: true });
      return () => observer.disconnect();
    },
    [input],
  );
  const found = useSyncExternalStore(subscribe, () => snapshotOf(input));
  if (found === null) return null;
  return found.startsWith(BUTTON)
    ? { words: found.slice(BUTTON.length), isButton: true }
    : { words: found, isButton: false };
}

function snapshotOf(input: HTMLInputElement): string | null {
  const stop = nextStop(input);
  return stop === null ? null : `${stop.isButton ? BUTTON : ''}${stop.words}`;
}
