/** The page: bar, drawing, form, results. Which stands where is a matter of the style sheets. */
import { lazy, memo, Suspense, useEffect, useMemo, useState } from 'react';
import { demoJob } from '../document/demoJob';
import { job as jobOf } from '../state/plannerStore';
import { ExplainDesk } from './explain/ExplainDesk';
import { createTypingDesk } from './fields/typing';
import { KeypadProvider } from './keypad/Keypad';
import { StairProvider } from './StairProvider';
import { TopBar } from './shell/TopBar';
import { useDropTarget } from './shell/useDropTarget';
import { useJobFile } from './shell/useJobFile';
import { useShortcuts } from './shell/useShortcuts';
import { planOf, type StairOnShow, unitsOf, useStair } from './stairOnShow';
import { useGoToPlace } from './steps/goToPlace';
import { StepNav } from './steps/StepNav';
import { StepPage } from './steps/StepPage';
import { StepSight } from './steps/StepSight';
import { useJobPack } from './useJobPack';
import { type Bench, BenchContext, usePlannerState } from './usePlanner';
import { useSpeaker } from './useSpeaker';
import './look/page.css';

const FaultSummary = lazy(() =>
  import('./fields/FaultSummary').then(({ FaultSummary }) => ({ default: FaultSummary })),
);
const RefusedFile = lazy(() => import('./shell/RefusedFile').then(({ RefusedFile }) => ({ default: RefusedFile })));
const OfflineNews = lazy(() => import('./shell/OfflineWords').then(({ OfflineNews }) => ({ default: OfflineNews })));
const WalkScreen = lazy(() => import('./walk/WalkScreen').then(({ WalkScreen }) => ({ default: WalkScreen })));

type AppProps = Omit<Bench, 'typing'>;

export function App({ planner, files }: AppProps) {
  const bench = useMemo(() => ({ planner, files, typing: createTypingDesk() }), [planner, files]);
  useEffect(() => planner.store.subscribe((state) => bench.typing.prune(jobOf(state))), [planner, bench]);
  return (
    <BenchContext value={bench}>
      <StairPage />
    </BenchContext>
  );
}

function StairPage() {
  const job = usePlannerState(jobOf);
  const index = usePlannerState((state) => state.stairIndex);
  const terms = usePlannerState((state) => state.terms);
  const theme = usePlannerState((state) => state.theme);
  const isPrinting = usePlannerState((state) => state.step === 'print');
  const say = useSpeaker(terms);
  const pack = useJobPack(job);
  // The same plan as long as nothing that it was made with has changed.
  const plan = planOf(job, index, pack);
  const stair = useMemo<StairOnShow>(() => ({ job, index, plan, units: unitsOf(job), say }), [job, index, say, plan]);
  useEffect(() => {
    document.documentElement.dataset['theme'] = theme;
  }, [theme]);
  useEffect(() => {
    document.title = `${job.name ?? say('app.noJobName')} · ${say('app.name')}`;
  }, [job.name, say]);
  return (
    <StairProvider value={stair} atOnce={isPrinting}>
      <Screens />
    </StairProvider>
  );
}

/** Drawn anew by those parts alone that a change concerns. */
const Screens = memo(function Screens() {
  const isWalking = usePlannerState((state) => state.walk !== null);
  const goTo = useGoToPlace();
  if (isWalking) {
    return (
      <Suspense fallback={null}>
        <WalkScreen />
      </Suspense>
    );
  }
  return (
    <KeypadProvider>
      <ExplainDesk goTo={goTo}>
        <Page />
      </ExplainDesk>
    </KeypadProvider>
  );
});

function Page() {
  const { say, job } = useStair();
  const step = usePlannerState((state) => state.step);
  const file = useJobFile();
  useShortcuts(file);
  const isOver = useDropTarget(file.openDropped);
  const [lit, setLit] = useState<string | null>(null);
  return (
    <div className="page">
      <a className="skip-link" href="#fields">
        {say('app.skip')}
      </a>
      <TopBar onOpen={() => void file.open()} onSave={() => void file.save()} onNew={file.startNew} />
      <StepNav />
      <div className="page-words" aria-live="polite">
        {file.notice !== null && <p className="notice">{say(file.notice.key, { name: file.notice.name })}</p>}
        <Suspense fallback={null}>
          <OfflineNews />
        </Suspense>
      </div>
      {file.refusal !== null && (
        <Suspense fallback={null}>
          <RefusedFile refusal={file.refusal} onClose={file.closeRefusal} />
        </Suspense>
      )}
      {job.name === demoJob.name && <aside className="example">{say('app.example')}</aside>}
      <Suspense fallback={null}>
        <FaultSummary />
      </Suspense>
      <main className="desk" data-step={step}>
        <div className="desk-form">
          <StepPage onFocusKey={setLit} />
        </div>
        <div className="desk-side">
          <StepSight lit={lit} />
        </div>
      </main>
      {isOver && <p className="drop-here">{say('app.dropHere')}</p>}
    </div>
  );
}
