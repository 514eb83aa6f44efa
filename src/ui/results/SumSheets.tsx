/** The sums in which a sign is easily got wrong: total rise, first cut, header mark. */

import { onGrid } from '../../core/check/printedSheet';
import { figureOf } from '../../core/drawing/figures';
import type { Finish } from '../../core/job/stairJob';
import { fallSinceReading } from '../../core/layout/slope';
import type { StairPlan } from '../../core/plan/planStair';
import { toMm } from '../../core/units/exact';
import { Explained } from '../explain/Explained';
import { Figure } from '../numbers/Figure';
import { decimalOf, lengthText } from '../numbers/figures';
import { useStair } from '../stairOnShow';
import { Row, Rows, Sheet, Sum, type SumLine, WordsRow } from './Sheet';

const DEGREES = 180 / Math.PI;
/** Less than this is a float's dust and no line of a sum. */
const HAIR = 1e-6;

interface PlanProps {
  readonly plan: StairPlan;
}

export function RiseSheet({ plan }: PlanProps) {
  const { say, units } = useStair();
  const { flight, job, stringer } = plan.layout;
  const { survey } = job;
  const foot = toMm(survey.footBelowReading);
  const since = toMm(fallSinceReading(job, flight.risers, flight.exact.run));
  const lines: SumLine[] = [
    { sign: '', mm: toMm(survey.rise), words: say('rise.reading') },
    ...(foot === 0 ? [] : [signed(foot, say('rise.foot'))]),
    ...(since === 0 ? [] : [signed(since, say('rise.since'))]),
    finishLine(survey.upperToAdd, say('rise.upper'), 1),
    finishLine(survey.lowerToAdd, say('rise.lower'), -1),
  ];
  return (
    <Sheet name="rise" title={say('rise.title')}>
      <Sum lines={lines} total={{ sign: '', mm: flight.totalRise, words: say('rise.total'), measure: 'totalRise' }} />
      <Rows>
        <Row words={say('rise.risers', { count: flight.risers })} mm={flight.unitRise} decimal measure="unitRise" />
        <Row words={say('rise.run')} mm={flight.run} measure="run" />
        <Row
          words={say('rise.totalRun')}
          mm={stringer.top.hung ? flight.runToTopRiser : stringer.top.endX}
          measure="totalRun"
        />
        <WordsRow words={say('rise.pitch')}>
          <Explained measure="pitch">
            <b className="figure">{(flight.pitch * DEGREES).toFixed(1)}°</b>
          </Explained>
        </WordsRow>
        <WordsRow words={say('rise.twoRise')}>
          <span className="decimal">{decimalOf(2 * flight.unitRise + flight.run, units)}</span>
          <Explained measure="twoRisePlusRun">
            <Figure of={figureOf(2 * flight.unitRise + flight.run, units)} />
          </Explained>
        </WordsRow>
      </Rows>
    </Sheet>
  );
}

/** A finish that is counted as nothing while nobody knows it shows a question mark, not a zero. */
function finishLine(finish: Finish, words: string, direction: 1 | -1): SumLine {
  if (finish.known === 'unknown') return { sign: direction === 1 ? '+' : '−', mm: null, words };
  return signed(toMm(finish.amount) * direction, words);
}

function signed(mm: number, words: string): SumLine {
  return { sign: mm < 0 ? '−' : '+', mm: Math.abs(mm), words };
}

export function HeelSheet({ plan }: PlanProps) {
  const { say, units } = useStair();
  const { flight, stringer, job } = plan.layout;
  const { heel } = stringer;
  const master = stringer.master.stringer;
  const { seatRise } = plan.sheet;
  const floor = -flight.seatHeight;
  const slope = flight.seatHeight - heel.toeY;
  const unknownFloor = job.survey.lowerToAdd.known === 'unknown' && job.survey.lowerLaid === 'after-stairs';
  const lines: SumLine[] = [
    { sign: '', mm: flight.unitRise, words: say('rise.unit'), measure: 'unitRise' },
    finishLine(job.steps.treadThickness, say('heel.tread'), -1),
    ...(unknownFloor ? [{ sign: '+' as const, mm: null, words: say('heel.floor') }] : []),
    ...(!unknownFloor && floor !== 0 ? [signed(floor, say('heel.floor'))] : []),
    ...(Math.abs(slope) > HAIR ? [signed(slope, say('heel.slope'))] : []),
  ];
  const drop = lengthText(Math.abs(heel.drop), units);
  const key = heel.drop > 0 ? 'heel.dropped' : heel.drop < 0 ? 'heel.raised' : 'heel.even';
  return (
    <Sheet name="heel" title={say('heel.title')}>
      <Sum
        lines={lines}
        total={{
          sign: '',
          mm: heel.firstRiserCut,
          marked: plan.sheet.toeHeight,
          words: master === 0 ? say('heel.first') : say('heel.firstOf', { stringer: master }),
          measure: 'firstCut',
        }}
      />
      <p className="caution">{say(key, { drop })}</p>
      <Rows>
        <Row words={say(seatRise === 0 ? 'heel.seat' : 'heel.seatOnSlope')} mm={heel.seat} measure="seat" />
        {seatRise !== 0 && <Row words={say(seatRise > 0 ? 'heel.seatUp' : 'heel.seatDown')} mm={Math.abs(seatRise)} />}
      </Rows>
    </Sheet>
  );
}

export function TopSheet({ plan }: PlanProps) {
  const { say } = useStair();
  const { flight, stringer, job } = plan.layout;
  const { bearing, top } = stringer;
  const tread = finishLine(job.steps.treadThickness, say('heel.tread'), 1);
  const lines: SumLine[] = [
    ...(top.hung
      ? [{ sign: '' as const, mm: flight.unitRise, words: say('rise.unit'), measure: 'unitRise' as const }]
      : []),
    top.hung ? tread : { ...tread, sign: '' },
    finishLine(job.survey.upperToAdd, say('rise.upper'), -1),
  ];
  return (
    <Sheet name="top" title={say('top.title')}>
      <Sum
        lines={lines}
        total={{
          sign: '',
          mm: top.topBelowSubfloor,
          marked: plan.sheet.headerMark,
          words: say('top.mark'),
          measure: 'headerMark',
        }}
      />
      <Rows>
        <Row words={say('top.plumb')} mm={onGrid(top.plumbCut, plan.sheet.step, 'nearest')} measure="plumbCut" />
        {bearing.contact !== null && bearing.contact >= 0 && (
          <Row words={say('top.contact')} mm={bearing.contact} rounding="down" measure="headerContact" />
        )}
        {bearing.contact !== null && bearing.contact < 0 && (
          <Row words={say('top.noContact')} mm={-bearing.contact} rounding="up" />
        )}
        <Row words={say('top.depthNeeded')} mm={bearing.depthNeeded} rounding="up" measure="depthNeeded" />
      </Rows>
    </Sheet>
  );
}
