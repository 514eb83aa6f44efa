/**
 * The length keypad at the bottom of the screen: whole numbers, and an inch of tape to point at. It writes
 * into the field in hand, which keeps the focus; every key is one tap.
 */
import { lazy, type ReactNode, Suspense, useContext, useEffect, useState, useSyncExternalStore } from 'react';
import { createKeypadDesk, KeypadContext, type KeypadDesk } from './keypadDesk';
import { useCoarsePointer } from './useCoarsePointer';

const loadPad = () => import('./Pad');
const Pad = lazy(() => loadPad().then(({ Pad }) => ({ default: Pad })));

/** Gives every length field inside a keypad, and shows it while one is in hand. */
export function KeypadProvider({ children }: { readonly children: ReactNode }) {
  const coarse = useCoarsePointer();
  const [desk] = useState(() => createKeypadDesk(coarse));
  useEffect(() => {
    desk.show(coarse);
    // On a tablet the next touch may need it: it is fetched while nothing else is.
    if (coarse) void loadPad();
  }, [desk, coarse]);
  return (
    <KeypadContext value={desk}>
      {children}
      <Keypad />
    </KeypadContext>
  );
}

function Keypad() {
  const desk = useContext(KeypadContext) as KeypadDesk;
  const { hand, entry, shown } = useSyncExternalStore(desk.subscribe, desk.state);
  if (hand === null || !shown) return null;
  return (
    <Suspense fallback={null}>
      <Pad desk={desk} hand={hand} entry={entry} />
    </Suspense>
  );
}
