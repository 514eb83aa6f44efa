/**
 * The side elevation: house, floors as they are and as they will be, the stair in its parts, and
 * the dimensions that a person decides by. Frame: that of layout/flight, y up.
 */
import type { Point } from '../geometry/point';
import { point } from '../geometry/point';
import { nosingLineHeight } from '../layout/flight';
import type { StairLayout } from '../layout/layoutStair';
import type { StairPlan } from '../plan/planStair';
import type { Box, Drawing, DrawingWords, View } from './drawing';
import { dimensionElevation } from './elevationDimensions';
import { drawHouse, finishedFloor } from './elevationHouse';
import { drawObstacles } from './elevationObstacles';
import { drawWood } from './elevationWood';
import { Sketch } from './sketch';

/** The ground under the lower floor, and the air over the upper one, in millimetres. */
const GROUND = 90;
const ABOVE_FLOOR = 120;

/** From these widths on, in pixels, there is room for more dimensions round the stair. */
const MIDDLE = 460;
const WIDE = 1000;
/** Lower than this a second row under the stair would cost more of the stair than it tells. */
const HIGH = 640;

/** Room for dimensions round the stair, in pixels, and how much of the house stands beside it, in millimetres. */
interface Surround {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly house: number;
}

/** The stair and what is shown of the house, and how that lies in the view. */
interface Whole {
  readonly extent: Box;
  readonly frame: Box;
  readonly perPixel: number;
}

/**
 * @param view size in pixels of the place that shows it; the drawing fills it and keeps its proportion
 * @param words the few words in it, in the reader's language
 */
export function drawElevation(
  { layout, sheet }: Pick<StairPlan, 'layout' | 'sheet'>,
  view: View,
  words: DrawingWords,
): Drawing {
  const { zoom = 1 } = view;
  const { extent, frame, perPixel } = wholeOf(layout, view);
  const sketch = new Sketch(perPixel / zoom, frame);
  drawHouse(sketch, layout, extent);
  drawWood(sketch, layout);
  drawNosingLine(sketch, layout, extent);
  drawObstacles(sketch, layout);
  dimensionElevation({ sketch, layout, sheet, extent, words, width: view.width * zoom });
  return { marks: sketch.marks, frame, perPixel: sketch.perPixel };
}

/** The height at which a view of this width is filled from side to side, within what a screen has room for. */
export function elevationHeight(width: number, { layout }: Pick<StairPlan, 'layout'>): number {
  const around = surroundOf(width, LARGEST_HEIGHT);
  const extent = extentOf(layout, around.house);
  const proportion = (extent.right - extent.left) / (extent.top - extent.bottom);
  const room = Math.max(40, width - around.left - around.right);
  return Math.round(Math.min(LARGEST_HEIGHT, Math.max(240, room / proportion + around.top + around.bottom)));
}

const LARGEST_HEIGHT = 680;

function wholeOf(layout: StairLayout, view: View): Whole {
  const around = surroundOf(view.width, view.height);
  const extent = extentOf(layout, around.house);
  const perPixel = Math.max(
    (extent.right - extent.left) / Math.max(40, view.width - around.left - around.right),
    (extent.top - extent.bottom) / Math.max(40, view.height - around.top - around.bottom),
  );
  return { extent, perPixel, frame: frameAround(extent, around, view, perPixel) };
}

function extentOf(layout: StairLayout, house: number): Box {
  const { flight, stringer, opening } = layout;
  const floor = Math.min(0, -flight.lowerToAdd, flight.seatHeight);
  const front = -flight.nosing - Math.max(house / 2, flight.run);
  const undersides = layout.obstacles.flatMap(({ nearY, farY }) => [nearY, farY]);
  const overhead = layout.obstacles.map(({ farX }) => farX - house / 8);
  const left = Math.min(front, ...(opening.edgeX === null ? [] : [opening.edgeX - house]), ...overhead);
  const right = stringer.top.headerX + house;
  const finished = finishedFloor(layout);
  return {
    left,
    right,
    bottom: floor + Math.min(0, finished(left), finished(right)) - GROUND,
    top: Math.max(flight.totalRise, flight.totalRise - flight.upperToAdd, ...undersides) + ABOVE_FLOOR,
  };
}

function surroundOf(width: number, height: number): Surround {
  if (width >= WIDE) return { left: 196, right: 28, top: 64, bottom: height >= HIGH ? 128 : 64, house: 700 };
  if (width >= MIDDLE) return { left: 112, right: 22, top: 60, bottom: 64, house: 480 };
  return { left: 104, right: 14, top: 16, bottom: 64, house: 260 };
}

/** The view's own proportion, with the stair in the middle of what the margins leave. */
function frameAround(extent: Box, around: Surround, view: View, perPixel: number): Box {
  const spareX = (view.width - around.left - around.right) * perPixel - (extent.right - extent.left);
  const spareY = (view.height - around.top - around.bottom) * perPixel - (extent.top - extent.bottom);
  const left = extent.left - around.left * perPixel - spareX / 2;
  const bottom = extent.bottom - around.bottom * perPixel - spareY / 2;
  return { left, bottom, right: left + view.width * perPixel, top: bottom + view.height * perPixel };
}

/** From the floor, one going in front of the first nosing, up through every nosing to the landing's. */
function drawNosingLine(sketch: Sketch, layout: StairLayout, extent: Box): void {
  const { flight } = layout;
  const foot: Point = point(-flight.nosing - flight.run, 0);
  const topX = flight.runToTopRiser - flight.nosing;
  const start = foot.x < extent.left ? point(extent.left, nosingLineHeight(flight, extent.left)) : foot;
  const end = point(topX, nosingLineHeight(flight, topX));
  sketch.lineAbout('steps.nosing', 'nosing-line', start, end);
  sketch.keepClear(start, end);
}
