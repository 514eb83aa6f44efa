import { describe, expect, it } from 'vitest';
import type { DrawingWord } from '../../../src/core/drawing/drawing';
import { drawElevation } from '../../../src/core/drawing/elevation';
import { isWithin } from '../../../src/core/drawing/sketch';
import { clipLineToBox } from '../../../src/core/drawing/strip';
import { point } from '../../../src/core/geometry/point';
import { speakerFor } from '../../../src/text/say';
import {
  type Camera,
  groundOf,
  isWhole,
  panBy,
  pictureIn,
  pinch,
  placeAt,
  reveal,
  seenBy,
  transformOf,
  viewOf,
  wholeOf,
  zoomAt,
} from '../../../src/ui/drawing/camera';
import { afterKey } from '../../../src/ui/drawing/gestures';
import { pixelsOf } from '../../../src/ui/drawing/pixels';
import { LOFT, planOf } from '../../fixtures/stairs';

const words = (word: DrawingWord) => speakerFor('us')(`drawing.${word}`);
const VIEW = { width: 800, height: 600 };
const drawing = drawElevation(planOf(LOFT), VIEW, words);
const ground = groundOf(drawing);
const whole = wholeOf(ground);

/** The pixel that shows a place of the drawing, read off the transform itself. */
function pixelOf(camera: Camera, place: { readonly x: number; readonly y: number }) {
  const numbers = (/matrix\((.*)\)/.exec(transformOf(camera, ground, 1))?.[1] ?? '').split(' ').map(Number);
  const [scale, , , , e, f] = numbers as [number, number, number, number, number, number];
  const pixels = pixelsOf(drawing);
  return point(scale * pixels.x(place.x) + e, scale * pixels.y(place.y) + f);
}

/** No drawing is ever lost: some ink, nothing beyond the frame, a zoom in its bounds. */
function mustBeHeld(camera: Camera): void {
  const seen = seenBy(camera, ground);
  const slack = ground.perPixel * 1e-6;
  const { left, right, bottom, top } = ground.frame;
  const frame = { left: left - slack, right: right + slack, bottom: bottom - slack, top: top + slack };
  expect(camera.zoom).toBeGreaterThanOrEqual(1);
  expect(camera.zoom).toBeLessThanOrEqual(ground.closest);
  expect(isWithin(seen, frame)).toBe(true);
  const hasInk = ground
    .ink()
    .some(
      ([a, b]) =>
        clipLineToBox(a, b, seen) !== null ||
        (a.x >= seen.left && a.x <= seen.right && a.y >= seen.bottom && a.y <= seen.top),
    );
  expect(hasInk).toBe(true);
}

function closeTo(a: { readonly x: number; readonly y: number }, b: { readonly x: number; readonly y: number }): void {
  expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeLessThan(0.5);
}

describe('the whole', () => {
  it('fills the view from corner to corner', () => {
    expect(viewOf(ground).width).toBeCloseTo(VIEW.width, 6);
    expect(viewOf(ground).height).toBeCloseTo(VIEW.height, 6);
    closeTo(pixelOf(whole, { x: ground.frame.left, y: ground.frame.top }), { x: 0, y: 0 });
    closeTo(pixelOf(whole, { x: ground.frame.right, y: ground.frame.bottom }), { x: 800, y: 600 });
  });

  it('cannot be panned away, nor zoomed out', () => {
    expect(panBy(whole, ground, 300, -200)).toEqual(whole);
    expect(zoomAt(whole, ground, 0.5, point(10, 10))).toEqual(whole);
    expect(isWhole(whole)).toBe(true);
  });
});

