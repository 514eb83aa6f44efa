/**
 * Which pairs of riser count and run are allowed with one top, as a picture: a row for each count, a cell for
 * each run on the grid, and in each cell what closes it. An edge is where that changes from one cell to the next.
 */
import type { StringerTop } from '../job/jobText';
import { inchMm } from '../units/exact';
import type { EdgeKind } from './bounds';
import type { Study } from './study';

/** What closes a cell; more than one may. `none`: no stair comes out at all. */
export type Closed = EdgeKind | 'none';
export const CLOSED: readonly Closed[] = ['rule', 'headroom', 'run', 'stock', 'none'];

export interface RegionRow {
  readonly risers: number;
  /** Millimetres. */
  readonly unitRise: number;
  /** For each run from the first on: a bit for each of CLOSED, in that order; 0 is allowed. */
  readonly cells: readonly number[];
}

export interface Region {
  readonly top: StringerTop;
  /** First and last run, in steps of the grid. */
  readonly from: number;
  readonly to: number;
  readonly rows: readonly RegionRow[];
}

/** Between two cells. */
export interface Edge {
  readonly kind: Closed;
  /** Steps of the grid: half a step past the cell that lies before it. */
  readonly at: number;
  /** True where the longer run is the closed one. */
  readonly closesLonger: boolean;
}

export interface Spot {
  readonly risers: number;
  readonly steps: number;
}

const MOST_ROWS = 9;
/** Counts either side of a stair where nothing is allowed, and inches of run. */
const AROUND = 2;

/** @param now the stair in hand: always within the rows */
export function regionOf({ result }: Pick<Study, 'result'>, top: StringerTop, now: Spot): Region {
  const { frame, sifter } = result;
  const allowed = result.found.filter((one) => one.top === top);
  const [first, last] = rowsOf(
    allowed.map(({ risers }) => risers),
    now.risers,
    frame,
  );
  const inRows = allowed.filter(({ risers }) => risers >= first && risers <= last).map(({ steps }) => steps);
  const inch = Math.round(inchMm(1) / frame.gridMm);
  const [least, most] = inRows.length === 0 ? [now.steps, now.steps] : [Math.min(...inRows), Math.max(...inRows)];
  const beside = inRows.length === 0 ? AROUND * inch : inch;
  const near = Math.abs(now.steps - least) < 6 * inch ? now.steps : least;
  const from = Math.max(frame.leastSteps, Math.min(least, near) - beside);
  const to = Math.min(frame.mostSteps, Math.max(most, near, from + 2 * inch) + beside);
  const rows = Array.from({ length: last - first + 1 }, (_, i) => {
    const risers = first + i;
    const cells = Array.from({ length: to - from + 1 }, (__, at) => cellOf(sifter, top, risers, from + at));
    return { risers, unitRise: sifter.quick(top, risers, from, 0).unitRise, cells };
  });
  return { top, from, to, rows };
}

function rowsOf(allowed: readonly number[], now: number, frame: { fewest: number; most: number }): [number, number] {
  const [least, most] = allowed.length === 0 ? [now, now] : [Math.min(...allowed), Math.max(...allowed)];
  const beside = allowed.length === 0 ? AROUND : 1;
  let first = Math.max(frame.fewest, Math.min(least - beside, now));
  let last = Math.min(frame.most, Math.max(most + beside, now));
  if (last - first + 1 > MOST_ROWS) {
    first = Math.max(first, Math.min(now - Math.floor(MOST_ROWS / 2), last - MOST_ROWS + 1));
    last = Math.min(last, first + MOST_ROWS - 1);
  }
  return [Math.min(first, last), last];
}

/** Of several boards the one that is closed by the least. */
function cellOf(sifter: Study['result']['sifter'], top: StringerTop, risers: number, steps: number): number {
  let best: number | null = null;
  for (let depthAt = 0; depthAt < sifter.depthCount; depthAt += 1) {
    const broken = sifter.broken(top, risers, steps, depthAt);
    const kinds = new Set<Closed>(broken === null ? ['none'] : broken.map((at) => sifter.bounds[at]?.edge ?? 'rule'));
    const bits = CLOSED.reduce((sum, kind, bit) => sum + (kinds.has(kind) ? 2 ** bit : 0), 0);
    if (bits === 0) return 0;
    if (best === null || kinds.size <= kindsIn(best).length) best = bits;
  }
  return best ?? 0;
}

export function kindsIn(cell: number): readonly Closed[] {
  return CLOSED.filter((_, bit) => Math.floor(cell / 2 ** bit) % 2 === 1);
}

/** Neighbouring cells that are closed by the same. */
export function stretchesOf({ cells }: RegionRow, from: number): readonly { from: number; to: number; cell: number }[] {
  const stretches: { from: number; to: number; cell: number }[] = [];
  cells.forEach((cell, at) => {
    const before = stretches.at(-1);
    if (before !== undefined && before.cell === cell) before.to = from + at;
    else stretches.push({ from: from + at, to: from + at, cell });
  });
  return stretches;
}

export function edgesOf({ cells }: RegionRow, from: number): readonly Edge[] {
  return CLOSED.flatMap((kind) =>
    cells.flatMap((cell, at): Edge[] => {
      const next = cells[at + 1];
      if (next === undefined) return [];
      const [here, there] = [kindsIn(cell).includes(kind), kindsIn(next).includes(kind)];
      return here === there ? [] : [{ kind, at: from + at + 0.5, closesLonger: there }];
    }),
  );
}

/**
 * The point that a finger means: the allowed one nearest to where it came down, if one is within reach; else
 * the cell itself.
 * @param reach in steps of the grid
 */
export function spotAt({ from, to, rows }: Region, row: number, steps: number, reach: number): Spot | null {
  const at = rows[row];
  if (at === undefined) return null;
  const here = Math.min(to, Math.max(from, Math.round(steps)));
  for (let by = 0; by <= reach; by += 1) {
    for (const near of [here - by, here + by]) {
      if (near >= from && near <= to && at.cells[near - from] === 0) return { risers: at.risers, steps: near };
    }
  }
  return { risers: at.risers, steps: here };
}
