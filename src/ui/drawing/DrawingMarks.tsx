/**
 * The marks of a drawing as SVG: roles become classes, pens are in pens.css, y is turned over. Shapes
 * of one role that follow each other are one path, so that a hatch is one node and not a hundred.
 */
import { memo } from 'react';
import type { About, Drawing, ShapeMark, TextMark } from '../../core/drawing/drawing';
import { isLitBy } from '../../core/drawing/lights';
import { SvgFigure } from './SvgFigure';

interface DrawingMarksProps {
  readonly drawing: Drawing;
  /** What it shows, for who cannot see it. */
  readonly alternative: string;
  /** The key whose meaning lights up; null when nothing is in hand. */
  readonly lit: About | null;
}

const LEAST_DIGITS_PX = 12;

export const DrawingMarks = memo(function DrawingMarks({ drawing, alternative, lit }: DrawingMarksProps) {
  return (
    // biome-ignore lint/a11y/noInteractiveElementToNoninteractiveRole: a group of shapes is nothing to act on
    <g
      role="img" // oxlint-disable-line jsx-a11y/prefer-tag-over-role
      aria-label={alternative}
    >
      {runsOf(drawing).map((run, index) => {
        const [first] = run;
        if (first === undefined) return null;
        const name = `role-${first.role}${isLitBy(lit, first.about) ? ' lit' : ''}`;
        // A drawing is made anew as a whole: its order is all the identity that a mark has.
        const key = index;
        return first.kind === 'text' ? (
          <Words key={key} mark={first} name={name} perPixel={drawing.perPixel} />
        ) : (
          <path key={key} className={first.closed ? name : `${name} open`} d={run.map(pathOf).join('')} />
        );
      })}
    </g>
  );
});

/** Texts one by one, and shapes together as long as they are of a kind. */
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

interface WordsProps {
  readonly mark: TextMark;
  readonly name: string;
  readonly perPixel: number;
}

function Words({ mark, name, perPixel }: WordsProps) {
  const { at, anchor, size, content } = mark;
  if (content.kind !== 'words') {
    return (
      <g className={name}>
        <SvgFigure
          content={content}
          x={at.x}
          y={-at.y}
          anchor={anchor}
          size={size}
          leastDigits={LEAST_DIGITS_PX * perPixel}
        />
      </g>
    );
  }
  return (
    <text className={name} x={at.x} y={-at.y + 0.35 * size} fontSize={size} textAnchor={anchor}>
      {content.text}
    </text>
  );
}

/** A hundredth of a millimetre is far below a pixel, and keeps the page's text short. */
function round(value: number): number {
  return Math.round(value * 100) / 100;
}
