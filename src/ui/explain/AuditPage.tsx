/** All numbers of the stair with their sums, as one page to read through or to print. */
import { explain, measuresOf } from '../../core/explain/explain';
import type { Explanation, Term } from '../../core/explain/measures';
import type { StairPlan } from '../../core/plan/planStair';
import { isTextKey, type Speaker } from '../../text/say';
import { useStair } from '../stairOnShow';
import { idOfMeasure, nameOfMeasure } from './desk';
import { ExplanationView } from './ExplanationView';
import { becauseText, formulaText, partName, putIn, shownText, symbolText, valueText } from './explanationText';

interface AuditPageProps {
  readonly plan: StairPlan;
  /** Into the field at a place of the job file. */
  readonly goTo: (place: string) => void;
}

export function AuditPage({ plan, goTo }: AuditPageProps) {
  const { say, job, index } = useStair();
  const explanations = measuresOf(plan).flatMap((measure) => explain(plan, measure) ?? []);
  const stair = job.stairs[index];
  return (
    <article className="audit" aria-labelledby="audit-title">
      <header className="audit-head">
        <h2 id="audit-title">{say('audit.title')}</h2>
        <button type="button" onClick={() => window.print()}>
          {say('audit.print')}
        </button>
      </header>
      <p>{say('audit.lead', { stair: stair?.name ?? stair?.id ?? '', count: explanations.length })}</p>
      {explanations.filter(isAlone).map((explanation) => (
        <section className="audit-number" id={idOfMeasure(explanation.measure)} key={explanation.measure}>
          <h3>{nameOfMeasure(say, explanation.measure)}</h3>
          <ExplanationView plan={plan} explanation={explanation} onPlace={goTo} />
        </section>
      ))}
      {rowsOf(explanations).map((row) => (
        <AuditRow key={`${row[0]?.measure} ${row[0]?.formula}`} plan={plan} row={row} />
      ))}
    </article>
  );
}

function isAlone({ measure }: Explanation): boolean {
  return !measure.includes(':');
}

/** Numbers that stand in a row and come from the same sum are told once and listed. */
function rowsOf(explanations: readonly Explanation[]): readonly (readonly Explanation[])[] {
  const rows = new Map<string, Explanation[]>();
  for (const explanation of explanations.filter((each) => !isAlone(each))) {
    const key = `${explanation.measure.split(':')[0]} ${explanation.formula}`;
    const row = rows.get(key);
    if (row === undefined) rows.set(key, [explanation]);
    else row.push(explanation);
  }
  return [...rows.values()];
}

interface AuditRowProps {
  readonly plan: StairPlan;
  readonly row: readonly Explanation[];
}

function AuditRow({ plan, row }: AuditRowProps) {
  const { say, units, index } = useStair();
  const [first] = row;
  if (first === undefined) return null;
  const title = `rows.${first.measure.split(':')[0]}`;
  const sum = formulaText(say, first, ({ symbol }) => symbolText(symbol));
  const symbols = first.terms.map((term) => `${symbolText(term.symbol)}: ${rowPartName(say, index, term)}`);
  return (
    <section className="audit-number audit-row">
      <h3>{isTextKey(title) && say(title)}</h3>
      <p className="explain-because">{becauseText(say, first)}</p>
      {sum !== null && <p className="explain-sum">{sum}</p>}
      <p className="hint">{symbols.join('; ')}</p>
      <table className="explain-parts">
        <thead>
          <tr>
            <th scope="col">{say('audit.step')}</th>
            <th scope="col">{say('explain.values')}</th>
            <th scope="col" className="explain-value">
              {say('explain.exact')}
            </th>
            <th scope="col" className="explain-value">
              {say('explain.shown')}
            </th>
          </tr>
        </thead>
        <tbody>
          {row.map((each) => (
            <tr key={each.measure} id={idOfMeasure(each.measure)}>
              <th scope="row">{each.measure.split(':')[1]}</th>
              <td>{formulaText(say, each, (term) => putIn(term, units))}</td>
              <td className="explain-value">{valueText(each.result, each.unit, units)}</td>
              <td className="explain-value">{shownText(say, plan, each, units)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

/** What a part is called where the whole row has one like it. */
function rowPartName(say: Speaker, index: number, term: Term): string {
  const { origin } = term;
  const title = origin.from === 'measure' ? `rows.${origin.measure.split(':')[0]}` : '';
  return isTextKey(title) ? say(title) : partName(say, index, term);
}
