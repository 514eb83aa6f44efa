/** From a word about a field into the field itself, at whatever step it stands. */
import { useCallback } from 'react';
import type { Step } from '../../state/view';
import { idOf } from '../fields/fieldWords';
import { keyOfPlace, stairOfPlace } from '../fields/jobPlaces';
import { FORM_PARTS, type FormPart } from '../form/formParts';
import { useBench } from '../usePlanner';

const STEP_OF_PART: Readonly<Record<FormPart['name'], Step>> = {
  tape: 'measure',
  opening: 'measure',
  width: 'measure',
  steps: 'choose',
  stringer: 'lay-out',
};

/** The step at which a key of the job is asked for. */
function stepOfPlace(place: string): Step {
  const key = keyOfPlace(place);
  const part = FORM_PARTS.find(({ fields }) => fields.some(([each]) => key === each || key.startsWith(`${each}.`)));
  if (part !== undefined) return STEP_OF_PART[part.name];
  const atCheck = key.startsWith('rules') || key.startsWith('carry.') || key === 'tapeDoubt';
  return atCheck ? 'check' : 'measure';
}

/** Into the field, so that typing can go on at once. */
export function useGoToPlace(): (place: string) => void {
  const { actions } = useBench().planner;
  return useCallback(
    (place: string) => {
      const stair = stairOfPlace(place);
      if (stair !== null) actions.selectStair(stair);
      actions.look({ step: stepOfPlace(place), walk: null });
      // The step has to be there before its field can take the focus.
      requestAnimationFrame(() => focusWhenThere(idOf(place)));
    },
    [actions],
  );
}

/** A step that is shown for the first time is fetched first; whoever goes elsewhere meanwhile is left alone. */
function focusWhenThere(id: string): void {
  const before = document.activeElement;
  if (focusField(id)) return;
  const watcher = new MutationObserver(() => {
    const stillWaits = document.activeElement === before || document.activeElement === document.body;
    if (!stillWaits || focusField(id)) watcher.disconnect();
  });
  watcher.observe(document.body, { childList: true, subtree: true, attributeFilter: ['style'] });
}

/** @returns false also where it stands at the step before, which is hidden by now and takes no focus */
function focusField(id: string): boolean {
  const field = document.getElementById(id);
  field?.focus();
  if (field === null || document.activeElement !== field) return false;
  field.scrollIntoView({ block: 'center' });
  return true;
}
