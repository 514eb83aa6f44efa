/** Limits that the place of building puts where the pack has its own. Each starts from the pack's figure. */

import type { Limit, RuleUnit } from '../../core/codes/rulePack';
import type { LocalRuleText } from '../../core/job/jobText';
import { ChoiceField } from '../fields/ChoiceField';
import { FieldFrame } from '../fields/FieldFrame';
import { withValue } from '../fields/jobPlaces';
import { judgeCandidate } from '../fields/judgeTyping';
import { LengthInput } from '../fields/LengthField';
import { makeLength, makeWords, textOf, withoutUnit } from '../fields/makings';
import { useField } from '../fields/useField';
import { WordsField } from '../fields/WordsField';
import { ruleWords } from '../findings/findingWords';
import { unitsOf, useStair } from '../stairOnShow';
import { useBench } from '../usePlanner';

export function LocalLimits() {
  const { planner, typing } = useBench();
  const { say, job, plan } = useStair();
  const list = job.rules?.local ?? [];
  const open = numbered(plan.ok ? plan.value.rules.limits : []);

  function become(next: readonly LocalRuleText[]): void {
    const candidate = withValue(job, 'rules.local', next.length === 0 ? undefined : next);
    const verdict = judgeCandidate(job, candidate, null);
    if (verdict.kind !== 'fits') return;
    typing.clearAll();
    planner.actions.edit(() => verdict.job, null);
  }

  const next = open.find(({ field }) => !list.some((local) => local.field === field));
  return (
    <section className="local-limits" aria-labelledby="local-limits-title">
      <h3 id="local-limits-title">{say('field.rules.local')}</h3>
      <p className="hint">{say('hint.rules.local')}</p>
      {list.length === 0 && <p className="hint">{say('local.none')}</p>}
      {list.map((local, index) => (
        // The list has no ids of its own, and every row reads its place in it.
        // biome-ignore lint/suspicious/noArrayIndexKey: the place is the identity
        <div className="local-limit" key={index}>
          <LimitFieldChoice index={index} local={local} limits={open} />
          <LimitValue index={index} unit={open.find(({ field }) => field === local.field)?.unit} />
          <WordsField place={`rules.local[${index}].note`} />
          <button
            type="button"
            aria-label={say('local.remove', { number: index + 1 })}
            onClick={() => become(list.filter((_, at) => at !== index))}
          >
            {say('local.removeShort')}
          </button>
        </div>
      ))}
      {next !== undefined && (
        <button type="button" onClick={() => become([...list, { field: next.field, value: valueText(next) }])}>
          {say('local.add')}
        </button>
      )}
    </section>
  );
}

/** Only what is a figure can be replaced by a figure. */
function numbered(limits: readonly Limit[]): Limit[] {
  return limits.filter(({ exact }) => exact !== null);
}

function valueText({ value, unit }: Limit): string {
  return isLength(unit) ? `${String(value)} ${unit}` : String(value);
}

function isLength(unit: RuleUnit | undefined): boolean {
  return unit === 'in' || unit === 'mm';
}

interface LimitFieldChoiceProps {
  readonly index: number;
  readonly local: LocalRuleText;
  readonly limits: readonly Limit[];
}

function LimitFieldChoice({ index, local, limits }: LimitFieldChoiceProps) {
  const { say } = useStair();
  const fields = limits.map(({ field }) => field);
  const choices = (fields.includes(local.field) ? fields : [local.field, ...fields]).map((value) => ({
    value,
    words: ruleWords(say, value),
  }));
  const place = `rules.local[${index}].field`;
  return (
    <ChoiceField
      place={place}
      usual={local.field}
      choices={choices}
      also={(job) => {
        const chosen = limits.find(({ field }) => field === job.rules?.local?.[index]?.field);
        return chosen === undefined ? job : withValue(job, `rules.local[${index}].value`, valueText(chosen));
      }}
    />
  );
}

function LimitValue({ index, unit }: { readonly index: number; readonly unit: RuleUnit | undefined }) {
  const { units } = useStair();
  const length = isLength(unit);
  const field = useField({
    place: `rules.local[${index}].value`,
    show: (value) => ({ text: length ? withoutUnit(textOf(value), units, false) : textOf(value) }),
    make: ({ text }, job) => (length ? makeLength(text, unitsOf(job), false, false) : makeWords(text, false)),
  });
  return (
    <FieldFrame place={`rules.local[${index}].value`} field={field}>
      {(described) =>
        length ? (
          <LengthInput
            {...described}
            text={field.typed.text}
            onText={(text) => field.change({ text })}
            onLeave={field.leave}
          />
        ) : (
          <input
            {...described}
            type="text"
            inputMode="decimal"
            autoComplete="off"
            value={field.typed.text}
            onChange={(event) => field.change({ text: event.currentTarget.value })}
            onBlur={field.leave}
          />
        )
      }
    </FieldFrame>
  );
}
