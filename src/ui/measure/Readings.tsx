/**
 * The rise read three times. Readings are notes beside the job: what the stair is laid out from is the
 * one that is taken, and it can be typed over like any other field.
 */
import { useState } from 'react';
import { problem } from '../../core/result';
import { toMm } from '../../core/units/exact';
import { parseLength, type UnitSystem } from '../../core/units/length';
import { job as jobOf } from '../../state/plannerStore';
import { FieldFrame } from '../fields/FieldFrame';
import { placeInStair } from '../fields/jobPlaces';
import { Echo, LengthInput, TwoReadings } from '../fields/LengthField';
import { makeLength, textOf, withoutUnit } from '../fields/makings';
import { type FieldHandle, useField } from '../fields/useField';
import { lengthText } from '../numbers/figures';
import { unitsOf, useStair, useWords } from '../stairOnShow';
import { useBench, usePlannerState } from '../usePlanner';
import { areApart, limitOfSpread, middleOf, type Reading, readingsIn, SPOTS, type Spot, spreadOf } from './readings';

const NONE: readonly string[] = [];

export function Readings({ onTaken }: { readonly onTaken: () => void }) {
  const { say, job, index, units } = useStair();
  const id = job.stairs[index]?.id ?? '';
  const texts = usePlannerState((state) => state.readings[id] ?? NONE);
  const readings = readingsIn(texts);
  const spread = spreadOf(readings);
  const apart = areApart(readings, units);
  return (
    <div className="readings">
      {spread !== null && (
        <p className="reading-spread" aria-live="polite">
          {say('measure.spread', { spread: lengthText(toMm(spread), units, 'up') })}{' '}
          {apart && (
            <b className="odd-word">{say('measure.apart', { limit: lengthText(toMm(limitOfSpread(units)), units) })}</b>
          )}
        </p>
      )}
      <div className="fields">
        {SPOTS.map((spot, at) => (
          <ReadingField key={`${id} ${spot}`} stairId={id} spot={spot} stored={texts[at] ?? ''} apart={apart} />
        ))}
      </div>
      <TakeOne readings={readings} onTaken={onTaken} />
    </div>
  );
}

interface ReadingFieldProps {
  readonly stairId: string;
  readonly spot: Spot;
  readonly stored: string;
  /** The readings do not agree: said at each, for where no other is in sight. */
  readonly apart: boolean;
}

/** What is typed and does not read yet is kept as it stands; what reads is kept with its unit. */
function ReadingField({ stairId, spot, stored, apart }: ReadingFieldProps) {
  const { say, units } = useWords();
  const { planner } = useBench();
  const [typed, setTyped] = useState({ text: '', stored: '', units });
  // A bare number is of the units that it was typed in, and of no others.
  const isAsTyped = typed.stored === stored && stored !== '' && typed.units === units;
  const text = isAsTyped ? typed.text : withoutUnit(stored, units, true);
  const place = `readings.${spot}`;
  const kept = judge(text, units);

  function change(next: string): void {
    const verdict = judge(next, units);
    const keep = verdict.ok ? verdict.text : next;
    setTyped({ text: next, stored: keep, units });
    const { readings } = planner.store.getState();
    const before = readings[stairId] ?? NONE;
    planner.actions.look({
      readings: { ...readings, [stairId]: SPOTS.map((each, at) => (each === spot ? keep : (before[at] ?? ''))) },
    });
  }

  const field: FieldHandle = {
    value: stored,
    typed: { text },
    problems: kept.ok || text.trim() === '' ? [] : [problem(place, kept.fault, { found: text.trim().slice(0, 60) })],
    fitsNow: false,
    change: (next) => change(next.text),
    leave: () => undefined,
    pause: () => undefined,
  };
  return (
    <FieldFrame
      place={place}
      field={field}
      about="survey.rise"
      label={say(`measure.reading.${spot}`)}
      note={
        <>
          <Echo text={text} feet />
          {apart && stored !== '' && <b className="apart-word">{say('measure.apart.short')}</b>}
        </>
      }
      cure={<TwoReadings field={field} />}
    >
      {(described) => <LengthInput {...described} text={text} onText={change} onLeave={field.leave} />}
    </FieldFrame>
  );
}

function judge(text: string, units: UnitSystem) {
  const made = makeLength(text, units, true, false);
  if (!made.ok) return { ok: false, fault: made.fault } as const;
  const reading = parseLength(made.value);
  return reading.ok ? ({ ok: true, text: String(made.value) } as const) : reading;
}

interface TakeOneProps {
  readonly readings: readonly Reading[];
  readonly onTaken: () => void;
}

function TakeOne({ readings, onTaken }: TakeOneProps) {
  const { say, index, units } = useWords();
  const { planner } = useBench();
  const place = placeInStair(index, 'survey.rise');
  const rise = useField({
    place,
    show: (value) => ({ text: withoutUnit(textOf(value), units, true) }),
    make: ({ text }, job) => makeLength(text, unitsOf(job), true, false),
  });
  const middle = middleOf(readings);
  const shown = (reading: Reading) => lengthText(toMm(reading.length), units);
  const inUse = readings.find(({ text }) => text === rise.value);

  function take(reading: Reading): void {
    rise.change({ text: withoutUnit(reading.text, units, true) });
    rise.pause();
    // Where the job refuses it, its field says why, and there is nothing to go on to.
    const now = jobOf(planner.store.getState()).stairs[index]?.survey.rise;
    if (now === reading.text) onTaken();
  }

  if (readings.length === 0) return null;
  return (
    <div className="take-one">
      {inUse !== undefined && <p>{say('measure.taken', { value: shown(inUse) })}</p>}
      {middle !== null && middle.text !== inUse?.text && (
        <button type="button" className="main-button" data-keypad-next="" onClick={() => take(middle)}>
          {say(readings.length === 1 ? 'measure.take.only' : 'measure.take.middle', { value: shown(middle) })}
        </button>
      )}
      {readings.length > 1 &&
        readings
          .filter(({ text }) => text !== inUse?.text && (middle === null || text !== middle.text))
          .map((reading) => (
            <button key={reading.spot} type="button" onClick={() => take(reading)}>
              {say('measure.take.one', { spot: say(`measure.spot.${reading.spot}`), value: shown(reading) })}
            </button>
          ))}
    </div>
  );
}
