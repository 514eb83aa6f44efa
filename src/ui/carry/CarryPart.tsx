/** What the stringer can carry: what it is told, what comes out, whose figures, and the working. */
import { useEffect, useState } from 'react';
import type { LumberBook } from '../../core/carry/lumber';
import { type Carry, screenCarry } from '../../core/carry/screenCarry';
import type { StairPlan } from '../../core/plan/planStair';
import { loadLumber } from '../../packs/lumber/lumber';
import '../../text/lateCarry';
import '../../text/lateFindings';
import { toldRows } from '../../text/carryText';
import { Rows, WordsRow } from '../results/Sheet';
import { useStair } from '../stairOnShow';
import { CarryAnswers } from './CarryAnswers';
import { CarryFields } from './CarryFields';
import { CarryWorking } from './CarryWorking';
import { Published } from './Published';
import './carry.css';

interface CarryPartProps {
  readonly plan: StairPlan;
  /** As on paper: answers and figures, and no fields. */
  readonly isStill?: boolean;
}

export function CarryPart({ plan, isStill = false }: CarryPartProps) {
  const { say } = useStair();
  const { book, again } = useLumber();
  return (
    <section className="sheet carry" aria-labelledby="carry-title">
      <h2 id="carry-title">{say('carry.title')}</h2>
      <p className="caution">{say('carry.lead')}</p>
      {book === null && <p>{say('carry.coming')}</p>}
      {book === 'failed' && (
        <p>
          {say('carry.failed')}{' '}
          <button type="button" onClick={again}>
            {say('carry.retry')}
          </button>
        </p>
      )}
      {book !== null && book !== 'failed' && <Screened plan={plan} book={book} isStill={isStill} />}
    </section>
  );
}

function Screened({ plan, book, isStill }: Required<CarryPartProps> & { readonly book: LumberBook }) {
  const { say } = useStair();
  const carry = screenCarry(plan, book);
  return (
    <>
      {isStill ? <Told plan={plan} carry={carry} /> : <CarryFields book={book} carry={carry} />}
      <CarryAnswers plan={plan} carry={carry} isStill={isStill} />
      <Published carry={carry} />
      {!isStill && <CarryWorking carry={carry} />}
      <h3>{say('carry.notLooked')}</h3>
      <ul className="plain-list">
        {([1, 2, 3, 4] as const).map((each) => (
          <li key={each}>{say(`carry.not.${each}`)}</li>
        ))}
      </ul>
    </>
  );
}

function Told({ plan, carry }: { readonly plan: StairPlan; readonly carry: Carry }) {
  const { say } = useStair();
  return (
    <Rows>
      {toldRows(say, plan, carry).map(([name, text]) => (
        <WordsRow key={name} words={name}>
          {text}
        </WordsRow>
      ))}
    </Rows>
  );
}

/** Null while it comes. */
function useLumber() {
  const [book, setBook] = useState<LumberBook | 'failed' | null>(null);
  useEffect(() => {
    if (book !== null) return;
    let isHere = true;
    loadLumber().then(
      (loaded) => isHere && setBook(loaded),
      () => isHere && setBook('failed'),
    );
    return () => {
      isHere = false;
    };
  }, [book]);
  return { book, again: () => setBook(null) };
}