describe('gestures, against the transform that they end in', () => {
  const middle = point(400, 330);

  it('zoom and leave the place under the pointer where it is', () => {
    const place = placeAt(whole, ground, middle);
    closeTo(pixelOf(zoomAt(whole, ground, 3, middle), place), middle);
    const twice = zoomAt(zoomAt(whole, ground, 1.7, middle), ground, 1.9, middle);
    closeTo(pixelOf(twice, place), middle);
  });

  it('pan by as many pixels as the finger moved', () => {
    const near = zoomAt(whole, ground, 3, middle);
    const place = placeAt(near, ground, middle);
    closeTo(pixelOf(panBy(near, ground, 35, -20), place), { x: middle.x + 35, y: middle.y - 20 });
  });

  it('keep both fingers of a pinch on what they took hold of', () => {
    const before = [point(350, 330), point(450, 330)] as const;
    const after = [point(260, 310), point(560, 310)] as const;
    const held = before.map((finger) => placeAt(whole, ground, finger));
    const pinched = pinch(whole, ground, before, after);
    expect(pinched.zoom).toBeCloseTo(3, 9);
    held.forEach((place, i) => {
      closeTo(pixelOf(pinched, place), after[i] as { x: number; y: number });
    });
  });

  it('answer to keys, and to none that mean something else', () => {
    const near = afterKey('+', whole, ground) as Camera;
    expect(near.zoom).toBe(1.5);
    expect(afterKey('=', whole, ground)).toEqual(near);
    expect(afterKey('-', near, ground)).toEqual(whole);
    const right = afterKey('ArrowRight', near, ground) as Camera;
    expect(right.x).toBeGreaterThan(near.x);
    const up = afterKey('ArrowUp', near, ground) as Camera;
    expect(up.y).toBeGreaterThan(near.y);
    expect(afterKey('0', right, ground)).toEqual(whole);
    expect(afterKey('a', near, ground)).toBeNull();
  });

  it('bring what has the focus into view', () => {
    const near = zoomAt(whole, ground, 6, point(400, 300));
    const box = { left: ground.frame.left + 200, right: ground.frame.left + 260, bottom: 900, top: 960 };
    const moved = seenBy(reveal(near, ground, box), ground);
    expect(isWithin(box, moved)).toBe(true);
  });
});

describe('where there is nothing to see', () => {
  it('comes back to the nearest ink', () => {
    // The upper left of the stair is empty: between the headroom's line and the nosings.
    let camera = zoomAt(whole, ground, ground.closest, point(420, 180));
    mustBeHeld(camera);
    for (let i = 0; i < 40; i += 1) {
      camera = panBy(camera, ground, 180, 180);
      mustBeHeld(camera);
    }
  });
});

/** A fixed row of numbers from 0 to 1, so that a soak that fails fails again. */
function numbersFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 1_664_525 + 1_013_904_223) % 4_294_967_296;
    return state / 4_294_967_296;
  };
}

describe('5,000 gestures in any order', () => {
  it.each([1, 7, 42])('never lose the drawing, and Fit shows all of it (%i)', (seed) => {
    const next = numbersFrom(seed);
    const pixel = () => point(next() * VIEW.width, next() * VIEW.height);
    const keys = ['+', '-', 'ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown', '0'];
    let camera = whole;
    for (let i = 0; i < 5_000; i += 1) {
      const kind = next();
      if (kind < 0.35) camera = panBy(camera, ground, (next() - 0.5) * 1_500, (next() - 0.5) * 1_500);
      else if (kind < 0.65) camera = zoomAt(camera, ground, Math.exp((next() - 0.42) * 1.5), pixel());
      else if (kind < 0.9) camera = pinch(camera, ground, [pixel(), pixel()], [pixel(), pixel()]);
      else camera = afterKey(keys[Math.floor(next() * 6.2)] as string, camera, ground) ?? camera;
      mustBeHeld(camera);
    }
    camera = afterKey('0', camera, ground) as Camera;
    const seen = seenBy(camera, ground);
    expect(seen.left).toBeCloseTo(ground.frame.left, 6);
    expect(seen.right).toBeCloseTo(ground.frame.right, 6);
    for (const [a, b] of ground.ink()) {
      for (const end of [a, b]) {
        const { x, y } = pixelOf(camera, end);
        expect(x >= -0.5 && x <= VIEW.width + 0.5 && y >= -0.5 && y <= VIEW.height + 0.5).toBe(true);
      }
    }
  });
});

describe('the picture that is there, moved as a whole', () => {
  it('lies where the drawing would be made: each place at the same pixel', () => {
    const close = zoomAt(whole, ground, 3, point(200, 420));
    const panned = panBy(zoomAt(close, ground, 0.7, point(500, 100)), ground, -60, 25);
    for (const [taken, camera] of [
      [whole, close],
      [close, panned],
      [panned, whole],
    ] as const) {
      const { scale, x, y } = pictureIn(taken, camera, ground);
      for (const place of [point(0, 0), point(1500, 900), point(3302, 2681)]) {
        const [before, after] = [pixelOf(taken, place), pixelOf(camera, place)];
        expect(scale * before.x + x).toBeCloseTo(after.x, 6);
        expect(scale * before.y + y).toBeCloseTo(after.y, 6);
      }
    }
  });
});
