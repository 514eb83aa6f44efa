/** Hatching on the waste side of a cut, so that nobody has to think which side of a line the saw runs. */
import { type Point, point } from '../geometry/point';

/** How far the hatching reaches into the waste, and how far apart its strokes are. Millimetres. */
export interface HatchSize {
  readonly reach: number;
  readonly spacing: number;
}

export const FULL_SIZE_HATCH: HatchSize = { reach: 5, spacing: 3.5 };
/** Strokes lean this much along the edge for each millimetre away from it. */
const LEAN = 0.7;

export type Stroke = readonly [Point, Point];

/**
 * @param edges cuts, as pairs of points
 * @param outline the closed figure that they bound
 * @param waste which side of the outline is thrown away
 */
export function hatchAlong(
  edges: readonly Stroke[],
  outline: readonly Point[],
  waste: 'inside' | 'outside',
  size: HatchSize = FULL_SIZE_HATCH,
): readonly Stroke[] {
  return edges.flatMap(([a, b]) => {
    const length = Math.hypot(b.x - a.x, b.y - a.y);
    const along = point((b.x - a.x) / length, (b.y - a.y) / length);
    const left = point(-along.y, along.x);
    const probe = point((a.x + b.x) / 2 + left.x * 0.1, (a.y + b.y) / 2 + left.y * 0.1);
    const side = isInside(probe, outline) === (waste === 'inside') ? 1 : -1;
    const reach = point((left.x * side + along.x * LEAN) * size.reach, (left.y * side + along.y * LEAN) * size.reach);
    const count = Math.floor(length / size.spacing);
    return Array.from({ length: count }, (_, i) => {
      const from = (i + 0.5) * (length / count);
      const foot = point(a.x + along.x * from, a.y + along.y * from);
      return pieces(foot, point(foot.x + reach.x, foot.y + reach.y), outline, waste);
    }).flat();
  });
}

/** The parts of a stroke that lie in the waste. */
function pieces(a: Point, b: Point, outline: readonly Point[], waste: 'inside' | 'outside'): Stroke[] {
  const shares = [0, ...crossings(a, b, outline), 1].sort((one, other) => one - other);
  const at = (share: number) => point(a.x + (b.x - a.x) * share, a.y + (b.y - a.y) * share);
  return shares.slice(1).flatMap((to, i) => {
    const from = shares[i] as number;
    // The stroke starts on the outline itself: what is shorter than a hair is that touch.
    if (to - from < 0.02) return [];
    return isInside(at((from + to) / 2), outline) === (waste === 'inside') ? [[at(from), at(to)] as const] : [];
  });
}

function crossings(a: Point, b: Point, outline: readonly Point[]): number[] {
  const shares: number[] = [];
  let c = outline.at(-1) as Point;
  for (const d of outline) {
    if (!areApart(a, b, c, d)) {
      const turn = (b.x - a.x) * (d.y - c.y) - (b.y - a.y) * (d.x - c.x);
      const share = ((c.x - a.x) * (d.y - c.y) - (c.y - a.y) * (d.x - c.x)) / turn;
      const other = ((c.x - a.x) * (b.y - a.y) - (c.y - a.y) * (b.x - a.x)) / turn;
      if (turn !== 0 && share > 0 && share < 1 && other >= 0 && other <= 1) shares.push(share);
    }
    c = d;
  }
  return shares;
}

/** Most edges are nowhere near a stroke, and need no sum. */
function areApart(a: Point, b: Point, c: Point, d: Point): boolean {
  if (Math.max(c.x, d.x) < Math.min(a.x, b.x) || Math.min(c.x, d.x) > Math.max(a.x, b.x)) return true;
  return Math.max(c.y, d.y) < Math.min(a.y, b.y) || Math.min(c.y, d.y) > Math.max(a.y, b.y);
}

/** By counting what a ray to the right crosses. */
function isInside(p: Point, outline: readonly Point[]): boolean {
  let inside = false;
  let a = outline.at(-1) as Point;
  for (const b of outline) {
    if (a.y > p.y !== b.y > p.y && p.x < a.x + ((p.y - a.y) / (b.y - a.y)) * (b.x - a.x)) inside = !inside;
    a = b;
  }
  return inside;
}
