/** Back and on, as areas that are hit without looking. Each stays where it is and never changes its meaning by itself. */
import type { WalkList } from '../../state/view';
import { useStair } from '../stairOnShow';
import type { WalkEntry } from './useWalk';

interface Ways {
  readonly back: () => void;
  readonly skip: () => void;
  readonly tickAndNext: () => void;
  readonly goToFirstLeft: () => void;
  readonly leave: () => void;
}

interface WalkWaysProps {
  readonly list: WalkList;
  readonly current: WalkEntry;
  readonly isFirst: boolean;
  readonly isLast: boolean;
  readonly left: number;
  readonly ways: Ways;
}

export function WalkWays({ list, current, isFirst, isLast, left, ways }: WalkWaysProps) {
  const { say } = useStair();
  const isTicked = current.tick === 'ticked';
  const main = mainWay();
  return (
    <div className="walk-moves">
      <button type="button" className="walk-back" aria-disabled={isFirst} onClick={ways.back}>
        <Arrow d="M12 4L4 13l8 9" />
        {say('walk.back')}
      </button>
      <button type="button" className="walk-skip" aria-disabled={isLast} onClick={ways.skip}>
        {say('walk.skip')}
        <Arrow d="M4 4l8 9-8 9" />
      </button>
      <button type="button" className="walk-on main-button" onClick={main.run}>
        {main.words}
        <Arrow d="M4 4l8 9-8 9" />
      </button>
    </div>
  );

  function mainWay(): { readonly words: string; readonly run: () => void } {
    if (!isTicked) return { words: say(`walk.${isLast ? 'done' : 'doneNext'}.${list}`), run: ways.tickAndNext };
    if (!isLast) return { words: say('walk.next'), run: ways.skip };
    if (left > 0) return { words: say('walk.toFirstLeft'), run: ways.goToFirstLeft };
    return { words: say('walk.finish'), run: ways.leave };
  }
}

function Arrow({ d }: { readonly d: string }) {
  return (
    <svg className="walk-arrow" aria-hidden="true" viewBox="0 0 16 26" width="16" height="26">
      <path d={d} />
    </svg>
  );
}
