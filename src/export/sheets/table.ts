/** Tables on paper: a head, ruled rows, words that wrap in their column, figures that line up. */
import type { FigureText } from '../../core/drawing/drawing';
import { LEADING, type PageSketch, PRINT, wrap } from '../../core/drawing/pageSketch';
import { point } from '../../core/geometry/point';

export type CellText =
  | { readonly kind: 'words'; readonly text: string; readonly strong?: boolean }
  | { readonly kind: 'figure'; readonly figure: FigureText }
  /** A whole number, ending where those of figures end. */
  | { readonly kind: 'count'; readonly text: string }
  /** An empty place to write in. */
  | { readonly kind: 'blank' };

export interface Column {
  readonly head: string;
  readonly width: number;
}

export interface TableArea {
  readonly left: number;
  readonly top: number;
  readonly bottom: number;
}

export interface TableStyle {
  readonly size: number;
  readonly rowHeight: number;
}

export const FIGURES: TableStyle = { size: PRINT.figure, rowHeight: 6.1 };
export const WORDS: TableStyle = { size: PRINT.body, rowHeight: 5.8 };
export const SMALL: TableStyle = { size: PRINT.small, rowHeight: 4.9 };

/** Between one column's words and the next. */
const GUTTER = 3;
/** Where a column's fractions begin, from its left edge, in ems: room for four digits before them. */
const WHOLE_EMS = 2.7;

export function words(text: string, strong = false): CellText {
  return { kind: 'words', text, strong };
}

export function figure(of: FigureText): CellText {
  return { kind: 'figure', figure: of };
}

export function count(of: number): CellText {
  return { kind: 'count', text: String(of) };
}

export const BLANK: CellText = { kind: 'blank' };

/**
 * Draws as many rows as there is room for.
 * @returns how many were drawn, and the height under the last of them
 */
export function drawTable(
  sketch: PageSketch,
  area: TableArea,
  columns: readonly Column[],
  rows: readonly (readonly CellText[])[],
  style: TableStyle,
): { readonly drawn: number; readonly bottom: number } {
  const right = area.left + columns.reduce((sum, { width }) => sum + width, 0);
  let y = drawHead(sketch, area, columns);
  sketch.level('rule-strong', area.left, right, y);
  let drawn = 0;
  for (const row of rows) {
    const lines = row.map((cell, i) => linesOf(sketch, cell, (columns[i] as Column).width, style));
    const most = Math.max(1, ...lines.map((cell) => cell.length));
    const height = most === 1 ? style.rowHeight : Math.max(style.rowHeight, most * style.size * LEADING + 1.4);
    if (y - height < area.bottom) break;
    drawRow(sketch, { left: area.left, top: y, bottom: y - height }, columns, row, lines, style);
    y -= height;
    sketch.level('rule', area.left, right, y);
    drawn += 1;
  }
  return { drawn, bottom: y };
}

function drawHead(sketch: PageSketch, area: TableArea, columns: readonly Column[]): number {
  const heads = columns.map(({ head, width }) =>
    wrap(head, () => (width - GUTTER) / PRINT.small, false, sketch.measure),
  );
  const most = Math.max(0, ...heads.map((lines) => lines.length));
  const line = PRINT.small * 1.25;
  const bottom = area.top - most * line - 1;
  let left = area.left;
  heads.forEach((lines, i) => {
    lines.forEach((text, k) => {
      const y = bottom + 0.6 + (lines.length - k - 0.5) * line;
      sketch.words('small', point(left, y), text, PRINT.small);
    });
    left += (columns[i] as Column).width;
  });
  return bottom;
}

function linesOf(sketch: PageSketch, cell: CellText, width: number, { size }: TableStyle): readonly string[] {
  if (cell.kind !== 'words') return [];
  return wrap(cell.text, () => (width - GUTTER) / size, cell.strong === true, sketch.measure);
}

function drawRow(
  sketch: PageSketch,
  area: TableArea,
  columns: readonly Column[],
  row: readonly CellText[],
  lines: readonly (readonly string[])[],
  { size }: TableStyle,
): void {
  const middle = (area.top + area.bottom) / 2;
  let left = area.left;
  row.forEach((cell, i) => {
    const { width } = columns[i] as Column;
    if (cell.kind === 'figure') sketch.column(point(left + WHOLE_EMS * size, middle), cell.figure, size);
    if (cell.kind === 'count') {
      sketch.words('body-strong', point(left + WHOLE_EMS * size, middle), cell.text, size, 'end');
    }
    if (cell.kind === 'blank') sketch.upright('rule', left - GUTTER / 2, area.bottom, area.top);
    const own = lines[i] ?? [];
    own.forEach((text, k) => {
      const y = middle + (own.length / 2 - k - 0.5) * size * LEADING;
      sketch.words(cell.kind === 'words' && cell.strong ? 'body-strong' : 'body', point(left, y), text, size);
    });
    left += width;
  });
}
