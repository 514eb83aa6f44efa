/** A list that may need more than one sheet, under one title. */
import type { PageScale } from '../../core/drawing/page';
import { PageSketch } from '../../core/drawing/pageSketch';
import type { Leaf, LeafContext } from './leaf';
import { type CellText, type Column, drawTable, type TableStyle } from './table';

export interface List {
  readonly title: string;
  readonly under: string;
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly CellText[])[];
  readonly style: TableStyle;
}

export const NO_SCALE: PageScale = { kind: 'none' };

/** @param onFirst draws above or beside the list on its first sheet, and gives back where the list begins */
export function listLeaves(
  { content, measure }: LeafContext,
  list: List,
  onFirst: (sketch: PageSketch) => number = () => content.top,
): readonly Leaf[] {
  const leaves: Leaf[] = [];
  let left: readonly (readonly CellText[])[] = list.rows;
  do {
    const sketch = new PageSketch(measure);
    const top = leaves.length === 0 ? onFirst(sketch) : content.top;
    const area = { left: content.left, top, bottom: content.bottom };
    const { drawn } = drawTable(sketch, area, list.columns, left, list.style);
    leaves.push({ title: list.title, under: list.under, scale: NO_SCALE, marks: sketch.marks });
    // A row that fits no sheet at all would be asked for for ever.
    left = left.slice(Math.max(1, drawn));
  } while (left.length > 0);
  return leaves;
}
