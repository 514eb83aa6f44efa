/** One number explained over the page; its parts open in its place, with a way back. */
import { useEffect, useRef } from 'react';
import { explain } from '../../core/explain/explain';
import type { Measure } from '../../core/explain/measures';
import type { StairPlan } from '../../core/plan/planStair';
import { useStair } from '../stairOnShow';
import { nameOfMeasure } from './desk';
import { ExplanationView } from './ExplanationView';
import { shownText } from './explanationText';

interface ExplainPanelProps {
  readonly plan: StairPlan;
  /** What was asked, the latest last. */
  readonly trail: readonly Measure[];
  readonly onTrail: (trail: readonly Measure[]) => void;
  readonly onPlace: (place: string) => void;
}

export function ExplainPanel({ plan, trail, onTrail, onPlace }: ExplainPanelProps) {
  const { say, units } = useStair();
  const dialog = useRef<HTMLDialogElement>(null);
  const title = useRef<HTMLHeadingElement>(null);
  const measure = trail.at(-1);
  const before = trail.at(-2);
  // A number may have gone while it was looked at: the top was changed, or the width left out.
  const explanation = measure === undefined ? null : explain(plan, measure);
  useEffect(() => {
    const box = dialog.current;
    const asked = document.activeElement;
    box?.showModal?.();
    // Closing gives the focus back by itself only where it is closed and not taken away.
    return () => {
      box?.close?.();
      if (asked instanceof HTMLElement || asked instanceof SVGElement) asked.focus();
    };
  }, []);
  useEffect(() => {
    if (measure !== undefined) title.current?.focus();
  }, [measure]);
  const close = () => onTrail([]);
  return (
    <dialog className="explain-panel" ref={dialog} aria-labelledby="explain-title" onClose={close} open={isBare()}>
      <header className="explain-head">
        <h2 id="explain-title" ref={title} tabIndex={-1}>
          {measure !== undefined && nameOfMeasure(say, measure)}
        </h2>
        <button type="button" className="explain-close" onClick={close}>
          {say('explain.close')}
        </button>
      </header>
      {explanation === null ? (
        <p>{say('drawing.none')}</p>
      ) : (
        <>
          <p className="explain-figure">{shownText(say, plan, explanation, units)}</p>
          <ExplanationView
            plan={plan}
            explanation={explanation}
            onMeasure={(next) => onTrail([...trail, next])}
            onPlace={onPlace}
          />
        </>
      )}
      {before !== undefined && (
        <button type="button" onClick={() => onTrail(trail.slice(0, -1))}>
          {say('explain.back', { name: nameOfMeasure(say, before) })}
        </button>
      )}
    </dialog>
  );
}

/** A browser without dialogs of its own, as in a test, has it open in the page. */
function isBare(): boolean {
  return typeof HTMLDialogElement === 'undefined' || HTMLDialogElement.prototype.showModal === undefined;
}
