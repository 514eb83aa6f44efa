/** The one in hand and its neighbours, in columns where there is room and as a list where there is not. */
import type { Alternative } from '../../core/choose/compareLayouts';
import type { StairPlan } from '../../core/plan/planStair';
import { useStair } from '../stairOnShow';
import { FIGURE_ROWS } from './figureRows';
import { LayoutCard } from './LayoutCard';
import { frameOf } from './StairShape';

interface SideBySideProps {
  readonly shown: readonly Alternative[];
  readonly plan: StairPlan;
  readonly onTake: (alternative: Alternative) => void;
}

export function SideBySide({ shown, plan, onTake }: SideBySideProps) {
  const { say } = useStair();
  const frame = frameOf(
    shown.flatMap(({ outcome }) => (outcome === null ? [] : [outcome.figures])),
    plan,
  );
  return (
    <section className="sheet choose-side" aria-labelledby="choose-side-title">
      <h2 id="choose-side-title">{say('choose.side')}</h2>
      <p className="hint">{say('choose.side.lead')}</p>
      <div className={`choose-cards of-${shown.length}`}>
        <div className="choose-row-names" aria-hidden="true">
          {FIGURE_ROWS.map(({ name }) => (
            <span key={name}>{say(`choose.row.${name}`)}</span>
          ))}
        </div>
        <ul>
          {shown.map((alternative) => (
            <LayoutCard key={alternative.id} alternative={alternative} plan={plan} frame={frame} onTake={onTake} />
          ))}
        </ul>
      </div>
    </section>
  );
}
