/** Opening and saving: a file is taken whole or not at all, and what is said stays until the next time. */
import { useCallback, useEffect, useState } from 'react';
import { emptyJob } from '../../document/emptyJob';
import type { PickedFile } from '../../platform/files';
import { job as jobOf } from '../../state/plannerStore';
import type { TextKey } from '../../text/say';
import { useBench } from '../usePlanner';
import type { Refusal } from './jobFile';

/** Reader and writer of jobs are large, and are not needed to lay a stair out. */
const late = () => import('./jobFile');

export interface Notice {
  readonly key: TextKey;
  readonly name: string;
}

export interface JobFileActions {
  readonly refusal: Refusal | null;
  readonly notice: Notice | null;
  readonly open: () => Promise<void>;
  readonly openDropped: (event: DragEvent) => Promise<void>;
  readonly save: () => Promise<void>;
  readonly startNew: () => void;
  readonly closeRefusal: () => void;
}

export function useJobFile(): JobFileActions {
  const { planner, files, typing } = useBench();
  const [refusal, setRefusal] = useState<Refusal | null>(null);
  const [notice, setNotice] = useState<Notice | null>(null);

  // Ahead of the first tap; one that does not come is asked for again by the tap.
  useEffect(() => void late().catch(() => undefined), []);

  const take = useCallback(
    async (picked: PickedFile) => {
      if (picked.kind === 'cancelled') return;
      const trouble = troubleOf(picked);
      setNotice(trouble);
      setRefusal(null);
      if (picked.kind !== 'picked') return;
      const read = await late().then(
        ({ readJobFile }) => readJobFile(picked.name, picked.bytes),
        () => null,
      );
      if (read === null) setNotice({ key: 'file.openFailed', name: picked.name });
      if (read?.kind === 'refused') setRefusal(read.refusal);
      if (read?.kind !== 'job') return;
      typing.clearAll();
      planner.actions.replaceJob(read.job, picked.name);
      planner.actions.selectStair(0);
      setNotice({ key: 'file.opened', name: picked.name });
    },
    [planner, typing],
  );

  const open = useCallback(async () => take(await files.pickFile()), [files, take]);
  const openDropped = useCallback(async (event: DragEvent) => take(await files.fileFromDrop(event)), [files, take]);

  const save = useCallback(async () => {
    const state = planner.store.getState();
    const job = jobOf(state);
    const written = await late().then(
      ({ jobAsFile }) => {
        const { name, content } = jobAsFile(job, state.file.name);
        return files.saveFile(name, content);
      },
      () => ({ kind: 'failed' as const }),
    );
    if (written.kind === 'cancelled') return;
    if (written.kind === 'saved') planner.actions.markSaved(written.name, job);
    setNotice(
      written.kind === 'saved' ? { key: 'file.saved', name: written.name } : { key: 'file.saveFailed', name: '' },
    );
  }, [planner, files]);

  const startNew = useCallback(() => {
    typing.clearAll();
    planner.actions.replaceJob(emptyJob(jobOf(planner.store.getState()).units ?? 'imperial'), null);
    planner.actions.selectStair(0);
    planner.actions.look({ step: 'measure', walk: null });
    setNotice({ key: 'file.newJob', name: '' });
  }, [planner, typing]);

  const closeRefusal = useCallback(() => setRefusal(null), []);
  return { refusal, notice, open, openDropped, save, startNew, closeRefusal };
}

function troubleOf(picked: PickedFile): Notice | null {
  switch (picked.kind) {
    case 'too-large':
      return { key: 'file.tooLarge', name: picked.name };
    case 'failed':
      return { key: 'file.openFailed', name: picked.name };
    case 'several':
      return { key: 'file.several', name: '' };
    case 'picked':
    case 'cancelled':
      return null;
  }
}
