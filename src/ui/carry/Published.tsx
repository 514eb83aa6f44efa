/** The stringer beside figures that others have printed, each with whose it is and how sure. */
import type { PublishedAnswer } from '../../core/carry/published';
import type { Carry } from '../../core/carry/screenCarry';
import type { UnitSystem } from '../../core/units/length';
import type { Rounding } from '../../core/units/rounding';
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
      {groupsOf(carry.published).map((group) => (
        <Group key={group[0]?.figure.what} figures={group} />
      ))}
    </>
  );
}

/** Figures for one thing stand together, in the order of the data. */
function groupsOf(figures: readonly PublishedAnswer[]): readonly (readonly PublishedAnswer[])[] {
  const things = [...new Set(figures.map(({ figure }) => figure.what))];
  return things.map((thing) => figures.filter(({ figure }) => figure.what === thing));
}

function Group({ figures }: { readonly figures: readonly PublishedAnswer[] }) {
  const { say, units } = useStair();
  const [first] = figures;
  if (first === undefined) return null;
  const { figure, is } = first;
  const rounding = figure.sense === 'least' ? 'down' : 'up';
  const shown = is === null ? say('carry.notMeasured') : shownIn(figure, is, units, rounding);
  return (
    <>
      <h4>{say('carry.beside', { thing: say(`carry.thing.${figure.what}`), is: shown })}</h4>
      <ul className="finding-list carry-list">
        {figures.map((each) => (
          <Figure key={`${each.figure.whose} ${each.asked}`} of={each} />
        ))}
      </ul>
    </>
  );
}

function Figure({ of: { figure, answer, asked } }: { readonly of: PublishedAnswer }) {
  const { say, units } = useStair();
  const { sense, whose, confidence, sources } = figure;
  const own = shownIn(figure, asked, units, 'nearest');
  return (
    <li className="finding">
      <CarryTag answer={answer} />
      <div>
        <p className="finding-rule">{say(`carry.${sense}`, { value: printedFigure(figure, own, units) })}</p>
        <p className="finding-source">
          {whose} ({say(`carry.sure.${confidence}`)}). <small>{sources.join('; ')}</small>
        </p>
      </div>
    </li>
  );
}

function shownIn({ unit }: PublishedAnswer['figure'], value: number, units: UnitSystem, rounding: Rounding): string {
  return unit === 'count' ? String(value) : lengthText(value, units, rounding);
}
