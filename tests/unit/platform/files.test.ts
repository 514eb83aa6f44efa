// @vitest-environment jsdom
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { MAX_FILE_BYTES, pickFile, saveFile } from '../../../src/platform/files';
import { createLateFiles } from '../../../src/platform/lateFiles';

function fileOf(name: string, size = 5): File {
  const file = new File(['hello'], name);
  Object.defineProperty(file, 'size', { value: size });
  return file;
}

const listOf = (...files: File[]): FileList => Object.assign([...files], { item: () => null }) as unknown as FileList;

beforeEach(() => {
  URL.createObjectURL = vi.fn(() => 'blob:one');
  URL.revokeObjectURL = vi.fn();
});

afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
  vi.useRealTimers();
  document.body.replaceChildren();
});

describe('picking a file', () => {
  /** Answers the dialog as the user would. */
  function answer(event: 'change' | 'cancel', ...files: File[]) {
    return vi.spyOn(HTMLInputElement.prototype, 'click').mockImplementation(function (this: HTMLInputElement) {
      expect(this.isConnected).toBe(true);
      Object.defineProperty(this, 'files', { value: listOf(...files) });
      this.dispatchEvent(new Event(event));
    });
  }

  test('gives its name and its bytes, and leaves nothing in the page', async () => {
    const click = answer('change', fileOf('a.json'));
    const picked = await pickFile();
    expect(picked).toMatchObject({ kind: 'picked', name: 'a.json' });
    expect(picked.kind === 'picked' && [...picked.bytes]).toEqual([104, 101, 108, 108, 111]);
    expect(click.mock.contexts[0]).toMatchObject({ type: 'file', accept: '.json,.pitchboard,application/json' });
    expect(document.body.childElementCount).toBe(0);
  });

  test('can be cancelled', async () => {
    answer('cancel');
    expect(await pickFile()).toEqual({ kind: 'cancelled' });
  });

  test('one that is too large is never read', async () => {
    const file = fileOf('film.json', MAX_FILE_BYTES + 1);
    const read = vi.spyOn(file, 'arrayBuffer');
    answer('change', file);
    expect(await pickFile()).toEqual({ kind: 'too-large', name: 'film.json' });
    expect(read).not.toHaveBeenCalled();
  });

  test('one of exactly the largest size is read', async () => {
    answer('change', fileOf('a.json', MAX_FILE_BYTES));
    expect((await pickFile()).kind).toBe('picked');
  });

  test('one that cannot be read is said', async () => {
    const file = fileOf('gone.json');
    vi.spyOn(file, 'arrayBuffer').mockRejectedValue(new DOMException('', 'NotFoundError'));
    answer('change', file);
    expect(await pickFile()).toEqual({ kind: 'failed', name: 'gone.json' });
  });
});

describe('dropping a file', () => {
  const { fileFromDrop } = createLateFiles(() => import('../../../src/platform/files'));

  function drop(files: FileList | null): DragEvent {
    const event = new Event('drop', { cancelable: true });
    return Object.assign(event, { dataTransfer: files === null ? null : { files } }) as unknown as DragEvent;
  }

  test('takes it, and keeps the browser from opening it', async () => {
    const event = drop(listOf(fileOf('a.json')));
    expect(await fileFromDrop(event)).toMatchObject({ kind: 'picked', name: 'a.json' });
    expect(event.defaultPrevented).toBe(true);
  });

  test('several are refused, and a dropped text is nothing', async () => {
    expect(await fileFromDrop(drop(listOf(fileOf('a.json'), fileOf('b.json'))))).toEqual({ kind: 'several' });
    expect(await fileFromDrop(drop(listOf()))).toEqual({ kind: 'cancelled' });
    expect(await fileFromDrop(drop(null))).toEqual({ kind: 'cancelled' });
  });
});

describe('files that are fetched late', () => {
  test('keep the browser from opening a dropped file before anything is fetched', async () => {
    const event = new Event('drop', { cancelable: true }) as DragEvent;
    const waiting = createLateFiles(() => new Promise(() => undefined)).fileFromDrop(event);
    expect(event.defaultPrevented).toBe(true);
    expect(await Promise.race([waiting, Promise.resolve('waits')])).toBe('waits');
  });

  test('that cannot be fetched are said, and asked for again', async () => {
    let asked = 0;
    const files = createLateFiles(() => {
      asked += 1;
      return Promise.reject(new TypeError('no network'));
    });
    files.fetchAhead();
    expect(await files.pickFile()).toEqual({ kind: 'failed', name: '' });
    expect(await files.fileFromDrop(new Event('drop') as DragEvent)).toEqual({ kind: 'failed', name: '' });
    expect(await files.saveFile('a.json', '{}')).toEqual({ kind: 'failed' });
    expect(asked).toBe(4);
  });

  test('hand on what they were given', async () => {
    const saveFile = vi.fn(async () => ({ kind: 'saved', name: 'b.svg' }) as const);
    const late = createLateFiles(async () => ({ ...(await import('../../../src/platform/files')), saveFile }));
    expect(await late.saveFile('a.svg', '<svg/>', 'image/svg+xml')).toEqual({ kind: 'saved', name: 'b.svg' });
    expect(saveFile).toHaveBeenCalledWith('a.svg', '<svg/>', 'image/svg+xml');
  });
});

