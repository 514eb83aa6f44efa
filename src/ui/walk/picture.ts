/**
 * A small picture of what is being marked, without one length in it. Pixels, y down. Everything that a
 * walk's picture has in common is here; what is drawn for a list is in a file of its own.
 */
import type { Point } from '../../core/geometry/point';
import { point } from '../../core/geometry/point';

export type PictureRole = 'wood' | 'blank' | 'house' | 'line' | 'heavy-line' | 'gauge' | 'to-come';

export interface PictureShape {
  readonly role: PictureRole;
  readonly corners: readonly Point[];
  readonly closed: boolean;
}

/** Where a mark of the list stands, and which way its head or stem goes: a unit vector. */
export interface PictureMark {
  readonly id: string;
  readonly at: Point;
  readonly out: Point;
}

export interface Picture {
  readonly shapes: readonly PictureShape[];
  readonly marks: readonly PictureMark[];
  /** The tape's way to the mark, hooked on where it begins. */
  readonly run: readonly [Point, Point];
  /** The crow's foot points at the end of the run, and opens this way. */
  readonly opens: Point;
}

export interface PictureSize {
  readonly width: number;
  readonly height: number;
}

export const UP = point(0, -1);
export const DOWN = point(0, 1);
export const LEFT = point(-1, 0);
export const RIGHT = point(1, 0);

export function shape(role: PictureRole, ...corners: Point[]): PictureShape {
  return { role, corners, closed: true };
}

export function line(role: PictureRole, ...corners: Point[]): PictureShape {
  return { role, corners, closed: false };
}

export function box(role: PictureRole, left: number, top: number, right: number, bottom: number): PictureShape {
  return shape(role, point(left, top), point(right, top), point(right, bottom), point(left, bottom));
}

/** A break in something that is longer than it is drawn: two short strokes across it. */
export function breakMark(x: number, y: number): PictureShape[] {
  return [x - 4, x + 4].map((at) => line('heavy-line', point(at - 5, y + 12), point(at + 5, y - 12)));
}
