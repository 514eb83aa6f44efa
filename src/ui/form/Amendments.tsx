/** What some places are known to have changed in the rules in force. One touch takes one up, or out again. */
import { useEffect, useState } from 'react';
import type { Limit } from '../../core/codes/rulePack';
import type { LocalRuleText } from '../../core/job/jobText';
import type { Problem } from '../../core/result';
import { type Amendment, localRulesOf } from '../../packs/amendments';
import { DEFAULT_PACK, loadAmendments } from '../../packs/ruleBook';
import { figureText, ruleWords } from '../../text/findingText';
import { sentencesOf } from '../fields/fieldWords';
import { useStair } from '../stairOnShow';

export type ListChange = (present: readonly LocalRuleText[]) => readonly LocalRuleText[];

interface AmendmentsProps {
  readonly list: readonly LocalRuleText[];
  readonly limits: readonly Limit[];
  /** @returns why the job would not take it */
  readonly onBecome: (change: ListChange) => readonly Problem[];
}

export function Amendments({ list, limits, onBecome }: AmendmentsProps) {
  const { say, job } = useStair();
  const all = useAmendments();
  const pack = job.rules?.pack ?? DEFAULT_PACK;
  const known = all.filter(({ base }) => base === pack);
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  return (
    <details className="amendments">
      <summary>{say('amendment.title')}</summary>
      {known.length === 0 ? (
        <p className="hint">{say('amendment.none')}</p>
      ) : (
        <p className="caution">{say('amendment.lead')}</p>
      )}
      <div className="field-fault" aria-live="polite">
        {sentencesOf(say, problems, '', job).map((sentence) => (
          <p key={sentence}>
            <b>{say('fault.notUsed')}</b> {sentence}
          </p>
        ))}
      </div>
      <ul className="bare-list">
        {known.map((amendment) => (
          <Place
            key={amendment.id}
            amendment={amendment}
            list={list}
            limits={limits}
            onBecome={(change) => setProblems(onBecome(change))}
          />
        ))}
      </ul>
    </details>
  );
}

function useAmendments(): readonly Amendment[] {
  const [all, setAll] = useState<readonly Amendment[]>([]);
  useEffect(() => {
    let isWanted = true;
    loadAmendments().then(
      (found) => isWanted && setAll(found),
      () => undefined,
    );
    return () => {
      isWanted = false;
    };
  }, []);
  return all;
}

interface PlaceProps extends Omit<AmendmentsProps, 'onBecome'> {
  readonly amendment: Amendment;
  readonly onBecome: (change: ListChange) => void;
}

function Place({ amendment, list, limits, onBecome }: PlaceProps) {
  const { say } = useStair();
  const { jurisdiction, rows, sources } = amendment;
  const rules = localRulesOf(amendment, say('amendment.note', { jurisdiction }));
  const isIn = (rule: LocalRuleText) =>
    list.some(({ field, value, note }) => field === rule.field && value === rule.value && note === rule.note);
  const isTakenUp = rules.every(isIn);
  const isOf = ({ field }: LocalRuleText) => rules.some((rule) => rule.field === field);
  const takeOut: ListChange = (present) => present.filter((local) => !rules.some(isSame(local)));
  const takeUp: ListChange = (present) => [...present.filter((local) => !isOf(local)), ...rules];
  return (
    <li className="amendment">
      <h4>{jurisdiction}</h4>
      <ul className="bare-list">
        {rows.map(({ field, value, unit }) => (
          <li key={field}>
            {ruleWords(say, field)}: <b>{figureText(say, value, unit)}</b> <OfPack field={field} limits={limits} />
          </li>
        ))}
      </ul>
      <p className="finding-source">
        {say('confidence.copy')}. {say('amendment.source', { source: sources.join('; ') })}
      </p>
      <button type="button" onClick={() => onBecome(isTakenUp ? takeOut : takeUp)}>
        {say(isTakenUp ? 'amendment.takeOut' : 'amendment.takeUp', { jurisdiction })}
      </button>
      {isTakenUp && <span> {say('amendment.takenUp')}</span>}
    </li>
  );
}

const isSame =
  (local: LocalRuleText) =>
  ({ field, value, note }: LocalRuleText): boolean =>
    field === local.field && value === local.value && note === local.note;

/** The model figure beside the place's own. */
function OfPack({ field, limits }: { readonly field: string; readonly limits: readonly Limit[] }) {
  const { say } = useStair();
  const limit = limits.find((each) => each.field === field);
  const model = limit?.replaced ?? (limit?.confidence === 'local' ? undefined : limit);
  if (model === undefined || model.value === null) return null;
  return <small>{say('amendment.over', { value: figureText(say, model.value, model.unit) })}</small>;
}
