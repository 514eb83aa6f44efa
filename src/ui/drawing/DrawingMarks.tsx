/**
 * The marks of a drawing as SVG: roles become classes, pens are in pens.css, y is turned over. Shapes
 * of one role that follow each other are one path, so that a hatch is one node and not a hundred.
 */
import { memo, useMemo } from 'react';
import type { About, Drawing, ShapeMark, TextMark } from '../../core/drawing/drawing';
import { isLitBy } from '../../core/drawing/lights';
import { figureNodes } from './figureNodes';
import { Painted } from './Painted';
import { node, type SvgNode } from './paint';

interface DrawingMarksProps {
  readonly drawing: Drawing;
  /** What it shows, for who cannot see it. */
  readonly alternative: string;
  /** The key whose meaning lights up; null when nothing is in hand. */
  readonly lit: About | null;
}

const LEAST_DIGITS_PX = 12;

export const DrawingMarks = memo(function DrawingMarks({ drawing, alternative, lit }: DrawingMarksProps) {
  const nodes = useMemo(() => nodesOf(drawing, lit), [drawing, lit]);
  return (
    <Painted
      nodes={nodes}
      role="img" // oxlint-disable-line jsx-a11y/prefer-tag-over-role
      aria-label={alternative}
    />
  );
});

/** @returns one node for each text, and one for shapes together as long as they are of a kind */
export function nodesOf(drawing: Drawing, lit: About | null): readonly SvgNode[] {
  return runsOf(drawing).flatMap((run) => {
    const [first] = run;
    if (first === undefined) return [];
    const name = `role-${first.role}${isLitBy(lit, first.about) ? ' lit' : ''}`;
    if (first.kind === 'text') return [textNode(first, name, drawing.perPixel)];
    return [node('path', { class: first.closed ? name : `${name} open`, d: run.map(pathOf).join('') })];
  });
}

function runsOf({ marks }: Drawing): readonly (readonly (ShapeMark | TextMark)[])[] {
  const runs: (ShapeMark | TextMark)[][] = [];
  for (const mark of marks) {
    const run = runs.at(-1);
    const before = run?.[0];
    const isSame =
      mark.kind === 'shape' &&
      before?.kind === 'shape' &&
      before.role === mark.role &&
      before.closed === mark.closed &&
      before.about === mark.about;
    if (isSame) run?.push(mark);
    else runs.push([mark]);
  }
  return runs;
}

function pathOf(mark: ShapeMark | TextMark): string {
  if (mark.kind === 'text') return '';
  const line = mark.corners.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${round(x)} ${round(-y)}`).join('');
  return mark.closed ? `${line}Z` : line;
}

function textNode({ at, anchor, size, content }: TextMark, name: string, perPixel: number): SvgNode {
  if (content.kind === 'words') {
    const place = { x: at.x, y: -at.y + 0.35 * size, 'font-size': size, 'text-anchor': anchor };
    return node('text', { class: name, ...place }, content.text);
  }
  const leastDigits = LEAST_DIGITS_PX * perPixel;
  return node('g', { class: name }, figureNodes({ content, x: at.x, y: -at.y, anchor, size, leastDigits }));
}

/** A hundredth of a millimetre is far below a pixel, and keeps the page's text short. */
function round(value: number): number {
  return Math.round(value * 100) / 100;
}
