/** One number explained: the sum in symbols and in values, its parts with where they came from, and the outcome. */
import type { MouseEvent, ReactNode } from 'react';
import type { Explanation, Measure, Term } from '../../core/explain/measures';
import type { StairPlan } from '../../core/plan/planStair';
import { idOf } from '../fields/fieldWords';
import { placeOfKey } from '../fields/jobPlaces';
import { useStair } from '../stairOnShow';
import { idOfMeasure } from './desk';
import {
  becauseText,
  formulaText,
  originText,
  partName,
  putIn,
  roundingText,
  shownText,
  symbolText,
  valueText,
} from './explanationText';

interface ExplanationViewProps {
  readonly plan: StairPlan;
  readonly explanation: Explanation;
  /** To the explanation of a part; left out, the link is one within the page. */
  readonly onMeasure?: (measure: Measure) => void;
  readonly onPlace: (place: string) => void;
}

export function ExplanationView({ plan, explanation, onMeasure, onPlace }: ExplanationViewProps) {
  const { say, units } = useStair();
  const { result, unit, terms } = explanation;
  const symbols = formulaText(say, explanation, ({ symbol }) => symbolText(symbol));
  const values = formulaText(say, explanation, (term) => putIn(term, units));
  return (
    <>
      <p className="explain-because">{becauseText(say, explanation)}</p>
      <dl className="explain-lines">
        {symbols !== null && <Line words={say('explain.sum')} text={symbols} isSum />}
        {values !== null && terms.length > 0 && <Line words={say('explain.values')} text={values} isSum />}
        <Line words={say('explain.exact')} text={valueText(result, unit, units)} />
        <Line
          words={say('explain.shown')}
          text={shownText(say, plan, explanation, units)}
          note={roundingText(say, plan, explanation, units)}
        />
      </dl>
      {terms.length > 0 && <Parts plan={plan} terms={terms} onMeasure={onMeasure} onPlace={onPlace} />}
    </>
  );
}

interface LineProps {
  readonly words: string;
  readonly text: string;
  readonly note?: string;
  readonly isSum?: boolean;
}

function Line({ words, text, note, isSum = false }: LineProps) {
  return (
    <div>
      <dt>{words}</dt>
      <dd>
        <span className={isSum ? 'explain-sum' : 'explain-number'}>{text}</span>
        {note !== undefined && <small> {note}</small>}
      </dd>
    </div>
  );
}

interface PartsProps {
  readonly plan: StairPlan;
  readonly terms: readonly Term[];
  readonly onMeasure: ExplanationViewProps['onMeasure'] | undefined;
  readonly onPlace: (place: string) => void;
}

function Parts({ plan, terms, onMeasure, onPlace }: PartsProps) {
  const { say, units, index } = useStair();
  return (
    <table className="explain-parts">
      <thead>
        <tr>
          <th scope="col">{say('explain.symbol')}</th>
          <th scope="col">{say('explain.part')}</th>
          <th scope="col" className="explain-value">
            {say('explain.value')}
          </th>
        </tr>
      </thead>
      <tbody>
        {terms.map((term) => (
          <tr key={term.symbol}>
            <th scope="row">{symbolText(term.symbol)}</th>
            <td>
              <PartLink term={term} onMeasure={onMeasure} onPlace={onPlace}>
                {partName(say, index, term)} <small>{originText(say, plan, term)}</small>
              </PartLink>
            </td>
            <td className="explain-value">{valueText(term.value, term.unit, units)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

interface PartLinkProps extends Pick<PartsProps, 'onMeasure' | 'onPlace'> {
  readonly term: Term;
  readonly children: ReactNode;
}

function PartLink({ term: { origin }, children, onMeasure, onPlace }: PartLinkProps) {
  const { index } = useStair();
  if (origin.from === 'measure') {
    const { measure } = origin;
    const onClick = (event: MouseEvent) => {
      if (onMeasure === undefined) return;
      event.preventDefault();
      onMeasure(measure);
    };
    return (
      <a href={`#${idOfMeasure(measure)}`} onClick={onClick}>
        {children}
      </a>
    );
  }
  if (origin.from !== 'job' && origin.from !== 'default' && origin.from !== 'unknown') return <span>{children}</span>;
  const place = placeOfKey(index, origin.key);
  const onClick = (event: MouseEvent) => {
    event.preventDefault();
    onPlace(place);
  };
  return (
    <a href={`#${idOf(place)}`} onClick={onClick}>
      {children}
    </a>
  );
}
