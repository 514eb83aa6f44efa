/** The board and the enlarged places: they come with the steps that are about them. */
import { onGrid } from '../../core/check/printedSheet';
import { drawBoard } from '../../core/drawing/board';
import { drawHeel, drawTopEnd } from '../../core/drawing/details';
import { drawStep } from '../../core/drawing/stepDetail';
import { lengthText } from '../numbers/figures';
import { useWords } from '../stairOnShow';
import { Shown, type StairDrawingProps } from './StairDrawings';

export function Board(props: StairDrawingProps) {
  const { say, units } = useWords();
  const { plan } = props;
  const { tips } = plan.sheet;
  const alternative = say('drawing.board.alt', {
    depth: lengthText(plan.layout.stringer.stockDepth, units),
    tips: tips.length,
    first: lengthText(tips[0] ?? 0, units),
    last: lengthText(tips.at(-1) ?? 0, units),
  });
  return (
    <Shown {...props} draw={drawBoard} heightFor={noHeight} alternative={alternative} title={say('drawing.board')} />
  );
}

export function Heel(props: StairDrawingProps) {
  const { say, units } = useWords();
  const { plan } = props;
  const alternative = say('drawing.heel.alt', {
    cut: lengthText(plan.sheet.toeHeight, units),
    rise: lengthText(plan.layout.flight.unitRise, units),
  });
  return (
    <Shown
      {...props}
      draw={drawHeel}
      heightFor={detailHeight}
      alternative={alternative}
      title={say('drawing.heel')}
      isDetail
    />
  );
}

export function TopEnd(props: StairDrawingProps) {
  const { say, units } = useWords();
  const { plan } = props;
  const alternative = say('drawing.topEnd.alt', {
    mark: lengthText(plan.sheet.headerMark, units),
    plumb: lengthText(onGrid(plan.layout.stringer.top.plumbCut, plan.sheet.step, 'nearest'), units),
  });
  return (
    <Shown
      {...props}
      draw={drawTopEnd}
      heightFor={detailHeight}
      alternative={alternative}
      title={say('drawing.topEnd')}
      isDetail
    />
  );
}

export function Notch(props: StairDrawingProps) {
  const { say, units } = useWords();
  const { plan } = props;
  const { flight, stringer } = plan.layout;
  const alternative = say('drawing.step.alt', {
    rise: lengthText(flight.unitRise, units),
    run: lengthText(flight.run, units),
    notch: lengthText(stringer.notchDepth, units),
  });
  return (
    <Shown
      {...props}
      draw={drawStep}
      heightFor={detailHeight}
      alternative={alternative}
      title={say('drawing.step')}
      isDetail
    />
  );
}

function detailHeight(width: number): number {
  return Math.round(Math.min(340, Math.max(230, width * 0.42)));
}

/** The board takes as many rows as it needs. */
function noHeight(): number {
  return 0;
}
