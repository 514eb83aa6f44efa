/** A limit of the place, put together before it counts: what, how much, who says so. A sentence says why it cannot be taken. */
import { useState } from 'react';
import type { Limit } from '../../core/codes/rulePack';
import type { LocalRuleText } from '../../core/job/jobText';
import type { Problem } from '../../core/result';
import { withUnit } from '../../core/units/length';
import { figureText, ruleWords } from '../../text/findingText';
import { sentencesOf } from '../fields/fieldWords';
import { useStair } from '../stairOnShow';
import { isLength, valueText } from './limitTexts';

export interface OpenField {
  readonly field: string;
  /** What the rules in force say of it; undefined where they are silent. */
  readonly limit: Limit | undefined;
  /** A bare number is a length in the job's unit. */
  readonly isLength: boolean;
}

interface AddLimitProps {
  readonly fields: readonly OpenField[];
  readonly count: number;
  /** @returns why the job would not take it; empty when it has */
  readonly onAdd: (limit: LocalRuleText) => readonly Problem[];
}

export function AddLimit({ fields, count, onAdd }: AddLimitProps) {
  const { say, job, units } = useStair();
  const [chosen, setChosen] = useState<string | null>(null);
  const [value, setValue] = useState<string | null>(null);
  const [note, setNote] = useState('');
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const open = fields.find(({ field }) => field === chosen) ?? fields[0];
  if (open === undefined) return null;
  const { field, limit } = open;
  const written = value ?? (limit === undefined ? '' : valueText(limit));

  function add(): void {
    const completed = isLength(limit?.unit) || open?.isLength ? withUnit(written, units, false) : null;
    const text = completed?.ok ? completed.text : written;
    const found = onAdd({ field, value: text, ...(note.trim() === '' ? {} : { note: note.trim() }) });
    setProblems(found);
    if (found.length > 0) return;
    setChosen(null);
    setValue(null);
    setNote('');
  }

  const place = `rules.local[${count}].value`;
  return (
    <div className="add-limit">
      <label className="add-limit-part">
        {say('local.new.field')}
        <select
          className="add-limit-part box"
          value={field}
          onChange={(event) => {
            setChosen(event.currentTarget.value);
            setValue(null);
            setProblems([]);
          }}
        >
          {fields.map((each) => (
            <option key={each.field} value={each.field}>
              {ruleWords(say, each.field)}
            </option>
          ))}
        </select>
      </label>
      <label className="add-limit-part">
        {say('local.new.value')}
        <input
          className="add-limit-part box"
          type="text"
          autoComplete="off"
          value={written}
          aria-invalid={problems.length > 0}
          aria-describedby="add-limit-model add-limit-fault"
          onChange={(event) => setValue(event.currentTarget.value)}
        />
      </label>
      <label className="add-limit-part">
        {say('local.new.note')}
        <input
          className="add-limit-part box"
          type="text"
          autoComplete="off"
          value={note}
          placeholder={say('local.new.example')}
          onChange={(event) => setNote(event.currentTarget.value)}
        />
      </label>
      <p className="hint" id="add-limit-model">
        {limit === undefined || limit.value === null
          ? say('local.modelNone')
          : say('local.model', { value: figureText(say, limit.value, limit.unit), section: limit.section })}
      </p>
      <div className="field-fault" id="add-limit-fault" aria-live="polite">
        {sentencesOf(say, problems, place, job).map((sentence) => (
          <p key={sentence}>
            <b>{say('fault.notUsed')}</b> {sentence}
          </p>
        ))}
      </div>
      <button type="button" onClick={add}>
        {say('local.add')}
      </button>
    </div>
  );
}
