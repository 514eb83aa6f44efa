/**
 * Printers that somebody has laid a tape on: what each makes of a length along either side of the paper, by the
 * name that it was given. A database of its own, since drafts must open whatever becomes of these. Nothing throws.
 */
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import { type Correction, readCorrection } from '../core/drawing/correction';

export interface KnownPrinter extends Correction {
  readonly name: string;
}

const NAME = 'pitchboard-printers';
const VERSION = 1;
/** A name is a few words on a list. */
const LONGEST_NAME = 60;

interface Schema extends DBSchema {
  printers: { key: string; value: KnownPrinter };
}

/** @returns by name; one that was damaged, or that no printer can be, is left out. Null: this browser keeps none. */
export async function knownPrinters(): Promise<readonly KnownPrinter[] | null> {
  return withDatabase(async (database) => {
    const records: readonly unknown[] = await database.getAll('printers');
    return records.flatMap(printerFrom).sort((one, other) => one.name.localeCompare(other.name));
  });
}

/** @returns whether the disk has it: one transaction, strictly committed, in place of the printer of that name */
export async function keepPrinter(printer: KnownPrinter): Promise<boolean> {
  const [checked] = printerFrom(printer);
  if (checked === undefined) return false;
  return (await withDatabase((database) => strictly(database, (store) => store.put(checked, checked.name)))) ?? false;
}

/** @returns whether it is gone from the disk */
export async function forgetPrinter(name: string): Promise<boolean> {
  return (await withDatabase((database) => strictly(database, (store) => store.delete(name)))) ?? false;
}

export function printerName(text: string): string {
  return Array.from(text.replace(/\s+/gu, ' ').trim()).slice(0, LONGEST_NAME).join('');
}

type Database = IDBPDatabase<Schema>;

function writing(database: Database) {
  return database.transaction('printers', 'readwrite', { durability: 'strict' });
}

async function strictly(
  database: Database,
  write: (store: ReturnType<typeof writing>['store']) => Promise<unknown>,
): Promise<boolean> {
  const transaction = writing(database);
  await Promise.all([write(transaction.store), transaction.done]);
  return true;
}

async function withDatabase<T>(work: (database: Database) => Promise<T>): Promise<T | null> {
  try {
    const database = await openDB<Schema>(NAME, VERSION, {
      upgrade: (fresh) => void fresh.createObjectStore('printers'),
    });
    try {
      return await work(database);
    } finally {
      database.close();
    }
  } catch {
    return null;
  }
}

function printerFrom(record: unknown): KnownPrinter[] {
  if (typeof record !== 'object' || record === null) return [];
  const { name, short, long } = record as Readonly<Record<string, unknown>>;
  if (typeof name !== 'string' || typeof short !== 'number' || typeof long !== 'number') return [];
  const plain = printerName(name);
  const correction = readCorrection(short, long);
  return plain === '' || !correction.ok ? [] : [{ name: plain, ...correction.value }];
}
