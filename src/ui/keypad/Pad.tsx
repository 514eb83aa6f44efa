/** The keys themselves: they come when the first field is taken in hand. */
import { useRef, useState } from 'react';
import { flushSync } from 'react-dom';
import { Echo } from '../fields/LengthField';
import { useWords } from '../stairOnShow';
import { useBench, usePlannerState } from '../usePlanner';
import type { FieldInHand, KeypadDesk, Standing } from './keypadDesk';
import { type Entry, entryOf, type PadKey, press } from './keypadText';
import { nameOfField, nextStop } from './nextStop';
import { EndKeys, InchKeys, MetricKeys, SwapKey } from './PadKeys';
import { useCoarsePointer } from './useCoarsePointer';
import { useHeldFocus } from './useHeldFocus';
import { useNextWords } from './useNextWords';
import { useRoomForPad } from './useRoomForPad';

interface PadProps {
  readonly desk: KeypadDesk;
  readonly hand: FieldInHand;
  readonly entry: Standing;
}

export function Pad({ desk, hand, entry: standing }: PadProps) {
  const entry = readEntry(standing, hand);
  const { say } = useWords();
  const gloves = usePlannerState((state) => state.gloves);
  const [face, setFace] = useState<'whole' | 'parts'>('whole');
  const pad = useRef<HTMLElement>(null);
  useRoomForPad(pad, hand.input, gloves);
  const next = useNextWords(hand.input);
  useHeldFocus(pad, desk, hand);
  const onKey = (key: PadKey) => desk.turn((before, field) => press(readEntry(before, field), key, field.own));
  const inInches = entry.unit === 'in';

  return (
    <section
      ref={pad}
      className={`keypad${gloves ? ' gloves' : ''}${inInches ? '' : ' metric'}`}
      data-keypad-part=""
      data-face={inInches ? face : 'whole'}
      aria-label={say('keypad.label', { field: nameOfField(hand.input) })}
    >
      <PadBar desk={desk} hand={hand} entry={entry} gloves={gloves} />
      <div className="pad-keys">
        {inInches ? (
          <InchKeys text={entry.text} own={hand.own} gloves={gloves} onKey={onKey} />
        ) : (
          <MetricKeys unit={entry.unit} onKey={onKey} />
        )}
        <EndKeys
          negative={hand.negative}
          next={next}
          onKey={onKey}
          onNotKnown={hand.notKnown === null ? null : () => answerNotKnown(hand)}
          onNext={() => goOn(hand)}
        />
        {inInches && gloves && <SwapKey face={face} onSwap={() => setFace(face === 'whole' ? 'parts' : 'whole')} />}
      </div>
    </section>
  );
}

/** The unit of a text that no key has touched yet is the one it is written in. */
function readEntry({ text, unit, fresh }: Standing, { own }: FieldInHand): Entry {
  return unit === null ? entryOf(text, own, fresh) : { text, unit, fresh };
}

function PadBar({ desk, hand, entry, gloves }: PadProps & { readonly gloves: boolean }) {
  const { say } = useWords();
  const { actions } = useBench().planner;
  const coarse = useCoarsePointer();

  /** The system's keyboard comes only to a field that takes the focus anew. */
  function toSystemKeyboard(): void {
    flushSync(() => desk.show(false));
    hand.input.blur();
    hand.input.focus();
  }

  function close(): void {
    if (coarse) hand.input.blur();
    else desk.show(false);
    // Where the focus was in the pad itself, there is no field to blur.
    if (coarse) desk.letGo(hand.input);
  }

  return (
    <div className="pad-bar">
      <p className="pad-field">
        <b>{nameOfField(hand.input)}</b>
        <span aria-live="polite">
          <Echo text={entry.text} feet={false} />
        </span>
      </p>
      <button type="button" aria-pressed={gloves} onClick={() => actions.look({ gloves: !gloves })}>
        {say('keypad.gloves')}
      </button>
      {coarse && (
        <button type="button" onClick={toSystemKeyboard}>
          {say('keypad.system')}
        </button>
      )}
      <button type="button" onClick={close}>
        {say('keypad.close')}
      </button>
    </div>
  );
}

function goOn({ input }: FieldInHand): void {
  const stop = nextStop(input);
  if (stop === null) input.blur();
  else stop.go();
}

/** The field has to have taken the answer before it is left: it keeps what it knows when the focus goes. */
function answerNotKnown(hand: FieldInHand): void {
  flushSync(() => hand.notKnown?.());
  goOn(hand);
}
