/** Who speaks for the page. Texts that are late are fetched here, and the page says everything anew when they come. */
import { useEffect, useMemo, useSyncExternalStore } from 'react';
import { onTexts, type Speaker, speakerFor, type Terms } from '../text/say';

export function useSpeaker(terms: Terms): Speaker {
  useEffect(() => {
    // Without a network the page still says what it needs to be measured with.
    import('../text/lateSoon').catch(() => undefined);
  }, []);
  useEffect(() => {
    // Until they come, and without a network, the words of the US trade stand in.
    if (terms === 'uk') import('../text/lateUk').catch(() => undefined);
  }, [terms]);
  const say = useSyncExternalStore(onTexts, () => speakerFor(terms));
  return useMemo(() => (key, values) => heldTogether(say(key, values)), [say]);
}

/** Between a whole number, its fraction and its unit no line may break: `7` and then `9/16 in` are two lengths. */
const INSIDE_LENGTH = /\d (?=\d+\/\d|\+? ?(in|mm|ft)\b)|\+ (?=in\b)/g;

function heldTogether(text: string): string {
  return text.replace(INSIDE_LENGTH, (start) => `${start[0]}\u00a0`);
}
