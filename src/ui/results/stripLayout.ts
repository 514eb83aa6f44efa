/**
 * Where the boards of the riser strip stand. Pixels, y down. Each riser is a board under its tread;
 * a break takes out the equal middle, so that the last bit of height is drawn large. The band is the
 * rules' limit: round the risers while they fit in it, else round the common one, so that whoever
 * sticks out is seen to be the one.
 */
import type { FigureText } from '../../core/drawing/drawing';
import { figureOf } from '../../core/drawing/figures';
import { contentEms } from '../../core/drawing/sketch';
import type { UnitSystem } from '../../core/units/length';

export interface StripBoard {
  readonly number: number;
  readonly figure: FigureText;
  readonly size: number;
  readonly left: number;
  readonly width: number;
  /** y of the tread's top. */
  readonly top: number;
  /** How far from the common riser, in mm, where the band is left; 0 inside it. */
  readonly off: number;
  readonly isEnd: boolean;
}

export interface StripRow {
  readonly boards: readonly StripBoard[];
  readonly right: number;
}

export interface StripLayout {
  readonly rows: readonly StripRow[];
  readonly bandTop: number;
  readonly bandBottom: number;
  readonly hasBand: boolean;
}

/** Heights within one row. */
export const STRIP = { numbers: 26, common: 90, foot: 152, label: 170, height: 184, breakAt: 132 } as const;
const LIMIT_ROOM = 62;
interface Type {
  readonly end: { readonly size: number; readonly air: number };
  readonly inner: { readonly size: number; readonly air: number };
}
const LARGE: Type = { end: { size: 32, air: 22 }, inner: { size: 22, air: 12 } };
/** Smaller figures, where they save a second row; what takes more rows all the same stays large. */
const SMALLER: readonly Type[] = [
  { end: { size: 28, air: 14 }, inner: { size: 18, air: 7 } },
  { end: { size: 22, air: 8 }, inner: { size: 15, air: 5 } },
];
const WIDEST = 92;
/** Pixels to a millimetre of riser. */
const SCALE = 2;
/** Beyond this the board is drawn at this; the number tells. */
const FARTHEST_MM = 16;

/**
 * @param risers finished heights in mm, the first one first
 * @param limit greatest spread that the rules allow, or null where they have none
 */
export function layStrip(
  risers: readonly number[],
  limit: number | null,
  units: UnitSystem,
  width: number,
): StripLayout {
  const figures = risers.map((riser) => figureOf(riser, units));
  const common = median(risers);
  const middle = fits(risers, limit) ? (Math.max(...risers) + Math.min(...risers)) / 2 : common;
  const half = (limit ?? 0) / 2;
  const room = limit === null ? width : width - LIMIT_ROOM;
  const wantedBy = (type: Type) => wantedWidths(figures, type);
  const type = [LARGE, ...SMALLER].find((each) => sumOf(wantedBy(each)) <= room) ?? LARGE;
  const wants = wantedBy(type);
  const spans = breakRows(wants, room);
  const fullest = Math.max(...spans.map(({ from, to }) => sumOf(wants.slice(from, to))));
  const stretch = Math.max(1, Math.min(room / fullest, WIDEST / (wants[1] ?? WIDEST), 1.6));
  const rows = spans.map(({ from, to }) => {
    let left = 0;
    const boards = figures.slice(from, to).map((figure, offset) => {
      const cell = (wants[from + offset] as number) * stretch;
      left += cell;
      return makeBoard(from + offset, figure, left - cell, cell);
    });
    return { boards, right: Math.round(left) };
  });
  return {
    rows,
    bandTop: STRIP.common - (middle + half - common) * SCALE,
    bandBottom: STRIP.common - (middle - half - common) * SCALE,
    hasBand: limit !== null,
  };

  function makeBoard(index: number, figure: FigureText, left: number, cell: number): StripBoard {
    const riser = risers[index] as number;
    const end = isEnd(index, risers.length);
    const rise = Math.max(-FARTHEST_MM, Math.min(FARTHEST_MM, riser - common));
    const outside = limit !== null && Math.abs(riser - middle) > half + LEAST_MM;
    return {
      number: index + 1,
      figure,
      size: end ? type.end.size : type.inner.size,
      left: Math.round(left + cell * 0.12),
      width: Math.round(cell * 0.76),
      top: STRIP.common - Math.round(rise * SCALE * 10) / 10,
      off: outside ? riser - common : 0,
      isEnd: end,
    };
  }
}

/** Far below what the strip can show. */
const LEAST_MM = 0.001;

function fits(risers: readonly number[], limit: number | null): boolean {
  return limit === null || Math.max(...risers) - Math.min(...risers) <= limit + LEAST_MM;
}

function isEnd(index: number, count: number): boolean {
  return index === 0 || index === count - 1;
}

/** Inner boards are all as wide as the widest of them needs. */
function wantedWidths(figures: readonly FigureText[], type: Type): readonly number[] {
  const inner = Math.max(0, ...figures.slice(1, -1).map((figure) => wanted(figure, type.inner)));
  return figures.map((figure, i) => (isEnd(i, figures.length) ? wanted(figure, type.end) : inner));
}

function wanted(figure: FigureText, { size, air }: Type['end']): number {
  return contentEms(figure) * size + air;
}

function sumOf(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

/** As few rows as hold them all, evenly filled. */
function breakRows(wants: readonly number[], room: number): { from: number; to: number }[] {
  const total = sumOf(wants);
  const count = Math.max(1, Math.ceil(total / Math.max(1, room)));
  const share = total / count;
  const rows: { from: number; to: number }[] = [];
  let from = 0;
  let filled = 0;
  wants.forEach((want, index) => {
    const full = filled + want > room || (filled >= share && rows.length < count - 1);
    if (full && index > from) {
      rows.push({ from, to: index });
      from = index;
      filled = 0;
    }
    filled += want;
  });
  rows.push({ from, to: wants.length });
  return rows;
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] as number;
}
