/** What is in sight at every step: the drawing that the step is about, and the risers as they will be. */
import { lazy, memo, Suspense, useState } from 'react';
import type { StairPlan } from '../../core/plan/planStair';
import { Elevation } from '../drawing/StairDrawings';
import { BlankPicture, STAIR_FRAME } from '../measure/BlankPicture';
import { RiserStrip } from '../results/RiserStrip';
import { useStair, useStairNow } from '../stairOnShow';
import { usePlannerState } from '../usePlanner';
import { useSightHeight } from './useSightHeight';

const DraftBanner = lazy(() => import('../results/DraftBanner').then(({ DraftBanner }) => ({ default: DraftBanner })));
const StairGuess = lazy(() => import('../measure/TapePicture').then(({ StairGuess }) => ({ default: StairGuess })));
const late = () => import('../drawing/LateDrawings');
const Board = lazy(() => late().then(({ Board }) => ({ default: Board })));
const Notch = lazy(() => late().then(({ Notch }) => ({ default: Notch })));
const Heel = lazy(() => late().then(({ Heel }) => ({ default: Heel })));
const TopEnd = lazy(() => late().then(({ TopEnd }) => ({ default: TopEnd })));

interface LitProps {
  readonly lit: string | null;
}

export const StepSight = memo(function StepSight({ lit }: LitProps) {
  const { say, plan } = useStairNow();
  const step = usePlannerState((state) => state.step);
  const atBoard = step === 'lay-out' || step === 'cut';
  const shown = `${step} ${plan.ok}`;
  const [sheet, setSheet] = useState<HTMLElement | null>(null);
  return (
    <div className="desk-drawing">
      <Draft />
      <section className="sheet elevation" ref={setSheet} aria-labelledby="sight-title">
        <h2 id="sight-title">{say(atBoard ? 'drawing.board' : 'drawing.elevation')}</h2>
        {/* Each step begins its own drawings: none is hidden and brought back while another is fetched. */}
        <Suspense key={shown} fallback={plan.ok ? null : <BlankPicture kind="stair-guess" viewBox={STAIR_FRAME} />}>
          {plan.ok ? <Drawings plan={plan.value} lit={lit} sheet={sheet} /> : <StairGuess />}
        </Suspense>
      </section>
      <Risers />
    </div>
  );
});

/** These two follow the drawing in the next frame. */
function Draft() {
  const { plan } = useStair();
  if (!plan.ok || !plan.value.layout.draft) return null;
  return (
    <Suspense fallback={null}>
      <DraftBanner plan={plan.value} />
    </Suspense>
  );
}

function Risers() {
  const { plan } = useStair();
  return plan.ok && <RiserStrip plan={plan.value} />;
}

interface DrawingsProps extends LitProps {
  readonly plan: StairPlan;
  readonly sheet: HTMLElement | null;
}

function Drawings({ plan, lit, sheet }: DrawingsProps) {
  const step = usePlannerState((state) => state.step);
  const height = useSightHeight(sheet);
  if (step === 'lay-out') {
    return (
      <>
        <Board plan={plan} lit={lit} />
        <Notch plan={plan} lit={lit} />
        <Heel plan={plan} lit={lit} />
      </>
    );
  }
  if (step === 'cut') return <Board plan={plan} lit={lit} />;
  const elevation = <Elevation plan={plan} lit={lit} height={height} />;
  if (step !== 'set') return elevation;
  return (
    <>
      {elevation}
      <TopEnd plan={plan} lit={lit} />
      <Heel plan={plan} lit={lit} />
    </>
  );
}
