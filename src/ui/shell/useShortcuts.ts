/** The keys that every desk program has. Undo is the job's own, so that it works out of any field. */
import { useEffect } from 'react';
import { job as jobOf } from '../../state/plannerStore';
import { useBench } from '../usePlanner';

interface ShortcutActions {
  readonly open: () => Promise<void>;
  readonly save: () => Promise<void>;
}

export function useShortcuts({ open, save }: ShortcutActions): void {
  const { planner, typing } = useBench();
  useEffect(() => {
    const { actions, store } = planner;

    /** Text that was never taken goes first: undoing something older would not be what was meant. */
    function undo(): void {
      const place = document.activeElement?.getAttribute('data-place');
      const entry = place == null ? undefined : typing.all().get(place);
      const isRefused = place != null && entry?.judge(jobOf(store.getState()), place).kind === 'refused';
      if (place != null && (entry?.waits === true || isRefused)) typing.clear(place);
      else actions.undo();
    }

    function onKeyDown(event: KeyboardEvent): void {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
      const key = event.key.toLowerCase();
      const runs: Readonly<Record<string, () => void>> = {
        z: event.shiftKey ? actions.redo : undo,
        y: actions.redo,
        o: () => void open(),
        s: () => void save(),
      };
      const run = runs[key];
      if (run === undefined) return;
      event.preventDefault();
      run();
    }

    document.addEventListener('keydown', onKeyDown);
    return () => document.removeEventListener('keydown', onKeyDown);
  }, [planner, typing, open, save]);
}
