/**
 * Choosing: a step either way on large keys, the neighbours side by side, what would clear what breaks, and
 * every layout that fits. The keys answer at once; the rest follows as soon as there is a moment.
 */
import { lazy, memo, Suspense } from 'react';
import type { Alternative } from '../../core/choose/compareLayouts';
import type { Problem } from '../../core/result';
import { sayProblem } from '../../text/say';
import { useWidth } from '../drawing/useSize';
import { lengthText } from '../numbers/figures';
import { useStair, useStairNow } from '../stairOnShow';
import { Cures } from './Cures';
import { neighboursOf } from './neighbours';
import { SideBySide } from './SideBySide';
import { Steppers } from './Steppers';
import { type Takeable, useAlternatives, useTaking } from './useAlternatives';
import './choose.css';
import './cardSizes.css';

const SolveFor = lazy(() => import('./SolveFor').then(({ SolveFor }) => ({ default: SolveFor })));
const SearchPart = lazy(() => import('../search/SearchPart').then(({ SearchPart }) => ({ default: SearchPart })));

export function ChooseScreen() {
  const { say, plan, units } = useStairNow();
  const { refusals, take } = useTaking();
  const flight = plan.ok ? plan.value.layout.flight : null;
  return (
    <div className="choose">
      <h2 className="unseen">{say('choose.title')}</h2>
      {plan.ok && <Steppers plan={plan.value} onTake={take} />}
      <p className="unseen" aria-live="polite">
        {flight !== null && say('choose.taken', { risers: flight.risers, run: lengthText(flight.run, units) })}
      </p>
      <div aria-live="polite">
        {refusals.length > 0 && <Refusals lead={say('choose.refused')} problems={refusals} />}
      </div>
      {!plan.ok && <Refusals lead={say('choose.none')} problems={plan.problems} />}
      <Choices onTake={take} />
    </div>
  );
}

function Refusals({ lead, problems }: { readonly lead: string; readonly problems: readonly Problem[] }) {
  const { say, units } = useStair();
  return (
    <div className="choose-refused">
      <p>
        <b>{lead}</b>
      </p>
      <ul>
        {problems.map((found) => (
          <li key={`${found.place} ${found.code}`}>{sayProblem(say, found, units)}</li>
        ))}
      </ul>
    </div>
  );
}

/** From this width on the cards stand in columns, and first; as a list they are long, and come last. */
const COLUMNS_FROM = 900;

interface ChoicesProps {
  readonly onTake: (changes: Takeable) => boolean;
}

const Choices = memo(function Choices({ onTake }: ChoicesProps) {
  const { say, plan, job } = useStair();
  const all = useAlternatives();
  const [place, width] = useWidth<HTMLDivElement>();
  const takeOne = ({ changes, pair }: Alternative) => {
    onTake((present) => (present === job ? changes : pair));
  };
  const side = plan.ok && <SideBySide shown={neighboursOf(all)} plan={plan.value} onTake={takeOne} />;
  return (
    <div ref={place}>
      {all.length === 0 && <p className="sheet">{say('choose.noneYet')}</p>}
      {width >= COLUMNS_FROM && side}
      {plan.ok && <Cures plan={plan.value} onTake={onTake} />}
      {plan.ok && (
        <Suspense fallback={null}>
          <SolveFor plan={plan.value} onTake={onTake} />
        </Suspense>
      )}
      <Suspense fallback={<p className="sheet">{say('choose.searching')}</p>}>
        <SearchPart onTake={onTake} />
      </Suspense>
      {width < COLUMNS_FROM && side}
    </div>
  );
});
