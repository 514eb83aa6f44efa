/** For everything that breaks: the single changes that were proven to clear it. One touch takes one. */
import '../../text/lateFindings';
import type { KeyChange } from '../../core/choose/changeStair';
import type { Finding } from '../../core/codes/findings';
import type { StairPlan } from '../../core/plan/planStair';
import { actualWords, limitWords, ruleWords } from '../../text/findingText';
import { type Answer, AnswerTag } from '../findings/AnswerTag';
import { CureKeys } from '../findings/CureKeys';
import { judged } from '../findings/judged';
import { isTrouble } from '../findings/ofFinding';
import { useStair } from '../stairOnShow';

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

function Trouble({ finding, onTake }: { readonly finding: Finding } & Pick<CuresProps, 'onTake'>) {
  const { say } = useStair();
  const figures = [actualWords(say, finding), limitWords(say, finding)].filter((words) => words !== '');
  return (
    <div className="cure-group">
      <AnswerTag answer={finding.status satisfies Answer} />
      <h3>{ruleWords(say, finding.field)}</h3>
      <p>{figures.join(', ')}</p>
      <CureKeys finding={finding} onTake={onTake} />
    </div>
  );
}
