/** The printer's own error: which printer, what its bars say and what the tape says they are. */
import { sayProblem } from '../../text/say';
import { useStair } from '../stairOnShow';
import type { Bar, Printer } from './usePrinter';

const SIDES = [
  { is: 'shortIs', says: 'shortSays', isWords: 'print.printer.short', saysWords: 'print.printer.saysShort' },
  { is: 'longIs', says: 'longSays', isWords: 'print.printer.long', saysWords: 'print.printer.saysLong' },
] as const;

export function PrinterPart({ printer }: { readonly printer: Printer }) {
  const { say, units } = useStair();
  const { correction, problems, isTyped, chosen } = printer;
  return (
    <details className="printer">
      <summary>{say('print.printer')}</summary>
      <p>{say(chosen === '' ? 'print.printer.lead' : 'print.printer.leadChosen', { name: chosen })}</p>
      {SIDES.map(({ is, says, isWords, saysWords }) => (
        <div className="printer-side" key={is}>
          <BarField printer={printer} bar={is} words={say(isWords)} />
          <BarField printer={printer} bar={says} words={say(saysWords)} label={`${say(isWords)} ${say(saysWords)}`} />
        </div>
      ))}
      <div aria-live="polite">
        {correction !== null && (
          <p>
            {say('print.printer.factor', { short: percent(1 / correction.short), long: percent(1 / correction.long) })}
          </p>
        )}
        {problems.map((found) => (
          <p key={`${found.place} ${found.code}`}>{sayProblem(say, found, units)}</p>
        ))}
        {isTyped && correction === null && problems.length === 0 && <p>{say('print.printer.unread')}</p>}
      </div>
      <Remember printer={printer} />
    </details>
  );
}

function Remember({ printer }: { readonly printer: Printer }) {
  const { say } = useStair();
  const { correction, isTyped, chosen, outcome, name } = printer;
  const canKeep = isTyped && correction !== null && (name.trim() !== '' || chosen !== '');
  return (
    <>
      <div className="printer-side">
        <label>
          <span>{say('print.printer.name')}</span>
          <input
            type="text"
            autoComplete="off"
            maxLength={60}
            value={name}
            placeholder={chosen}
            onChange={(event) => printer.call(event.currentTarget.value)}
          />
        </label>
        <button type="button" disabled={!canKeep} onClick={() => void printer.remember()}>
          {say('print.printer.remember')}
        </button>
        {chosen !== '' && (
          <button type="button" onClick={() => void printer.forget()}>
            {say('print.printer.forget', { name: chosen })}
          </button>
        )}
      </div>
      <p aria-live="polite">{outcome === '' ? '' : say(`print.printer.${outcome}`)}</p>
    </>
  );
}

interface BarFieldProps {
  readonly printer: Printer;
  readonly bar: Bar;
  readonly words: string;
  readonly label?: string;
}

function BarField({ printer, bar, words, label }: BarFieldProps) {
  return (
    <label>
      <span>{words}</span>
      <input
        type="text"
        inputMode="text"
        autoComplete="off"
        aria-label={label}
        value={printer.typed[bar]}
        onChange={(event) => printer.type(bar, event.currentTarget.value)}
      />
    </label>
  );
}

function percent(factor: number): string {
  return `${(factor * 100).toFixed(2)} %`;
}
