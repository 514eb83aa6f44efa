/** Every rule with its answer, worst first; what was not checked in the same list; advice of the trade apart from the law. */
import { type Finding, sortByDanger } from '../../core/codes/findings';
import type { RulePack } from '../../core/codes/rulePack';
import type { StairPlan } from '../../core/plan/planStair';
import '../../text/lateFindings';
import { refusedPacks } from '../../packs/ruleBook';
import { sayProblem } from '../../text/say';
import { useStair } from '../stairOnShow';
import { CodeAddress } from './CodeAddress';
import { FindingRow } from './FindingRow';
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
      <p className="findings-count" aria-live="polite">
        {say('findings.count', {
          breaks: breaks.length,
          close: close.length,
          meets: meets.length,
          unchecked: unchecked.length,
        })}
      </p>
      <Head rules={rules} />
      <p className="hint">
        {say('findings.order')}{' '}
        <a className="to-rules" href="#part-rules">
          {say('findings.toRules')}
        </a>
      </p>
      <Group title={say('findings.breaks')} findings={breaks} />
      <Group title={say('findings.close')} findings={close} lead={say('findings.again')} />
      {breaks.length > 0 && <p className="caution">{say('findings.help')}</p>}
      {unchecked.length > 0 && (
        <details open>
          <summary>{say('findings.notChecked', { count: unchecked.length })}</summary>
          <p className="hint">{say('findings.notCheckedLead')}</p>
          <List findings={unchecked} compact />
        </details>
      )}
      <Group title={say('findings.meets')} findings={meets} compact />
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

/** By which rules, where they can be read, and what stands above them. */
function Head({ rules }: { readonly rules: StairPlan['rules'] }) {
  const { say, units } = useStair();
  const { pack, packId } = rules;
  if (pack === null) {
    const refused = refusedPacks().find(({ id }) => id === packId)?.problems ?? [];
    return (
      <div className="caution">
        <p>{say('findings.noPack', { pack: packId })}</p>
        {refused.map((problem) => (
          <p key={problem.place}>{sayProblem(say, problem, units)}</p>
        ))}
      </div>
    );
  }
  return (
    <>
      <p className="hint">{say('findings.by', { pack: `${pack.title}, ${pack.edition}` })}</p>
      <p className="caution">{say('findings.authority')}</p>
      {hasMemory(pack) && <p className="caution">{say('pack.memory')}</p>}
      {pack.readAt !== undefined && (
        <>
          <p className="finding-read">{say('findings.readCode')}</p>
          <ul className="code-addresses">
            {pack.readAt.map(({ address, mark }) => (
              <li key={address}>
                <CodeAddress address={address} /> <small>{say(`lookup.mark.${mark}`)}</small>
              </li>
            ))}
          </ul>
        </>
      )}
    </>
  );
}

interface GroupProps {
  readonly title: string;
  readonly findings: readonly Finding[];
  readonly lead?: string;
  /** Said shortly: the group's title says the answer already. */
  readonly compact?: boolean;
}

function Group({ title, findings, lead, compact = false }: GroupProps) {
  if (findings.length === 0) return null;
  return (
    <>
      <h3>{title}</h3>
      {lead !== undefined && <p className="hint">{lead}</p>}
      <List findings={findings} compact={compact} />
    </>
  );
}

function List({ findings, compact = false }: Pick<GroupProps, 'findings' | 'compact'>) {
  return (
    <ul className={`finding-list${compact ? ' compact' : ''}`}>
      {findings.map((finding, index) => (
        // One field can stand on several rows of a pack.
        // biome-ignore lint/suspicious/noArrayIndexKey: rows of a pack have no other identity
        <FindingRow key={`${finding.field} ${index}`} finding={finding} />
      ))}
    </ul>
  );
}

function hasMemory({ rows }: RulePack): boolean {
  return rows.some(({ confidence }) => confidence === 'memory');
}
