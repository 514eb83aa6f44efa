/** Figures to set out, to check and to saw by. What is marked or cut comes from the printed sheet. */
import { figureOf } from '../../core/drawing/figures';
import type { StairPlan } from '../../core/plan/planStair';
import { mmToInches } from '../../core/units/exact';
import { roundTo } from '../../core/units/rounding';
import { Figure } from '../numbers/Figure';
import { useStair } from '../stairOnShow';
import { Row, Rows, Sheet, WordsRow } from './Sheet';

const DEGREES = 180 / Math.PI;
const RIGHT_ANGLE = 90;

interface PlanProps {
  readonly plan: StairPlan;
}

export function FloorSheet({ plan: { sheet } }: PlanProps) {
  const { say } = useStair();
  return (
    <Sheet name="floor" title={say('floor.title')}>
      <Rows>
        <Row words={say('floor.toe')} mm={sheet.toeMark} />
        <Row words={say('floor.riser')} mm={sheet.riserMark} />
        <Row words={say('floor.nosing')} mm={sheet.nosingMark} />
      </Rows>
    </Sheet>
  );
}

export function HeadSheet({ plan }: PlanProps) {
  const { say } = useStair();
  const { headroom, needed } = plan.layout.opening;
  return (
    <Sheet name="head" title={say('head.title')}>
      <Rows>
        <LimitRow words={say('head.room')} mm={headroom} rounding="down" />
        <LimitRow words={say('head.needed')} mm={needed} rounding="up" />
      </Rows>
    </Sheet>
  );
}

function LimitRow({ words, mm, rounding }: { words: string; mm: number | null; rounding: 'up' | 'down' }) {
  const { say } = useStair();
  if (mm !== null) return <Row words={words} mm={mm} rounding={rounding} />;
  return <WordsRow words={words}>{say('head.notWorked')}</WordsRow>;
}

export function CheckSheet({ plan: { sheet, layout } }: PlanProps) {
  const { say } = useStair();
  return (
    <Sheet name="check" title={say('check.title')}>
      <Rows>
        <Row words={say('check.toe')} mm={sheet.toeHeight} />
        <Row words={say('check.level')} mm={roundTo(layout.stringer.top.lastLevelCut, sheet.step)} />
        <Row words={say('check.diagonal')} mm={sheet.diagonal} />
      </Rows>
    </Sheet>
  );
}

export function SquareSheet({ plan }: PlanProps) {
  const { say } = useStair();
  const { flight } = plan.layout;
  const pitch = flight.pitch * DEGREES;
  return (
    <Sheet name="square" title={say('square.title')}>
      <Rows>
        <Row words={say('square.tongue')} mm={flight.unitRise} decimal />
        <Row words={say('square.blade')} mm={flight.run} decimal />
        <WordsRow words={say('square.plumb')}>
          <b className="figure">{pitch.toFixed(1)}°</b>
        </WordsRow>
        <WordsRow words={say('square.level')}>
          <b className="figure">{(RIGHT_ANGLE - pitch).toFixed(1)}°</b>
        </WordsRow>
      </Rows>
    </Sheet>
  );
}

export function BoardSheet({ plan: { sheet, layout } }: PlanProps) {
  const { say, units } = useStair();
  const { stringer } = layout;
  const stock = sheet.stockLength;
  return (
    <Sheet name="board" title={say('board.title')}>
      <Rows>
        <Row words={say('board.length')} mm={stringer.boardLength} rounding="up" />
        <WordsRow words={say('board.stock')}>
          {stock === null && <b>{say('board.noStock')}</b>}
          {stock !== null && units === 'imperial' && (
            <b className="figure">{say('board.feet', { feet: Math.round(mmToInches(stock) / 12) })}</b>
          )}
          {stock !== null && units === 'metric' && <Figure of={figureOf(stock, units)} />}
        </WordsRow>
        <Row words={say('board.gauge')} mm={sheet.gaugeLine} />
        <Row words={say('board.throat')} mm={stringer.throat} rounding="down" />
      </Rows>
    </Sheet>
  );
}

export function WidthSheet({ plan }: PlanProps) {
  const { say } = useStair();
  const { width } = plan.layout;
  if (width === null) return null;
  return (
    <Sheet name="width" title={say('width.title')}>
      <Rows>
        <Row words={say('width.finished')} mm={width.finished} rounding="down" />
        <Row words={say('width.betweenSkirts')} mm={width.betweenSkirts} />
        <Row words={say('width.treadLength')} mm={width.treadLength} rounding="down" />
        <WordsRow words={say('width.stringers')}>
          <b className="figure">{width.stringers}</b>
        </WordsRow>
        <Row words={say('width.spacing')} mm={width.spacing} />
        <Row words={say('width.overhang')} mm={width.treadOverhang} />
      </Rows>
    </Sheet>
  );
}
