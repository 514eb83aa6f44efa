/** While something essential is missing: what it is, with a way to its field. */

import { sayProblem } from '../../text/say';
import { idOf, labelOf } from '../fields/fieldWords';
import { useStair } from '../stairOnShow';
import { useGoToPlace } from './goToPlace';

export function NotLaidOut() {
  const { say, plan, units } = useStair();
  const goTo = useGoToPlace();
  // Without a problem it only waits for its rules.
  if (plan.ok || plan.problems.length === 0) return null;
  return (
    <div className="sheet">
      <p>{say('results.none')}</p>
      <ul className="plain-list">
        {plan.problems.map((found) => (
          <li key={`${found.place} ${found.code}`}>
            <a
              href={`#${idOf(found.place)}`}
              onClick={(event) => {
                event.preventDefault();
                goTo(found.place);
              }}
            >
              {labelOf(say, found.place)}
            </a>
            : {sayProblem(say, found, units)}
          </li>
        ))}
      </ul>
    </div>
  );
}
