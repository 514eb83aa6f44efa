/** One part of the form, at the step where its choices are made. */
import { FORM_PARTS, type FormPart } from '../form/formParts';
import { isAsked, StairField } from '../form/StairField';
import { useStair } from '../stairOnShow';

interface FieldsOfProps {
  readonly part: FormPart['name'];
  readonly title: string;
}

export function FieldsOf({ part, title }: FieldsOfProps) {
  const { job, index } = useStair();
  const fields = FORM_PARTS.find(({ name }) => name === part)?.fields ?? [];
  const stair = job.stairs[index];
  return (
    <fieldset id={`part-${part}`}>
      <legend>{title}</legend>
      <div className="fields">
        {fields
          .filter(([key]) => isAsked(stair, key))
          .map(([key, kind]) => (
            <StairField key={`${index} ${key}`} fieldKey={key} kind={kind} />
          ))}
      </div>
    </fieldset>
  );
}
