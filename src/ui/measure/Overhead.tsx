/** Beams, ducts and sloping ceilings over the flight: a few lengths each, and what is left under them. */
import '../../text/lateFindings';
import type { ObstacleText } from '../../core/job/jobText';
import type { UnitSystem } from '../../core/units/length';
import { job as jobOf } from '../../state/plannerStore';
import { actualWords, limitWords, ruleWords } from '../../text/findingText';
import { placeInStair, withValue } from '../fields/jobPlaces';
import { judgeCandidate } from '../fields/judgeTyping';
import { LengthField } from '../fields/LengthField';
import { WordsField } from '../fields/WordsField';
import { AnswerTag } from '../findings/AnswerTag';
import { judged } from '../findings/judged';
import { useStair } from '../stairOnShow';
import { useBench } from '../usePlanner';

/** Where a new one begins, to be typed over: over the middle of most flights, and out of the way. */
const FIRST: Readonly<Record<UnitSystem, ObstacleText>> = {
  imperial: { near: '60 in', far: '66 in', height: '150 in' },
  metric: { near: '1500 mm', far: '1650 mm', height: '3800 mm' },
};

export function Overhead() {
  const { planner, typing } = useBench();
  const { say, job, index, units } = useStair();
  const list = job.stairs[index]?.survey.obstacles ?? [];

  /** What is on show may be a key behind: it is the present list that changes. */
  function become(change: (present: readonly ObstacleText[]) => readonly ObstacleText[]): void {
    const present = jobOf(planner.store.getState());
    const next = change(present.stairs[index]?.survey.obstacles ?? []);
    const place = placeInStair(index, 'survey.obstacles');
    const verdict = judgeCandidate(present, withValue(present, place, next.length === 0 ? undefined : next), null);
    if (verdict.kind !== 'fits') return;
    typing.clearAll();
    planner.actions.edit(() => verdict.job, null);
  }

  return (
    <div className="overhead">
      {list.length === 0 && <p className="hint">{say('overhead.none')}</p>}
      {list.map((_, at) => (
        // Findings and sheets count them, so the place is what one is known by.
        // biome-ignore lint/suspicious/noArrayIndexKey: the place is the identity
        <fieldset key={at} className="overhead-one">
          <legend>{say('overhead.title', { number: at + 1 })}</legend>
          <OverheadFields at={at} />
          <LeftUnder at={at} />
          <button
            type="button"
            aria-label={say('overhead.remove', { number: at + 1 })}
            onClick={() => become((present) => present.filter((__, each) => each !== at))}
          >
            {say('overhead.removeShort')}
          </button>
        </fieldset>
      ))}
      <button type="button" onClick={() => become((present) => [...present, FIRST[units]])}>
        {say('overhead.add')}
      </button>
    </div>
  );
}

function OverheadFields({ at }: { readonly at: number }) {
  const { index } = useStair();
  const place = (name: string) => placeInStair(index, `survey.obstacles[${at}].${name}`);
  return (
    <div className="fields">
      <WordsField place={place('name')} />
      <LengthField place={place('near')} required feet />
      <LengthField place={place('far')} required feet />
      <LengthField place={place('height')} required feet />
      <LengthField place={place('heightFar')} feet />
      <LengthField place={place('clearance')} />
    </div>
  );
}

function LeftUnder({ at }: { readonly at: number }) {
  const { say, plan } = useStair();
  if (!plan.ok) return null;
  const finding = judged(plan.value).findings.find(({ field }) => field === `obstacle.${at + 1}`);
  if (finding === undefined) return null;
  return (
    <p className="overhead-left">
      <AnswerTag answer={finding.status} /> {ruleWords(say, finding.field)}: {actualWords(say, finding)}
      {finding.limit !== null && `, ${limitWords(say, finding)}`}
    </p>
  );
}
