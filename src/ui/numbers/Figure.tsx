/** A number in running text or large: whole bold, fraction stacked on a bar, `+` for heavy. */
import type { FigureText } from '../../core/drawing/drawing';
import { plainFigure } from './figures';

export function Figure({ of }: { readonly of: FigureText }) {
  if (of.kind === 'digits') return <b className="figure">{of.text}</b>;
  const { negative, whole, numerator, denominator, heavy } = of.number;
  const bare = whole === 0 && numerator !== 0;
  return (
    <span className="figure">
      <span aria-hidden="true" className="figure-shape">
        {negative && '−'}
        {!bare && <b>{whole}</b>}
        {numerator !== 0 && (
          <span className="stack">
            <span className="stack-top">{numerator}</span>
            <span>{denominator}</span>
          </span>
        )}
        {heavy && <span className="heavy">+</span>}
      </span>
      <span className="unseen">{spoken(of)}</span>
    </span>
  );
}

/** In a column: whole numbers end where fractions begin. */
export function ColumnFigure({ of }: { readonly of: FigureText }) {
  const [whole, ...rest] = of.kind === 'digits' ? of.text.split('.') : splitTape(plainFigure(of));
  const after = of.kind === 'digits' && rest.length > 0 ? `.${rest.join('')}` : rest.join(' ');
  return (
    <span className={of.kind === 'digits' ? 'column-figure digits' : 'column-figure'}>
      <b>{whole}</b>
      <span>
        {after.replace('+', '')}
        {after.includes('+') && (
          <>
            <span aria-hidden="true">+</span>
            <span className="unseen">heavy</span>
          </>
        )}
      </span>
    </span>
  );
}

function splitTape(text: string): string[] {
  return /^-?\d+\//.test(text) ? ['', text] : text.split(' ');
}

function spoken(of: FigureText): string {
  return plainFigure(of).replace('+', 'heavy');
}
