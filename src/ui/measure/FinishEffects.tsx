/** What each likely thickness of a finish that nobody has decided would do to the first and the last riser. */
import { figureOf } from '../../core/drawing/figures';
import { type FinishSurface, likelyFinishes } from '../../core/layout/finishEffect';
import { unknownDrivers } from '../../core/layout/unknownDrivers';
import { finishWindows, riserLimits } from '../../core/plan/finishWindows';
import type { StairPlan } from '../../core/plan/planStair';
import { windowWords } from '../../text/windowText';
import { type Answer, AnswerTag } from '../findings/AnswerTag';
import { Figure } from '../numbers/Figure';
import { lengthText } from '../numbers/figures';
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
  return (
    <>
      <Windows plan={plan.value} />
      {SURFACES.filter(([, key]) => stateOfKey(job, index, key) !== 'done').map(([surface]) => (
        <EffectTable key={surface} surface={surface} plan={plan.value} />
      ))}
    </>
  );
}

/** A slip for whoever lays the floors, and what to ask about first. */
function Windows({ plan }: { readonly plan: StairPlan }) {
  const { say, units } = useWords();
  const [driver] = unknownDrivers(plan.layout);
  return (
    <>
      {driver !== undefined && (
        <p className="thing-how odd-word">
          {say(driver.firstRiser > 0 ? 'window.driver' : 'window.driver.last', {
            surface: say(`window.${driver.surface}`),
            by: lengthText(Math.max(driver.firstRiser, driver.firstRiser > 0 ? 0 : driver.lastRiser), units),
          })}
        </p>
      )}
      <table className="effects windows">
        <caption>
          {say('window.title')} <span className="hint">{say('window.lead')}</span>
        </caption>
        <tbody>
          {finishWindows(plan).map(({ surface, window }) => (
            <tr key={surface}>
              <th scope="row">{say(`window.${surface}`)}</th>
              <td>{windowWords(say, window, units)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}

interface EffectTableProps {
  readonly surface: FinishSurface;
  readonly plan: StairPlan;
}

function EffectTable({ surface, plan }: EffectTableProps) {
  const { say, units } = useWords();
  const limits = riserLimits(plan);
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
