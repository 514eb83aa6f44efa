/** Measure: one thing after the other, and what the whole job is called. */
import { JobPart } from '../form/JobPart';
import { MeasureScreen } from '../measure/MeasureScreen';
import { useStair } from '../stairOnShow';

export function MeasureStep() {
  const { job, index } = useStair();
  return (
    <>
      {/* Another stair begins with what is missing of it, and not where the one before was left. */}
      <MeasureScreen key={job.stairs[index]?.id} />
      <JobPart />
    </>
  );
}
