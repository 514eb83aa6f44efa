/**
 * One number on the whole screen, for eyes that are on the board. Where it stands and what is ticked off
 * is in the store, and so in the draft: after a call, a lock or a crash it is where it was.
 */
import { type RefObject, useEffect, useMemo, useRef, useState } from 'react';
import type { StairPlan } from '../../core/plan/planStair';
import type { Walk } from '../../state/view';
import { useStair } from '../stairOnShow';
import { useBench, usePlannerState } from '../usePlanner';
import { BigNumber } from './BigNumber';
import { longestOf } from './numberFrame';
import { TapePiece } from './TapePiece';
import { useAwake } from './useAwake';
import { useProgress, useWalkActions, type WalkEntry } from './useWalk';
import { useWalkKeys } from './useWalkKeys';
import { WalkHead } from './WalkHead';
import { WalkList } from './WalkList';
import { WalkPicture } from './WalkPicture';
import { WalkWays } from './WalkWays';
import { figureOfEntry, spokenEntry } from './walkWords';
import '../../text/lateFigures';
import './walk.css';
import './walkSizes.css';

/** Shown in place of the other screens while there is a walk; nothing otherwise. */
export function WalkScreen() {
  const walk = usePlannerState((state) => state.walk);
  const gloves = usePlannerState((state) => state.gloves);
  const { plan } = useStair();
  if (walk === null) return null;
  return (
    <div className={gloves ? 'walk gloves' : 'walk'}>
      {plan.ok ? <Walking key={walk.list} plan={plan.value} walk={walk} /> : <NothingToWalk />}
    </div>
  );
}

interface WalkingProps {
  readonly plan: StairPlan;
  readonly walk: Walk;
}

function Walking({ plan, walk }: WalkingProps) {
  const { list } = walk;
  const { entries } = useProgress(plan, list);
  // A change of the stair may have taken the end of the list away.
  const at = Math.min(walk.at, entries.length - 1);
  const current = entries[at];
  return current === undefined ? <NothingToWalk /> : <OneNumber plan={plan} walk={{ list, at }} current={current} />;
}

function OneNumber({ plan, walk: { list, at }, current }: WalkingProps & { readonly current: WalkEntry }) {
  const { say, units } = useStair();
  const { entries, left, firstLeft } = useProgress(plan, list);
  const actions = useWalkActions(list);
  const [isListOpen, setListOpen] = useState(false);
  const screen = useRef<HTMLElement>(null);
  const awake = useAwake();
  const longest = useMemo(() => longestOf(entries.map((entry) => figureOfEntry(entry, units))), [entries, units]);
  const { risers } = plan.layout.flight;
  const last = entries.length - 1;
  const ways = {
    back: () => actions.go(Math.max(0, at - 1)),
    skip: () => actions.go(Math.min(last, at + 1)),
    tickAndNext: () => actions.tickAndGo(current, Math.min(last, at + 1)),
    goToFirstLeft: () => actions.go(firstLeft),
    leave: actions.leave,
  };
  const closeList = () => {
    setListOpen(false);
    screen.current?.focus();
  };
  useWalkKeys({ ...ways, closeList, isListOpen });
  useFocusOnStart(screen);
  return (
    <>
      <main
        className={`walk-one walk-of-${list}`}
        aria-label={say(`walk.label.${list}`)}
        aria-describedby="walk-spoken"
        tabIndex={-1}
        ref={screen}
        inert={isListOpen}
      >
        <p className="unseen" id="walk-spoken" aria-live="polite" aria-atomic="true">
          {spokenEntry(say, current, risers, units)}
        </p>
        <WalkHead
          list={list}
          current={current}
          risers={risers}
          awake={awake}
          place={{ at: at + 1, count: entries.length, left }}
          onTick={() => (current.tick === 'ticked' ? actions.untick(current) : actions.tick(current))}
          onOpenList={() => setListOpen(true)}
          onLeave={actions.leave}
        />
        <BigNumber figure={figureOfEntry(current, units)} longest={longest} />
        <TapePiece mm={Math.abs(current.value)} />
        <WalkPicture plan={plan} list={list} entries={entries} current={current} />
        <WalkWays list={list} current={current} isFirst={at === 0} isLast={at === last} left={left} ways={ways} />
      </main>
      {isListOpen && (
        <WalkList
          list={list}
          entries={entries}
          at={at}
          risers={risers}
          onGo={(index) => {
            actions.go(index);
            closeList();
          }}
          onUntickAll={actions.untickAll}
          onClose={closeList}
        />
      )}
    </>
  );
}

/**
 * The screen itself has the focus, so that keys work at once, and keeps it from what was touched: space
 * would press that again, and not go on.
 */
function useFocusOnStart(screen: RefObject<HTMLElement | null>): void {
  useEffect(() => {
    const element = screen.current;
    const takeBack = ({ detail }: MouseEvent) => {
      if (detail > 0) element?.focus();
    };
    element?.focus();
    element?.addEventListener('click', takeBack);
    return () => element?.removeEventListener('click', takeBack);
  }, [screen]);
}

function NothingToWalk() {
  const { say } = useStair();
  const { actions } = useBench().planner;
  return (
    <main className="walk-none">
      <p>{say('walk.none')}</p>
      <button type="button" onClick={() => actions.look({ walk: null })}>
        {say('walk.leave')}
      </button>
    </main>
  );
}
