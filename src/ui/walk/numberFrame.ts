/**
 * How a number is set as large as a place allows: in units of which a hundred are one em. The frame is
 * that of the longest number of the whole list, so that going from one to the next changes no size.
 */
import type { FigureText } from '../../core/drawing/drawing';
import { tapeParts } from '../../core/drawing/sketch';
import type { Place } from './usePlace';

export interface NumberParts {
  readonly whole: string;
  readonly numerator: string;
  readonly denominator: string;
  readonly heavy: boolean;
  /** Of millimetres: what follows the point. */
  readonly decimals: string;
}

/** Digits of the longest number, part by part. */
export interface Longest {
  readonly whole: number;
  readonly fraction: number;
  readonly heavy: boolean;
  readonly decimals: number;
}

export interface NumberFrame {
  readonly rows: 1 | 2;
  readonly width: number;
  readonly height: number;
  /** x at which whole numbers end and fractions begin. */
  readonly joint: number;
  /** Height of a fraction's digits against the whole's. */
  readonly share: number;
}

/** Each digit is set to this width, whatever the system's font would give it. */
export const DIGIT = 56;
/** Height of a digit of nearly every system font. */
export const CAP = 72;
const GAP = 9;
const ROW_GAP = 11;
export const BAR = { thick: 7, air: 8, overhang: 5 } as const;
export const HEAVY_WIDTH = 40;
export const POINT_WIDTH = 20;
const SHARE = { 1: 0.54, 2: 0.46 } as const;
/** Millimetres: the half is no smaller matter, but must not read as one more digit. */
export const DECIMAL_SHARE = 0.62;
/** Two rows part what belongs together: only for a good deal of size. */
const WORTH_TWO_ROWS = 1.08;
const EDGE = 3;

export function partsOf(figure: FigureText): NumberParts {
  if (figure.kind === 'tape') return { ...tapeParts(figure.number), decimals: '' };
  const [whole = '', decimals = ''] = figure.text.split('.');
  return { whole, numerator: '', denominator: '', heavy: false, decimals };
}

export function longestOf(figures: readonly FigureText[]): Longest {
  const parts = figures.map(partsOf);
  const most = (length: (part: NumberParts) => number) => Math.max(0, ...parts.map(length));
  return {
    whole: most(({ whole }) => whole.length),
    fraction: most(({ numerator, denominator }) => Math.max(numerator.length, denominator.length)),
    heavy: parts.some(({ heavy }) => heavy),
    decimals: most(({ decimals }) => decimals.length),
  };
}

/** On one row, or the fraction under the whole where that gives clearly larger digits. */
export function frameFor(longest: Longest, place: Place): NumberFrame {
  const one = oneRow(longest);
  if (longest.fraction === 0) return one;
  const two = twoRows(longest);
  return scaleIn(two, place) > WORTH_TWO_ROWS * scaleIn(one, place) ? two : one;
}

/** Pixels of a hundredth of an em. */
export function scaleIn({ width, height }: NumberFrame, place: Place): number {
  return Math.min(place.width / width, place.height / height);
}

function oneRow({ whole, fraction, heavy, decimals }: Longest): NumberFrame {
  const stack = fraction === 0 ? 0 : GAP + stackWidth(fraction, SHARE[1]);
  const tail = decimals === 0 ? 0 : POINT_WIDTH + decimals * DIGIT * DECIMAL_SHARE;
  const joint = EDGE + whole * DIGIT;
  return {
    rows: 1,
    width: joint + stack + tail + (heavy ? HEAVY_WIDTH : 0) + EDGE,
    height: Math.max(CAP, fraction === 0 ? 0 : stackHeight(SHARE[1])) + 2 * EDGE,
    joint,
    share: SHARE[1],
  };
}

function twoRows({ whole, fraction, heavy }: Longest): NumberFrame {
  const lower = stackWidth(fraction, SHARE[2]) + (heavy ? 2 * HEAVY_WIDTH : 0);
  const width = Math.max(whole * DIGIT, lower) + 2 * EDGE;
  return {
    rows: 2,
    width,
    height: CAP + ROW_GAP + stackHeight(SHARE[2]) + 2 * EDGE,
    joint: width / 2,
    share: SHARE[2],
  };
}

function stackWidth(digits: number, share: number): number {
  return digits * DIGIT * share + 2 * BAR.overhang;
}

function stackHeight(share: number): number {
  return 2 * CAP * share + BAR.thick + 2 * BAR.air;
}

/** Left edge and middle of the fraction, and the foot of the whole. */
export function placesIn(frame: NumberFrame, parts: NumberParts) {
  const { joint, height, share } = frame;
  const stack = stackWidth(Math.max(parts.numerator.length, parts.denominator.length), share);
  if (frame.rows === 1) {
    const middle = height / 2;
    return { wholeFoot: middle + CAP / 2, stackLeft: joint + GAP, stackMiddle: middle, stack };
  }
  const below = EDGE + CAP + ROW_GAP;
  return { wholeFoot: EDGE + CAP, stackLeft: joint - stack / 2, stackMiddle: below + stackHeight(share) / 2, stack };
}
