/** For everything that breaks: the single changes that were proven to clear it. One touch takes one. */
import { useMemo } from 'react';
import type { KeyChange } from '../../core/choose/changeStair';
import { type Cure, cureFor } from '../../core/choose/cureFor';
import type { Finding } from '../../core/codes/findings';
import { figureOf } from '../../core/drawing/figures';
import type { StairPlan } from '../../core/plan/planStair';
import type { UnitSystem } from '../../core/units/length';
import type { Speaker } from '../../text/say';
import { type Answer, AnswerTag } from '../findings/AnswerTag';
import { actualWords, limitWords, ruleWords } from '../findings/findingWords';
import { judged } from '../findings/judged';
import { plainFigure } from '../numbers/figures';
import { BOOK, TAPE_DOUBT, useStair } from '../stairOnShow';

interface CuresProps {
  readonly plan: StairPlan;
  readonly onTake: (changes: readonly KeyChange[]) => void;
}

export function Cures({ plan, onTake }: CuresProps) {
  const { say } = useStair();
  const findings = judged(plan).findings.filter(isTrouble);
  return (
    <section className="sheet choose-cures" aria-labelledby="choose-cures-title">
      <h2 id="choose-cures-title">{say('choose.cures')}</h2>
      {findings.length === 0 ? (
        <p>{say('choose.cures.nothing')}</p>
      ) : (
        <p className="hint">{say('choose.cures.lead')}</p>
      )}
      {findings.map((finding, index) => (
        // One field can stand on several rows of a pack.
        // biome-ignore lint/suspicious/noArrayIndexKey: rows of a pack have no other identity
        <Trouble key={`${finding.field} ${index}`} finding={finding} onTake={onTake} />
      ))}
    </section>
  );
}

/** A matter of taste needs no cure. */
function isTrouble({ kind, status }: Finding): boolean {
  return kind !== 'taste' && (status === 'breaks' || status === 'close');
}

function Trouble({ finding, onTake }: { readonly finding: Finding } & Pick<CuresProps, 'onTake'>) {
  const { say, job, index, units } = useStair();
  const cures = useMemo(() => cureFor(job, index, finding, BOOK, TAPE_DOUBT), [job, index, finding]);
  const figures = [actualWords(say, finding), limitWords(say, finding)].filter((words) => words !== '');
  return (
    <div className="cure-group">
      <AnswerTag answer={finding.status satisfies Answer} />
      <h3>{ruleWords(say, finding.field)}</h3>
      <p>{figures.join(', ')}</p>
      {cures.length === 0 ? <p>{say('choose.cures.none')}</p> : <p className="hint">{say('choose.cure.would')}</p>}
      <ul>
        {cures.map((cure) => (
          <li key={cure.changes.map(({ key, value }) => `${key} ${value}`).join()}>
            <button type="button" onClick={() => onTake(cure.changes)}>
              <b>{cureWords(say, cure, units)}</b>
              {cure.changes[0].key === 'survey.openingFraming' && <small>{say('choose.cure.house')}</small>}
              {cure.stillBroken.length > 0 && (
                <small>
                  {say('choose.cure.still', {
                    rules: cure.stillBroken.map((field) => ruleWords(say, field)).join('; '),
                  })}
                </small>
              )}
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}

function cureWords(say: Speaker, { changes: [{ key, value }], figures }: Cure, units: UnitSystem): string {
  const unit = units === 'metric' ? 'mm' : 'in';
  const shown = key === 'steps.run' ? `${plainFigure(figureOf(figures.run, units))} ${unit}` : value;
  return say(`choose.cure.${key}`, { value: shown });
}
