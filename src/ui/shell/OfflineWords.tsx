/** Whether the program opens without a network, and that a newer one waits: said, never done unasked. */
import { useEffect, useSyncExternalStore } from 'react';
import { createOfflineKeeper, type Offline } from '../../platform/offline';
import { useWords } from '../stairOnShow';

/** The page is one, and so is what the browser keeps of it. */
const keeper = createOfflineKeeper();
/** The files are fetched when the page has come to rest, in milliseconds. */
const REST = 2000;

function useOffline(): Offline {
  useEffect(() => {
    const timer = setTimeout(keeper.start, REST);
    return () => clearTimeout(timer);
  }, []);
  return useSyncExternalStore(keeper.subscribe, keeper.now);
}

export function OfflineNews() {
  const { say } = useWords();
  if (useOffline() !== 'newer') return null;
  return (
    <p className="notice newer">
      {say('offline.newer')}{' '}
      <button type="button" onClick={keeper.begin}>
        {say('offline.begin')}
      </button>
    </p>
  );
}

export function OfflineLine() {
  const { say } = useWords();
  return <p className="offline-line">{say(`offline.is.${useOffline()}`)}</p>;
}
