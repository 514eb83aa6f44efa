/** Print: the working sheets as the browser prints them. Files and true-size templates are made beside them. */
import { lazy, Suspense, useState } from 'react';
import type { StairPlan } from '../../core/plan/planStair';
import { Board, Heel, TopEnd } from '../drawing/LateDrawings';
import { Elevation } from '../drawing/StairDrawings';
import { AuditPage } from '../explain/AuditPage';
import { DeskContext } from '../explain/desk';
import { Findings } from '../findings/Findings';
import { FilesPart } from '../print/FilesPart';
import { MarksTable, RipsTable, StoryPole } from '../results/MarkTables';
import { BoardSheet, CheckSheet, FloorSheet, HeadSheet, SquareSheet, WidthSheet } from '../results/NumberSheets';
import { RiserStrip } from '../results/RiserStrip';
import { HeelSheet, RiseSheet, TopSheet } from '../results/SumSheets';
import { useStair, useWords } from '../stairOnShow';
import { useGoToPlace } from './goToPlace';

const CarryPart = lazy(() => import('../carry/CarryPart').then(({ CarryPart }) => ({ default: CarryPart })));

export function PrintStep({ plan }: { readonly plan: StairPlan }) {
  const { say, units } = useWords();
  return (
    <>
      <div className="print-ways">
        <p className="step-lead">{say('print.lead')}</p>
        <button type="button" className="main-button" onClick={() => window.print()}>
          {say('print.now')}
        </button>
      </div>
      <FilesPart />
      {/* On a page that is to be printed a number is a number: nobody can ask it. */}
      <DeskContext value={null}>
        <div className="print-pages">
          <PrintHead plan={plan} />
          <section className="sheet print-page" aria-label={say('drawing.elevation')}>
            <Elevation plan={plan} lit={null} isStill />
            <RiserStrip plan={plan} />
          </section>
          <section className="sheet print-page" aria-label={say('drawing.board')}>
            <Board plan={plan} lit={null} isStill />
            {units === 'imperial' && <p className="heavy-note">{say('results.heavy')}</p>}
          </section>
          <div className="sheets print-page">
            <MarksTable plan={plan} />
            <StoryPole plan={plan} />
            <HeelSheet plan={plan} />
            <TopSheet plan={plan} />
            <RipsTable plan={plan} />
            <CheckSheet plan={plan} />
            <SquareSheet plan={plan} />
            <FloorSheet plan={plan} />
            <BoardSheet plan={plan} />
            <HeadSheet plan={plan} />
            <WidthSheet plan={plan} />
            <RiseSheet plan={plan} />
          </div>
          <div className="sheets details print-page">
            <section className="sheet">
              <Heel plan={plan} lit={null} isStill />
            </section>
            <section className="sheet">
              <TopEnd plan={plan} lit={null} isStill />
            </section>
          </div>
          <Findings plan={plan} />
          <Suspense fallback={null}>
            <CarryPart plan={plan} isStill />
          </Suspense>
          <p className="caution closing">{say('results.caution')}</p>
          <Audit plan={plan} />
        </div>
      </DeskContext>
    </>
  );
}

function PrintHead({ plan }: { readonly plan: StairPlan }) {
  const { say, job } = useStair();
  return (
    <p className="print-head">
      {say('print.head', { job: job.name ?? say('app.noJobName'), stair: plan.layout.job.name })}
    </p>
  );
}

/** Some eighty sums: written out only for who opens them. */
function Audit({ plan }: { readonly plan: StairPlan }) {
  const { say } = useWords();
  const goTo = useGoToPlace();
  const [isOpen, setOpen] = useState(false);
  return (
    <details className="sheet" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{say('print.audit')}</summary>
      {isOpen && <AuditPage plan={plan} goTo={goTo} />}
    </details>
  );
}
