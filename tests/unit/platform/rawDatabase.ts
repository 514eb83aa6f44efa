/**
 * The draft database seen from outside, past the code under test: to damage it and to look.
 */
export async function rawStore<T>(
  store: 'jobs' | 'heads',
  work: (records: IDBObjectStore) => IDBRequest<T> | undefined,
): Promise<T | undefined> {
  const database = await settled(indexedDB.open('pitchboard'));
  const transaction = database.transaction(store, 'readwrite');
  const request = work(transaction.objectStore(store));
  await new Promise<void>((resolve, reject) => {
    transaction.oncomplete = () => resolve();
    transaction.onabort = () => reject(transaction.error);
  });
  database.close();
  return request?.result;
}

export async function jobNumbers(): Promise<number[]> {
  return ((await rawStore('jobs', (jobs) => jobs.getAllKeys())) ?? []) as number[];
}

export async function replaceRecord(store: 'jobs' | 'heads', key: number, value: unknown): Promise<void> {
  await rawStore(store, (records) => records.put(value, key));
}

export async function record(store: 'jobs' | 'heads', key: number): Promise<unknown> {
  return rawStore<unknown>(store, (records) => records.get(key));
}

function settled<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}
