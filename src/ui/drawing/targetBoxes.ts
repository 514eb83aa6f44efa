/**
 * The numbers of a drawing that lead somewhere: each text that is about a key or a result, with the
 * box that a finger has to hit. Boxes are in the drawing's millimetres, y up.
 */
import type { About, Box, Drawing, Role, TextMark } from '../../core/drawing/drawing';
import { textBox } from '../../core/drawing/sketch';
import type { Point } from '../../core/geometry/point';
import type { UnitSystem } from '../../core/units/length';
import { plainFigure } from '../numbers/figures';

export interface Target {
  readonly about: About;
  /** What is written. */
  readonly text: Box;
  /** What can be hit: no side shorter than a fingertip. */
  readonly hit: Box;
  /** The number as it is said, with its unit; empty where there are only words. */
  readonly figure: string;
}

const LEADING: readonly Role[] = ['number-main', 'number', 'caption'];
/** Pixels; the least that a gloved finger is asked to hit. */
const LEAST_TARGET = 48;

/** One target for each run of texts about the same thing, in the order of their rank. */
export function targetsOf({ marks, perPixel }: Drawing, units: UnitSystem): readonly Target[] {
  const runs: TextMark[][] = [];
  for (const mark of marks) {
    if (mark.kind !== 'text' || mark.about === undefined || !LEADING.includes(mark.role)) continue;
    const run = runs.at(-1);
    if (run?.[0]?.about === mark.about) run.push(mark);
    else runs.push([mark]);
  }
  return runs.map((run) => {
    const text = around(run.map(textBox));
    const figures = run.flatMap(({ content }) => (content.kind === 'words' ? [] : [plainFigure(content)]));
    return {
      about: (run[0] as TextMark).about as About,
      text,
      hit: atLeast(text, LEAST_TARGET * perPixel),
      figure: figures.map((each) => spoken(each, units)).join(', '),
    };
  });
}

/** Where fields of two targets lie over each other, the one whose number is nearer is meant. */
export function targetAt(targets: readonly Target[], at: Point): Target | null {
  let best: Target | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (const target of targets) {
    if (distanceTo(target.hit, at) > 0) continue;
    const away = distanceTo(target.text, at) + distanceToMiddle(target.text, at) / FAR;
    if (away < least) [best, least] = [target, away];
  }
  return best;
}

/** A tie between two boxes goes to the nearer middle. */
const FAR = 1000;

function spoken(figure: string, units: UnitSystem): string {
  if (figure === '?') return figure;
  return `${figure.replace('+', 'heavy')} ${units === 'metric' ? 'mm' : 'in'}`;
}

function around(boxes: readonly Box[]): Box {
  return {
    left: Math.min(...boxes.map(({ left }) => left)),
    right: Math.max(...boxes.map(({ right }) => right)),
    bottom: Math.min(...boxes.map(({ bottom }) => bottom)),
    top: Math.max(...boxes.map(({ top }) => top)),
  };
}

function atLeast(box: Box, size: number): Box {
  const x = Math.max(0, size - (box.right - box.left)) / 2;
  const y = Math.max(0, size - (box.top - box.bottom)) / 2;
  return { left: box.left - x, right: box.right + x, bottom: box.bottom - y, top: box.top + y };
}

function distanceTo({ left, right, bottom, top }: Box, { x, y }: Point): number {
  return Math.hypot(Math.max(left - x, 0, x - right), Math.max(bottom - y, 0, y - top));
}

function distanceToMiddle({ left, right, bottom, top }: Box, { x, y }: Point): number {
  return Math.hypot(x - (left + right) / 2, y - (bottom + top) / 2);
}
