/** Everything that comes out of the stair, in the order in which it is needed on site. */
import type { StairPlan } from '../../core/plan/planStair';
import { sayProblem } from '../../text/say';
import { Board, Heel, Notch, TopEnd } from '../drawing/StairDrawings';
import { labelOf } from '../fields/fieldWords';
import { placeInStair } from '../fields/jobPlaces';
import { Findings } from '../findings/Findings';
import { useStair } from '../stairOnShow';
import { MarksTable, RipsTable, StoryPole } from './MarkTables';
import { BoardSheet, CheckSheet, FloorSheet, HeadSheet, SquareSheet, WidthSheet } from './NumberSheets';
import { HeelSheet, RiseSheet, TopSheet } from './SumSheets';

interface ResultsProps {
  readonly plan: StairPlan;
  readonly lit: string | null;
}

export function Results({ plan, lit }: ResultsProps) {
  const { say, units } = useStair();
  return (
    <div className="results-body">
      <section className="sheet" aria-labelledby="board-title">
        <h2 id="board-title">{say('drawing.board')}</h2>
        <Board plan={plan} lit={lit} />
      </section>
      {units === 'imperial' && <p className="heavy-note">{say('results.heavy')}</p>}
      <div className="sheets">
        <RiseSheet plan={plan} />
        <HeelSheet plan={plan} />
        <TopSheet plan={plan} />
        <MarksTable plan={plan} />
        <StoryPole plan={plan} />
        <div className="sheet-stack">
          <RipsTable plan={plan} />
          <CheckSheet plan={plan} />
          <FloorSheet plan={plan} />
          <SquareSheet plan={plan} />
        </div>
        <BoardSheet plan={plan} />
        <HeadSheet plan={plan} />
        <WidthSheet plan={plan} />
      </div>
      <Details plan={plan} lit={lit} />
      <Findings plan={plan} />
      <NotesAndDefaults plan={plan} />
      <p className="caution closing">{say('results.caution')}</p>
    </div>
  );
}

/** Places that are too small to read on the whole. */
function Details({ plan, lit }: ResultsProps) {
  const { say } = useStair();
  return (
    <div className="sheets details">
      <section className="sheet" aria-labelledby="heel-title">
        <h2 id="heel-title">{say('drawing.heel')}</h2>
        <Heel plan={plan} lit={lit} />
      </section>
      <section className="sheet" aria-labelledby="top-end-title">
        <h2 id="top-end-title">{say('drawing.topEnd')}</h2>
        <TopEnd plan={plan} lit={lit} />
      </section>
      <section className="sheet" aria-labelledby="notch-title">
        <h2 id="notch-title">{say('drawing.step')}</h2>
        <Notch plan={plan} lit={lit} />
      </section>
    </div>
  );
}

function NotesAndDefaults({ plan }: { readonly plan: StairPlan }) {
  const { say, units, index } = useStair();
  return (
    <div className="sheets">
      {plan.notes.length > 0 && (
        <section className="sheet" aria-labelledby="notes-title">
          <h2 id="notes-title">{say('notes.title')}</h2>
          <ul className="plain-list">
            {plan.notes.map((note) => (
              <li key={note.code}>{sayProblem(say, note, units)}</li>
            ))}
          </ul>
        </section>
      )}
      {plan.defaults.length > 0 && (
        <section className="sheet" aria-labelledby="laid-out-title">
          <h2 id="laid-out-title">{say('laidOut.title')}</h2>
          <p className="hint">{say('laidOut.lead')}</p>
          <dl className="rows">
            {plan.defaults.map(({ key, used }) => (
              <div className="row" key={key}>
                <dt>{labelOf(say, key.includes('.') && !key.startsWith('rules') ? placeInStair(index, key) : key)}</dt>
                <dd>{used}</dd>
              </div>
            ))}
          </dl>
        </section>
      )}
    </div>
  );
}
