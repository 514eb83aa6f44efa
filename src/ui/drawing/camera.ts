/**
 * Where one looks at a drawing from: a middle and a zoom, in the drawing's own millimetres, so that a
 * stair that is typed over stays where it was looked at. Pixels count from the view's upper left
 * corner, y down; the drawing's y goes up. Nothing here knows a browser.
 *
 * A camera is always held: never farther than the whole, never closer than the closest, never beyond
 * the frame, and never where there is no ink to be seen. So a drawing cannot be lost.
 */
import type { Box, Drawing } from '../../core/drawing/drawing';
import { clipLineToBox } from '../../core/drawing/strip';
import { type Point, point } from '../../core/geometry/point';

export interface Camera {
  /** 1 shows the whole. */
  readonly zoom: number;
  readonly x: number;
  readonly y: number;
}

type Ink = readonly (readonly [Point, Point])[];

/** What is looked at: the drawing as it was made for the whole. */
export interface Ground {
  readonly frame: Box;
  /** Millimetres to a pixel where the whole is shown. */
  readonly perPixel: number;
  /** Largest zoom. */
  readonly closest: number;
  /** Gathered when somebody comes closer: at rest nobody asks. */
  readonly ink: () => Ink;
}

/** About a fifth of a millimetre is a pixel of a tablet: closer than life is of no use. */
const CLOSEST_PER_PIXEL = 0.2;
const LEAST_CLOSEST = 4;
const MOST_CLOSEST = 32;
/** So far from the view's edge, in pixels, some ink is always to be seen. */
const INSET = 28;

export function groundOf(drawing: Drawing): Ground {
  const { frame, perPixel } = drawing;
  const closest = Math.min(MOST_CLOSEST, Math.max(LEAST_CLOSEST, perPixel / CLOSEST_PER_PIXEL));
  return { frame, perPixel, closest, ink: inkIn(drawing) };
}

/** Texts and dimensions stand elsewhere in a drawing that is made for a closer look: only its own ink is there. */
export function inkIn(drawing: Drawing): () => Ink {
  let ink: Ink | undefined;
  return () => {
    ink ??= inkOf(drawing);
    return ink;
  };
}

function inkOf({ marks }: Drawing): Ink {
  return marks.flatMap((mark): Ink => {
    if (mark.kind === 'text') return [[mark.at, mark.at]];
    return mark.corners.slice(1).map((corner, i) => [mark.corners[i] as Point, corner] as const);
  });
}

export function wholeOf({ frame }: Ground): Camera {
  return { zoom: 1, x: (frame.left + frame.right) / 2, y: (frame.bottom + frame.top) / 2 };
}

export function isWhole(camera: Camera): boolean {
  return camera.zoom <= 1;
}

/** Size of the view in pixels. */
export function viewOf({ frame, perPixel }: Ground): { readonly width: number; readonly height: number } {
  return { width: (frame.right - frame.left) / perPixel, height: (frame.top - frame.bottom) / perPixel };
}

/** What of the drawing is seen. */
export function seenBy({ zoom, x, y }: Camera, { frame }: Ground): Box {
  const across = (frame.right - frame.left) / zoom / 2;
  const up = (frame.top - frame.bottom) / zoom / 2;
  return { left: x - across, right: x + across, bottom: y - up, top: y + up };
}

/**
 * The transform of a group whose marks are in the drawing's own pixels.
 * @param drawnFor the zoom that the drawing was made for
 */
export function transformOf(camera: Camera, ground: Ground, drawnFor: number): string {
  const { left, top } = seenBy(camera, ground);
  const scale = camera.zoom / drawnFor;
  const perMm = camera.zoom / ground.perPixel;
  return `matrix(${scale} 0 0 ${scale} ${(ground.frame.left - left) * perMm} ${(top - ground.frame.top) * perMm})`;
}

/** How the picture that one camera has taken lies in the view of another: a scale, then a shift, in pixels. */
export function pictureIn(taken: Camera, camera: Camera, ground: Ground): { scale: number; x: number; y: number } {
  const [from, to] = [seenBy(taken, ground), seenBy(camera, ground)];
  const perMm = camera.zoom / ground.perPixel;
  return { scale: camera.zoom / taken.zoom, x: (from.left - to.left) * perMm, y: (to.top - from.top) * perMm };
}

/** The place of the drawing that a pixel shows. */
export function placeAt(camera: Camera, ground: Ground, at: Point): Point {
  const { left, top } = seenBy(camera, ground);
  const scale = ground.perPixel / camera.zoom;
  return point(left + at.x * scale, top - at.y * scale);
}

