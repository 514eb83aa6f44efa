import { FieldFrame } from './FieldFrame';
import { makeWords, textOf } from './makings';
import { useField } from './useField';

/** A name or a note: any words. */
export function WordsField({ place, required = false }: { readonly place: string; readonly required?: boolean }) {
  const field = useField({
    place,
    show: (value) => ({ text: textOf(value) }),
    make: ({ text }) => makeWords(text, !required),
  });
  return (
    <FieldFrame place={place} field={field} wide>
      {(described) => (
        <input
          {...described}
          type="text"
          enterKeyHint="next"
          autoComplete="off"
          value={field.typed.text}
          onChange={(event) => field.change({ text: event.currentTarget.value })}
          onBlur={field.leave}
        />
      )}
    </FieldFrame>
  );
}
