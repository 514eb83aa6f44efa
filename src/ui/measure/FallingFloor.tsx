/** What a floor that is not level makes of the stair: where it comes down, a toe for each stringer, and riser 1 at both edges. */
import '../../text/lateFindings';
import { limitFor } from '../../core/codes/rulePack';
import { acrossFlight, tightestAcross } from '../../core/layout/acrossFlight';
import { fallSinceReading } from '../../core/layout/slope';
import type { StairPlan } from '../../core/plan/planStair';
import { compare, type Exact, sign, toMm, ZERO } from '../../core/units/exact';
import { lengthText } from '../numbers/figures';
import { ToesTable } from '../results/ToesSheet';
import { useStair } from '../stairOnShow';
import { FallPicture } from './FallPicture';
import { lengthAt } from './things';

export function FallingFloor() {
  const { plan, job, index } = useStair();
  const text = (key: string) => lengthAt(job, index, `survey.${key}`);
  return (
    <>
      <FallPicture along={text('fallAlong')} across={text('fallAcross')} />
      {plan.ok && (
        <>
          <Landing plan={plan.value} />
          <ToesTable plan={plan.value} isTitled />
          <EdgesOfRiser plan={plan.value} />
        </>
      )}
    </>
  );
}

interface PlanProps {
  readonly plan: StairPlan;
}

/** Said as something to be measured again: the mark on the floor, and what the tape should read there. */
function Landing({ plan: { layout, sheet } }: PlanProps) {
  const { say, units } = useStair();
  const { flight, job } = layout;
  const since = fallSinceReading(job, flight.risers, flight.exact.run);
  if (sign(since) === 0) return null;
  const key = sign(since) > 0 ? 'measure.fall.lower' : 'measure.fall.higher';
  const expected = flight.totalRise + flight.lowerToAdd - flight.upperToAdd;
  return (
    <p className="thing-how">
      {say(key, { by: lengthText(Math.abs(toMm(since)), units) })}{' '}
      {say('measure.fall.again', {
        mark: lengthText(sheet.riserMark, units),
        rise: lengthText(expected, units),
      })}
    </p>
  );
}

function EdgesOfRiser({ plan }: PlanProps) {
  const { say, units } = useStair();
  const across = acrossFlight(plan.layout);
  if (across === null) {
    const falls = sign(plan.layout.flight.exact.slopeAcross) !== 0;
    return falls ? <p className="thing-how odd-word">{say('measure.fall.noWidth')}</p> : null;
  }
  const length = (exact: Exact) => lengthText(toMm(exact), units);
  const limit = (field: string) => limitFor(plan.rules, field);
  const tightest = tightestAcross(across, {
    'riser.max': limit('riser.max'),
    'riser.min': limit('riser.min'),
    'variation.riser.max': limit('variation.riser.max'),
  });
  return (
    <>
      <p className="thing-how">
        {say('measure.fall.edges', {
          left: length(across.left),
          right: length(across.right),
          others: length(plan.layout.flight.exact.unitRise),
          spread: length(across.spread),
        })}
      </p>
      {tightest !== null && (
        <p className={compare(tightest.margin, ZERO) < 0 ? 'thing-how odd-word' : 'thing-how'}>
          {say(compare(tightest.margin, ZERO) < 0 ? 'measure.fall.breaks' : 'measure.fall.keeps', {
            edge: say(`measure.fall.edge.${tightest.edge}`),
            rule: say(`finding.${tightest.field}`),
            actual: length(tightest.actual),
            limit: length(tightest.limit),
          })}
        </p>
      )}
    </>
  );
}
