/** Plane points in millimetres. Which frame they are in is said where they are made. */

export interface Point {
  readonly x: number;
  readonly y: number;
}

export function point(x: number, y: number): Point {
  return { x, y };
}

export function distance(a: Point, b: Point): number {
  return Math.hypot(b.x - a.x, b.y - a.y);
}

/**
 * Turns and moves a point: first by the angle (radians, counter-clockwise), then by the offset.
 * Lengths are kept, so a board outline keeps its true size.
 */
export function turnAndMove(p: Point, angle: number, offset: Point): Point {
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  return { x: p.x * cos - p.y * sin + offset.x, y: p.x * sin + p.y * cos + offset.y };
}

/** Area enclosed by the corners, positive if they run counter-clockwise. Square millimetres. */
export function signedArea(corners: readonly Point[]): number {
  let twice = 0;
  corners.forEach((corner, index) => {
    const next = corners[(index + 1) % corners.length] as Point;
    twice += corner.x * next.y - next.x * corner.y;
  });
  return twice / 2;
}
