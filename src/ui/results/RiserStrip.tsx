/** Every finished riser as it will be after cutting, first and last large, against the rules' limit. */
import { useMemo } from 'react';
import { asCutAnswers } from '../../core/codes/asCut';
import { figureOf } from '../../core/drawing/figures';
import type { StairPlan } from '../../core/plan/planStair';
import { spreadAsCut } from '../../core/stringer/asCut';
import { Painted } from '../drawing/Painted';
import { useWidth } from '../drawing/useSize';
import { AnswerTag } from '../findings/AnswerTag';
import { Figure } from '../numbers/Figure';
import { lengthText, plainFigure } from '../numbers/figures';
import { useWords } from '../stairOnShow';
import { layStrip, STRIP } from './stripLayout';
import { stripNodes } from './stripNodes';

export function RiserStrip({ plan }: { readonly plan: StairPlan }) {
  const { say, units } = useWords();
  const [place, width] = useWidth<HTMLDivElement>();
  const { asCut, master } = plan.layout.stringer;
  const { risers } = asCut;
  const { stringer } = master;
  const answer = asCutAnswers(plan.layout, plan.rules).find(({ field }) => field === 'asCut.spread');
  // Where the floor falls across, over all stringers and not the one whose risers stand here.
  const spread = spreadAsCut(plan.layout.stringer.feet);
  const limit = answer?.limitMm ?? null;
  const strip = useMemo(() => layStrip(risers, limit, units, width), [risers, limit, units, width]);
  const nodes = useMemo(() => stripNodes(strip, limit, { say, units }), [strip, limit, say, units]);
  const alternative = say('strip.alt', {
    count: risers.length,
    list: risers.map((riser) => plainFigure(figureOf(riser, units)).replace('+', 'heavy')).join(', '),
    spread: lengthText(spread, units, 'up'),
  });
  return (
    <section className="sheet riser-strip" aria-labelledby="strip-title">
      <header className="strip-head">
        <h2 id="strip-title">{say('strip.title')}</h2>
        <p className="hint">{stringer === 0 ? say('strip.lead') : say('strip.leadAt', { stringer })}</p>
        <p className="strip-ends">
          {say('strip.first')} <Figure of={figureOf(risers[0] ?? 0, units)} /> {say('strip.last')}{' '}
          <Figure of={figureOf(risers.at(-1) ?? 0, units)} />
        </p>
        <p className="strip-answer">
          {say('strip.spread')} <Figure of={figureOf(spread, units, 'up')} />{' '}
          {answer === undefined ? <span>{say('strip.noLimit')}</span> : <AnswerTag answer={answer.status} />}
        </p>
      </header>
      <div className="drawing-place" ref={place}>
        <svg
          className="drawing strip"
          role="img"
          aria-label={alternative}
          viewBox={`0 0 ${width} ${strip.rows.length * STRIP.height}`}
          width={width}
          height={strip.rows.length * STRIP.height}
        >
          <Painted nodes={nodes} />
        </svg>
      </div>
    </section>
  );
}
