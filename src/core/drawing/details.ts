/**
 * The two places that are too small to read on the elevation, enlarged: the heel and the top end.
 * Frame: layout/flight, y up. Only the wood near the place is drawn, cut off at the detail's edge.
 */
import { type Point, point } from '../geometry/point';
import type { StairLayout } from '../layout/layoutStair';
import type { StairPlan } from '../plan/planStair';
import type { Box, Drawing, DrawingWord, DrawingWords, View } from './drawing';
import { drawHouse } from './elevationHouse';
import { drawWood } from './elevationWood';
import { figureOf } from './figures';
import { captionLines, Sketch } from './sketch';
import { clipLineToBox, clipToBox } from './strip';

/** Pixels round the wood for dimensions. */
const MARGIN = { side: 172, other: 24 };
/** A dimension line's distance from the place it measures, in pixels. */
const COLUMN = 62;

/** The toe and heel on the floor, with the first cut and the first riser. */
export function drawHeel({ layout }: Pick<StairPlan, 'layout'>, view: View, words: DrawingWords): Drawing {
  const { flight, stringer } = layout;
  const floor = Math.min(0, -flight.lowerToAdd, flight.seatHeight);
  const box: Box = {
    left: -flight.run * 0.45,
    right: Math.max(flight.run * 1.25, stringer.heel.heelX + flight.run * 0.2),
    bottom: floor - flight.unitRise * 0.2,
    top: flight.unitRise * 1.5,
  };
  const sketch = detailOf(layout, box, view, 1);
  const left = box.left - sketch.px(COLUMN);
  dimension(sketch, layout, words, 'unitRise', 0, flight.unitRise, left, box.left, 'unitRise');
  const right = box.right + sketch.px(COLUMN);
  const cut = flight.seatHeight + stringer.heel.firstRiserCut;
  dimension(sketch, layout, words, 'firstCut', flight.seatHeight, cut, right, flight.riserThickness, 'firstRiserCut');
  return finish(sketch, box, view);
}

/** The plumb end at the header, with the header mark and what bears. */
export function drawTopEnd({ layout }: Pick<StairPlan, 'layout'>, view: View, words: DrawingWords): Drawing {
  const { flight, stringer } = layout;
  const { top, bearing } = stringer;
  const bottom = top.topY - top.plumbCut;
  const headerTop = flight.totalRise - flight.upperToAdd - flight.upperSubfloor;
  const box: Box = {
    left: top.endX - flight.run * 1.3,
    right: top.headerX + flight.run * 0.5,
    bottom: Math.min(bottom, headerTop - flight.run) - flight.unitRise * 0.25,
    top: flight.totalRise + flight.unitRise * 0.3,
  };
  const sketch = detailOf(layout, box, view, flight.risers - 1);
  const right = box.right + sketch.px(COLUMN);
  const subfloor = flight.totalRise - flight.upperToAdd;
  dimension(sketch, layout, words, 'belowSubfloor', top.topY, subfloor, right, box.right, 'topBelowSubfloor');
  if (bearing.contact !== null && bearing.contact > 0) {
    const upper = Math.min(top.topY, headerTop);
    dimension(
      sketch,
      layout,
      words,
      'headerContact',
      upper - bearing.contact,
      upper,
      right,
      top.headerX,
      'headerContact',
    );
  }
  const left = box.left - sketch.px(COLUMN);
  dimension(sketch, layout, words, 'plumbCut', bottom, top.topY, left, box.left, 'plumbCut');
  return finish(sketch, box, view);
}

/** Everything that lies in the box, and nothing of what does not. */
function detailOf(layout: StairLayout, box: Box, view: View, fewestSteps: number): Sketch {
  const perPixel = Math.max(
    (box.right - box.left) / Math.max(40, view.width - 2 * MARGIN.side),
    (box.top - box.bottom) / Math.max(40, view.height - 2 * MARGIN.other),
  );
  const whole = new Sketch(perPixel);
  drawHouse(whole, layout, { ...box, left: Math.min(box.left, 0), right: box.right });
  if (fewestSteps > 0) drawWood(whole, layout);
  const sketch = new Sketch(perPixel);
  for (const mark of whole.marks) {
    if (mark.kind === 'text') continue;
    if (mark.closed) {
      const corners = clipToBox(mark.corners, box);
      const broken = mark.role === 'stringer';
      if (corners.length > 2) sketch.shape(broken ? 'wood-fill' : mark.role, corners, mark.about);
      if (broken) drawEdges(sketch, mark.corners, box);
      continue;
    }
    const [a, b] = mark.corners;
    const piece = a && b && clipLineToBox(a, b, box);
    if (piece) sketch.line(mark.role, ...piece);
  }
  return sketch;
}

/** The stringer goes on past the detail: only its real edges are drawn, not where the view ends. */
function drawEdges(sketch: Sketch, corners: readonly Point[], box: Box): void {
  corners.forEach((corner, index) => {
    const piece = clipLineToBox(corner, corners[(index + 1) % corners.length] as Point, box);
    if (piece !== null) sketch.line('cut-line', ...piece);
  });
}

function dimension(
  sketch: Sketch,
  layout: StairLayout,
  words: DrawingWords,
  word: DrawingWord,
  y1: number,
  y2: number,
  x: number,
  from: number,
  about: string,
): void {
  const content = figureOf(Math.abs(y2 - y1), layout.job.units);
  sketch.place(sketch.sideDimension(y1, y2, x, content, captionLines(words(word)), from), about);
}

function finish(sketch: Sketch, box: Box, view: View): Drawing {
  const { perPixel } = sketch;
  const middle = point((box.left + box.right) / 2, (box.bottom + box.top) / 2);
  const half = point((view.width * perPixel) / 2, (view.height * perPixel) / 2);
  return {
    marks: sketch.marks,
    frame: {
      left: middle.x - half.x,
      right: middle.x + half.x,
      bottom: middle.y - half.y,
      top: middle.y + half.y,
    },
    perPixel,
  };
}
