/**
 * Files in and out, fetched after the page has shown. What must be done within the tap or the drop
 * itself is done at once; the rest waits for `files.ts`, which has come long before a finger has.
 */
import type { PickedFile, SavedFile } from './files';

type Files = typeof import('./files');

export interface LateFiles {
  /** Fetches ahead, so that the first tap finds it there: some browsers open a dialog only within the tap. */
  readonly fetchAhead: () => void;
  readonly pickFile: Files['pickFile'];
  readonly fileFromDrop: (event: DragEvent) => Promise<PickedFile>;
  readonly saveFile: Files['saveFile'];
}

/** @param fetchFiles asked again after a failure */
export function createLateFiles(
  fetchFiles: () => Promise<Pick<Files, 'pickFile' | 'readOnly' | 'saveFile'>>,
): LateFiles {
  const notRead = (): PickedFile => ({ kind: 'failed', name: '' });
  const notSaved = (): SavedFile => ({ kind: 'failed' });
  return {
    fetchAhead: () => void fetchFiles().catch(() => undefined),
    pickFile: () => fetchFiles().then((files) => files.pickFile(), notRead),
    fileFromDrop(event) {
      // Left alone, the browser opens the file itself; and the list is emptied when the event is over.
      event.preventDefault();
      const dropped = [...(event.dataTransfer?.files ?? [])];
      return fetchFiles().then((files) => files.readOnly(dropped), notRead);
    },
    saveFile: (...what) => fetchFiles().then((files) => files.saveFile(...what), notSaved),
  };
}
