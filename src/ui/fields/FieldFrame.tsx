/** What every field has around its control: label, hint, what was understood, and why it is not in use. */
import type { ReactNode } from 'react';
import { job as jobOf } from '../../state/plannerStore';
import { useWords } from '../stairOnShow';
import { usePlannerState } from '../usePlanner';
import { hintOf, idOf, labelOf, sentencesOf } from './fieldWords';
import { keyOfPlace } from './jobPlaces';
import type { FieldHandle } from './useField';

export interface Described {
  readonly id: string;
  readonly 'aria-describedby': string;
  readonly 'aria-invalid': boolean;
  readonly 'data-place': string;
}

interface FieldFrameProps {
  readonly place: string;
  readonly field: FieldHandle;
  /** Under the control: the echo, or what is used instead. */
  readonly note?: ReactNode;
  readonly label?: string;
  /** The key that lights up on the drawing, where it is not the field's own. */
  readonly about?: string;
  readonly wide?: boolean;
  /** More at the fault, such as the readings to choose from. */
  readonly cure?: ReactNode;
  readonly children: (described: Described) => ReactNode;
}

export function FieldFrame({ place, field, note, label, about, wide = false, cure, children }: FieldFrameProps) {
  const { say } = useWords();
  const id = idOf(place);
  const hint = hintOf(say, place);
  const refused = field.problems.length > 0;
  // A text with two readings is asked about, which says it already.
  const unasked = field.problems.filter(({ code }) => cure === undefined || code !== 'length.feetOrDecimal');
  const job = usePlannerState((state) => (unasked.length === 0 ? null : jobOf(state)));
  const sentences = job === null ? [] : sentencesOf(say, unasked, place, job);
  const parts = [hint !== '' && `${id}-hint`, refused && `${id}-fault`, note !== undefined && `${id}-note`];
  return (
    <div className={`field${wide ? ' wide' : ''}${refused ? ' refused' : ''}`} data-key={about ?? keyOfPlace(place)}>
      <div className="field-words">
        <label htmlFor={id}>{label ?? labelOf(say, place)}</label>
        {hint !== '' && (
          <p className="hint" id={`${id}-hint`}>
            {hint}
          </p>
        )}
      </div>
      <div className="field-control">
        {children({
          id,
          'aria-describedby': parts.filter((part) => part !== false).join(' '),
          'aria-invalid': refused,
          'data-place': place,
        })}
      </div>
      <p className="field-note" id={`${id}-note`}>
        {note}
      </p>
      <div className="field-fault" id={`${id}-fault`} aria-live="polite">
        {sentences.map((sentence) => (
          <p key={sentence}>
            <b>{say('fault.notUsed')}</b> {sentence}
          </p>
        ))}
        {refused && cure}
        {field.fitsNow && (
          <p>
            {say('fault.ready')}{' '}
            <button type="button" onClick={field.leave}>
              {say('fault.useNow')}
            </button>
          </p>
        )}
      </div>
    </div>
  );
}
