/** Which rules the job is checked by, and what the place where it is built asks for instead. */
import '../../text/lateFindings';
import { LocalLimits } from '../form/LocalLimits';
import { PackField, ProfileField } from '../form/PackField';
import { useStair } from '../stairOnShow';

export function RulesPart() {
  const { say } = useStair();
  return (
    <fieldset id="part-rules">
      <legend>{say('part.rules')}</legend>
      <div className="fields">
        <PackField />
        <ProfileField />
      </div>
      <LocalLimits />
    </fieldset>
  );
}
