/** Check: every rule with its answer, the rules themselves, and what the layout was made with. */
import { lazy, Suspense } from 'react';
import type { StairPlan } from '../../core/plan/planStair';
import { sayProblem } from '../../text/say';
import { labelOf } from '../fields/fieldWords';
import { placeInStair } from '../fields/jobPlaces';
import { Findings } from '../findings/Findings';
import { heldTogether } from '../numbers/heldTogether';
import { HeadSheet } from '../results/NumberSheets';
import { useWords } from '../stairOnShow';
import { RulesPart } from './RulesPart';

/** With the lumber data and its reader: only for who comes here. */
const CarryPart = lazy(() => import('../carry/CarryPart').then(({ CarryPart }) => ({ default: CarryPart })));

interface PlanProps {
  readonly plan: StairPlan;
}

export function CheckStep({ plan }: PlanProps) {
  const { say } = useWords();
  return (
    <>
      <Findings plan={plan} />
      <div className="sheets">
        <HeadSheet plan={plan} />
        <Notes plan={plan} />
        <LaidOutWith plan={plan} />
      </div>
      <Suspense fallback={null}>
        <CarryPart plan={plan} />
      </Suspense>
      <RulesPart />
      <p className="caution closing">{say('results.caution')}</p>
    </>
  );
}

function Notes({ plan }: PlanProps) {
  const { say, units } = useWords();
  if (plan.notes.length === 0) return null;
  return (
    <section className="sheet" aria-labelledby="notes-title">
      <h2 id="notes-title">{say('notes.title')}</h2>
      <ul className="plain-list">
        {plan.notes.map((note) => (
          <li key={note.code}>{sayProblem(say, note, units)}</li>
        ))}
      </ul>
    </section>
  );
}

function LaidOutWith({ plan }: PlanProps) {
  const { say, index } = useWords();
  if (plan.defaults.length === 0) return null;
  return (
    <section className="sheet" aria-labelledby="laid-out-title">
      <h2 id="laid-out-title">{say('laidOut.title')}</h2>
      <p className="hint">{say('laidOut.lead')}</p>
      <dl className="rows">
        {plan.defaults.map(({ key, used }) => (
          <div className="row" key={key}>
            <dt>{labelOf(say, key.includes('.') && !key.startsWith('rules') ? placeInStair(index, key) : key)}</dt>
            <dd>{heldTogether(used)}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
