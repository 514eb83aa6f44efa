/** A number that can be asked why: quiet, with dots under it. Where nobody answers it is the number alone. */
import type { ReactNode } from 'react';
import type { Measure } from '../../core/explain/measures';
import { useStair } from '../stairOnShow';
import { nameOfMeasure, useDesk } from './desk';

interface ExplainedProps {
  readonly measure: Measure;
  readonly children: ReactNode;
}

export function Explained({ measure, children }: ExplainedProps) {
  const { say } = useStair();
  const desk = useDesk();
  if (desk === null) return children;
  return (
    <button
      type="button"
      className="explained"
      title={say('number.why', { name: nameOfMeasure(say, measure) })}
      aria-haspopup="dialog"
      onClick={() => desk.explain(measure)}
    >
      {children}
    </button>
  );
}
