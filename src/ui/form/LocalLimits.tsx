/** Limits that the place of building puts where the pack has its own, beside what the pack says. */
import '../../text/lateFindings';
import { kindOf, knownFields } from '../../core/codes/fieldKinds';
import type { Limit, RuleUnit } from '../../core/codes/rulePack';
import type { LocalRuleText } from '../../core/job/jobText';
import type { Problem } from '../../core/result';
import { job as jobOf } from '../../state/plannerStore';
import { figureText, ruleWords } from '../../text/findingText';
import { sayProblem } from '../../text/say';
import { ChoiceField } from '../fields/ChoiceField';
import { FieldFrame } from '../fields/FieldFrame';
import { withValue } from '../fields/jobPlaces';
import { judgeCandidate } from '../fields/judgeTyping';
import { LengthInput } from '../fields/LengthField';
import { makeLength, makeWords, textOf, withoutUnit } from '../fields/makings';
import { useField } from '../fields/useField';
import { WordsField } from '../fields/WordsField';
import '../localReader';
import { unitsOf, useStair } from '../stairOnShow';
import { useBench } from '../usePlanner';
import { AddLimit, type OpenField } from './AddLimit';
import { Amendments, type ListChange } from './Amendments';
import { isLength, valueText } from './limitTexts';

export function LocalLimits() {
  const { planner, typing } = useBench();
  const { say, job, plan, units } = useStair();
  const list = job.rules?.local ?? [];
  const limits = plan.ok ? plan.value.rules.limits : [];
  const open = openFields(limits);
  const said = plan.ok ? plan.value.notes.filter(({ code }) => code.startsWith('note.local')) : [];

  /** One step of undo. What is on show may be a key behind: it is the present list that changes. */
  function become(change: ListChange): readonly Problem[] {
    const present = jobOf(planner.store.getState());
    const next = change(present.rules?.local ?? []);
    const candidate = withValue(present, 'rules.local', next.length === 0 ? undefined : next);
    const verdict = judgeCandidate(present, candidate, null);
    if (verdict.kind !== 'fits') return verdict.problems;
    typing.clearAll();
    planner.actions.edit(() => verdict.job, null);
    return [];
  }

  return (
    <section className="local-limits" aria-labelledby="local-limits-title">
      <h3 id="local-limits-title">{say('field.rules.local')}</h3>
      <p className="hint">{say('hint.rules.local')}</p>
      {list.length === 0 && <p className="hint">{say('local.none')}</p>}
      {list.map((local, index) => (
        // The list has no ids of its own, and every row reads its place in it.
        // biome-ignore lint/suspicious/noArrayIndexKey: the place is the identity
        <div className="local-limit" key={index}>
          <LimitFieldChoice index={index} local={local} fields={open} />
          <LimitValue index={index} unit={limits.find(({ field }) => field === local.field)?.unit} />
          <ModelFigure field={local.field} limits={limits} />
          <WordsField place={`rules.local[${index}].note`} />
          <button
            type="button"
            aria-label={say('local.remove', { number: index + 1 })}
            onClick={() => become((present) => present.filter((_, at) => at !== index))}
          >
            {say('local.removeShort')}
          </button>
        </div>
      ))}
      {said.map((note) => (
        <p className="caution" key={JSON.stringify(note)}>
          {sayProblem(say, note, units)}
        </p>
      ))}
      <AddLimit
        fields={open.filter(({ field }) => !list.some((local) => local.field === field))}
        count={list.length}
        onAdd={(limit) => become((present) => [...present, limit])}
      />
      <Amendments list={list} limits={limits} onBecome={become} />
    </section>
  );
}

/** What the rules have a figure for, and then what can be judged though they are silent about it. */
function openFields(limits: readonly Limit[]): readonly OpenField[] {
  const inForce = new Map(limits.filter(hasFigure).map((limit) => [limit.field, limit]));
  const silent = knownFields().filter((field) => !inForce.has(field));
  return [
    ...[...inForce].map(([field, limit]) => ({ field, limit, isLength: isLength(limit.unit) })),
    ...silent.map((field) => ({ field, limit: undefined, isLength: kindOf(field) === 'length' })),
  ];
}

/** Only what is a figure, or a yes or no, can be replaced by one. */
function hasFigure({ exact, unit }: Limit): boolean {
  return exact !== null || unit === 'bool';
}

/** What the pack says, beside what stands in its place. */
function ModelFigure({ field, limits }: { readonly field: string; readonly limits: readonly Limit[] }) {
  const { say } = useStair();
  const replaced = limits.find((limit) => limit.field === field)?.replaced;
  const words =
    replaced === undefined || replaced.value === null
      ? say('local.modelNone')
      : say('local.model', { value: figureText(say, replaced.value, replaced.unit), section: replaced.section });
  return <p className="hint local-model">{words}</p>;
}

interface LimitFieldChoiceProps {
  readonly index: number;
  readonly local: LocalRuleText;
  readonly fields: readonly OpenField[];
}

function LimitFieldChoice({ index, local, fields }: LimitFieldChoiceProps) {
  const { say } = useStair();
  const offered = fields.flatMap(({ field, limit }) => (limit === undefined ? [] : [field]));
  const choices = (offered.includes(local.field) ? offered : [local.field, ...offered]).map((value) => ({
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
        const chosen = fields.find(({ field }) => field === job.rules?.local?.[index]?.field)?.limit;
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
