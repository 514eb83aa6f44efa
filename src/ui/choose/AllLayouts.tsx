/** Every layout that was worked out, one a row, in the order of any column; not on a telephone, which has no room for it. */
import { useState } from 'react';
import type { Alternative, Outcome } from '../../core/choose/compareLayouts';
import { figureOf } from '../../core/drawing/figures';
import { AnswerTag } from '../findings/AnswerTag';
import { Figure } from '../numbers/Figure';
import { lengthText } from '../numbers/figures';
import { useStair } from '../stairOnShow';
import { FIGURE_ROWS, type RowName } from './figureRows';
import { RowFigure } from './LayoutCard';
import { answerOf } from './neighbours';
import './all.css';

interface AllLayoutsProps {
  readonly all: readonly Alternative[];
  readonly onTake: (alternative: Alternative) => void;
}

/** Left out where the place is narrower than a whole desk. */
const WIDE_ONLY: readonly Column[] = ['pitch', 'totalRun', 'stock', 'throat', 'headerContact'];
const widthOf = (column: Column) => (WIDE_ONLY.includes(column) ? 'wide-only' : undefined);

type Column = 'risers' | RowName | 'answer';
interface Order {
  readonly by: Column;
  readonly isDown: boolean;
}

const ROWS = FIGURE_ROWS.filter(({ name }) => name !== 'board');
const COLUMNS: readonly Column[] = ['risers', ...ROWS.map(({ name }) => name), 'answer'];

export function AllLayouts({ all, onTake }: AllLayoutsProps) {
  const { say } = useStair();
  const [order, setOrder] = useState<Order>({ by: 'risers', isDown: false });
  const sortBy = (by: Column) => setOrder({ by, isDown: order.by === by && !order.isDown });
  return (
    <section className="sheet choose-all" aria-labelledby="choose-all-title">
      <h2 id="choose-all-title">{say('choose.all')}</h2>
      <p className="hint">{say('choose.all.lead')}</p>
      <table>
        <thead>
          <tr>
            {COLUMNS.map((column) => (
              <Heading key={column} column={column} order={order} onSort={sortBy} />
            ))}
          </tr>
        </thead>
        <tbody>
          {sorted(all, order).map((alternative) => (
            <Row key={alternative.id} alternative={alternative} onTake={onTake} />
          ))}
        </tbody>
      </table>
    </section>
  );
}

interface HeadingProps {
  readonly column: Column;
  readonly order: Order;
  readonly onSort: (column: Column) => void;
}

function Heading({ column, order, onSort }: HeadingProps) {
  const { say } = useStair();
  const isSorted = order.by === column;
  const name =
    column === 'risers'
      ? say('choose.risers')
      : column === 'answer'
        ? say('choose.all.answer')
        : say(`choose.row.${column}`);
  return (
    <th
      scope="col"
      className={widthOf(column)}
      aria-sort={isSorted ? (order.isDown ? 'descending' : 'ascending') : 'none'}
    >
      <button type="button" onClick={() => onSort(column)}>
        {name}
        {isSorted && <span aria-hidden="true">{order.isDown ? ' ▾' : ' ▴'}</span>}
      </button>
    </th>
  );
}

function Row({ alternative, onTake }: { readonly alternative: Alternative } & Pick<AllLayoutsProps, 'onTake'>) {
  const { say, units } = useStair();
  const { risers, run, chosen, outcome } = alternative;
  const pair = { risers, run: lengthText(run, units) };
  const answer = answerOf(alternative);
  return (
    <tr className={chosen ? 'in-hand' : ''}>
      <th scope="row">
        <button
          type="button"
          disabled={outcome === null}
          aria-pressed={chosen}
          aria-label={say(chosen ? 'choose.inHand.spoken' : 'choose.take.spoken', pair)}
          onClick={() => onTake(alternative)}
        >
          {risers}
        </button>
      </th>
      {ROWS.map((row) => (
        <td key={row.name} className={widthOf(row.name)}>
          {outcome !== null && <RowFigure row={row} outcome={outcome} />}
          {outcome === null && row.name === 'run' && <Figure of={figureOf(run, units)} />}
        </td>
      ))}
      <td>{answer === 'none' ? say('choose.cannot') : <AnswerTag answer={answer} />}</td>
    </tr>
  );
}

/** What is not worked out comes last either way. */
function sorted(all: readonly Alternative[], { by, isDown }: Order): readonly Alternative[] {
  const value = (one: Alternative): number | null => {
    if (by === 'risers') return one.risers;
    if (by === 'run') return one.run;
    if (one.outcome === null) return null;
    return by === 'answer' ? troubles(one.outcome) : (one.outcome.figures[keyOf(by)] ?? null);
  };
  return [...all].sort((a, b) => {
    const [x, y] = [value(a), value(b)];
    if (x === null || y === null) return Number(x === null) - Number(y === null);
    return isDown ? y - x : x - y;
  });
}

function keyOf(name: RowName) {
  return (FIGURE_ROWS.find((row) => row.name === name) as (typeof FIGURE_ROWS)[number]).of;
}

function troubles({ breaksRules, breaksBuild }: Outcome): number {
  return breaksRules.length + breaksBuild.length;
}
