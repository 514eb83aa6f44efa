/** The way into a walk: it starts at the first number that is not ticked off. */
import { useEffect, useRef } from 'react';
import type { StairPlan } from '../../core/plan/planStair';
import type { WalkList } from '../../state/view';
import { useStair } from '../stairOnShow';
import { useProgress, useWalkActions } from './useWalk';
import { comesBackFrom } from './wayBack';
import './walk.css';
import './walkList.css';

interface StartWalkProps {
  readonly list: WalkList;
}

export function StartWalk({ list }: StartWalkProps) {
  const { plan } = useStair();
  return plan.ok ? <StartButton plan={plan.value} list={list} /> : null;
}

function StartButton({ plan, list }: StartWalkProps & { readonly plan: StairPlan }) {
  const { say } = useStair();
  const { entries, left, firstLeft } = useProgress(plan, list);
  const { go } = useWalkActions(list);
  const key = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    if (comesBackFrom(list)) key.current?.focus();
  }, [list]);
  if (entries.length === 0) return null;
  return (
    <button type="button" className="walk-start" ref={key} onClick={() => go(firstLeft)}>
      <svg aria-hidden="true" viewBox="0 0 34 34" width="34" height="34">
        <path className="walk-v" d="M7 5l10 15L27 5" />
        <path className="walk-start-line" d="M3 29h28" />
      </svg>
      <span>
        {say(`walk.start.${list}`)}
        <small>{say('walk.progress', { done: entries.length - left, count: entries.length })}</small>
      </span>
    </button>
  );
}
