/** One of a few, said in plain words. A choice that cannot be laid out stays on show with its reason. */
import type { JobText } from '../../core/job/jobText';
import { FieldFrame } from './FieldFrame';
import { textOf } from './makings';
import { useField } from './useField';

export interface Choice {
  readonly value: string;
  readonly words: string;
}

interface ChoiceFieldProps {
  readonly place: string;
  readonly choices: readonly Choice[];
  /** What holds while the key is left out. */
  readonly usual: string;
  /** From the chosen word to the value that the file keeps; the word itself if not given. */
  readonly toValue?: (chosen: string, job: JobText) => unknown;
  readonly toChosen?: (value: unknown) => string;
  readonly also?: (job: JobText) => JobText;
}

export function ChoiceField({ place, choices, usual, toValue, toChosen, also }: ChoiceFieldProps) {
  const field = useField({
    place,
    show: (value) => ({ text: toChosen?.(value) ?? textOf(value, usual) }),
    make: ({ text }, job) => ({ ok: true, value: toValue === undefined ? text : toValue(text, job) }),
    ...(also === undefined ? {} : { also }),
  });
  return (
    <FieldFrame place={place} field={field} wide>
      {(described) => (
        <select
          {...described}
          value={field.typed.text}
          onChange={(event) => field.change({ text: event.currentTarget.value })}
          onBlur={field.leave}
        >
          {choices.map(({ value, words }) => (
            <option key={value} value={value}>
              {words}
            </option>
          ))}
        </select>
      )}
    </FieldFrame>
  );
}
