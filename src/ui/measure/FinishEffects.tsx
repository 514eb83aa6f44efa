/** What each likely thickness of a finish that nobody has decided would do to the first and the last riser. */
import { limitFor } from '../../core/codes/rulePack';
import { figureOf } from '../../core/drawing/figures';
import { type FinishSurface, likelyFinishes } from '../../core/layout/finishEffect';
import type { StairPlan } from '../../core/plan/planStair';
import { toMm } from '../../core/units/exact';
import { type Answer, AnswerTag } from '../findings/AnswerTag';
import { Figure } from '../numbers/Figure';
import { useStair, useWords } from '../stairOnShow';
import { stateOfKey } from './things';

const SURFACES: readonly (readonly [surface: FinishSurface, key: string])[] = [
  ['lower', 'survey.lowerToAdd'],
  ['upper', 'survey.upperToAdd'],
  ['tread', 'steps.treadThickness'],
];

export function FinishEffects() {
  const { job, index, plan } = useStair();
  if (!plan.ok) return null;
  return SURFACES.filter(([, key]) => stateOfKey(job, index, key) !== 'done').map(([surface]) => (
    <EffectTable key={surface} surface={surface} plan={plan.value} />
  ));
}

interface EffectTableProps {
  readonly surface: FinishSurface;
  readonly plan: StairPlan;
}

function EffectTable({ surface, plan }: EffectTableProps) {
  const { say, units } = useWords();
  const limit = (field: string) => {
    const found = limitFor(plan.rules, field);
    return found === null ? null : toMm(found);
  };
  const limits = { riserMax: limit('riser.max'), variation: limit('variation.riser.max') };
  return (
    <table className="effects">
      <caption>
        {say(`measure.effect.${surface}`)} <span className="hint">{say('measure.effect.lead')}</span>
      </caption>
      <thead>
        <tr>
          <th scope="col">{say('measure.effect.thickness')}</th>
          <th scope="col">{say('measure.effect.first')}</th>
          <th scope="col">{say('measure.effect.last')}</th>
          <th scope="col">{say('measure.effect.answer')}</th>
        </tr>
      </thead>
      <tbody>
        {likelyFinishes(plan.layout, surface, limits).map(({ thickness, effect }) => (
          <tr key={thickness}>
            <th scope="row">
              {thickness === 0 ? say('measure.effect.nothing') : <Figure of={figureOf(thickness, units)} />}
            </th>
            <td>
              <Figure of={figureOf(effect.firstRiser, units)} />
            </td>
            <td>
              <Figure of={figureOf(effect.lastRiser, units)} />
            </td>
            <td>
              <AnswerTag answer={answerOf(effect.keeps)} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function answerOf(keeps: boolean | null): Answer {
  if (keeps === null) return 'not-checked';
  return keeps ? 'meets' : 'breaks';
}
