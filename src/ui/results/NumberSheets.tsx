/** Figures to set out, to check and to saw by. What is marked or cut comes from the printed sheet. */
import { figureOf } from '../../core/drawing/figures';
import type { Measure } from '../../core/explain/measures';
import type { StairPlan } from '../../core/plan/planStair';
import { mmToInches } from '../../core/units/exact';
import { roundTo } from '../../core/units/rounding';
import { Explained } from '../explain/Explained';
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
        <Row words={say('floor.toe')} mm={sheet.toeMark} measure="toeMark" />
        <Row words={say('floor.riser')} mm={sheet.riserMark} measure="riserMark" />
        <Row words={say('floor.nosing')} mm={sheet.nosingMark} measure="nosingMark" />
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
        <LimitRow words={say('head.room')} mm={headroom} rounding="down" measure="headroom" />
        <LimitRow words={say('head.needed')} mm={needed} rounding="up" measure="openingNeeded" />
      </Rows>
    </Sheet>
  );
}

interface LimitRowProps {
  readonly words: string;
  readonly mm: number | null;
  readonly rounding: 'up' | 'down';
  readonly measure: Measure;
}

function LimitRow({ words, mm, rounding, measure }: LimitRowProps) {
  const { say } = useStair();
  if (mm !== null) return <Row words={words} mm={mm} rounding={rounding} measure={measure} />;
  return <WordsRow words={words}>{say('head.notWorked')}</WordsRow>;
}

export function CheckSheet({ plan: { sheet, layout } }: PlanProps) {
  const { say } = useStair();
  const master = layout.stringer.master.stringer;
  return (
    <Sheet name="check" title={say('check.title')}>
      <Rows>
        {sheet.feet.length === 0 && <Row words={say('check.toe')} mm={sheet.toeHeight} measure="firstCut" />}
        {sheet.feet.map(({ stringer, toeHeight }) => (
          <Row key={stringer} words={say('check.toeOf', { stringer })} mm={toeHeight} measure={`toe:${stringer}`} />
        ))}
        <Row
          words={say('check.level')}
          mm={roundTo(layout.stringer.top.lastLevelCut, sheet.step)}
          measure="lastLevelCut"
        />
        <Row
          words={master === 0 ? say('check.diagonal') : say('check.diagonalOf', { stringer: master })}
          mm={sheet.diagonal}
          measure="diagonal"
        />
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
        <Row words={say('square.tongue')} mm={flight.unitRise} decimal measure="squareTongue" />
        <Row words={say('square.blade')} mm={flight.run} decimal measure="squareBlade" />
        <WordsRow words={say('square.plumb')}>
          <Explained measure="sawPlumb">
            <b className="figure">{pitch.toFixed(1)}°</b>
          </Explained>
        </WordsRow>
        <WordsRow words={say('square.level')}>
          <Explained measure="sawLevel">
            <b className="figure">{(RIGHT_ANGLE - pitch).toFixed(1)}°</b>
          </Explained>
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
        <Row words={say('board.length')} mm={stringer.boardLength} rounding="up" measure="boardLength" />
        <WordsRow words={say('board.stock')}>
          {stock === null && <b>{say('board.noStock')}</b>}
          {stock !== null && units === 'imperial' && (
            <Explained measure="stockLength">
              <b className="figure">{say('board.feet', { feet: Math.round(mmToInches(stock) / 12) })}</b>
            </Explained>
          )}
          {stock !== null && units === 'metric' && (
            <Explained measure="stockLength">
              <Figure of={figureOf(stock, units)} />
            </Explained>
          )}
        </WordsRow>
        <Row words={say('board.gauge')} mm={sheet.gaugeLine} measure="gaugeLine" />
        <Row words={say('board.throat')} mm={stringer.throat} rounding="down" measure="throat" />
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
        <Row words={say('width.finished')} mm={width.finished} rounding="down" measure="widthFinished" />
        <Row words={say('width.betweenSkirts')} mm={width.betweenSkirts} measure="betweenSkirts" />
        <Row words={say('width.treadLength')} mm={width.treadLength} rounding="down" measure="treadLength" />
        <WordsRow words={say('width.stringers')}>
          <Explained measure="stringers">
            <b className="figure">{width.stringers}</b>
          </Explained>
        </WordsRow>
        <Row words={say('width.spacing')} mm={width.spacing} measure="spacing" />
        <Row words={say('width.overhang')} mm={width.treadOverhang} measure="treadOverhang" />
      </Rows>
    </Sheet>
  );
}