describe('saving by download', () => {
  test('hands the bytes to the browser and lets go of them later', async () => {
    vi.useFakeTimers();
    const click = vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(() => undefined);
    expect(await saveFile('a.json', '{}')).toEqual({ kind: 'saved', name: 'a.json' });
    expect(click.mock.contexts[0]).toMatchObject({ download: 'a.json', href: 'blob:one' });
    expect(vi.mocked(URL.createObjectURL).mock.calls[0]?.[0]).toMatchObject({ size: 2, type: 'application/json' });
    expect(document.body.childElementCount).toBe(0);
    expect(URL.revokeObjectURL).not.toHaveBeenCalled();
    vi.advanceTimersByTime(60_000);
    expect(URL.revokeObjectURL).toHaveBeenCalledWith('blob:one');
  });

  test('says when the browser refuses', async () => {
    vi.mocked(URL.createObjectURL).mockImplementation(() => {
      throw new TypeError('no');
    });
    expect(await saveFile('a.json', '{}')).toEqual({ kind: 'failed' });
  });
});

describe('saving through the dialog', () => {
  const written: Blob[] = [];
  const abort = vi.fn(() => Promise.resolve());

  function offer(change: { size?: number; write?: () => Promise<void>; close?: () => Promise<void> } = {}) {
    written.length = 0;
    abort.mockClear();
    const write = change.write ?? (async (blob: Blob) => void written.push(blob));
    const close = change.close ?? (async () => undefined);
    const handle = {
      name: 'renamed.json',
      createWritable: async () => ({ write, close, abort }),
      getFile: async () => ({ size: change.size ?? written[0]?.size }),
    };
    const picker = vi.fn(async (_options: unknown) => handle);
    vi.stubGlobal('showSaveFilePicker', picker);
    return picker;
  }

  test('gives the name that the user chose', async () => {
    const picker = offer();
    expect(await saveFile('a.pitchboard.json', '{}')).toEqual({ kind: 'saved', name: 'renamed.json' });
    expect(picker).toHaveBeenCalledWith({
      suggestedName: 'a.pitchboard.json',
      types: [{ accept: { 'application/json': ['.json'] } }],
    });
    expect(written).toHaveLength(1);
  });

  test('writes bytes of any kind', async () => {
    const picker = offer();
    await saveFile('a.pdf', new Uint8Array([1, 2, 3]), 'application/pdf');
    expect(picker.mock.calls[0]?.[0]).toMatchObject({ types: [{ accept: { 'application/pdf': ['.pdf'] } }] });
    expect(written[0]?.size).toBe(3);
  });

  test.each([
    ['the disk is full', { write: () => Promise.reject(new DOMException('', 'QuotaExceededError')) }],
    ['the file is locked', { close: () => Promise.reject(new DOMException('', 'NoModificationAllowedError')) }],
  ])('fails when %s, and lets go of the file', async (_, change) => {
    offer(change);
    expect(await saveFile('a.json', '{}')).toEqual({ kind: 'failed' });
    expect(abort).toHaveBeenCalledTimes(1);
  });

  test('fails when the file that was written is not as long as it must be', async () => {
    offer({ size: 1 });
    expect(await saveFile('a.json', '{}')).toEqual({ kind: 'failed' });
  });

  test('can be cancelled, and then nothing is downloaded', async () => {
    vi.stubGlobal('showSaveFilePicker', () => Promise.reject(new DOMException('', 'AbortError')));
    expect(await saveFile('a.json', '{}')).toEqual({ kind: 'cancelled' });
    expect(URL.createObjectURL).not.toHaveBeenCalled();
  });

  test('becomes a download where the dialog is refused', async () => {
    vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(() => undefined);
    vi.stubGlobal('showSaveFilePicker', () => Promise.reject(new DOMException('', 'SecurityError')));
    expect(await saveFile('a.json', '{}')).toEqual({ kind: 'saved', name: 'a.json' });
  });
});
