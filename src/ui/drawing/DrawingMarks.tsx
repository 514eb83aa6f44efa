/**
 * The marks of a drawing as SVG in its own pixels: roles become classes, pens are in pens.css. Shapes
 * of one role that follow each other are one path, so that a hatch is one node and not a hundred.
 */
import { memo, useMemo } from 'react';
import type { About, Drawing, ShapeMark, TextMark } from '../../core/drawing/drawing';
import { isLitBy } from '../../core/drawing/lights';
import { figureNode } from './figureNodes';
import { Painted } from './Painted';
import { node, type SvgNode } from './paint';
import { type Pixels, pixelsOf } from './pixels';

interface DrawingMarksProps {
  readonly drawing: Drawing;
  /** What it shows, for who cannot see it. */
  readonly alternative: string;
  /** The key whose meaning lights up; null when nothing is in hand. */
  readonly lit: About | null;
}

/** Digits of a fraction are never smaller than this. */
const LEAST_DIGITS = 12;

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

/**
 * @returns one node for each text, and one for shapes together as long as they are of a kind. Dimensions lie over what
 * they measure and texts over all, so that all lines of dimensions are of a kind, and all their ticks.
 */
export function nodesOf(drawing: Drawing, lit: About | null): readonly SvgNode[] {
  const pixels = pixelsOf(drawing);
  return runsOf(drawing, lit).map(({ name, marks }) => {
    const [first] = marks;
    if (first.kind === 'text') return textNode(first, name, pixels);
    return node('path', { class: name, d: marks.map((mark) => pathOf(mark, pixels)).join('') });
  });
}

interface Run {
  /** Its class: role, whether it is lit, whether it is filled. */
  readonly name: string;
  readonly marks: [ShapeMark | TextMark, ...(ShapeMark | TextMark)[]];
}

function runsOf({ marks }: Drawing, lit: About | null): readonly Run[] {
  const runs: Run[] = [];
  for (const mark of marks.toSorted((one, other) => heightOf(one) - heightOf(other))) {
    const name = `role-${mark.role}${isLitBy(lit, mark.about) ? ' lit' : ''}${mark.kind === 'text' || mark.closed ? '' : ' open'}`;
    const run = runs.at(-1);
    if (mark.kind === 'shape' && run?.name === name && run.marks[0].kind === 'shape') run.marks.push(mark);
    else runs.push({ name, marks: [mark] });
  }
  return runs;
}

function heightOf({ kind, role }: ShapeMark | TextMark): number {
  if (kind === 'text') return 3;
  return role === 'tick' ? 2 : role === 'dimension' ? 1 : 0;
}

function pathOf(mark: ShapeMark | TextMark, pixels: Pixels): string {
  if (mark.kind === 'text') return '';
  const line = mark.corners.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${pixels.x(x)} ${pixels.y(y)}`).join('');
  return mark.closed ? `${line}Z` : line;
}

function textNode({ at, anchor, size, content }: TextMark, name: string, pixels: Pixels): SvgNode {
  const x = pixels.x(at.x);
  if (content.kind === 'words') {
    const place = { x, y: pixels.y(at.y - 0.35 * size), 'font-size': pixels.size(size), 'text-anchor': anchor };
    return node('text', { class: name, ...place }, content.text);
  }
  const place = { x, y: pixels.y(at.y), anchor, size: pixels.size(size), leastDigits: LEAST_DIGITS };
  return figureNode({ content, ...place }, name);
}
