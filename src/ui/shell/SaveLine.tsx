/** Whether the work is kept, in words: on this device, and in a file. "Kept" only once it is on the disk. */
import { useDeferredValue } from 'react';
import { type DraftState, saveStatus } from '../../state/plannerStore';
import type { Speaker } from '../../text/say';
import { useWords } from '../stairOnShow';
import { useBench, usePlannerState } from '../usePlanner';

export function SaveLine({ onSave }: { readonly onSave: () => void }) {
  const { say } = useWords();
  const { actions } = useBench().planner;
  // The drawing of a key comes first; these words follow it in the next frame, all of one moment.
  const state = useDeferredValue(usePlannerState((now) => now));
  const { draft, file } = state;
  const failed = draft.status === 'failed';
  return (
    <div className={failed ? 'save-line failed' : 'save-line'} aria-live="polite">
      <p>{draftWords(say, draft)}</p>
      <p>{say(`file.${saveStatus(state)}`, { name: file.name ?? say('file.aFile') })}</p>
      {draft.loss !== undefined && <p>{say(`draft.loss.${draft.loss}`)}</p>}
      {failed && (
        <div className="save-line-ways">
          <button type="button" onClick={onSave}>
            {say('draft.saveNow')}
          </button>
          {draft.reason === 'other-draft' && (
            <button type="button" onClick={actions.takeOverDraft}>
              {say('draft.takeOver')}
            </button>
          )}
        </div>
      )}
    </div>
  );
}

function draftWords(say: Speaker, draft: DraftState): string {
  switch (draft.status) {
    case 'kept':
      return say('draft.kept', { time: clockTime(draft.at ?? 0) });
    case 'failed':
      return say('draft.failed', { reason: say(`draft.reason.${draft.reason ?? 'unknown'}`) });
    case 'loading':
    case 'none':
    case 'writing':
      return say(`draft.${draft.status}`);
  }
}

/** Hours and minutes as the wall clock of the device shows them. */
function clockTime(at: number): string {
  return new Date(at).toLocaleTimeString([], { hour: '2-digit', minute: '2-digit' });
}
