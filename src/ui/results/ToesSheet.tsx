/** A toe height for each stringer, where the floor falls across the stair. */
import { figureOf } from '../../core/drawing/figures';
import type { StairPlan } from '../../core/plan/planStair';
import { Explained } from '../explain/Explained';
import { Figure } from '../numbers/Figure';
import { useStair } from '../stairOnShow';
import { Sheet } from './Sheet';

interface PlanProps {
  readonly plan: StairPlan;
}

export function ToesSheet({ plan }: PlanProps) {
  const { say } = useStair();
  if (plan.sheet.feet.length === 0) return null;
  return (
    <Sheet name="toes" title={say('toes.title')}>
      <ToesTable plan={plan} />
    </Sheet>
  );
}

/** Empty where one stringer is as another. */
export function ToesTable({ plan: { sheet, layout }, isTitled = false }: PlanProps & { readonly isTitled?: boolean }) {
  const { say, units } = useStair();
  if (sheet.feet.length === 0) return null;
  const master = layout.stringer.master.stringer;
  return (
    <table className="effects toes">
      <caption>
        {isTitled && `${say('toes.title')} `}
        <span className="hint">{say('toes.lead', { master })}</span>
      </caption>
      <thead>
        <tr>
          <th scope="col">{say('toes.stringer')}</th>
          <th scope="col">{say('toes.fromLeft')}</th>
          <th scope="col">{say('toes.toe')}</th>
          <th scope="col">{say('toes.diagonal')}</th>
        </tr>
      </thead>
      <tbody>
        {sheet.feet.map(({ stringer, fromLeft, toeHeight, diagonal }) => (
          <tr key={stringer}>
            <th scope="row">{stringer}</th>
            <td>
              <Figure of={figureOf(fromLeft, units)} />
            </td>
            <td>
              <Explained measure={`toe:${stringer}`}>
                <Figure of={figureOf(toeHeight, units)} />
              </Explained>
            </td>
            <td>
              <Figure of={figureOf(diagonal, units)} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
