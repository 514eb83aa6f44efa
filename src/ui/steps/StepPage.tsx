/** The step in hand. Each is fetched when it is first needed; all work on the same job. */
import { lazy, Suspense } from 'react';
import { useStair, useWords } from '../stairOnShow';
import { usePlannerState } from '../usePlanner';
import { MeasureStep } from './MeasureStep';
import { NotLaidOut } from './NotLaidOut';
import { StepForm } from './StepForm';
import { StepWays } from './StepNav';

const ChooseStep = lazy(() => import('./ChooseStep').then(({ ChooseStep }) => ({ default: ChooseStep })));
const LayOutStep = lazy(() => import('./LayOutStep').then(({ LayOutStep }) => ({ default: LayOutStep })));
const CutStep = lazy(() => import('./CutStep').then(({ CutStep }) => ({ default: CutStep })));
const SetStep = lazy(() => import('./SetStep').then(({ SetStep }) => ({ default: SetStep })));
const CheckStep = lazy(() => import('./CheckStep').then(({ CheckStep }) => ({ default: CheckStep })));
const PrintStep = lazy(() => import('./PrintStep').then(({ PrintStep }) => ({ default: PrintStep })));

interface StepPageProps {
  readonly onFocusKey: (key: string | null) => void;
}

export function StepPage({ onFocusKey }: StepPageProps) {
  const { say } = useWords();
  const step = usePlannerState((state) => state.step);
  return (
    <StepForm onFocusKey={onFocusKey}>
      <h2 className="step-title" id="step">
        {say(`step.${step}`)}
      </h2>
      <Suspense key={step} fallback={<p className="step-lead">{say('steps.coming')}</p>}>
        <StepContent />
      </Suspense>
      <StepWays />
    </StepForm>
  );
}

function StepContent() {
  const step = usePlannerState((state) => state.step);
  const { plan } = useStair();
  if (step === 'measure') return <MeasureStep />;
  if (!plan.ok) return <NotLaidOut />;
  switch (step) {
    case 'choose':
      return <ChooseStep plan={plan.value} />;
    case 'lay-out':
      return <LayOutStep plan={plan.value} />;
    case 'cut':
      return <CutStep plan={plan.value} />;
    case 'set':
      return <SetStep plan={plan.value} />;
    case 'check':
      return <CheckStep plan={plan.value} />;
    case 'print':
      return <PrintStep plan={plan.value} />;
  }
}
