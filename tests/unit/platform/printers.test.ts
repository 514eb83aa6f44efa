import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { openDB } from 'idb';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { forgetPrinter, keepPrinter, knownPrinters, printerName } from '../../../src/platform/printers';

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
});

const OFFICE = { name: 'Office', short: 0.985, long: 1.012 };

describe('printers that are remembered', () => {
  it('are there again by their names, the newest figures of each', async () => {
    expect(await knownPrinters()).toEqual([]);
    expect(await keepPrinter(OFFICE)).toBe(true);
    expect(await keepPrinter({ name: 'Attic', short: 1, long: 0.97 })).toBe(true);
    expect(await keepPrinter({ ...OFFICE, short: 0.99 })).toBe(true);
    expect(await knownPrinters()).toEqual([
      { name: 'Attic', short: 1, long: 0.97 },
      { ...OFFICE, short: 0.99 },
    ]);
    expect(await forgetPrinter('Attic')).toBe(true);
    expect(await knownPrinters()).toEqual([{ ...OFFICE, short: 0.99 }]);
  });

  it('are written in a transaction that waits for the disk', async () => {
    const asked = vi.spyOn(IDBDatabase.prototype, 'transaction');
    await keepPrinter(OFFICE);
    expect(asked).toHaveBeenCalledWith('printers', 'readwrite', { durability: 'strict' });
    asked.mockRestore();
  });

  it.each([
    ['too far off', { ...OFFICE, short: 1.2 }],
    ['no number', { ...OFFICE, long: Number.NaN }],
    ['without a name', { ...OFFICE, name: '  ' }],
  ])('are not kept if they are %s', async (_why, printer) => {
    expect(await keepPrinter(printer)).toBe(false);
    expect(await knownPrinters()).toEqual([]);
  });

  it('are left out if the record was damaged', async () => {
    await keepPrinter(OFFICE);
    const database = await openDB('pitchboard-printers', 1);
    await database.put('printers', { name: 'Broken', short: 'wide' }, 'Broken');
    await database.put('printers', 'text', 'Text');
    database.close();
    expect(await knownPrinters()).toEqual([OFFICE]);
  });

  it('are not called kept where the browser keeps nothing', async () => {
    vi.stubGlobal('indexedDB', undefined);
    expect(await keepPrinter(OFFICE)).toBe(false);
    expect(await forgetPrinter('Office')).toBe(false);
    expect(await knownPrinters()).toBeNull();
    vi.unstubAllGlobals();
  });

  it('have one line as a name', () => {
    expect(printerName(' The\n laser  upstairs ')).toBe('The laser upstairs');
    expect(printerName('x'.repeat(500))).toHaveLength(60);
  });
});
