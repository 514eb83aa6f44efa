/** A length as the tape says it; the job's unit is put to it when it is kept. */
import { couldBeFeetAndInches, parseLength, type UnitSystem, withUnit } from '../../core/units/length';
import { echoOf } from '../numbers/figures';
import { unitsOf, useStair } from '../stairOnShow';
import { FieldFrame } from './FieldFrame';
import { LeftOut } from './LeftOut';
import { makeLength, textOf, withoutUnit } from './makings';
import { type FieldHandle, useField } from './useField';

interface LengthFieldProps {
  readonly place: string;
  /** Where a site would say feet: there `8.10` has two readings. */
  readonly feet?: boolean;
  readonly required?: boolean;
}

export function LengthField({ place, feet = false, required = false }: LengthFieldProps) {
  const { units } = useStair();
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
        <LengthInput {...described} text={text} onText={(next) => field.change({ text: next })} onLeave={field.leave} />
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
}

/** The unit stands beside the text while the text carries none of its own. */
export function LengthInput({ text, onText, onLeave, ...described }: LengthInputProps) {
  const { units } = useStair();
  const showsUnit = hasNoUnit(text, units);
  return (
    <span className={showsUnit ? 'unit-box with-unit' : 'unit-box'}>
      <input
        {...described}
        type="text"
        inputMode="text"
        enterKeyHint="next"
        autoComplete="off"
        autoCorrect="off"
        spellCheck={false}
        value={text}
        onChange={(event) => onText(event.currentTarget.value)}
        onBlur={onLeave}
      />
      {showsUnit && (
        <span aria-hidden="true" className="unit">
          {units === 'metric' ? 'mm' : 'in'}
        </span>
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
  const { units } = useStair();
  const completed = withUnit(text, units, feet);
  const reading = completed.ok ? parseLength(completed.text, true) : null;
  return reading?.ok ? echoOf(reading.length) : null;
}

/** Nothing is changed until one of the two is taken. */
function TwoReadings({ field }: { readonly field: FieldHandle }) {
  const { say } = useStair();
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
