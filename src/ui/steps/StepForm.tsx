/** What every step's content stands in: it knows which field has the focus, and Enter moves on. */
import { type ReactNode, useEffect, useRef } from 'react';
import { useWords } from '../stairOnShow';

interface StepFormProps {
  /** The key of the field that has the focus, so that the drawing can show what it means; null when none has. */
  readonly onFocusKey: (key: string | null) => void;
  readonly children: ReactNode;
}

export function StepForm({ onFocusKey, children }: StepFormProps) {
  const { say } = useWords();
  const form = useRef<HTMLFormElement>(null);
  useEffect(() => (form.current === null ? undefined : watchFields(form.current, onFocusKey)), [onFocusKey]);
  return (
    <form
      ref={form}
      className="job-form step"
      id="fields"
      aria-label={say('form.label')}
      noValidate
      onSubmit={(event) => event.preventDefault()}
    >
      {children}
    </form>
  );
}

/** What concerns all fields alike is listened for once, at the form. */
function watchFields(form: HTMLFormElement, onFocusKey: StepFormProps['onFocusKey']): () => void {
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
