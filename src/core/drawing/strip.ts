/** What of a closed outline lies between two upright lines. Sutherland and Hodgman's way, one side at a time. */
import { type Point, point } from '../geometry/point';
import type { Box } from './drawing';

export function clipToStrip(corners: readonly Point[], left: number, right: number): readonly Point[] {
  return clip(clip(corners, left, 1), right, -1);
}

/** What of a closed outline lies in a box. */
export function clipToBox(corners: readonly Point[], box: Box): readonly Point[] {
  const upright = clipToStrip(corners, box.left, box.right);
  return clipToStrip(upright.map(swap), box.bottom, box.top).map(swap);
}

function swap({ x, y }: Point): Point {
  return point(y, x);
}

/** Keeps the side where (x − at) · side is not negative. */
function clip(corners: readonly Point[], at: number, side: 1 | -1): readonly Point[] {
  const kept: Point[] = [];
  corners.forEach((corner, index) => {
    const next = corners[(index + 1) % corners.length] as Point;
    const here = (corner.x - at) * side;
    const there = (next.x - at) * side;
    if (here >= 0) kept.push(corner);
    if (here * there < 0) {
      const share = here / (here - there);
      kept.push(point(at, corner.y + (next.y - corner.y) * share));
    }
  });
  return kept;
}

/** The part of one straight line that lies between two upright lines, or null if none does. */
export function clipLine(a: Point, b: Point, left: number, right: number): readonly [Point, Point] | null {
  if (Math.max(a.x, b.x) <= left || Math.min(a.x, b.x) >= right) return null;
  const at = (x: number) => point(x, a.x === b.x ? a.y : a.y + ((b.y - a.y) * (x - a.x)) / (b.x - a.x));
  const within = (p: Point) => (p.x < left ? at(left) : p.x > right ? at(right) : p);
  return [within(a), within(b)];
}

/** The part of one straight line that lies in a box, or null if none does. */
export function clipLineToBox(a: Point, b: Point, box: Box): readonly [Point, Point] | null {
  const upright = clipLine(a, b, box.left, box.right);
  if (upright === null) return null;
  const level = clipLine(swap(upright[0]), swap(upright[1]), box.bottom, box.top);
  return level && [swap(level[0]), swap(level[1])];
}
