/** Measure: one thing after the other, and what the whole job is called. */
import { lazy, Suspense } from 'react';
import { MeasureScreen } from '../measure/MeasureScreen';
import { useStair } from '../stairOnShow';

/** Far below what is measured first. */
const JobPart = lazy(() => import('../form/JobPart').then(({ JobPart }) => ({ default: JobPart })));

export function MeasureStep() {
  const { job, index } = useStair();
  return (
    <>
      {/* Another stair begins with what is missing of it, and not where the one before was left. */}
      <MeasureScreen key={job.stairs[index]?.id} />
      <Suspense fallback={null}>
        <JobPart />
      </Suspense>
    </>
  );
}
