/** The one number, as large as its place allows; hidden from a screen reader, which is told the whole sentence. */
import type { FigureText } from '../../core/drawing/drawing';
import { useStair } from '../stairOnShow';
import {
  BAR,
  CAP,
  DECIMAL_SHARE,
  DIGIT,
  frameFor,
  HEAVY_WIDTH,
  type Longest,
  type NumberFrame,
  type NumberParts,
  POINT_WIDTH,
  partsOf,
  placesIn,
} from './numberFrame';
import { usePlace } from './usePlace';

interface BigNumberProps {
  readonly figure: FigureText;
  readonly longest: Longest;
}

const EM = 100;

export function BigNumber({ figure, longest }: BigNumberProps) {
  const [place, size] = usePlace<HTMLDivElement>();
  const frame = frameFor(longest, size);
  const parts = partsOf(figure);
  return (
    <div className="walk-number" ref={place}>
      <svg aria-hidden="true" viewBox={`0 0 ${frame.width} ${frame.height}`} preserveAspectRatio="xMidYMid meet">
        <Whole parts={parts} frame={frame} />
        {parts.numerator !== '' && <Fraction parts={parts} frame={frame} />}
        {parts.heavy && <Heavy parts={parts} frame={frame} />}
        {parts.decimals !== '' && <Decimals parts={parts} frame={frame} />}
      </svg>
    </div>
  );
}

interface PartProps {
  readonly parts: NumberParts;
  readonly frame: NumberFrame;
}

function Whole({ parts, frame }: PartProps) {
  const { wholeFoot } = placesIn(frame, parts);
  if (parts.whole === '') return null;
  const width = parts.whole.length * DIGIT;
  const left = frame.rows === 1 ? frame.joint - width : frame.joint - width / 2;
  return <Digits text={parts.whole} left={left} foot={wholeFoot} share={1} />;
}

function Fraction({ parts, frame }: PartProps) {
  const { share } = frame;
  const { stackLeft, stackMiddle, stack } = placesIn(frame, parts);
  const middle = stackLeft + stack / 2;
  const half = BAR.thick / 2;
  const left = (text: string) => middle - (text.length * DIGIT * share) / 2;
  return (
    <>
      <Digits text={parts.numerator} left={left(parts.numerator)} foot={stackMiddle - half - BAR.air} share={share} />
      <rect x={stackLeft} y={stackMiddle - half} width={stack} height={BAR.thick} />
      <Digits
        text={parts.denominator}
        left={left(parts.denominator)}
        foot={stackMiddle + half + BAR.air + CAP * share}
        share={share}
      />
    </>
  );
}

function Heavy({ parts, frame }: PartProps) {
  const { say } = useStair();
  const { stackLeft, stackMiddle, stack } = placesIn(frame, parts);
  const x = stackLeft + (parts.numerator === '' ? 0 : stack) + HEAVY_WIDTH / 2;
  return (
    <>
      <path className="walk-plus" d={`M${x - 14} ${stackMiddle}h28M${x} ${stackMiddle - 14}v28`} />
      <text x={x} y={stackMiddle + 34} fontSize={13} textAnchor="middle">
        {say('walk.heavy')}
      </text>
    </>
  );
}

function Decimals({ parts, frame }: PartProps) {
  const { wholeFoot } = placesIn(frame, parts);
  return (
    <>
      <rect x={frame.joint + 3} y={wholeFoot - 12} width={12} height={12} />
      <Digits text={parts.decimals} left={frame.joint + POINT_WIDTH} foot={wholeFoot} share={DECIMAL_SHARE} />
    </>
  );
}

interface DigitsProps {
  readonly text: string;
  readonly left: number;
  readonly foot: number;
  /** Against the whole number's digits. */
  readonly share: number;
}

function Digits({ text, left, foot, share }: DigitsProps) {
  return (
    <text
      x={left}
      y={foot}
      fontSize={EM * share}
      textLength={text.length * DIGIT * share}
      lengthAdjust="spacingAndGlyphs"
    >
      {text}
    </text>
  );
}
