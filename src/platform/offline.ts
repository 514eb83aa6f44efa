/**
 * Asks the browser to keep the program on this device, and says what became of it. The keeper itself
 * is `src/offline/worker.ts`. Nothing here throws or rejects, and nothing changes until `begin` is called.
 */

/** `cannot`: this browser, or the way the page came, does not allow it. `newer`: another version waits. */
export type Offline = 'cannot' | 'fetching' | 'kept' | 'failed' | 'newer';

export interface OfflineKeeper {
  readonly subscribe: (listener: () => void) => () => void;
  readonly now: () => Offline;
  /** Asks for it, the first time it is called. */
  start(): void;
  /** Has the version that waits begin, in this window with a reload. */
  begin(): void;
}

/** What is asked of the browser's own; a test hands in another. */
export interface WorkerHouse extends EventTarget {
  readonly controller: object | null;
  register(address: string): Promise<WorkerRoom>;
}

export interface WorkerRoom extends EventTarget {
  readonly installing: KeepingWorker | null;
  readonly waiting: KeepingWorker | null;
  readonly active: object | null;
}

export interface KeepingWorker extends EventTarget {
  postMessage(message: string): void;
}

/** The policy of the page (vite.config.ts) lets nobody else name a script to run, and this one name no other. */
const POLICY = 'pitchboard-offline';
const WORKER_FILE = 'offline.js';

export function createOfflineKeeper(
  house: WorkerHouse | undefined = browserHouse(),
  reload: () => void = () => window.location.reload(),
): OfflineKeeper {
  let now: Offline = house === undefined ? 'cannot' : 'fetching';
  let room: WorkerRoom | null = null;
  let isStarted = false;
  const listeners = new Set<() => void>();

  function become(next: Offline): void {
    if (next === now) return;
    now = next;
    for (const listener of listeners) listener();
  }

  function look(): void {
    if (room === null) return;
    if (room.waiting !== null && house?.controller) become('newer');
    else if (room.active !== null) become('kept');
    else become(room.installing === null && room.waiting === null ? 'failed' : 'fetching');
  }

  function enter(registered: WorkerRoom): void {
    room = registered;
    const follow = (worker: KeepingWorker | null) => worker?.addEventListener('statechange', look);
    follow(registered.installing);
    follow(registered.waiting);
    registered.addEventListener('updatefound', () => follow(registered.installing));
    look();
  }

  return {
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    now: () => now,
    start() {
      if (isStarted || house === undefined) return;
      isStarted = true;
      // A host's own policy may refuse even to have the address vouched for.
      Promise.resolve()
        .then(() => house.register(workerAddress()))
        .then(enter, () => become('failed'));
    },
    begin() {
      house?.addEventListener('controllerchange', reload, { once: true });
      room?.waiting?.postMessage('begin');
    },
  };
}

/** Missing in older browsers, and on a page that did not come over a secure way. */
function browserHouse(): WorkerHouse | undefined {
  return import.meta.env.PROD && 'serviceWorker' in navigator ? navigator.serviceWorker : undefined;
}

interface TrustedTypes {
  createPolicy(name: string, rules: { createScriptURL(): string }): { createScriptURL(text: string): string };
}

/** @returns the only address that a script is ever run from by name; a browser that wants it vouched for has it so */
function workerAddress(): string {
  const { trustedTypes } = window as { trustedTypes?: TrustedTypes };
  const createScriptURL = () => new URL(WORKER_FILE, document.baseURI).href;
  return trustedTypes?.createPolicy(POLICY, { createScriptURL }).createScriptURL('') ?? createScriptURL();
}
