/** Opening and saving: a file is taken whole or not at all, and what is said stays until the next time. */
import { useCallback, useState } from 'react';
import { planJob } from '../../core/plan/planStair';
import type { Problem } from '../../core/result';
import { emptyJob } from '../../document/emptyJob';
import { DEFAULT_PACK, loadPack } from '../../packs/ruleBook';
import { safeFileName } from '../../platform/fileName';
import type { PickedFile } from '../../platform/files';
import { job as jobOf } from '../../state/plannerStore';
import type { TextKey } from '../../text/say';
import { BOOK } from '../stairOnShow';
import { useBench } from '../usePlanner';

export interface Refusal {
  readonly name: string;
  readonly problems: readonly Problem[];
}

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

  const take = useCallback(
    async (picked: PickedFile) => {
      if (picked.kind === 'cancelled') return;
      const trouble = troubleOf(picked);
      setNotice(trouble);
      setRefusal(null);
      if (picked.kind !== 'picked') return;
      const { name } = picked;
      // The reader of files is large, and is not needed to lay a stair out.
      const { openJob } = await import('../../document/openJob');
      const read = openJob(picked.bytes);
      // Without its rules a job may not be laid out at all: they are fetched first, where there is a way.
      if (read.ok) await loadPack(read.value.rules?.pack ?? DEFAULT_PACK).catch(() => undefined);
      const plans = read.ok ? planJob(read.value, BOOK) : read;
      if (!read.ok || !plans.ok) {
        setRefusal({ name, problems: plans.ok ? [] : plans.problems });
        return;
      }
      typing.clearAll();
      planner.actions.replaceJob(read.value, name);
      planner.actions.selectStair(0);
      setNotice({ key: 'file.opened', name });
    },
    [planner, typing],
  );

  const open = useCallback(async () => take(await files.pickFile()), [files, take]);
  const openDropped = useCallback(async (event: DragEvent) => take(await files.fileFromDrop(event)), [files, take]);

  const save = useCallback(async () => {
    const state = planner.store.getState();
    const job = jobOf(state);
    const { saveJob } = await import('../../document/saveJob');
    const written = await files.saveFile(state.file.name ?? safeFileName(job.name ?? ''), saveJob(job));
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
