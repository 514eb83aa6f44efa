/** Pens of pictures, on white: the weights and kinds of line of the drawing model, with the colours of what they show. */
import type { Role } from '../core/drawing/drawing';
import { type LineKind, type LineWeight, ROLE_PENS } from '../core/drawing/pens';

export interface ColourPen {
  readonly line: string;
  readonly fill: string;
  /** Pixels of the view. */
  readonly width: number;
  readonly dash: readonly number[];
}

const INK = '#1A1F24';
const SECOND = '#3F474E';
const WOOD = { line: '#6B4516', fill: '#F2DFC0' };

const WIDTHS: Readonly<Record<LineWeight, number>> = { none: 0, fine: 1, narrow: 1, middle: 2, wide: 2, heavy: 3 };
const DASHES: Readonly<Record<LineKind, readonly number[]>> = {
  continuous: [],
  dashed: [7, 4],
  'long-dashed': [10, 5],
  dotted: [2, 4],
  chain: [16, 4, 3, 4],
};

/** What is not ink on nothing, or text in ink. */
const COLOURS: Readonly<Partial<Record<Role, { readonly line?: string; readonly fill: string }>>> = {
  stringer: { line: WOOD.line, fill: '#E6C595' },
  tread: WOOD,
  riser: WOOD,
  hanger: WOOD,
  kicker: WOOD,
  'landing-nosing': WOOD,
  'wood-fill': { fill: '#E6C595' },
  'cut-line': { line: WOOD.line, fill: 'none' },
  house: { fill: '#DADDD8' },
  'ground-hatch': { line: SECOND, fill: 'none' },
  'board-fill': { fill: '#FFFFFF' },
  'pitch-triangle': { fill: '#DFEAF7' },
  'waste-hatch': { line: SECOND, fill: 'none' },
  caption: { fill: SECOND },
  'tread-number': { fill: SECOND },
  small: { fill: SECOND },
};

const TEXTS: ReadonlySet<Role> = new Set(['number-main', 'number', 'riser-number', 'heading', 'body', 'body-strong']);

export function colourPen(role: Role): ColourPen {
  const { weight, kind } = ROLE_PENS[role];
  const colours = COLOURS[role] ?? { fill: TEXTS.has(role) ? INK : 'none' };
  const line = weight === 'none' ? 'none' : (colours.line ?? INK);
  return { line, fill: colours.fill, width: WIDTHS[weight], dash: DASHES[kind] };
}
