/**
 * A number in a drawing: whole bold, fraction stacked on a bar at the middle of the figures' height,
 * `+` for heavy. Widths are those that the drawing kept room for, so nothing comes to touch.
 */
import type { FigureText } from '../../core/drawing/drawing';
import { contentEms, fractionEms, tapeParts } from '../../core/drawing/sketch';
import { node, type SvgNode } from './paint';
import { rounded } from './pixels';

export interface Lettering {
  readonly content: FigureText;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly size: number;
  /** Digits of a fraction are never smaller than this. */
  readonly leastDigits: number;
}

export interface PlacedFigure extends Lettering {
  readonly x: number;
  /** The middle of the figures' height. */
  readonly y: number;
}

/** Half the height of a digit, in ems of nearly every system font. */
const HALF_DIGIT = 0.36;
const FRACTION_SIZE = 0.69;
const BAR_GAP = 0.09;

/** All its pieces move as one: a number that only goes elsewhere is one change of the page. */
export function figureNode({ x, y, ...lettering }: PlacedFigure, name?: string): SvgNode {
  return node('g', { ...(name === undefined ? {} : { class: name }), transform: moveTo(x, y) }, figureNodes(lettering));
}

export function moveTo(x: number, y: number): string {
  return `translate(${rounded(x)} ${rounded(y)})`;
}

/** @returns its pieces, placed at the origin */
export function figureNodes({ content, anchor, size, leastDigits }: Lettering): readonly SvgNode[] {
  const text = (name: string, at: number, height: number, fontSize: number, textAnchor: string, words: string) =>
    node(
      'text',
      { class: name, x: rounded(at), y: rounded(height), 'font-size': rounded(fontSize), 'text-anchor': textAnchor },
      words,
    );
  if (content.kind === 'digits') return [text('whole', 0, HALF_DIGIT * size, size, anchor, content.text)];
  const parts = tapeParts(content.number);
  const width = contentEms(content) * size;
  const left = anchor === 'start' ? 0 : anchor === 'end' ? -width : -width / 2;
  const stackWidth = fractionEms(parts) * size;
  const heavyWidth = parts.heavy ? 0.6 * size : 0;
  const stackLeft = left + width - heavyWidth - stackWidth;
  const digits = Math.max(FRACTION_SIZE * size, leastDigits);
  const middle = stackLeft + stackWidth / 2;
  const nodes: SvgNode[] = [];
  if (parts.whole !== '')
    nodes.push(text('whole', stackLeft, HALF_DIGIT * size, size, 'end', parts.whole.replace('-', '−')));
  if (parts.numerator !== '') {
    const [from, to] = [rounded(stackLeft + 0.05 * size), rounded(stackLeft + stackWidth - 0.05 * size)];
    nodes.push(
      text('part', middle, -BAR_GAP * size, digits, 'middle', parts.numerator),
      node('line', { class: 'bar', x1: from, x2: to, y1: 0, y2: 0, 'stroke-width': rounded(0.06 * size) }),
      text('part', middle, BAR_GAP * size + 2 * HALF_DIGIT * digits, digits, 'middle', parts.denominator),
    );
  }
  if (parts.heavy) nodes.push(text('part', stackLeft + stackWidth + 0.06 * size, 0.3 * size, size * 0.8, 'start', '+'));
  return nodes;
}
