/** An entry of a walk in words: what it is, where it lies, what the tape is hooked on, and all of it spoken. */
import type { FigureText } from '../../core/drawing/drawing';
import { figureOf } from '../../core/drawing/figures';
import type { MarkEntry } from '../../core/stringer/markList';
import type { UnitSystem } from '../../core/units/length';
import type { Speaker, TextKey } from '../../text/say';

export interface EntryWords {
  readonly what: string;
  readonly on: string;
  readonly from: string;
}

/** @param risers the pole's last height is the floor, not a tread */
export function wordsOf(say: Speaker, entry: MarkEntry, risers: number): EntryWords {
  const { step } = entry;
  const subject = subjectOf(entry, risers);
  return { what: say(`walk.what.${subject}`, { step }), on: say(`walk.on.${subject}`), from: say(fromKey(entry)) };
}

/** The pole's last height is the floor; a toe of which there are several is that of one stringer. */
function subjectOf({ what, step }: MarkEntry, risers: number) {
  if (what === 'pole-finished' && step === risers) return 'pole-floor';
  if (step === 0) return what;
  return what === 'toe' ? 'toe-of' : what === 'check-toe' ? 'check-toe-of' : what;
}

/** A thick floor to come can lift the last level cut over today's subfloor. */
function fromKey({ from, value }: MarkEntry): TextKey {
  return from === 'subfloor' && value < 0 ? 'walk.from.subfloor.up' : `walk.from.${from}`;
}

/** Without its sign: which way it goes is said in words. */
export function figureOfEntry({ value }: MarkEntry, units: UnitSystem): FigureText {
  return figureOf(Math.abs(value), units);
}

/** `Tip 3: 31 and 5/16 inches from the board’s end`. */
export function spokenEntry(say: Speaker, entry: MarkEntry, risers: number, units: UnitSystem): string {
  const { what, from } = wordsOf(say, entry, risers);
  const number = spokenFigure(say, figureOfEntry(entry, units));
  if (entry.from === 'fence') return say('walk.spoken.pieces', { what, number, from, count: entry.count });
  return say('walk.spoken', { what, number, from });
}

function spokenFigure(say: Speaker, figure: FigureText): string {
  if (figure.kind === 'digits') return say('walk.number.mm', { value: figure.text });
  const { whole, numerator, denominator, heavy } = figure.number;
  const key: TextKey =
    numerator === 0 ? 'walk.number.inches' : whole === 0 ? 'walk.number.fraction' : 'walk.number.mixed';
  const number = say(key, { whole, numerator, denominator });
  return heavy ? say('walk.number.heavy', { number }) : number;
}
