/**
 * Fingers, pen, mouse, wheel and keys on a drawing, turned into moves of its camera. There are no
 * modes: one finger on a drawing that is closer than whole moves it, two move and zoom it, two taps
 * show the whole. A drawing that is whole leaves one finger and the arrow keys to the page, and a
 * wheel that has been turning the page goes on doing so.
 */
import { type Point, point } from '../../core/geometry/point';
import { type Camera, type Ground, isWhole, panBy, pinch, viewOf, wholeOf, zoomAt } from './camera';

/** The camera as the gestures hold it. */
export interface CameraHold {
  readonly camera: () => Camera;
  readonly ground: () => Ground;
  readonly move: (next: Camera) => void;
}

/** A finger that moves less than this, in pixels, has tapped. */
const TAP = 8;
const DOUBLE_TAP = { time: 350, distance: 32 };
const WHEEL = { notch: 0.0016, pinch: 0.01, line: 20, most: 0.4 };
/** So long after its last turn a wheel is still about what it was about, in milliseconds. */
const WHEEL_REST = 350;
/** Of the view: one press of an arrow key. */
const ARROW = 0.15;
const ZOOM_STEP = 1.5;

/** @returns how to stop */
export function watchGestures(place: HTMLElement, hold: CameraHold): () => void {
  const stop = new AbortController();
  const { signal } = stop;
  watchPointers(place, hold, signal);
  watchWheel(place, hold, signal);
  place.addEventListener('keydown', (event) => takeKey(event, hold), { signal });
  return () => stop.abort();
}

function watchPointers(place: HTMLElement, hold: CameraHold, signal: AbortSignal): void {
  const down = new Map<number, Point>();
  let start: Point | null = null;
  let hasMoved = false;
  let penIsDown = false;
  let lastTap: { readonly time: number; readonly at: Point } | null = null;

  const onDown = (event: PointerEvent) => {
    if (event.pointerType === 'mouse' && event.button !== 0) return;
    // While the pen draws, the palm lies on the glass.
    if (penIsDown && event.pointerType === 'touch') return;
    if (event.pointerType === 'pen') penIsDown = true;
    const at = pixelOf(place, event);
    down.set(event.pointerId, at);
    hasMoved = down.size > 1;
    start = at;
  };
  const onMove = (event: PointerEvent) => {
    const before = down.get(event.pointerId);
    if (before === undefined) return;
    const after = pixelOf(place, event);
    const other = [...down].find(([id]) => id !== event.pointerId)?.[1];
    if (other !== undefined) {
      down.set(event.pointerId, after);
      hold.move(pinch(hold.camera(), hold.ground(), [before, other], [after, other]));
      return;
    }
    if (!hasMoved && start !== null && distance(start, after) < TAP) return;
    if (isWhole(hold.camera())) return;
    if (!hasMoved) place.setPointerCapture?.(event.pointerId);
    hasMoved = true;
    down.set(event.pointerId, after);
    hold.move(panBy(hold.camera(), hold.ground(), after.x - before.x, after.y - before.y));
  };
  const onUp = (event: PointerEvent) => {
    if (!down.delete(event.pointerId)) return;
    if (event.pointerType === 'pen') penIsDown = false;
    if (event.type === 'pointercancel' || hasMoved || down.size > 0) {
      lastTap = null;
      return;
    }
    const at = pixelOf(place, event);
    const isDouble =
      lastTap !== null &&
      event.timeStamp - lastTap.time < DOUBLE_TAP.time &&
      distance(lastTap.at, at) < DOUBLE_TAP.distance;
    lastTap = isDouble ? null : { time: event.timeStamp, at };
    if (isDouble) hold.move(wholeOf(hold.ground()));
  };
  const onClick = (event: MouseEvent) => {
    // What ends a drag was no choice of what lies under it.
    if (!hasMoved) return;
    hasMoved = false;
    event.stopPropagation();
    event.preventDefault();
  };
  const onTouch = (event: TouchEvent) => {
    if (event.cancelable && event.touches.length > 1) event.preventDefault();
  };
  place.addEventListener('pointerdown', onDown, { signal });
  place.addEventListener('pointermove', onMove, { signal });
  place.addEventListener('pointerup', onUp, { signal });
  place.addEventListener('pointercancel', onUp, { signal });
  place.addEventListener('click', onClick, { signal, capture: true });
  place.addEventListener('touchstart', onTouch, { signal, passive: false });
  place.addEventListener('touchmove', onTouch, { signal, passive: false });
}

function watchWheel(place: HTMLElement, hold: CameraHold, signal: AbortSignal): void {
  let pageUntil = 0;
  const onAnyWheel = (event: WheelEvent) => {
    if (!place.contains(event.target as Node | null)) pageUntil = event.timeStamp + WHEEL_REST;
  };
  const onWheel = (event: WheelEvent) => {
    const { ctrlKey, deltaMode, timeStamp } = event;
    if (!ctrlKey && timeStamp < pageUntil) {
      pageUntil = timeStamp + WHEEL_REST;
      return;
    }
    const pixels = event.deltaY * (deltaMode === 0 ? 1 : WHEEL.line);
    const amount = -pixels * (ctrlKey ? WHEEL.pinch : WHEEL.notch);
    const factor = Math.exp(Math.max(-WHEEL.most, Math.min(WHEEL.most, amount)));
    const before = hold.camera();
    const next = zoomAt(before, hold.ground(), factor, pixelOf(place, event));
    if (!ctrlKey && isWhole(before) && isWhole(next)) {
      pageUntil = timeStamp + WHEEL_REST;
      return;
    }
    event.preventDefault();
    hold.move(next);
  };
  place.ownerDocument.addEventListener('wheel', onAnyWheel, { signal, passive: true, capture: true });
  place.addEventListener('wheel', onWheel, { signal, passive: false });
}

function takeKey(event: KeyboardEvent, hold: CameraHold): void {
  if (event.ctrlKey || event.metaKey || event.altKey) return;
  const before = hold.camera();
  const next = afterKey(event.key, before, hold.ground());
  if (next === null || (next.zoom === before.zoom && next.x === before.x && next.y === before.y)) return;
  event.preventDefault();
  hold.move(next);
}

/** @returns null for a key that means nothing here */
export function afterKey(key: string, camera: Camera, ground: Ground): Camera | null {
  const { width, height } = viewOf(ground);
  const middle = point(width / 2, height / 2);
  switch (key) {
    case '+':
    case '=':
      return zoomAt(camera, ground, ZOOM_STEP, middle);
    case '-':
    case '−':
      return zoomAt(camera, ground, 1 / ZOOM_STEP, middle);
    case '0':
      return wholeOf(ground);
    case 'ArrowLeft':
      return panBy(camera, ground, width * ARROW, 0);
    case 'ArrowRight':
      return panBy(camera, ground, -width * ARROW, 0);
    case 'ArrowUp':
      return panBy(camera, ground, 0, height * ARROW);
    case 'ArrowDown':
      return panBy(camera, ground, 0, -height * ARROW);
    default:
      return null;
  }
}

function pixelOf(place: HTMLElement, event: MouseEvent): Point {
  const { left, top } = place.getBoundingClientRect();
  return point(event.clientX - left, event.clientY - top);
}

function distance(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}
