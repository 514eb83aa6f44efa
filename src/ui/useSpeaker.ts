/** Who speaks for the page. Texts that are late are fetched here, and the page says everything anew when they come. */
import { useEffect, useMemo, useSyncExternalStore } from 'react';
import { onTexts, type Speaker, speakerFor, type Terms } from '../text/say';
import { heldTogether } from './numbers/heldTogether';

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
