/** The form, in the order in which a stair is measured, chosen and laid out. */
import { useEffect, useRef } from 'react';
import { useStair } from '../stairOnShow';
import { FORM_PARTS, type FormPart } from './formParts';
import { JobPart } from './JobPart';
import { isAsked, StairField } from './StairField';

interface JobFormProps {
  /** The key of the field that has the focus, so that the drawing can show what it means; null when none has. */
  readonly onFocusKey: (key: string | null) => void;
}

export function JobForm({ onFocusKey }: JobFormProps) {
  const { say } = useStair();
  const form = useRef<HTMLFormElement>(null);
  useEffect(() => (form.current === null ? undefined : watchFields(form.current, onFocusKey)), [onFocusKey]);
  return (
    <form
      ref={form}
      className="job-form"
      id="fields"
      aria-label={say('form.label')}
      noValidate
      onSubmit={(event) => event.preventDefault()}
    >
      <nav className="form-parts" aria-label={say('form.parts')}>
        {FORM_PARTS.map(({ name }) => (
          <a key={name} href={`#part-${name}`}>
            {say(`part.short.${name}`)}
          </a>
        ))}
        <a href="#part-job">{say('part.short.job')}</a>
      </nav>
      {FORM_PARTS.map((part) => (
        <StairPart key={part.name} part={part} />
      ))}
      <JobPart />
    </form>
  );
}

function StairPart({ part }: { readonly part: FormPart }) {
  const { say, job, index } = useStair();
  const stringer = job.stairs[index]?.stringer;
  return (
    <fieldset id={`part-${part.name}`}>
      <legend>{say(`part.${part.name}`)}</legend>
      <div className="fields">
        {part.fields
          .filter(([key]) => isAsked(stringer, key))
          .map(([key, kind]) => (
            // With the stair in the key, what is typed for one stair never stands at another.
            <StairField key={`${index} ${key}`} fieldKey={key} kind={kind} />
          ))}
      </div>
    </fieldset>
  );
}

/** What concerns all fields alike is listened for once, at the form. */
function watchFields(form: HTMLFormElement, onFocusKey: JobFormProps['onFocusKey']): () => void {
  const onFocusIn = (event: FocusEvent) => {
    const field = event.target instanceof Element ? event.target.closest<HTMLElement>('[data-key]') : null;
    onFocusKey(field?.dataset['key'] ?? null);
  };
  const onFocusOut = () => onFocusKey(null);
  form.addEventListener('focusin', onFocusIn);
  form.addEventListener('focusout', onFocusOut);
  form.addEventListener('keydown', enterMovesOn);
  return () => {
    form.removeEventListener('focusin', onFocusIn);
    form.removeEventListener('focusout', onFocusOut);
    form.removeEventListener('keydown', enterMovesOn);
  };
}

/** Enter goes to the next field, as a hand with a glove expects; it never sends anything. */
function enterMovesOn(this: HTMLFormElement, event: KeyboardEvent): void {
  if (event.key !== 'Enter' || !(event.target instanceof HTMLInputElement)) return;
  event.preventDefault();
  const stops = [...this.querySelectorAll<HTMLElement>('.field input, .field select')];
  const next = stops[stops.indexOf(event.target) + 1];
  next?.focus();
  if (next instanceof HTMLInputElement) next.select();
}
