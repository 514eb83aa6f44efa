/** Lay out: the board with its marks, the sums that a sign can spoil, and the three checks. */
import type { StairPlan } from '../../core/plan/planStair';
import { MarksTable } from '../results/MarkTables';
import { BoardSheet, CheckSheet, SquareSheet } from '../results/NumberSheets';
import { HeelSheet } from '../results/SumSheets';
import { ToesSheet } from '../results/ToesSheet';
import { useWords } from '../stairOnShow';
import { StartWalk } from '../walk/StartWalk';
import { FieldsOf } from './FieldsOf';

export function LayOutStep({ plan }: { readonly plan: StairPlan }) {
  const { say, units } = useWords();
  return (
    <>
      <p className="step-lead">{say('layout.lead')}</p>
      <StartWalk list="marks" />
      <p>{say('layout.method')}</p>
      {units === 'imperial' && <p className="heavy-note">{say('results.heavy')}</p>}
      <div className="sheets">
        <MarksTable plan={plan} />
        <HeelSheet plan={plan} />
        <ToesSheet plan={plan} />
        <CheckSheet plan={plan} />
        <SquareSheet plan={plan} />
        <BoardSheet plan={plan} />
      </div>
      <p className="caution">{say('layout.knots')}</p>
      <FieldsOf part="stringer" title={say('layout.choices')} />
    </>
  );
}
