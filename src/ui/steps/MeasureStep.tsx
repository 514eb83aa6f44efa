/** Measure: what the tape says, the opening, the width, and what the whole job is called. */
import { JobPart } from '../form/JobPart';
import { useStair } from '../stairOnShow';
import { FieldsOf } from './FieldsOf';

export function MeasureStep() {
  const { say } = useStair();
  return (
    <>
      <FieldsOf part="tape" title={say('part.tape')} />
      <FieldsOf part="opening" title={say('part.opening')} />
      <FieldsOf part="width" title={say('part.width')} />
      <JobPart />
    </>
  );
}
