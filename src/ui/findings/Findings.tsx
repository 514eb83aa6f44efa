/** Every rule with its answer, worst first; advice of the trade apart from the law. */
import { type Finding, sortByDanger } from '../../core/codes/findings';
import type { RulePack } from '../../core/codes/rulePack';
import type { StairPlan } from '../../core/plan/planStair';
import '../../text/lateFindings';
import { labelOf } from '../fields/fieldWords';
import { placeInStair } from '../fields/jobPlaces';
import { useStair } from '../stairOnShow';
import { type Answer, AnswerTag } from './AnswerTag';
import { actualWords, limitWords, ruleWords, sourceWords } from './findingWords';
import { judged } from './judged';

export function Findings({ plan }: { readonly plan: StairPlan }) {
  const { say } = useStair();
  const { findings, rules } = judged(plan);
  const inOrder = sortByDanger(findings);
  const taste = inOrder.filter(({ kind }) => kind === 'taste');
  const checked = inOrder.filter(({ kind }) => kind !== 'taste');
  const withStatus = (status: Finding['status']) => checked.filter((finding) => finding.status === status);
  const breaks = withStatus('breaks');
  const close = withStatus('close');
  const unchecked = withStatus('not-checked');
  const meets = withStatus('meets');
  return (
    <section className="sheet findings" aria-labelledby="findings-title">
      <h2 id="findings-title">{say('findings.title')}</h2>
      <p className="hint">
        {rules.pack === null
          ? say('findings.noPack', { pack: rules.packId })
          : say('findings.by', { pack: nameOf(rules) })}
      </p>
      {rules.pack !== null && hasMemory(rules.pack) && <p className="caution">{say('pack.memory')}</p>}
      <p>{say('findings.count', { breaks: breaks.length, meets: meets.length, unchecked: unchecked.length })}</p>
      <Group title={say('findings.breaks')} findings={breaks} />
      <Group title={say('findings.close')} findings={close} />
      {unchecked.length > 0 && (
        <details>
          <summary>{say('findings.notChecked', { count: unchecked.length })}</summary>
          <p className="hint">{say('findings.notCheckedLead')}</p>
          <List findings={unchecked} />
        </details>
      )}
      <Group title={say('findings.meets')} findings={meets} />
      {taste.length > 0 && (
        <div className="taste">
          <h3>{say('findings.taste')}</h3>
          <p className="hint">{say('findings.tasteLead')}</p>
          <List findings={taste} />
        </div>
      )}
    </section>
  );
}

function Group({ title, findings }: { readonly title: string; readonly findings: readonly Finding[] }) {
  if (findings.length === 0) return null;
  return (
    <>
      <h3>{title}</h3>
      <List findings={findings} />
    </>
  );
}

function List({ findings }: { readonly findings: readonly Finding[] }) {
  return (
    <ul className="finding-list">
      {findings.map((finding, index) => (
        // One field can stand on several rows of a pack.
        // biome-ignore lint/suspicious/noArrayIndexKey: rows of a pack have no other identity
        <Row key={`${finding.field} ${index}`} finding={finding} />
      ))}
    </ul>
  );
}

function Row({ finding }: { readonly finding: Finding }) {
  const { say, plan, index } = useStair();
  const figures = [actualWords(say, finding), limitWords(say, finding)].filter((words) => words !== '');
  return (
    <li className={`finding finding-${finding.status}`}>
      <AnswerTag answer={answerOf(finding)} />
      <div>
        <p className="finding-rule">{ruleWords(say, finding.field)}</p>
        {figures.length > 0 && <p className="finding-figures">{figures.join(', ')}</p>}
        {finding.readAgain.length > 0 && finding.status === 'close' && (
          <p className="finding-again">
            {say('finding.readAgain', {
              places: finding.readAgain.map((key) => labelOf(say, placeInStair(index, key))).join(', '),
            })}
          </p>
        )}
        <p className="finding-source">{sourceWords(say, finding, plan.ok ? nameOf(plan.value.rules) : '')}</p>
      </div>
    </li>
  );
}

/** A proportion of the trade is never "broken". */
function answerOf({ kind, status }: Finding): Answer {
  if (kind !== 'taste') return status;
  return status === 'meets' ? 'inside' : 'outside';
}

function hasMemory({ rows }: RulePack): boolean {
  return rows.some(({ confidence }) => confidence === 'memory');
}

function nameOf({ pack }: StairPlan['rules']): string {
  return pack === null ? '' : `${pack.title}, ${pack.edition}`;
}
