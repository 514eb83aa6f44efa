/** What belongs to the whole job: names, units, how fine to mark, and which rules it is checked by. */
import type { JobText } from '../../core/job/jobText';
import { allPacks, DEFAULT_PACK } from '../../packs/ruleBook';
import { type Choice, ChoiceField } from '../fields/ChoiceField';
import { placeInStair } from '../fields/jobPlaces';
import { WordsField } from '../fields/WordsField';
import { unitsOf, useStair } from '../stairOnShow';
import { LocalLimits } from './LocalLimits';
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
        <RulesFields job={job} />
      </div>
      <LocalLimits />
    </fieldset>
  );
}

function UnitsField() {
  const { say } = useStair();
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
  const { say } = useStair();
  const steps = MARK_STEPS[unitsOf(job)];
  const other = job.markStep !== undefined && !steps.includes(job.markStep);
  const choices: Choice[] = steps.map((value) => ({ value, words: value }));
  if (other) choices.push({ value: job.markStep, words: say('choice.markStep.other', { step: job.markStep }) });
  return <ChoiceField place="markStep" usual={steps[0] as string} choices={choices} />;
}

function RulesFields({ job }: { readonly job: JobText }) {
  const { say, plan } = useStair();
  const asked = job.rules?.pack ?? DEFAULT_PACK;
  const choices: Choice[] = allPacks().map(({ id, title, edition }) => ({ value: id, words: `${title}, ${edition}` }));
  if (!choices.some(({ value }) => value === asked)) {
    choices.push({ value: asked, words: say('choice.rules.pack.other', { pack: asked }) });
  }
  const profiles = allPacks().find(({ id }) => id === asked)?.profiles ?? [];
  const inForce = plan.ok ? plan.value.rules.profile : null;
  return (
    <>
      <ChoiceField place="rules.pack" usual={DEFAULT_PACK} choices={choices} />
      {profiles.length > 0 && (
        <ChoiceField
          place="rules.profile"
          usual={inForce ?? (profiles[0] as string)}
          choices={profiles.map((value) => ({ value, words: value }))}
        />
      )}
    </>
  );
}
