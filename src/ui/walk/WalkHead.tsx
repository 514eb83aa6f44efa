/** Over the number: what it is and from where, whether it is ticked off, and where in the list it stands. */
import type { Awake } from '../../platform/awake';
import type { WalkList } from '../../state/view';
import { useStair } from '../stairOnShow';
import type { WalkEntry } from './useWalk';
import { TickSign } from './WalkList';
import { wordsOf } from './walkWords';

interface WalkHeadProps {
  readonly list: WalkList;
  readonly current: WalkEntry;
  readonly risers: number;
  readonly awake: Awake;
  readonly place: { readonly at: number; readonly count: number; readonly left: number };
  readonly onTick: () => void;
  readonly onOpenList: () => void;
  readonly onLeave: () => void;
}

export function WalkHead({ list, current, risers, awake, place, onTick, onOpenList, onLeave }: WalkHeadProps) {
  const { say } = useStair();
  const { what, on, from } = wordsOf(say, current, risers);
  const isTicked = current.tick === 'ticked';
  return (
    <div className="walk-head">
      <div className="walk-words">
        <h1>{what}</h1>
        <p>
          {current.from === 'fence' && <b>{say('walk.pieces', { count: current.count })} </b>}
          {on}, <span>{from}</span>
        </p>
      </div>
      <div className="walk-keys">
        <button type="button" className="walk-tick" aria-pressed={isTicked} onClick={onTick}>
          <TickSign isTicked={isTicked} />
          {/* The name stays while the state changes, as a screen reader expects of a pressed key. */}
          <span className="unseen">{say(`walk.done.${list}`)}</span>
          <span aria-hidden="true">{say(isTicked ? `walk.done.${list}` : `walk.notDone.${list}`)}</span>
        </button>
        <button type="button" className="walk-place" aria-label={say('walk.openList', place)} onClick={onOpenList}>
          <span>{say('walk.place', { at: place.at, count: place.count })}</span>
          <small>{say('walk.left', { left: place.left })}</small>
        </button>
        {/* One place for either, so that the number keeps its size. */}
        {current.tick === 'moved' ? (
          <p className="walk-aside walk-moved">{say('walk.moved')}</p>
        ) : (
          <p className="walk-aside">{say(`walk.awake.${awake}`)}</p>
        )}
        <button type="button" className="walk-leave" onClick={onLeave}>
          {say('walk.leave')}
        </button>
      </div>
    </div>
  );
}
