/**
 * How each role is drawn, for every target alike: how heavy its line is and of which kind. A target adds
 * its own size of pen, and its colours if it has any.
 *
 * After ISO 128-2: two widths, narrow to wide one to two, in steps of the square root of two; what is cut
 * or built first is wide, dimensions and leaders narrow, what is hidden or to come dashed, axes and lines
 * of reference long-dashed dotted. ISO 129-1: terminators heavier than their dimension line. From memory.
 */
import type { Role } from './drawing';

/** Half of narrow, narrow, between, wide, and a half more; none for what has no line. */
export type LineWeight = 'none' | 'fine' | 'narrow' | 'middle' | 'wide' | 'heavy';
export type LineKind = 'continuous' | 'dashed' | 'long-dashed' | 'dotted' | 'chain';

export interface RolePen {
  readonly weight: LineWeight;
  readonly kind: LineKind;
}

const NONE: RolePen = { weight: 'none', kind: 'continuous' };
const FINE: RolePen = { weight: 'fine', kind: 'continuous' };
const NARROW: RolePen = { weight: 'narrow', kind: 'continuous' };
const MIDDLE: RolePen = { weight: 'middle', kind: 'continuous' };
const WIDE: RolePen = { weight: 'wide', kind: 'continuous' };
const HEAVY: RolePen = { weight: 'heavy', kind: 'continuous' };
const CHAIN: RolePen = { weight: 'narrow', kind: 'chain' };

export const ROLE_PENS: Readonly<Record<Role, RolePen>> = {
  stringer: WIDE,
  tread: NARROW,
  riser: NARROW,
  hanger: NARROW,
  kicker: NARROW,
  'landing-nosing': NARROW,
  'wood-fill': NONE,
  'cut-line': WIDE,
  house: NARROW,
  'floor-today': HEAVY,
  'ground-hatch': FINE,
  'to-come': { weight: 'narrow', kind: 'dashed' },
  unknown: { weight: 'wide', kind: 'dotted' },
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
  'tile-edge': { weight: 'fine', kind: 'long-dashed' },
  'proof-bar': NARROW,
  rule: FINE,
  'rule-strong': WIDE,
  heading: NONE,
  body: NONE,
  'body-strong': NONE,
  small: NONE,
};
