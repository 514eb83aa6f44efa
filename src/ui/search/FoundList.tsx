/** What fits, best first by the order that is chosen; the first ones, and more when they are asked for. */
import '../../text/lateFindings';
import { memo, useMemo, useState } from 'react';
import { changesNow, planFound } from '../../core/search/planFound';
import { CRITERIA, type Criterion, type Ranked } from '../../core/search/rank';
import { BOOK } from '../../packs/ruleBook';
import { actualWords, limitWords, ruleWords } from '../../text/findingText';
import { FIGURE_ROWS, rowValue } from '../choose/figureRows';
import type { Takeable } from '../choose/useAlternatives';
import { Figure } from '../numbers/Figure';
import { lengthText } from '../numbers/figures';
import { TAPE_DOUBT, useWords } from '../stairOnShow';
import type { Studied } from './useStudy';
import type { WishDesk } from './useWishes';

interface FoundListProps {
  readonly studied: Studied;
  readonly desk: WishDesk;
  readonly onTake: (changes: Takeable) => void;
}

const FIRST = 5;
const MORE = 10;

export const FoundList = memo(function FoundList({ studied, desk, onTake }: FoundListProps) {
  const { say } = useWords();
  const [count, setCount] = useState(FIRST);
  const [isUnbeatenOnly, setUnbeatenOnly] = useState(false);
  const { ranked } = studied.study;
  const places = useMemo(() => new Map(ranked.map(({ found }, at) => [found, at + 1])), [ranked]);
  const all = isUnbeatenOnly ? ranked.filter(({ beatenBy }) => beatenBy === null) : ranked;
  const shown = all.slice(0, count);
  return (
    <section className="sheet search-list" aria-labelledby="search-list-title">
      <h2 id="search-list-title">{say('search.list')}</h2>
      <OrderChoice desk={desk} />
      <p className="hint">{say('search.list.lead')}</p>
      <label className="search-unbeaten">
        <input
          type="checkbox"
          checked={isUnbeatenOnly}
          onChange={(event) => setUnbeatenOnly(event.currentTarget.checked)}
        />
        {say('search.list.unbeaten')}
      </label>
      <ol>
        {shown.map((one) => (
          <FoundItem key={one.found.id} {...{ one, studied, places, onTake }} />
        ))}
      </ol>
      <p>{say('search.list.rest', { shown: shown.length, all: all.length })}</p>
      {shown.length < all.length && (
        <button type="button" onClick={() => setCount(count + MORE)}>
          {say('search.list.more', { count: Math.min(MORE, all.length - shown.length) })}
        </button>
      )}
    </section>
  );
});

const CHOICES = 3;

function OrderChoice({ desk }: { readonly desk: WishDesk }) {
  const { say } = useWords();
  const { criteria } = desk.inUse.order;
  const choose = (at: number, criterion: string) => {
    const next = Array.from({ length: CHOICES }, (_, i) => (i === at ? criterion : (criteria[i] ?? '')));
    // One that is named twice counts where it was put last.
    const others = next.map((name, i) => (i !== at && name === criterion ? '' : name));
    desk.write('by', others.filter((name) => name !== '').join(','));
  };
  return (
    <div className="search-order">
      {Array.from({ length: CHOICES }, (_, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: its place is all that tells one from the other
        <label key={at}>
          <span>{say(at === 0 ? 'search.list.by' : 'search.list.then')}</span>
          <select value={criteria[at] ?? ''} onChange={(event) => choose(at, event.currentTarget.value)}>
            {at > 0 && <option value="">{say('search.list.nothing')}</option>}
            {CRITERIA.map((name: Criterion) => (
              <option key={name} value={name}>
                {say(`search.by.${name}`)}
              </option>
            ))}
          </select>
        </label>
      ))}
    </div>
  );
}

interface FoundItemProps extends Pick<FoundListProps, 'studied' | 'onTake'> {
  readonly one: Ranked;
  readonly places: ReadonlyMap<Ranked['found'], number>;
}

function FoundItem({ one: { found, beatenBy }, studied, places, onTake }: FoundItemProps) {
  const { say, units } = useWords();
  const { asked } = studied;
  const planned = useMemo(
    () => planFound(asked.job, asked.index, BOOK, asked.search, found, TAPE_DOUBT),
    [asked, found],
  );
  if (planned === null) return null;
  const pair = { risers: found.risers, run: lengthText(planned.figures.run, units) };
  const top = say(`choice.stringer.top.${found.top}`);
  const isInHand = planned.keys.length === 0;
  const hasDepths = asked.search.wishes.stockDepths.length > 0;
  return (
    <li className={isInHand ? 'search-item in-hand' : 'search-item'} value={places.get(found)}>
      <div className="search-item-head">
        <span className="search-place" aria-hidden="true">
          {places.get(found)}
        </span>
        <h3 aria-label={say('choose.pair.spoken', pair)}>
          {say('choose.pair', { ...pair, run: pair.run.replaceAll(' ', '\u00a0') })}
        </h3>
        <p>
          {top}
          {hasDepths && `; ${say('search.item.depth', { depth: lengthText(found.quick.depth, units) })}`}
        </p>
        {beatenBy !== null && (
          <p className="search-beaten">{say('search.item.beaten', { place: places.get(beatenBy) ?? 0 })}</p>
        )}
        <button
          type="button"
          className="search-take"
          disabled={isInHand}
          aria-label={isInHand ? say('choose.inHand.spoken', pair) : say('search.item.take', { ...pair, top })}
          onClick={() => onTake((present, index) => changesNow(present, index, asked, found))}
        >
          {say(isInHand ? 'choose.inHand' : 'choose.take')}
        </button>
      </div>
      <dl>
        {FIGURE_ROWS.map((row) => {
          const value = rowValue(say, row, planned.figures, units);
          return (
            <div key={row.name}>
              <dt>{say(`choose.row.${row.name}`)}</dt>
              <dd>{value.kind === 'words' ? <b>{value.text}</b> : <Figure of={value.figure} />}</dd>
            </div>
          );
        })}
      </dl>
      <ul className="search-cautions">
        {planned.cautions.map((finding) => (
          <li key={`${finding.kind} ${finding.field}`}>
            {say(finding.status === 'close' ? 'tag.close' : 'tag.breaks')}: {ruleWords(say, finding.field)},{' '}
            {actualWords(say, finding)}, {limitWords(say, finding)}
          </li>
        ))}
      </ul>
    </li>
  );
}
