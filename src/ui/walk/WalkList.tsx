/** Every entry of the list by name, with what is ticked off; no numbers, so that none is marked from here. */
import { useEffect, useRef, useState } from 'react';
import type { WalkList as ListName } from '../../state/view';
import { useStair } from '../stairOnShow';
import type { WalkEntry } from './useWalk';
import { wordsOf } from './walkWords';
import './walkList.css';

interface WalkListProps {
  readonly list: ListName;
  readonly entries: readonly WalkEntry[];
  readonly at: number;
  readonly risers: number;
  readonly onGo: (at: number) => void;
  readonly onUntickAll: () => void;
  readonly onClose: () => void;
}

export function WalkList({ list, entries, at, risers, onGo, onUntickAll, onClose }: WalkListProps) {
  const { say } = useStair();
  const current = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    current.current?.focus();
    current.current?.scrollIntoView({ block: 'center' });
  }, []);
  return (
    <dialog className="walk-list" open aria-modal="true" aria-labelledby="walk-list-title">
      <div className="walk-list-head">
        <div>
          <h2 id="walk-list-title">{say(`walk.label.${list}`)}</h2>
          <p>{say('walk.list.lead')}</p>
        </div>
        <button type="button" className="walk-list-close" onClick={onClose}>
          {say('walk.list.close')}
        </button>
      </div>
      <ol>
        {entries.map((entry, index) => (
          <li key={entry.id}>
            <button
              type="button"
              className={`walk-list-entry ${entry.tick}`}
              aria-current={index === at ? 'step' : undefined}
              ref={index === at ? current : null}
              onClick={() => onGo(index)}
            >
              <TickSign isTicked={entry.tick === 'ticked'} />
              <span>
                {wordsOf(say, entry, risers).what}
                {entry.tick !== 'open' && <small>{say(`walk.list.${entry.tick}`)}</small>}
              </span>
            </button>
          </li>
        ))}
      </ol>
      <UntickAll count={entries.filter(({ tick }) => tick === 'ticked').length} onUntickAll={onUntickAll} />
    </dialog>
  );
}

/** Asked twice: ticks are no part of the job, so undo would not bring them back. */
function UntickAll({ count, onUntickAll }: { readonly count: number; readonly onUntickAll: () => void }) {
  const { say } = useStair();
  const [isSure, setSure] = useState(false);
  if (count === 0) return null;
  return (
    <button
      type="button"
      className="walk-untick"
      onClick={() => {
        if (isSure) onUntickAll();
        setSure(!isSure);
      }}
    >
      {isSure ? say('walk.list.clearSure', { count }) : say('walk.list.clear')}
    </button>
  );
}

export function TickSign({ isTicked }: { readonly isTicked: boolean }) {
  return (
    <svg className="walk-tick-sign" aria-hidden="true" viewBox="0 0 26 26" width="26" height="26">
      <rect x="2" y="2" width="22" height="22" />
      {isTicked && <path d="M6 13l5 6 9-13" />}
    </svg>
  );
}
