/**
 * Makes chosen calls to IndexedDB go wrong, counted over all of them in the order in which they
 * are made: the way a browser's storage fails is never the way one expects.
 */
import {
  IDBDatabase,
  IDBFactory,
  IDBObjectStore,
  IDBOpenDBRequest,
  IDBRequest,
  IDBTransaction,
  IDBVersionChangeEvent,
} from 'fake-indexeddb';

export type Fault =
  /** The call itself throws. */
  | { readonly kind: 'throws'; readonly name: string }
  /** The call is taken and its request fails later. */
  | { readonly kind: 'fails'; readonly name: string }
  /** The call is taken and nothing is ever heard of it. */
  | { readonly kind: 'silent' }
  /** The call does its work, and the connection is gone right after it. */
  | { readonly kind: 'dies' };

export interface Faults {
  /** How many calls were made so far. */
  count(): number;
  remove(): void;
}

interface Call {
  readonly self: unknown;
  readonly real: () => unknown;
}

const OPEN = [[IDBFactory.prototype, 'open']] as const;
const ENTER = [
  [IDBDatabase.prototype, 'transaction'],
  [IDBTransaction.prototype, 'objectStore'],
] as const;
const REQUEST = ['get', 'put', 'delete', 'getAllKeys'].map((name) => [IDBObjectStore.prototype, name] as const);

export function injectFaults(fault: Fault, isHit: (call: number) => boolean): Faults {
  let calls = 0;
  const undo: (() => void)[] = [];

  function watch(prototype: object, name: string, goWrong: (call: Call) => unknown): void {
    const methods = prototype as Record<string, (...args: unknown[]) => unknown>;
    const real = methods[name];
    if (real === undefined) throw new Error(`No method ${name}`);
    methods[name] = function (this: unknown, ...args: unknown[]) {
      calls += 1;
      const call: Call = { self: this, real: () => real.apply(this, args) };
      return isHit(calls) ? goWrong(call) : call.real();
    };
    undo.push(() => {
      methods[name] = real;
    });
  }

  for (const [prototype, name] of OPEN) watch(prototype, name, (call) => openGoesWrong(fault, call));
  for (const [prototype, name] of ENTER) watch(prototype, name, (call) => entryGoesWrong(fault, call));
  for (const [prototype, name] of REQUEST) watch(prototype, name, (call) => requestGoesWrong(fault, call));
  return {
    count: () => calls,
    remove: () =>
      undo.forEach((each) => {
        each();
      }),
  };
}

function openGoesWrong(fault: Fault, { real }: Call): unknown {
  if (fault.kind === 'throws') throw new DOMException('', fault.name);
  if (fault.kind === 'dies') return real();
  const request = new (IDBOpenDBRequest as unknown as new () => FakeRequest)();
  if (fault.kind === 'fails') setImmediate(() => failNow(request, fault.name));
  return request;
}

function entryGoesWrong(fault: Fault, { self, real }: Call): unknown {
  if (fault.kind === 'throws' || fault.kind === 'fails') throw new DOMException('', fault.name);
  if (fault.kind === 'dies') {
    const result = real();
    if (self instanceof IDBDatabase) (self as IDBDatabase).close();
    return result;
  }
  const transaction = real();
  // The work is done and the browser forgets to say so.
  if (self instanceof IDBDatabase) (transaction as FakeTarget).dispatchEvent = () => true;
  return transaction;
}

function requestGoesWrong(fault: Fault, { self, real }: Call): unknown {
  if (fault.kind === 'throws') throw new DOMException('', fault.name);
  const { transaction } = self as { readonly transaction: FakeTransaction };
  if (fault.kind === 'silent') return fallSilent(transaction);
  if (fault.kind === 'dies') {
    const result = real();
    setImmediate(() => endTransaction(transaction));
    return result;
  }
  const operation = (): never => {
    throw new DOMException('', fault.name);
  };
  return transaction._execRequestAsync({ source: self, operation });
}

/** Requests are done in order: behind one that is stuck all others wait, and nothing is committed. */
function fallSilent(transaction: FakeTransaction): unknown {
  const inert = (): unknown => new (IDBRequest as unknown as new () => FakeRequest)();
  transaction._execRequestAsync = inert;
  transaction.dispatchEvent = () => true;
  setImmediate(() => endTransaction(transaction));
  return inert();
}

function endTransaction(transaction: FakeTransaction): void {
  try {
    transaction.db.close();
    transaction._abort('AbortError');
  } catch {
    // It was over already.
  }
}

function failNow(request: FakeRequest, name: string): void {
  request.readyState = 'done';
  request.error = new DOMException('', name);
  request.dispatchEvent(new IDBVersionChangeEvent('error'));
}

/** What is used of the stand-in for IndexedDB beyond its public face. */
interface FakeTarget {
  dispatchEvent: (event: Event) => boolean;
}

interface FakeRequest extends FakeTarget {
  readyState: string;
  error: DOMException | null;
}

interface FakeTransaction extends FakeTarget {
  readonly db: { close(): void };
  _abort(name: string): void;
  _execRequestAsync: (request: { readonly source: unknown; readonly operation: () => unknown }) => unknown;
}
