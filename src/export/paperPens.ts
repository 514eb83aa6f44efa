/** Pens on paper: black only, in the widths of technical pens. No fills: wood is an outline, and waste is hatched. */
import type { Role } from '../core/drawing/drawing';
import { type LineKind, type LineWeight, ROLE_PENS } from '../core/drawing/pens';

export interface PaperPen {
  /** Millimetres; 0 for what has no line of its own on paper. */
  readonly width: number;
  readonly dash?: readonly number[];
}

/** The series of ISO 128-2, 0.18 to 0.7 mm; narrow and wide are one to two. From memory. */
const WIDTHS: Readonly<Record<LineWeight, number>> = {
  none: 0,
  fine: 0.18,
  narrow: 0.25,
  middle: 0.35,
  wide: 0.5,
  heavy: 0.7,
};

const DASHES: Readonly<Record<LineKind, readonly number[]>> = {
  continuous: [],
  dashed: [3.5, 2],
  'long-dashed': [5, 2.5],
  dotted: [1, 2],
  chain: [8, 2, 1.5, 2],
};

export const PAPER_PENS: Readonly<Record<Role, PaperPen>> = Object.fromEntries(
  Object.entries(ROLE_PENS).map(([role, { weight, kind }]) => [role, { width: WIDTHS[weight], dash: DASHES[kind] }]),
) as Record<Role, PaperPen>;
