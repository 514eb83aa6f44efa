/** The drawings of one stair, each made for the width that it is given. */
import { useCallback, useMemo } from 'react';
import { drawBoard } from '../../core/drawing/board';
import { drawHeel, drawTopEnd } from '../../core/drawing/details';
import type { Drawing, DrawingWords, View } from '../../core/drawing/drawing';
import { drawElevation, elevationHeight } from '../../core/drawing/elevation';
import { drawStep } from '../../core/drawing/stepDetail';
import type { StairPlan } from '../../core/plan/planStair';
import type { Speaker } from '../../text/say';
import { lengthText } from '../numbers/figures';
import { useStair } from '../stairOnShow';
import { DrawingView } from './DrawingView';
import { useWidth } from './useSize';

interface StairDrawingProps {
  readonly plan: StairPlan;
  readonly lit: string | null;
}

type Draw = (plan: StairPlan, view: View, words: DrawingWords) => Drawing;

const DEGREES = 180 / Math.PI;

export function Elevation({ plan, lit }: StairDrawingProps) {
  const { say, units } = useStair();
  const { flight } = plan.layout;
  const alternative = say('drawing.elevation.alt', {
    risers: flight.risers,
    rise: lengthText(flight.unitRise, units),
    run: lengthText(flight.run, units),
    pitch: (flight.pitch * DEGREES).toFixed(1),
    total: lengthText(flight.totalRise, units),
  });
  return <Shown plan={plan} lit={lit} draw={drawElevation} heightFor={elevationHeight} alternative={alternative} />;
}

export function Board({ plan, lit }: StairDrawingProps) {
  const { say, units } = useStair();
  const { tips } = plan.sheet;
  const alternative = say('drawing.board.alt', {
    depth: lengthText(plan.layout.stringer.stockDepth, units),
    tips: tips.length,
    first: lengthText(tips[0] ?? 0, units),
    last: lengthText(tips.at(-1) ?? 0, units),
  });
  return <Shown plan={plan} lit={lit} draw={drawBoard} heightFor={noHeight} alternative={alternative} />;
}

export function Heel({ plan, lit }: StairDrawingProps) {
  const { say, units } = useStair();
  const alternative = say('drawing.heel.alt', {
    cut: lengthText(plan.sheet.toeHeight, units),
    rise: lengthText(plan.layout.flight.unitRise, units),
  });
  return <Shown plan={plan} lit={lit} draw={drawHeel} heightFor={detailHeight} alternative={alternative} />;
}

export function TopEnd({ plan, lit }: StairDrawingProps) {
  const { say, units } = useStair();
  const alternative = say('drawing.topEnd.alt', {
    mark: lengthText(plan.sheet.headerMark, units),
    plumb: lengthText(plan.layout.stringer.top.plumbCut, units),
  });
  return <Shown plan={plan} lit={lit} draw={drawTopEnd} heightFor={detailHeight} alternative={alternative} />;
}

export function Notch({ plan, lit }: StairDrawingProps) {
  const { say, units } = useStair();
  const { flight, stringer } = plan.layout;
  const alternative = say('drawing.step.alt', {
    rise: lengthText(flight.unitRise, units),
    run: lengthText(flight.run, units),
    notch: lengthText(stringer.notchDepth, units),
  });
  return <Shown plan={plan} lit={lit} draw={drawStep} heightFor={detailHeight} alternative={alternative} />;
}

interface ShownProps extends StairDrawingProps {
  readonly draw: Draw;
  readonly heightFor: (width: number, plan: StairPlan) => number;
  readonly alternative: string;
}

function Shown({ plan, lit, draw, heightFor, alternative }: ShownProps) {
  const { say } = useStair();
  const [place, width] = useWidth<HTMLDivElement>();
  const words = useDrawingWords(say);
  const drawing = useMemo(
    () => draw(plan, { width, height: heightFor(width, plan) }, words),
    [draw, plan, width, heightFor, words],
  );
  return (
    <div className="drawing-place" ref={place}>
      <DrawingView drawing={drawing} alternative={alternative} lit={lit} />
    </div>
  );
}

function useDrawingWords(say: Speaker): DrawingWords {
  return useCallback((word) => say(`drawing.${word}`), [say]);
}

function detailHeight(width: number): number {
  return Math.round(Math.min(340, Math.max(230, width * 0.42)));
}

/** The board takes as many rows as it needs. */
function noHeight(): number {
  return 0;
}
