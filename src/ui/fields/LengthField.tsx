/** A length as the tape says it; the job's unit is put to it when it is kept. */
import { useDeferredValue } from 'react';
import { couldBeFeetAndInches, parseLength, type UnitSystem, withUnit } from '../../core/units/length';
import { type PadRules, useKeypadField } from '../keypad/useKeypadField';
import { echoOf } from '../numbers/figures';
import { unitsOf, useWords } from '../stairOnShow';
import { FieldFrame } from './FieldFrame';
import { keyOfPlace } from './jobPlaces';
import { LeftOut } from './LeftOut';
import { makeLength, mayBeNegative, textOf, withoutUnit } from './makings';
import { type FieldHandle, useField } from './useField';

interface LengthFieldProps {
  readonly place: string;
  /** Where a site would say feet: there `8.10` has two readings. */
  readonly feet?: boolean;
  readonly required?: boolean;
}

export function LengthField({ place, feet = false, required = false }: LengthFieldProps) {
  const { units } = useWords();
  const field = useField({
    place,
    show: (value) => ({ text: withoutUnit(textOf(value), units, feet) }),
    make: ({ text }, job) => makeLength(text, unitsOf(job), feet, !required),
  });
  const { text } = field.typed;
  const empty = text.trim() === '';
  return (
    <FieldFrame
      place={place}
      field={field}
      note={empty ? <LeftOut place={place} required={required} /> : <Echo text={text} feet={feet} />}
      cure={<TwoReadings field={field} />}
    >
      {(described) => (
        <LengthInput
          {...described}
          text={text}
          onText={(next) => field.change({ text: next })}
          onLeave={field.leave}
          pad={{ negative: mayBeNegative(keyOfPlace(place)) }}
        />
      )}
    </FieldFrame>
  );
}

interface LengthInputProps {
  readonly id: string;
  readonly text: string;
  readonly onText: (text: string) => void;
  readonly onLeave: () => void;
  readonly 'aria-describedby': string;
  readonly 'aria-invalid': boolean;
  readonly 'data-place': string;
  readonly 'aria-label'?: string;
  /** What the keypad has keys for, beside those of every length. */
  readonly pad?: PadRules;
}

/** The unit stands beside the text while the text carries none of its own. */
export function LengthInput({ text, onText, onLeave, pad = {}, ...described }: LengthInputProps) {
  const { say, units } = useWords();
  const { input, take, onBlur, inHand, inputMode, offered, open } = useKeypadField({
    text,
    rules: pad,
    write: onText,
    leave: onLeave,
  });
  const showsUnit = hasNoUnit(text, units) && !offered;
  return (
    <span className={`unit-box${showsUnit ? ' with-unit' : ''}${offered ? ' with-pad' : ''}`}>
      <input
        {...described}
        ref={input}
        data-in-hand={inHand ? '' : undefined}
        type="text"
        inputMode={inputMode}
        enterKeyHint="next"
        autoComplete="off"
        autoCorrect="off"
        spellCheck={false}
        value={text}
        onChange={(event) => onText(event.currentTarget.value)}
        onFocus={take}
        onBlur={onBlur}
      />
      {showsUnit && (
        <span aria-hidden="true" className="unit">
          {units === 'metric' ? 'mm' : 'in'}
        </span>
      )}
      {offered && (
        <button
          type="button"
          className="pad-open"
          data-keypad-part=""
          aria-label={say('keypad.open')}
          onMouseDown={(event) => event.preventDefault()}
          onClick={open}
          onBlur={onBlur}
        >
          <svg aria-hidden="true" viewBox="0 0 24 24" width="24" height="24">
            <path d="M3 5h4v4H3zM10 5h4v4h-4zM17 5h4v4h-4zM3 12h4v4H3zM10 12h4v4h-4zM17 12h4v4h-4zM3 19h18" />
          </svg>
        </button>
      )}
    </span>
  );
}

function hasNoUnit(text: string, units: UnitSystem): boolean {
  const completed = withUnit(text, units, false);
  return completed.ok && completed.text !== text.trim() && !/['′’]/.test(text);
}

/** What was understood, in both systems; nothing for what cannot be read. */
export function Echo({ text, feet }: { readonly text: string; readonly feet: boolean }) {
  const { units } = useWords();
  const late = useDeferredValue(text);
  const completed = withUnit(late, units, feet);
  const reading = completed.ok ? parseLength(completed.text, true) : null;
  return reading?.ok ? echoOf(reading.length) : null;
}

/** Nothing is changed until one of the two is taken. */
export function TwoReadings({ field }: { readonly field: Pick<FieldHandle, 'typed' | 'problems' | 'change'> }) {
  const { say } = useWords();
  const plain = field.typed.text.trim();
  if (!couldBeFeetAndInches(plain)) return null;
  if (!field.problems.some(({ code }) => code === 'length.feetOrDecimal')) return null;
  const [whole, part] = plain.split('.') as [string, string];
  const readings = [
    { text: `${whole}' ${Number(part)}"`, shown: `${whole}′ ${Number(part)}″`, how: say('fault.asFeet') },
    { text: `${plain} in`, shown: `${plain}″`, how: say('fault.asInches') },
  ];
  return (
    <div className="two-readings">
      <p>{say('fault.twoReadings', { typed: plain })}</p>
      {readings.map(({ text, shown, how }) => (
        <button key={text} type="button" onClick={() => field.change({ text })}>
          <b>{shown}</b> <Echo text={text} feet={false} /> <span>{how}</span>
        </button>
      ))}
    </div>
  );
}
