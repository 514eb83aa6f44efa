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
import { drawHouse } from './elevationHouse';
import { drawWood } from './elevationWood';
import { Sketch } from './sketch';

/** What of the house is shown beside the stair, in millimetres. */
const FLOOR_SHOWN = 700;
const GROUND = 90;
const ABOVE_FLOOR = 120;

/** Room for dimensions round the stair, in pixels, by how wide the view is. */
interface Margins {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/**
 * @param view size in pixels of the place that shows it; the drawing fills it and keeps its proportion
 * @param words the few words in it, in the reader's language
 */
export function drawElevation({ layout }: Pick<StairPlan, 'layout'>, view: View, words: DrawingWords): Drawing {
  const extent = extentOf(layout);
  const margins = marginsFor(view.width);
  const perPixel = Math.max(
    (extent.right - extent.left) / Math.max(40, view.width - margins.left - margins.right),
    (extent.top - extent.bottom) / Math.max(40, view.height - margins.top - margins.bottom),
  );
  const sketch = new Sketch(perPixel);
  drawHouse(sketch, layout, extent);
  drawWood(sketch, layout);
  drawNosingLine(sketch, layout, extent);
  dimensionElevation(sketch, layout, extent, words, view.width);
  return { marks: sketch.marks, frame: frameAround(extent, margins, view, perPixel), perPixel };
}

function extentOf(layout: StairLayout): Box {
  const { flight, stringer, opening } = layout;
  const floor = Math.min(0, -flight.lowerToAdd, flight.seatHeight);
  const left = Math.min(-flight.nosing - FLOOR_SHOWN / 2, (opening.edgeX ?? 0) - FLOOR_SHOWN);
  return {
    left,
    right: stringer.top.headerX + FLOOR_SHOWN,
    bottom: floor - GROUND,
    top: flight.totalRise + ABOVE_FLOOR,
  };
}

function marginsFor(width: number): Margins {
  if (width >= 760) return { left: 190, right: 28, top: 64, bottom: 126 };
  if (width >= 460) return { left: 114, right: 28, top: 60, bottom: 58 };
  return { left: 110, right: 24, top: 16, bottom: 58 };
}

/** The view's own proportion, with the stair in the middle of what the margins leave. */
function frameAround(extent: Box, margins: Margins, view: View, perPixel: number): Box {
  const spareX = (view.width - margins.left - margins.right) * perPixel - (extent.right - extent.left);
  const spareY = (view.height - margins.top - margins.bottom) * perPixel - (extent.top - extent.bottom);
  const left = extent.left - margins.left * perPixel - spareX / 2;
  const bottom = extent.bottom - margins.bottom * perPixel - spareY / 2;
  return { left, bottom, right: left + view.width * perPixel, top: bottom + view.height * perPixel };
}

/** From the floor, one going in front of the first nosing, up through every nosing to the landing's. */
function drawNosingLine(sketch: Sketch, layout: StairLayout, extent: Box): void {
  const { flight } = layout;
  const foot: Point = point(-flight.nosing - flight.run, 0);
  const topX = flight.runToTopRiser - flight.nosing;
  const start = foot.x < extent.left ? point(extent.left, nosingLineHeight(flight, extent.left)) : foot;
  sketch.line('nosing-line', start, point(topX, nosingLineHeight(flight, topX)));
}
