/** The figures by which layouts are weighed: which way each is rounded, and the rules that limit it. */
import type { Figures } from '../../core/choose/figures';
import type { FigureText } from '../../core/drawing/drawing';
import { figureOf } from '../../core/drawing/figures';
import { inch, mmToInches, whole } from '../../core/units/exact';
import type { UnitSystem } from '../../core/units/length';
import type { Rounding } from '../../core/units/rounding';
import type { Speaker } from '../../text/say';
import { decimalOf, plainFigure } from '../numbers/figures';

export type RowName =
  | 'unitRise'
  | 'run'
  | 'twoRisePlusRun'
  | 'pitch'
  | 'totalRun'
  | 'headroom'
  | 'openingNeeded'
  | 'board'
  | 'stock'
  | 'throat'
  | 'headerContact';

export interface FigureRow {
  readonly name: RowName;
  readonly of: keyof Figures;
  /** So that it never looks better than it is. */
  readonly rounding: Rounding;
  /** Broken, they are told at the figure. */
  readonly limitedBy: readonly string[];
}

const row = (
  name: RowName,
  of: keyof Figures,
  rounding: Rounding = 'nearest',
  limitedBy: readonly string[] = [],
): FigureRow => ({
  name,
  of,
  rounding,
  limitedBy,
});

export const FIGURE_ROWS: readonly FigureRow[] = [
  row('unitRise', 'unitRise', 'nearest', ['riser.max', 'riser.min']),
  row('run', 'run', 'nearest', ['tread.min', 'tread.max']),
  row('twoRisePlusRun', 'twoRisePlusRun', 'nearest', ['twoRPlusG.min', 'twoRPlusG.max']),
  row('pitch', 'pitch', 'nearest', ['pitch.max', 'pitch.min']),
  row('totalRun', 'totalRun', 'up'),
  row('headroom', 'headroom', 'down', ['headroom.min']),
  row('openingNeeded', 'openingNeeded', 'up'),
  row('board', 'boardLength', 'up'),
  row('stock', 'stockLength', 'up'),
  row('throat', 'throat', 'down', ['throat', 'stringer.throat.min', 'stringer.effectiveDepth.min']),
  row('headerContact', 'headerContact', 'down', ['headerContact']),
];

const DEGREES = 180 / Math.PI;
const INCHES_IN_FOOT = 12;
/** A difference is for weighing, not for marking: no odd thirty-seconds. */
const DIFFERENCE_STEP = { imperial: inch(1 / 16), metric: whole(1) };

/** A figure of the row in words, or as a number to set; null where it is not worked out. */
export type RowValue =
  | { readonly kind: 'figure'; readonly figure: FigureText; readonly decimal: string | null }
  | { readonly kind: 'words'; readonly text: string };

export function rowValue(
  say: Speaker,
  { name, of, rounding }: FigureRow,
  figures: Figures,
  units: UnitSystem,
): RowValue {
  const mm = figures[of];
  if (mm === null) return words(say(name === 'stock' ? 'choose.stock.none' : 'choose.notWorked'));
  if (name === 'pitch') return words(`${(mm * DEGREES).toFixed(1)}°`);
  if (name === 'stock' && units === 'imperial') {
    return words(say('board.feet', { feet: Math.round(mmToInches(mm) / INCHES_IN_FOOT) }));
  }
  if (name === 'headerContact' && mm < 0) {
    return words(say('choose.noContact', { figure: plainFigure(figureOf(-mm, units, 'up')) }));
  }
  const decimal = name === 'unitRise' && units === 'imperial' ? decimalOf(mm, units) : null;
  return { kind: 'figure', figure: figureOf(mm, units, rounding), decimal };
}

function words(text: string): RowValue {
  return { kind: 'words', text };
}

export interface RowDifference {
  readonly sign: '+' | '−';
  readonly text: string;
}

/** Against the one in hand; null where it is the same, or is not known of both. */
export function rowDifference({ name }: FigureRow, by: number | null, units: UnitSystem): RowDifference | null {
  if (by === null) return null;
  const size = Math.abs(by);
  const text = name === 'pitch' ? `${(size * DEGREES).toFixed(1)}°` : differenceText(name, size, units);
  if (/^0([.]0)?°?$|^0 ft$/.test(text)) return null;
  return { sign: by < 0 ? '−' : '+', text };
}

function differenceText(name: RowName, size: number, units: UnitSystem): string {
  if (name === 'stock' && units === 'imperial') return `${Math.round(mmToInches(size) / INCHES_IN_FOOT)} ft`;
  return plainFigure(figureOf(size, units, 'nearest', DIFFERENCE_STEP[units]));
}
