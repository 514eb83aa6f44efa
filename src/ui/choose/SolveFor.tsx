/** One of opening, headroom, run, floor depth and risers from the others, and what a pull on each lever does to the head. */
import '../../text/lateFindings';
import { useMemo, useState } from 'react';
import type { KeyChange } from '../../core/choose/changeStair';
import { type Solution, solveFor, type Unknown } from '../../core/choose/solveFor';
import { headroomWanted, type Lever, type Tried, tryLevers, trySolution } from '../../core/choose/trySolution';
import type { StairPlan } from '../../core/plan/planStair';
import { type Exact, toMm } from '../../core/units/exact';
import { parseLength, withUnit } from '../../core/units/length';
import { BOOK } from '../../packs/ruleBook';
import { ruleWords } from '../../text/findingText';
import { cellText, lengthText } from '../numbers/figures';
import { Sheet } from '../results/Sheet';
import { useStair } from '../stairOnShow';

const ALL: readonly Unknown[] = ['opening', 'headroom', 'run', 'floorDepth', 'risers'];

interface SolveForProps {
  readonly plan: StairPlan;
  readonly onTake: (changes: readonly KeyChange[]) => boolean;
}

export function SolveFor({ plan, onTake }: SolveForProps) {
  const { say, units } = useStair();
  const rules = headroomWanted(plan);
  const [typed, setTyped] = useState('');
  const completed = withUnit(typed, units, false);
  const reading = completed.ok ? parseLength(completed.text) : null;
  const wanted = typed.trim() === '' ? rules : reading?.ok ? reading.length : null;
  return (
    <Sheet name="solve" title={say('choose.solve')} lead={say('choose.solve.lead')}>
      <label className="laser-field">
        <span>{say('choose.solve.wanted')}</span>
        <input
          type="text"
          autoComplete="off"
          value={typed}
          aria-invalid={wanted === null}
          onChange={(event) => setTyped(event.currentTarget.value)}
        />
        <small className="hint">
          {rules === null
            ? say('choose.solve.wanted.hint')
            : say('choose.solve.wanted.rules', { value: lengthText(toMm(rules), units) })}
        </small>
      </label>
      {wanted === null ? (
        <p>{say('choose.solve.noWanted')}</p>
      ) : (
        <Answers plan={plan} wanted={wanted} onTake={onTake} />
      )}
      <Levers plan={plan} />
    </Sheet>
  );
}

function Answers({ plan, wanted, onTake }: SolveForProps & { readonly wanted: Exact }) {
  const { job, index } = useStair();
  const answers = useMemo(
    () =>
      ALL.map((unknown) => {
        const solution = solveFor(unknown, plan.layout, wanted);
        return { solution, tried: trySolution(job, index, BOOK, solution) };
      }),
    [plan, wanted, job, index],
  );
  return (
    <ul className="plain-list solve-list">
      {answers.map(({ solution, tried }) => (
        <li key={solution.unknown}>
          <Answer solution={solution} tried={tried} wanted={wanted} onTake={onTake} />
        </li>
      ))}
    </ul>
  );
}

interface AnswerProps {
  readonly solution: Solution;
  readonly tried: Tried | null;
  readonly wanted: Exact;
  readonly onTake: SolveForProps['onTake'];
}

function Answer({ solution, tried, wanted, onTake }: AnswerProps) {
  const { say, units } = useStair();
  const name = say(`choose.solve.${solution.unknown}`);
  if (solution.value === null) {
    return (
      <>
        <b>{name}</b>: {say(`choose.solve.why.${solution.why}`, { wanted: lengthText(toMm(wanted), units) })}
      </>
    );
  }
  const isCount = solution.unknown === 'risers';
  const rounding = solution.is === 'least' ? 'up' : 'down';
  const amount = (mm: number) => (isCount ? String(mm) : lengthText(mm, units, rounding));
  return (
    <>
      <b>{name}</b>: {say(`choose.solve.is.${solution.is}`, { value: amount(toMm(solution.value)) })}{' '}
      {tried === null && solution.unknown !== 'headroom' && say('choose.solve.noStair')}
      {tried !== null && tried.breaks.length > 0 && (
        <span className="odd-word">
          {say('choose.solve.breaks', { rules: tried.breaks.map((field) => ruleWords(say, field)).join('; ') })}{' '}
        </span>
      )}
      {tried !== null && (
        <button type="button" onClick={() => onTake(tried.changes)}>
          {say('choose.solve.take', { name, value: amount(tried.taken) })}
        </button>
      )}
    </>
  );
}

function Levers({ plan }: { readonly plan: StairPlan }) {
  const { say, job, index, units } = useStair();
  const levers = useMemo(() => tryLevers(job, index, BOOK, plan), [job, index, plan]);
  const shown = levers.filter(({ headroom, overhead }) => headroom !== null || overhead !== null);
  if (shown.length === 0) return null;
  const signed = (mm: number | null) =>
    mm === null ? '' : `${mm < 0 ? '−' : '+'}${cellText(Math.abs(mm), units, mm < 0 ? 'up' : 'down')}`;
  const pull = ({ change, by }: Lever) =>
    say(`choose.lever.${change.key}`, { by: change.key === 'steps.risers' ? '' : lengthText(Math.abs(by), units) });
  return (
    <table className="figures-table levers">
      <caption>
        {say('choose.levers')} <span className="hint">{say('choose.levers.lead')}</span>
      </caption>
      <thead>
        <tr>
          <th scope="col">{say('choose.levers.pull')}</th>
          <th scope="col">{say('choose.levers.head')}</th>
          {shown.some(({ overhead }) => overhead !== null) && <th scope="col">{say('choose.levers.overhead')}</th>}
        </tr>
      </thead>
      <tbody>
        {shown.map((lever) => (
          <tr key={lever.change.key}>
            <th scope="row">{pull(lever)}</th>
            <td>{signed(lever.headroom)}</td>
            {shown.some(({ overhead }) => overhead !== null) && <td>{signed(lever.overhead)}</td>}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
