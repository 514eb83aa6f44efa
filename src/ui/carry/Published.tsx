/** The stringer beside figures that others have printed, each with whose it is and how sure. */
import type { PublishedAnswer } from '../../core/carry/published';
import type { Carry } from '../../core/carry/screenCarry';
import { printedFigure } from '../../text/carryText';
import { lengthText } from '../numbers/figures';
import { useStair } from '../stairOnShow';
import { CarryTag } from './CarryTag';

export function Published({ carry }: { readonly carry: Carry }) {
  const { say, units } = useStair();
  const throats = carry.published.filter(({ figure }) => figure.what === 'throat');
  const isBetween = new Set(throats.map(({ answer }) => answer)).size > 1;
  const asked = throats.map((each) => each.asked);
  return (
    <>
      <h3>{say('carry.published')}</h3>
      <p className="hint">{say('carry.published.lead')}</p>
      {isBetween && (
        <p className="caution">
          {say('carry.between', {
            least: lengthText(Math.min(...asked), units),
            most: lengthText(Math.max(...asked), units),
          })}
        </p>
      )}
      <ul className="finding-list carry-list">
        {carry.published.map((each) => (
          <Figure key={`${each.figure.what} ${each.figure.whose} ${each.asked}`} of={each} />
        ))}
      </ul>
    </>
  );
}

function Figure({ of: { figure, answer, is, asked } }: { readonly of: PublishedAnswer }) {
  const { say, units } = useStair();
  const { what, sense, whose, unit, confidence, sources } = figure;
  const text = (value: number, rounding: 'up' | 'down' | 'nearest') =>
    unit === 'count' ? String(value) : lengthText(value, units, rounding);
  const found = is === null ? say('carry.notMeasured') : text(is, sense === 'least' ? 'down' : 'up');
  return (
    <li className="finding">
      <CarryTag answer={answer} />
      <div>
        <p className="finding-rule">{say(`carry.thing.${what}`)}</p>
        <p className="finding-figures">
          {say('carry.beside', {
            is: found,
            asked: say(`carry.${sense}`, { value: printedFigure(figure, text(asked, 'nearest'), units) }),
          })}
        </p>
        <p className="finding-source">
          {whose} ({say(`carry.sure.${confidence}`)}). <small>{sources.join('; ')}</small>
        </p>
      </div>
    </li>
  );
}
