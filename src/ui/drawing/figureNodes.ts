/**
 * A number in a drawing: whole bold, fraction stacked on a bar at the middle of the figures' height,
 * `+` for heavy. Widths are those that the drawing kept room for, so nothing comes to touch.
 */
import type { FigureText } from '../../core/drawing/drawing';
import { contentEms, fractionEms, tapeParts } from '../../core/drawing/sketch';
import { node, type SvgNode } from './paint';

export interface PlacedFigure {
  readonly content: FigureText;
  readonly x: number;
  /** The middle of the figures' height. */
  readonly y: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly size: number;
  /** Digits of a fraction are never smaller than this. */
  readonly leastDigits: number;
}

/** Half the height of a digit, in ems of nearly every system font. */
const HALF_DIGIT = 0.36;
const FRACTION_SIZE = 0.69;
const BAR_GAP = 0.09;

export function figureNodes({ content, x, y, anchor, size, leastDigits }: PlacedFigure): readonly SvgNode[] {
  const text = (name: string, at: number, height: number, fontSize: number, textAnchor: string, words: string) =>
    node('text', { class: name, x: at, y: height, 'font-size': fontSize, 'text-anchor': textAnchor }, words);
  if (content.kind === 'digits') return [text('whole', x, y + HALF_DIGIT * size, size, anchor, content.text)];
  const parts = tapeParts(content.number);
  const width = contentEms(content) * size;
  const left = anchor === 'start' ? x : anchor === 'end' ? x - width : x - width / 2;
  const stackWidth = fractionEms(parts) * size;
  const heavyWidth = parts.heavy ? 0.6 * size : 0;
  const stackLeft = left + width - heavyWidth - stackWidth;
  const digits = Math.max(FRACTION_SIZE * size, leastDigits);
  const middle = stackLeft + stackWidth / 2;
  const nodes: SvgNode[] = [];
  if (parts.whole !== '')
    nodes.push(text('whole', stackLeft, y + HALF_DIGIT * size, size, 'end', parts.whole.replace('-', '−')));
  if (parts.numerator !== '') {
    const [from, to] = [stackLeft + 0.05 * size, stackLeft + stackWidth - 0.05 * size];
    nodes.push(
      text('part', middle, y - BAR_GAP * size, digits, 'middle', parts.numerator),
      node('line', { class: 'bar', x1: from, x2: to, y1: y, y2: y, 'stroke-width': 0.06 * size }),
      text('part', middle, y + BAR_GAP * size + 2 * HALF_DIGIT * digits, digits, 'middle', parts.denominator),
    );
  }
  if (parts.heavy)
    nodes.push(text('part', stackLeft + stackWidth + 0.06 * size, y + 0.3 * size, size * 0.8, 'start', '+'));
  return nodes;
}
