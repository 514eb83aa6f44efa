/** What the screening is told: the wood, how it is held, and the loads. */
import type { LumberBook } from '../../core/carry/lumber';
import type { Carry } from '../../core/carry/screenCarry';
import { gradesIn, speciesIn } from '../../core/carry/wood';
import { type LoadKind, withLoadUnit } from '../../core/units/load';
import { carryValue, carryWhence } from '../../text/carryText';
import { isTextKey, type Speaker } from '../../text/say';
import { type Choice, ChoiceField } from '../fields/ChoiceField';
import { FieldFrame } from '../fields/FieldFrame';
import { placeInStair } from '../fields/jobPlaces';
import { textOf } from '../fields/makings';
import { useField } from '../fields/useField';
import { unitsOf, useStair } from '../stairOnShow';

interface CarryFieldsProps {
  readonly book: LumberBook;
  readonly carry: Carry;
}

const NOT_SAID = '';

export function CarryFields({ book, carry }: CarryFieldsProps) {
  const { say, job, index } = useStair();
  const told = job.stairs[index]?.carry ?? {};
  const grades = gradesIn(book, told.species ?? null);
  return (
    <>
      <div className="fields">
        <Told name="species" choices={named(say, 'species', speciesIn(book), told.species)} />
        <Told name="grade" choices={named(say, 'grade', grades, told.grade)} />
        <Told name="service" choices={named(say, 'service', ['dry', 'wet'], undefined)} />
        <Told name="treatment" choices={treatments(say)} />
      </div>
      <h3>{say('carry.loads')}</h3>
      <div className="fields">
        <Told name="support" usual="free-standing" choices={plain(say, 'support', ['free-standing', 'along-walls'])} />
        <Told
          name="duration"
          usual="occupancy"
          choices={plain(say, 'duration', ['occupancy', 'snow', 'construction', 'permanent'])}
        />
        <LoadField name="live" kind="area" carry={carry} />
        <LoadField name="point" kind="spot" carry={carry} />
        <LoadField name="dead" kind="area" carry={carry} />
      </div>
    </>
  );
}

interface ToldProps {
  readonly name: string;
  readonly choices: readonly Choice[];
  /** What holds while nobody says; left out, nothing does. */
  readonly usual?: string;
}

function Told({ name, choices, usual = NOT_SAID }: ToldProps) {
  const { index } = useStair();
  return (
    <ChoiceField
      place={placeInStair(index, `carry.${name}`)}
      choices={choices}
      usual={usual}
      toValue={(chosen) => (chosen === usual ? undefined : chosen)}
    />
  );
}

/** Not said yet, what the data has, and what a file may have named that it does not have. */
function named(say: Speaker, name: string, known: readonly string[], told: string | undefined): Choice[] {
  const others = told === undefined || known.includes(told) ? [] : [told];
  return [
    { value: NOT_SAID, words: say('choice.carry.notSaid') },
    ...plain(say, name, known),
    ...others.map((value) => ({ value, words: say('choice.carry.unlisted', { name: value }) })),
  ];
}

function treatments(say: Speaker): Choice[] {
  return [
    { value: NOT_SAID, words: say('choice.carry.treatment.usual') },
    ...plain(say, 'treatment', ['none', 'incised']),
  ];
}

function plain(say: Speaker, name: string, values: readonly string[]): Choice[] {
  return values.map((value) => {
    const key = `choice.carry.${name}.${value}`;
    return { value, words: isTextKey(key) ? say(key) : value };
  });
}

interface LoadFieldProps {
  readonly name: 'live' | 'point' | 'dead';
  readonly kind: LoadKind;
  readonly carry: Carry;
}

function LoadField({ name, kind, carry }: LoadFieldProps) {
  const { say, index, units } = useStair();
  const field = useField({
    place: placeInStair(index, `carry.${name}`),
    show: (value) => ({ text: textOf(value) }),
    make: ({ text }, job) => ({
      ok: true,
      value: text.trim() === '' ? undefined : withLoadUnit(text, kind, unitsOf(job)),
    }),
  });
  const { value, unit, origin } = carry.loads[name];
  const from = origin.from === 'job' ? say('carry.typed') : carryWhence(say, origin);
  const used = say('carry.used', { value: carryValue(value, unit, units), from });
  return (
    <FieldFrame place={placeInStair(index, `carry.${name}`)} field={field} note={used}>
      {(described) => (
        <input
          {...described}
          type="text"
          enterKeyHint="next"
          autoComplete="off"
          autoCorrect="off"
          spellCheck={false}
          value={field.typed.text}
          onChange={(event) => field.change({ text: event.currentTarget.value })}
          onBlur={field.leave}
        />
      )}
    </FieldFrame>
  );
}
