/** The keys themselves, in groups; which group stands where is a matter of the style sheet. */
import type { FigureText } from '../../core/drawing/drawing';
import { Figure } from '../numbers/Figure';
import { useWords } from '../stairOnShow';
import { markIn, type PadKey, type PadUnit } from './keypadText';
import type { NextWords } from './useNextWords';

type OnKey = (key: PadKey) => void;

const DIGITS = '1234567890'.split('');
const SIXTEENTHS = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15];
const EIGHTHS = SIXTEENTHS.filter((mark) => mark % 2 === 0);

function Digits({ onKey }: { readonly onKey: OnKey }) {
  return (
    <div className="pad-whole">
      {DIGITS.map((digit) => (
        <button key={digit} type="button" className="pad-digit" onClick={() => onKey({ kind: 'digit', digit })}>
          {digit}
        </button>
      ))}
    </div>
  );
}

interface InchKeysProps {
  readonly text: string;
  readonly own: PadUnit;
  readonly gloves: boolean;
  readonly onKey: OnKey;
}

export function InchKeys({ text, own, gloves, onKey }: InchKeysProps) {
  const { say } = useWords();
  const mark = markIn(text, own);
  return (
    <>
      <Digits onKey={onKey} />
      <div className="pad-side">
        <button type="button" onClick={() => onKey({ kind: 'feet' })}>
          {say('keypad.feet')}
        </button>
        <BackKey onKey={onKey} />
        <button type="button" onClick={() => onKey({ kind: 'unit', unit: 'mm' })}>
          {say('keypad.unit.mm')}
        </button>
        <button type="button" className="pad-clear" onClick={() => onKey({ kind: 'clear' })}>
          {say('keypad.clear')}
        </button>
      </div>
      <div className="pad-tape">
        {(gloves ? EIGHTHS : SIXTEENTHS).map((sixteenths) => (
          <button
            key={sixteenths}
            type="button"
            className={`pad-mark mark-${lengthOfMark(sixteenths)}`}
            aria-pressed={mark === sixteenths}
            onClick={() => onKey({ kind: 'tape', sixteenths })}
          >
            {sixteenths === 0 ? say('keypad.even') : <Figure of={part(sixteenths, 16)} />}
          </button>
        ))}
      </div>
      <div className="pad-nudge">
        {gloves && <NudgeKey by={-2} word={say('keypad.less')} onKey={onKey} />}
        {gloves && <NudgeKey by={2} word={say('keypad.more')} onKey={onKey} />}
        <NudgeKey by={-1} word={say('keypad.light')} onKey={onKey} />
        <NudgeKey by={1} word={say('keypad.heavy')} onKey={onKey} />
      </div>
    </>
  );
}

export function MetricKeys({ unit, onKey }: { readonly unit: PadUnit; readonly onKey: OnKey }) {
  const { say } = useWords();
  return (
    <>
      <Digits onKey={onKey} />
      <div className="pad-side">
        <button type="button" className="pad-seldom" onClick={() => onKey({ kind: 'point' })}>
          {say('keypad.point')}
        </button>
        <button type="button" aria-label={say('keypad.half.name')} onClick={() => onKey({ kind: 'half' })}>
          {say('keypad.half')}
        </button>
        <BackKey onKey={onKey} />
        {(['mm', 'cm', 'in'] as const).map((each) => (
          <button
            key={each}
            type="button"
            className={each === 'cm' && unit !== 'cm' ? 'pad-seldom' : undefined}
            aria-pressed={unit === each}
            onClick={() => onKey({ kind: 'unit', unit: each })}
          >
            {say(`keypad.unit.${each}`)}
          </button>
        ))}
        <button type="button" className="pad-clear" onClick={() => onKey({ kind: 'clear' })}>
          {say('keypad.clear')}
        </button>
      </div>
    </>
  );
}

interface EndKeysProps {
  readonly negative: boolean;
  readonly next: NextWords | null;
  readonly onKey: OnKey;
  readonly onNotKnown: (() => void) | null;
  readonly onNext: () => void;
}

export function EndKeys({ negative, next, onKey, onNotKnown, onNext }: EndKeysProps) {
  const { say } = useWords();
  const words =
    next === null ? say('keypad.done') : next.isButton ? next.words : say('keypad.next', { field: next.words });
  return (
    <div className="pad-end">
      {negative && (
        <button type="button" onClick={() => onKey({ kind: 'minus' })}>
          {say('keypad.minus')}
        </button>
      )}
      {onNotKnown !== null && (
        <button type="button" className="pad-unknown" onClick={onNotKnown}>
          {say('keypad.notKnown')}
        </button>
      )}
      <button type="button" className="main-button pad-next" onClick={onNext}>
        {words}
      </button>
    </div>
  );
}

interface SwapKeyProps {
  readonly face: 'whole' | 'parts';
  readonly onSwap: () => void;
}

/** On a narrow screen large keys have two faces; elsewhere both are in sight, and this key is not. */
export function SwapKey({ face, onSwap }: SwapKeyProps) {
  const { say } = useWords();
  return (
    <button type="button" className="pad-swap" onClick={onSwap}>
      {say(face === 'whole' ? 'keypad.toParts' : 'keypad.toWhole')}
    </button>
  );
}

function BackKey({ onKey }: { readonly onKey: OnKey }) {
  const { say } = useWords();
  return (
    <button type="button" onClick={() => onKey({ kind: 'back' })}>
      {say('keypad.back')}
    </button>
  );
}

interface NudgeKeyProps {
  readonly by: number;
  readonly word: string;
  readonly onKey: OnKey;
}

function NudgeKey({ by, word, onKey }: NudgeKeyProps) {
  return (
    <button type="button" onClick={() => onKey({ kind: 'nudge', thirtySeconds: by })}>
      <span className="nudge-amount">
        <span aria-hidden="true">{by < 0 ? '−' : '+'}</span>
        <Figure of={part(Math.abs(by), 32)} />
      </span>{' '}
      {word}
    </button>
  );
}

function part(count: number, of: number): FigureText {
  let [numerator, denominator] = [count, of];
  while (numerator % 2 === 0) [numerator, denominator] = [numerator / 2, denominator / 2];
  return { kind: 'tape', number: { negative: false, whole: 0, numerator, denominator, heavy: false } };
}

/** As on the tape: the coarser the division, the longer its line. */
function lengthOfMark(sixteenths: number): 'inch' | 'half' | 'quarter' | 'eighth' | 'sixteenth' {
  if (sixteenths === 0) return 'inch';
  if (sixteenths === 8) return 'half';
  if (sixteenths % 4 === 0) return 'quarter';
  return sixteenths % 2 === 0 ? 'eighth' : 'sixteenth';
}
