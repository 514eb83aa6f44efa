/** The small forms that results are written in: a titled sheet, rows of figures, and sums with their words. */
import type { ReactNode } from 'react';
import '../../text/lateFigures';
import { figureOf } from '../../core/drawing/figures';
import type { Measure } from '../../core/explain/measures';
import type { Rounding } from '../../core/units/rounding';
import { Explained } from '../explain/Explained';
import { Figure } from '../numbers/Figure';
import { decimalOf } from '../numbers/figures';
import { useStair } from '../stairOnShow';

interface SheetProps {
  readonly name: string;
  readonly title: string;
  readonly lead?: string;
  readonly children: ReactNode;
}

export function Sheet({ name, title, lead, children }: SheetProps) {
  return (
    <section className={`sheet sheet-${name}`} aria-labelledby={`sheet-${name}`}>
      <h2 id={`sheet-${name}`}>{title}</h2>
      {lead !== undefined && <p className="hint">{lead}</p>}
      {children}
    </section>
  );
}

export function Rows({ children }: { readonly children: ReactNode }) {
  return <dl className="rows">{children}</dl>;
}

interface RowProps {
  readonly words: string;
  readonly mm: number;
  readonly rounding?: Rounding;
  /** The same as a decimal too, where a setting needs it. */
  readonly decimal?: boolean;
  /** What is said of it when it is asked about. */
  readonly measure?: Measure;
}

export function Row({ words, mm, rounding = 'nearest', decimal = false, measure }: RowProps) {
  const { units } = useStair();
  return (
    <WordsRow words={words}>
      {decimal && units === 'imperial' && <span className="decimal">{decimalOf(mm, units)}</span>}
      <Asked measure={measure}>
        <Figure of={figureOf(mm, units, rounding)} />
      </Asked>
    </WordsRow>
  );
}

/** A number that may have an explanation. */
function Asked({ measure, children }: { readonly measure: Measure | undefined; readonly children: ReactNode }) {
  return measure === undefined ? children : <Explained measure={measure}>{children}</Explained>;
}

export function WordsRow({ words, children }: { readonly words: string; readonly children: ReactNode }) {
  return (
    <div className="row">
      <dt>{words}</dt>
      <dd>{children}</dd>
    </div>
  );
}

export interface SumLine {
  readonly sign: '' | '+' | '−';
  /** Null: nobody knows it yet. */
  readonly mm: number | null;
  readonly words: string;
  /** What is marked for it, where that is coarser than the sum. */
  readonly marked?: number;
  readonly measure?: Measure;
}

/**
 * A sum as it would stand on a scrap of board, signs and words beside it. The decimals add up;
 * the tape's figures are each rounded on their own.
 */
export function Sum({ lines, total }: { readonly lines: readonly SumLine[]; readonly total: SumLine }) {
  const { say } = useStair();
  const isDraft = lines.some(({ mm }) => mm === null);
  return (
    <table className="sum">
      <tbody>
        {lines.map((line) => (
          <SumRow key={line.words} line={line} />
        ))}
      </tbody>
      <tfoot>
        <SumRow line={isDraft ? { ...total, words: say('sum.draft', { words: total.words }) } : total} isTotal />
      </tfoot>
    </table>
  );
}

interface SumRowProps {
  readonly line: SumLine;
  readonly isTotal?: boolean;
}

function SumRow({ line: { sign, mm, words, marked, measure }, isTotal = false }: SumRowProps) {
  const { units, say } = useStair();
  return (
    <tr className={isTotal ? 'sum-total' : 'sum-line'}>
      <td className="sum-sign">{sign}</td>
      <td className="sum-figure">
        {mm === null ? (
          <b className="not-known">?</b>
        ) : (
          <Asked measure={measure}>
            <Figure of={figureOf(marked ?? mm, units)} />
          </Asked>
        )}
      </td>
      <th scope="row">{mm === null ? `${words}: ${say('drawing.notKnown')}` : words}</th>
      {units === 'imperial' && <td className="decimal">{mm === null ? '' : decimalOf(mm, units)}</td>}
    </tr>
  );
}
