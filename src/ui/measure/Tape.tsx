/** The tape in a picture: a chalk line whose crow's feet point at what is measured, and what it says. */
import { figureOf } from '../../core/drawing/figures';
import { toMm } from '../../core/units/exact';
import { parseLength } from '../../core/units/length';
import { SvgFigure } from '../drawing/SvgFigure';
import { useWords } from '../stairOnShow';

type Spot = readonly [x: number, y: number];

const FOOT = { long: 11, half: 7 };

export function Tape({ from, to }: { readonly from: Spot; readonly to: Spot }) {
  return (
    <>
      <line className="tape-line" x1={from[0]} y1={from[1]} x2={to[0]} y2={to[1]} />
      <path className="tape-foot" d={crowFoot(from, to)} />
      <path className="tape-foot" d={crowFoot(to, from)} />
    </>
  );
}

/** Its point is the measure; its legs lead away along the tape. */
function crowFoot([x, y]: Spot, [awayX, awayY]: Spot): string {
  const length = Math.hypot(awayX - x, awayY - y);
  const [ux, uy] = [(awayX - x) / length, (awayY - y) / length];
  const leg = (side: 1 | -1) =>
    `${x + ux * FOOT.long - side * uy * FOOT.half} ${y + uy * FOOT.long + side * ux * FOOT.half}`;
  return `M${leg(1)}L${x} ${y}L${leg(-1)}`;
}

interface TapeValueProps {
  readonly x: number;
  readonly y: number;
  readonly anchor: 'start' | 'middle' | 'end';
  /** The length with its unit; anything else is a question. */
  readonly text: string;
}

const VALUE_SIZE = 24;
const QUESTION = { width: 44, height: 36 };

export function TapeValue({ x, y, anchor, text }: TapeValueProps) {
  const { units } = useWords();
  const reading = parseLength(text, true);
  if (reading.ok) {
    const content = figureOf(toMm(reading.length), units);
    return (
      <g className="lit tape-value">
        <SvgFigure content={content} x={x} y={y} anchor={anchor} size={VALUE_SIZE} leastDigits={16} />
      </g>
    );
  }
  const left = anchor === 'start' ? x : anchor === 'end' ? x - QUESTION.width : x - QUESTION.width / 2;
  return (
    <g className="tape-question">
      <rect x={left} y={y - QUESTION.height / 2} width={QUESTION.width} height={QUESTION.height} />
      <text x={left + QUESTION.width / 2} y={y + 9} textAnchor="middle" fontSize={26}>
        ?
      </text>
    </g>
  );
}
