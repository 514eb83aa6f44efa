/** What the search keeps to beside the rules. What does not read is said at its field, and not in use. */
import { memo, useState } from 'react';
import type { WishKey } from '../../core/search/readWishes';
import { TOPS } from '../../core/search/wishes';
import { type UnitSystem, withUnit } from '../../core/units/length';
import { sayProblem } from '../../text/say';
import { Echo, LengthInput } from '../fields/LengthField';
import { withoutUnit } from '../fields/makings';
import { useWords } from '../stairOnShow';
import type { WishDesk } from './useWishes';

const LENGTHS = ['run', 'headroom', 'longest', 'stride', 'rise'] as const;

export const WishFields = memo(function WishFields({ desk }: { readonly desk: WishDesk }) {
  const { say } = useWords();
  return (
    <details className="search-wishes">
      <summary>{say('search.wishes')}</summary>
      <p className="hint">{say('search.wishes.lead')}</p>
      <div className="fields">
        {LENGTHS.slice(0, 3).map((wish) => (
          <LengthWish key={wish} wish={wish} desk={desk} />
        ))}
        <DepthsWish desk={desk} />
        {LENGTHS.slice(3).map((wish) => (
          <LengthWish key={wish} wish={wish} desk={desk} />
        ))}
      </div>
      <TopsWish desk={desk} />
    </details>
  );
});

interface WishProps {
  readonly desk: WishDesk;
}

function LengthWish({ wish, desk }: WishProps & { readonly wish: (typeof LENGTHS)[number] }) {
  const { units } = useWords();
  const stored = desk.texts[wish] ?? '';
  const feet = wish === 'run' || wish === 'longest';
  const complete = (text: string) => {
    const whole = withUnit(text, units, feet);
    return whole.ok ? whole.text : text.trim();
  };
  const { shown, type, leave } = useTyped(desk, wish, withoutUnit(stored, units, feet), complete);
  return (
    <WishFrame wish={wish} desk={desk} note={<Echo text={shown} feet={feet} />}>
      {(described) => (
        <LengthInput {...described} data-place={`wish.${wish}`} text={shown} onText={type} onLeave={leave} />
      )}
    </WishFrame>
  );
}

function DepthsWish({ desk }: WishProps) {
  const { units } = useWords();
  const complete = (text: string) =>
    text
      .split(',')
      .map((part) => {
        const whole = withUnit(part, units, false);
        return whole.ok ? whole.text : part.trim();
      })
      .join(', ');
  const { shown, type, leave } = useTyped(desk, 'depths', desk.texts.depths ?? '', complete);
  return (
    <WishFrame wish="depths" desk={desk} note={null}>
      {(described) => (
        <input
          {...described}
          type="text"
          autoComplete="off"
          value={shown}
          onChange={(event) => type(event.currentTarget.value)}
          onBlur={leave}
        />
      )}
    </WishFrame>
  );
}

/** None is as good as all: a stair has some top. */
function TopsWish({ desk }: WishProps) {
  const { say } = useWords();
  const { tops } = desk.inUse.wishes;
  const turn = (top: (typeof TOPS)[number]) => {
    const next = TOPS.filter((each) => (each === top ? !tops.includes(each) : tops.includes(each)));
    desk.write('tops', next.length === TOPS.length ? '' : next.join(','));
  };
  return (
    <fieldset className="search-tops">
      <legend>{say('search.wish.tops')}</legend>
      {TOPS.map((top) => (
        <label key={top}>
          <input type="checkbox" checked={tops.includes(top)} onChange={() => turn(top)} />
          {say(`choice.stringer.top.${top}`)}
        </label>
      ))}
    </fieldset>
  );
}

/** What is being typed stands as it is typed, and is kept with its unit. */
function useTyped(desk: WishDesk, key: WishKey, kept: string, complete: (text: string) => string) {
  const { units } = useWords();
  const [typed, setTyped] = useState<{ readonly text: string; readonly units: UnitSystem } | null>(null);
  return {
    // A bare number is of the units that it was typed in, and of no others.
    shown: typed?.units === units ? typed.text : kept,
    type: (text: string) => {
      setTyped({ text, units });
      desk.write(key, text.trim() === '' ? '' : complete(text));
    },
    leave: () => setTyped(null),
  };
}

interface Described {
  readonly id: string;
  readonly 'aria-describedby': string;
  readonly 'aria-invalid': boolean;
}

interface FrameProps extends WishProps {
  readonly wish: (typeof LENGTHS)[number] | 'depths';
  readonly note: React.ReactNode;
  readonly children: (described: Described) => React.ReactNode;
}

function WishFrame({ wish, desk, note, children }: FrameProps) {
  const { say, units } = useWords();
  const problems = desk.read.ok ? [] : desk.read.problems.filter(({ place }) => place === wish);
  const id = `wish-${wish}`;
  const isRefused = problems.length > 0;
  return (
    <div className={isRefused ? 'field refused' : 'field'}>
      <div className="field-words">
        <label htmlFor={id}>{say(`search.wish.${wish}`)}</label>
        <p className="hint" id={`${id}-hint`}>
          {say(`search.wish.${wish}.hint`)}
        </p>
      </div>
      <div className="field-control">
        {children({ id, 'aria-describedby': `${id}-hint ${id}-fault`, 'aria-invalid': isRefused })}
      </div>
      <p className="field-note">{note}</p>
      <div className="field-fault" id={`${id}-fault`} aria-live="polite">
        {problems.map((found) => (
          <p key={found.code}>{say('search.wish.refused', { why: sayProblem(say, found, units) })}</p>
        ))}
      </div>
    </div>
  );
}
