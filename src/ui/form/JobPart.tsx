/** What belongs to the whole job: names, units, and how fine to mark. */
import type { JobText } from '../../core/job/jobText';
import { type Choice, ChoiceField } from '../fields/ChoiceField';
import { placeInStair } from '../fields/jobPlaces';
import { WordsField } from '../fields/WordsField';
import { unitsOf, useStair, useWords } from '../stairOnShow';
import { MARK_STEPS, withFittingMarkStep } from './markSteps';

export function JobPart() {
  const { say, job, index } = useStair();
  return (
    <fieldset id="part-job">
      <legend>{say('part.job')}</legend>
      <div className="fields">
        <WordsField place="name" />
        <WordsField place={placeInStair(index, 'name')} />
        <WordsField place={placeInStair(index, 'id')} required />
        <UnitsField />
        <MarkStepField job={job} />
      </div>
    </fieldset>
  );
}

function UnitsField() {
  const { say } = useWords();
  return (
    <ChoiceField
      place="units"
      usual="imperial"
      choices={(['imperial', 'metric'] as const).map((value) => ({ value, words: say(`units.${value}`) }))}
      also={withFittingMarkStep}
    />
  );
}

function MarkStepField({ job }: { readonly job: JobText }) {
  const { say } = useWords();
  const steps = MARK_STEPS[unitsOf(job)];
  const other = job.markStep !== undefined && !steps.includes(job.markStep);
  const choices: Choice[] = steps.map((value) => ({ value, words: value }));
  if (other) choices.push({ value: job.markStep, words: say('choice.markStep.other', { step: job.markStep }) });
  return <ChoiceField place="markStep" usual={steps[0] as string} choices={choices} />;
}
