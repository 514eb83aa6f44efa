/**
 * Files in and out of the browser. Nothing here reads what is inside them, and nothing throws.
 */
import { extensionOf } from './fileName';

export type PickedFile =
  | { readonly kind: 'picked'; readonly name: string; readonly bytes: Uint8Array }
  | { readonly kind: 'cancelled' }
  | { readonly kind: 'too-large'; readonly name: string }
  /** More than one was dropped: none is taken, rather than any one of them. */
  | { readonly kind: 'several' }
  | { readonly kind: 'failed'; readonly name: string };

export type SavedFile =
  | { readonly kind: 'saved'; readonly name: string }
  | { readonly kind: 'cancelled' }
  | { readonly kind: 'failed' };

/** A job of hundreds of stairs stays under it; beyond, it is some other file. */
export const MAX_FILE_BYTES = 1_000_000;

const ACCEPTED = '.json,.pitchboard,application/json';

/** Long enough for a slow tablet to have taken the download over. */
const DOWNLOAD_MS = 60_000;

/** Must run within a tap or a key press. A browser that never tells of cancelling never resolves it. */
export async function pickFile(): Promise<PickedFile> {
  const input = document.createElement('input');
  input.type = 'file';
  input.accept = ACCEPTED;
  input.hidden = true;
  // One browser forgets an input that is not in the page before its dialog closes.
  document.body.append(input);
  const closed = new Promise<void>((resolve) => {
    input.addEventListener('change', () => resolve(), { once: true });
    input.addEventListener('cancel', () => resolve(), { once: true });
  });
  input.click();
  await closed;
  input.remove();
  return readOnly([...(input.files ?? [])]);
}

/** The one file that was picked or dropped. */
export async function readOnly(files: readonly File[]): Promise<PickedFile> {
  const [file, second] = files;
  if (file === undefined) return { kind: 'cancelled' };
  if (second !== undefined) return { kind: 'several' };
  // Refused by its size alone: reading a film into memory can take the page down.
  if (file.size > MAX_FILE_BYTES) return { kind: 'too-large', name: file.name };
  try {
    return { kind: 'picked', name: file.name, bytes: new Uint8Array(await file.arrayBuffer()) };
  } catch {
    return { kind: 'failed', name: file.name };
  }
}

/**
 * Where the browser can ask for a place, `saved` means written and looked at again; elsewhere
 * that it was handed to the browser's downloads, which give no answer.
 * Must run within a tap or a key press.
 */
export async function saveFile(
  name: string,
  content: string | Uint8Array<ArrayBuffer>,
  mediaType = 'application/json',
): Promise<SavedFile> {
  const blob = new Blob([content], { type: mediaType });
  const picker = (globalThis as WindowWithPicker).showSaveFilePicker;
  if (picker === undefined) return download(name, blob);
  let handle: SaveHandle;
  try {
    handle = await picker.call(globalThis, {
      suggestedName: name,
      types: [{ accept: { [mediaType]: [extensionOf(name)] } }],
    });
  } catch (error) {
    // In a frame or without a tap the dialog is refused; the download may still be allowed.
    return isAbort(error) ? { kind: 'cancelled' } : download(name, blob);
  }
  return writeTo(handle, blob);
}

async function writeTo(handle: SaveHandle, blob: Blob): Promise<SavedFile> {
  let writable: SaveStream | null = null;
  try {
    writable = await handle.createWritable();
    await writable.write(blob);
    await writable.close();
    const written = await handle.getFile();
    return written.size === blob.size ? { kind: 'saved', name: handle.name } : { kind: 'failed' };
  } catch {
    // Until it is closed the file on disk is still the old one, and stays so.
    await writable?.abort?.().catch(() => undefined);
    return { kind: 'failed' };
  }
}

function download(name: string, blob: Blob): SavedFile {
  try {
    const address = URL.createObjectURL(blob);
    const link = document.createElement('a');
    link.href = address;
    link.download = name;
    link.hidden = true;
    document.body.append(link);
    link.click();
    link.remove();
    setTimeout(() => URL.revokeObjectURL(address), DOWNLOAD_MS);
    return { kind: 'saved', name };
  } catch {
    return { kind: 'failed' };
  }
}

function isAbort(error: unknown): boolean {
  return error instanceof DOMException && error.name === 'AbortError';
}

/** Described here because only some browsers have it. */
interface WindowWithPicker {
  readonly showSaveFilePicker?: (options: SaveOptions) => Promise<SaveHandle>;
}

interface SaveOptions {
  readonly suggestedName: string;
  readonly types: readonly { readonly accept: Readonly<Record<string, readonly string[]>> }[];
}

interface SaveHandle {
  readonly name: string;
  createWritable(): Promise<SaveStream>;
  getFile(): Promise<{ readonly size: number }>;
}

interface SaveStream {
  write(blob: Blob): Promise<void>;
  close(): Promise<void>;
  abort?(): Promise<void>;
}
