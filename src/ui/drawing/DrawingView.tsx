/** A drawing of the core on screen: roles become classes, pens are in pens.css, y is turned over. */
import { memo } from 'react';
import type { Drawing, Mark, ShapeMark, TextMark } from '../../core/drawing/drawing';
import { SvgFigure } from './SvgFigure';

interface DrawingViewProps {
  readonly drawing: Drawing;
  /** What it shows, for who cannot see it. */
  readonly alternative: string;
  /** The key whose meaning lights up; null when nothing is in hand. */
  readonly lit: string | null;
}

const LEAST_DIGITS_PX = 12;

export const DrawingView = memo(function DrawingView({ drawing, alternative, lit }: DrawingViewProps) {
  const { left, right, top, bottom } = drawing.frame;
  const width = right - left;
  const height = top - bottom;
  return (
    <svg
      className="drawing"
      role="img"
      aria-label={alternative}
      viewBox={`${left} ${-top} ${width} ${height}`}
      width={width / drawing.perPixel}
      height={height / drawing.perPixel}
    >
      {drawing.marks.map((mark, index) => (
        <MarkView
          // A drawing is made anew as a whole: its order is all the identity that a mark has.
          // biome-ignore lint/suspicious/noArrayIndexKey: marks have no other identity
          key={index}
          mark={mark}
          isLit={mark.about !== undefined && mark.about === lit}
          perPixel={drawing.perPixel}
        />
      ))}
    </svg>
  );
});

interface MarkViewProps {
  readonly mark: Mark;
  readonly isLit: boolean;
  readonly perPixel: number;
}

function MarkView({ mark, isLit, perPixel }: MarkViewProps) {
  const name = `role-${mark.role}${isLit ? ' lit' : ''}`;
  return mark.kind === 'shape' ? (
    <Shape mark={mark} name={name} />
  ) : (
    <Words mark={mark} name={name} perPixel={perPixel} />
  );
}

function Shape({ mark, name }: { readonly mark: ShapeMark; readonly name: string }) {
  const points = mark.corners.map(({ x, y }) => `${round(x)},${round(-y)}`).join(' ');
  return mark.closed ? (
    <polygon className={name} points={points} />
  ) : (
    <polyline className={`${name} open`} points={points} />
  );
}

function Words({
  mark,
  name,
  perPixel,
}: {
  readonly mark: TextMark;
  readonly name: string;
  readonly perPixel: number;
}) {
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
