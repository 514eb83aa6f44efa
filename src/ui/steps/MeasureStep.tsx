/** Measure: one thing after the other, and what the whole job is called. */
import { JobPart } from '../form/JobPart';
import { MeasureScreen } from '../measure/MeasureScreen';

export function MeasureStep() {
  return (
    <>
      <MeasureScreen />
      <JobPart />
    </>
  );
}
