/** A whole number, or left to the program; one fewer and one more without a keyboard. */
import { useWords } from '../stairOnShow';
import { FieldFrame } from './FieldFrame';
import { labelOf } from './fieldWords';
import { makeCount, textOf } from './makings';
import { useField } from './useField';

interface CountFieldProps {
  readonly place: string;
  readonly least: number;
  /** What the program counts while it is left to it; null where it does not. */
  readonly counted: number | null;
}

export function CountField({ place, least, counted }: CountFieldProps) {
  const { say } = useWords();
  const field = useField({
    place,
    show: (value) => ({ text: textOf(value) }),
    make: ({ text }) => makeCount(text),
  });
  const { text } = field.typed;
  const auto = text.trim() === '' || text.trim().toLowerCase() === 'auto';
  const now = auto ? counted : Number(text);
  const label = labelOf(say, place);
  const step = (by: number) => {
    field.change({ text: String(Math.max(least, (now ?? least) + by)) });
    field.leave();
  };
  return (
    <FieldFrame
      place={place}
      field={field}
      note={auto && counted !== null ? say('left.auto', { count: counted }) : auto ? say('left.none') : undefined}
    >
      {(described) => (
        <span className="count-box">
          <button type="button" aria-label={say('count.fewer', { field: label })} onClick={() => step(-1)}>
            −
          </button>
          <input
            {...described}
            type="text"
            inputMode="numeric"
            enterKeyHint="next"
            autoComplete="off"
            placeholder="auto"
            value={text}
            onChange={(event) => field.change({ text: event.currentTarget.value })}
            onBlur={field.leave}
          />
          <button type="button" aria-label={say('count.more', { field: label })} onClick={() => step(1)}>
            +
          </button>
        </span>
      )}
    </FieldFrame>
  );
}
