/**
 * Role → pen on paper: black only, in the widths of technical pens, narrow to wide one to two (after
 * ISO 128, from memory). No fills: wood is an outline, and waste is hatched.
 */
import type { Role } from '../core/drawing/drawing';

export interface PaperPen {
  /** Millimetres; 0 for what has no line of its own on paper. */
  readonly width: number;
  readonly dash?: readonly number[];
}

const NONE: PaperPen = { width: 0 };
const FINE: PaperPen = { width: 0.18 };
const NARROW: PaperPen = { width: 0.25 };
const MIDDLE: PaperPen = { width: 0.35 };
const WIDE: PaperPen = { width: 0.5 };
const HEAVY: PaperPen = { width: 0.7 };
const CHAIN: PaperPen = { width: 0.25, dash: [8, 2, 1.5, 2] };

export const PAPER_PENS: Readonly<Record<Role, PaperPen>> = {
  stringer: WIDE,
  tread: NARROW,
  riser: NARROW,
  hanger: NARROW,
  kicker: NARROW,
  'landing-nosing': NARROW,
  house: NARROW,
  'floor-today': HEAVY,
  'ground-hatch': FINE,
  'to-come': { width: 0.25, dash: [3.5, 2] },
  unknown: { width: 0.5, dash: [1, 2] },
  'wood-fill': NONE,
  'cut-line': WIDE,
  'board-fill': NONE,
  'board-line': NARROW,
  'nosing-line': CHAIN,
  'gauge-line': CHAIN,
  dimension: NARROW,
  leader: NARROW,
  tick: WIDE,
  'mark-point': WIDE,
  'pitch-triangle': NARROW,
  'number-main': NONE,
  number: NONE,
  caption: NONE,
  'riser-number': NONE,
  'tread-number': NONE,
  'template-cut': MIDDLE,
  'waste-hatch': FINE,
  registration: FINE,
  'tile-edge': { width: 0.18, dash: [5, 2.5] },
  'proof-bar': NARROW,
  rule: FINE,
  'rule-strong': WIDE,
  heading: NONE,
  body: NONE,
  'body-strong': NONE,
  small: NONE,
};
