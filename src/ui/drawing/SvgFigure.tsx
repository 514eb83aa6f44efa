/**
 * A number in a drawing: whole bold, fraction stacked on a bar at the middle of the figures' height,
 * `+` for heavy. Widths are those that the drawing kept room for, so nothing comes to touch.
 */
import type { FigureText } from '../../core/drawing/drawing';
import { contentEms, fractionEms, tapeParts } from '../../core/drawing/sketch';

interface SvgFigureProps {
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

export function SvgFigure({ content, x, y, anchor, size, leastDigits }: SvgFigureProps) {
  if (content.kind === 'digits') {
    return (
      <text className="whole" x={x} y={y + HALF_DIGIT * size} fontSize={size} textAnchor={anchor}>
        {content.text}
      </text>
    );
  }
  const parts = tapeParts(content.number);
  const width = contentEms(content) * size;
  const left = anchor === 'start' ? x : anchor === 'end' ? x - width : x - width / 2;
  const stackWidth = fractionEms(parts) * size;
  const heavyWidth = parts.heavy ? 0.6 * size : 0;
  const stackLeft = left + width - heavyWidth - stackWidth;
  const digits = Math.max(FRACTION_SIZE * size, leastDigits);
  const middle = stackLeft + stackWidth / 2;
  return (
    <g>
      {parts.whole !== '' && (
        <text className="whole" x={stackLeft} y={y + HALF_DIGIT * size} fontSize={size} textAnchor="end">
          {parts.whole.replace('-', '−')}
        </text>
      )}
      {parts.numerator !== '' && (
        <>
          <text className="part" x={middle} y={y - BAR_GAP * size} fontSize={digits} textAnchor="middle">
            {parts.numerator}
          </text>
          <line
            className="bar"
            x1={stackLeft + 0.05 * size}
            x2={stackLeft + stackWidth - 0.05 * size}
            y1={y}
            y2={y}
            strokeWidth={0.06 * size}
          />
          <text
            className="part"
            x={middle}
            y={y + BAR_GAP * size + 2 * HALF_DIGIT * digits}
            fontSize={digits}
            textAnchor="middle"
          >
            {parts.denominator}
          </text>
        </>
      )}
      {parts.heavy && (
        <text className="part" x={stackLeft + stackWidth + 0.06 * size} y={y + 0.3 * size} fontSize={size * 0.8}>
          +
        </text>
      )}
    </g>
  );
}