/** The drawing follows the finger by so many pixels. */
export function panBy(camera: Camera, ground: Ground, dx: number, dy: number): Camera {
  const scale = ground.perPixel / camera.zoom;
  return hold({ zoom: camera.zoom, x: camera.x - dx * scale, y: camera.y + dy * scale }, ground);
}

/** Closer or farther, while the place under a pixel stays under it. */
export function zoomAt(camera: Camera, ground: Ground, factor: number, at: Point): Camera {
  return carry(camera, ground, factor, at, at);
}

/** Two fingers: the drawing stays under both of them, except that it does not turn. */
export function pinch(
  camera: Camera,
  ground: Ground,
  before: readonly [Point, Point],
  after: readonly [Point, Point],
): Camera {
  const factor = apart(after) / Math.max(1, apart(before));
  return carry(camera, ground, factor, between(before), between(after));
}

/** The least move after which a box is seen whole, or its middle if it is larger than the view. */
export function reveal(camera: Camera, ground: Ground, box: Box): Camera {
  const seen = seenBy(camera, ground);
  const x = camera.x + shift(box.left, box.right, seen.left, seen.right);
  const y = camera.y + shift(box.bottom, box.top, seen.bottom, seen.top);
  return hold({ zoom: camera.zoom, x, y }, ground);
}

/** The nearest camera from which the drawing cannot be lost. */
export function hold(camera: Camera, ground: Ground): Camera {
  const zoom = Math.min(ground.closest, Math.max(1, camera.zoom));
  if (zoom === 1) return wholeOf(ground);
  return inFrame(towardInk(inFrame({ ...camera, zoom }, ground), ground), ground);
}

function carry(camera: Camera, ground: Ground, factor: number, from: Point, to: Point): Camera {
  const place = placeAt(camera, ground, from);
  const zoom = Math.min(ground.closest, Math.max(1, camera.zoom * factor));
  const moved = placeAt({ ...camera, zoom }, ground, to);
  return hold({ zoom, x: camera.x + place.x - moved.x, y: camera.y + place.y - moved.y }, ground);
}

function inFrame(camera: Camera, ground: Ground): Camera {
  const { frame } = ground;
  const seen = seenBy(camera, ground);
  const inside = (low: number, high: number, least: number, most: number) =>
    low < least ? least - low : high > most ? most - high : 0;
  return {
    zoom: camera.zoom,
    x: camera.x + inside(seen.left, seen.right, frame.left, frame.right),
    y: camera.y + inside(seen.bottom, seen.top, frame.bottom, frame.top),
  };
}

function towardInk(camera: Camera, ground: Ground): Camera {
  const seen = seenBy(camera, ground);
  const inset = Math.min(INSET, viewOf(ground).width / 4, viewOf(ground).height / 4) * (ground.perPixel / camera.zoom);
  const box = {
    left: seen.left + inset,
    right: seen.right - inset,
    bottom: seen.bottom + inset,
    top: seen.top - inset,
  };
  let best: Point | null = null;
  for (const [a, b] of ground.ink()) {
    if (isSeen(a, b, box)) return camera;
    const near = nearestOn(a, b, camera);
    const away = point(shift(near.x, near.x, box.left, box.right), shift(near.y, near.y, box.bottom, box.top));
    if (best === null || Math.hypot(away.x, away.y) < Math.hypot(best.x, best.y)) best = away;
  }
  return best === null ? camera : { zoom: camera.zoom, x: camera.x + best.x, y: camera.y + best.y };
}

function isSeen(a: Point, b: Point, box: Box): boolean {
  if (a.x >= box.left && a.x <= box.right && a.y >= box.bottom && a.y <= box.top) return true;
  return clipLineToBox(a, b, box) !== null;
}

function nearestOn(a: Point, b: Point, to: Point): Point {
  const along = point(b.x - a.x, b.y - a.y);
  const length = along.x * along.x + along.y * along.y;
  const share = length === 0 ? 0 : ((to.x - a.x) * along.x + (to.y - a.y) * along.y) / length;
  const within = Math.min(1, Math.max(0, share));
  return point(a.x + along.x * within, a.y + along.y * within);
}

/** How far a window has to move for a span to lie in it; to its middle where the span is longer. */
function shift(low: number, high: number, least: number, most: number): number {
  if (high - low > most - least) return (low + high) / 2 - (least + most) / 2;
  return low < least ? low - least : high > most ? high - most : 0;
}

function apart([a, b]: readonly [Point, Point]): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

function between([a, b]: readonly [Point, Point]): Point {
  return point((a.x + b.x) / 2, (a.y + b.y) / 2);
}
