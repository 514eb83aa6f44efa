/**
 * Two bars on every page, as long as the sheet allows, for a tape: an inch square could not show the
 * three parts in a hundred that "fit to page" takes off. Ticks at inches on one side of a bar and at
 * centimetres on the other. Both start in one corner, so that their far ends give a diagonal too.
 */
import { type Point, point } from '../geometry/point';
import { inchMm, mmToInches } from '../units/exact';
import type { PageSketch } from './pageSketch';

/** From the bar to the ends of its ticks. */
export const BAR_HALF = 2.2;
const SMALL_TICK = 1.2;
/** A roll has room for more than a tape can be held to. */
const LONGEST_INCHES = 36;

export interface Bars {
  readonly across: Bar;
  readonly up: Bar;
  /** Between their far ends, millimetres. */
  readonly diagonal: number;
}

export interface Bar {
  readonly inches: number;
  /** To the last centimetre tick. */
  readonly mm: number;
  readonly end: Point;
}

/**
 * @param corner where both begin
 * @param reachX how far the one may go; negative to the left
 * @param reachY how far the other may go; negative downward
 */
export function drawBars(sketch: PageSketch, corner: Point, reachX: number, reachY: number): Bars {
  const across = drawBar(sketch, corner, point(Math.sign(reachX), 0), Math.abs(reachX));
  const up = drawBar(sketch, corner, point(0, Math.sign(reachY)), Math.abs(reachY));
  return { across, up, diagonal: Math.hypot(across.end.x - up.end.x, across.end.y - up.end.y) };
}

function drawBar(sketch: PageSketch, from: Point, along: Point, reach: number): Bar {
  const inches = Math.min(LONGEST_INCHES, Math.floor(mmToInches(reach) * 2) / 2);
  const length = inchMm(inches);
  const mm = Math.floor(length / 10) * 10;
  const at = (distance: number) => point(from.x + along.x * distance, from.y + along.y * distance);
  sketch.line('proof-bar', from, at(length));
  // Ticks of inches point into the page, those of centimetres out of it.
  const tick = (distance: number, reachOut: number) => {
    const foot = at(distance);
    sketch.line('proof-bar', foot, point(foot.x + Math.abs(along.y) * reachOut, foot.y + Math.abs(along.x) * reachOut));
  };
  // At its beginning a bar has none: there the other bar stands across, and a tick would make that one longer.
  for (let half = 1; half <= inches * 2; half += 1) {
    const ends = half === inches * 2;
    tick(inchMm(half / 2), half % 2 === 0 || ends ? BAR_HALF : SMALL_TICK);
  }
  for (let centimetre = 1; centimetre <= mm / 10; centimetre += 1) {
    tick(centimetre * 10, centimetre % 5 === 0 || centimetre === mm / 10 ? -BAR_HALF : -SMALL_TICK);
  }
  tick(length, -BAR_HALF);
  return { inches, mm, end: at(length) };
}
