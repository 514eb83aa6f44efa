/** Nothing fits: the limits that no layout keeps together, and what would have to give, each tried. */
import type { StringerTop } from '../../core/job/jobText';
import type { Bound } from '../../core/search/bounds';
import { changesNow } from '../../core/search/planFound';
import type { Spot } from '../../core/search/region';
import type { Why } from '../../core/search/study';
import type { Asked } from '../../core/search/tryWay';
import { exactText } from '../../core/units/exactText';
import type { Takeable } from '../choose/useAlternatives';
import { lengthText } from '../numbers/figures';
import { useWords } from '../stairOnShow';
import { askedText, boundName } from './searchWords';

interface WhyNothingProps {
  readonly why: Why;
  readonly asked: Asked;
  readonly gridMm: number;
  readonly onLook: (top: StringerTop, spot: Spot) => void;
  readonly onTake: (changes: Takeable) => void;
}

export function WhyNothing({ why, asked: askedOf, gridMm, onLook, onTake }: WhyNothingProps) {
  const { say, units } = useWords();
  const { conflict, ways, opening } = why;
  const { bounds } = conflict.sifter;
  const numbers = { looked: conflict.looked };
  const asked = (bound: Bound) =>
    say('search.why.asked', { what: boundName(say, bound), asked: askedText(say, bound, bound.asked, units) });
  const named = ({ risers, steps }: Spot) => ({ risers, run: lengthText(steps * gridMm, units) });
  /** The layout that was tried with it, and the opening itself. */
  const takeOpening = () =>
    onTake((present, index) => {
      const keys = opening === null ? null : changesNow(present, index, askedOf, opening.candidate);
      const framed = opening?.keys.filter(({ key }) => key === 'survey.openingFraming') ?? [];
      return keys === null ? null : [...keys, ...framed];
    });
  if (conflict.bounds.length === 0) return <p className="search-why">{say('search.why.none')}</p>;
  return (
    <div className="search-why">
      <h3>{say('search.why')}</h3>
      <p>{say(conflict.bounds.length === 1 ? 'search.why.one' : 'search.why.lead', numbers)}</p>
      <ul>
        {conflict.bounds.flatMap((at) => {
          const bound = bounds[at];
          return bound === undefined ? [] : [<li key={at}>{asked(bound)}</li>];
        })}
      </ul>
      <h3>{say('search.why.ways')}</h3>
      <p className="hint">{say('search.why.ways.lead')}</p>
      <ul className="search-ways">
        {ways.map(({ changes, candidate }) => (
          <li key={changes.map(({ bound }) => bound.id).join()}>
            <p>
              {changes.map(({ bound, becomes }) => (
                <span key={bound.id}>
                  <b>
                    {say('search.way.become', { what: asked(bound), becomes: askedText(say, bound, becomes, units) })}
                  </b>
                  <br />
                </span>
              ))}
              {say('search.way.result', named(candidate))}
            </p>
            <button type="button" onClick={() => onLook(candidate.top, candidate)}>
              {say('search.way.look')}
            </button>
          </li>
        ))}
        {opening !== null && (
          <li>
            <p>
              <b>
                {say('search.way.opening', {
                  opening: exactText(opening.opening, units),
                  ...named(opening.candidate),
                })}
              </b>
              <br />
              {say('choose.cure.house')}
            </p>
            <button type="button" onClick={takeOpening}>
              {say('search.way.take.opening')}
            </button>
          </li>
        )}
      </ul>
    </div>
  );
}
