/** A number that can be asked why: quiet, with dots under it. Where nobody answers it is the number alone. */
import type { ReactNode } from 'react';
import { explain } from '../../core/explain/explain';
import type { Measure } from '../../core/explain/measures';
import { useStair } from '../stairOnShow';
import { nameOfMeasure, useDesk } from './desk';
import { shownText } from './explanationText';

interface ExplainedProps {
  readonly measure: Measure;
  readonly children: ReactNode;
}

export function Explained({ measure, children }: ExplainedProps) {
  const { say, plan, units } = useStair();
  const desk = useDesk();
  const explanation = desk !== null && plan.ok ? explain(plan.value, measure) : null;
  if (desk === null || !plan.ok || explanation === null) return children;
  const figure = shownText(say, plan.value, explanation, units).replace('+', 'heavy');
  return (
    <button
      type="button"
      className="explained"
      aria-label={say('number.why', { name: nameOfMeasure(say, measure), figure })}
      aria-haspopup="dialog"
      onClick={() => desk.explain(measure)}
    >
      {children}
    </button>
  );
}
