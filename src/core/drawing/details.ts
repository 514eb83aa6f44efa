/**
 * The two places that are too small to read on the elevation, enlarged: the heel and the top end.
 * Frame: layout/flight, y up. Only the wood near the place is drawn, cut off at the detail's edge.
 */
import { onGrid } from '../check/printedSheet';
import { type Point, point } from '../geometry/point';
import type { StairLayout } from '../layout/layoutStair';
import type { StairPlan } from '../plan/planStair';
import type { Rounding } from '../units/rounding';
import type { About, Box, Drawing, DrawingWord, DrawingWords, ShapeMark, View } from './drawing';
import { drawHouse, finishedFloor } from './elevationHouse';
import { drawWood } from './elevationWood';
import { figureOf } from './figures';
import { captionLines, Sketch } from './sketch';
import { clipLineToBox, clipToBox } from './strip';

/** Pixels round the wood for dimensions, and a dimension line's distance from what it measures. */
interface Surround {
  readonly side: number;
  readonly other: number;
  readonly column: number;
}
const ROOMY: Surround = { side: 172, other: 24, column: 62 };
const TIGHT: Surround = { side: 124, other: 16, column: 18 };
const ROOMY_WIDTH = 520;

/** A detail while it is drawn: what is shown of the stair, the frame round it, and the room for dimensions. */
interface Detail {
  readonly sketch: Sketch;
  readonly layout: StairLayout;
  readonly words: DrawingWords;
  readonly box: Box;
  readonly frame: Box;
  readonly around: Surround;
}

/** The toe and heel on the floor, with the first cut and the first riser. */
export function drawHeel(plan: Pick<StairPlan, 'layout' | 'sheet'>, view: View, words: DrawingWords): Drawing {
  const { flight, stringer } = plan.layout;
  const { heel } = stringer;
  const floor = Math.min(0, -flight.lowerToAdd, flight.seatHeight) + Math.min(0, heel.toeY - flight.seatHeight);
  const detail = beginDetail(plan.layout, view, words, {
    left: -flight.run * 0.45,
    right: Math.max(flight.run * 1.25, stringer.heel.heelX + flight.run * 0.2),
    bottom: floor - flight.unitRise * 0.2,
    top: flight.unitRise * 1.5,
  });
  const front = finishedFloor(plan.layout)(0);
  dimension(detail, riserWord(front), front, flight.unitRise, 'left', [detail.box.left, -flight.nosing], 'unitRise');
  const cut = heel.toeY + heel.firstRiserCut;
  // What is marked says the number that is marked: two numbers for one cut would each be believed by somebody.
  dimension(
    detail,
    'firstCut',
    heel.toeY,
    cut,
    'right',
    [heel.heelX, flight.run + flight.riserThickness],
    'firstCut',
    plan.sheet.toeHeight,
  );
  return finish(detail);
}

/** Beside the centre line of a floor that falls across, riser 1 is no unit rise. */
function riserWord(front: number): DrawingWord {
  return front === 0 ? 'unitRise' : 'firstRiserHere';
}

/** The plumb end at the header, with the header mark and what bears. */
export function drawTopEnd(plan: Pick<StairPlan, 'layout' | 'sheet'>, view: View, words: DrawingWords): Drawing {
  const { flight, stringer } = plan.layout;
  const { top, bearing } = stringer;
  const bottom = top.topY - top.plumbCut;
  const headerTop = flight.totalRise - flight.upperToAdd - flight.upperSubfloor;
  const detail = beginDetail(plan.layout, view, words, {
    left: top.endX - flight.run * 1.3,
    right: top.headerX + flight.run * 0.5,
    bottom: Math.min(bottom, headerTop - flight.run) - flight.unitRise * 0.25,
    top: flight.totalRise + flight.unitRise * 0.3,
  });
  const subfloor = flight.totalRise - flight.upperToAdd;
  dimension(
    detail,
    'belowSubfloor',
    top.topY,
    subfloor,
    'right',
    detail.box.right,
    'headerMark',
    plan.sheet.headerMark,
  );
  if (bearing.contact !== null && bearing.contact > 0) {
    const upper = Math.min(top.topY, headerTop);
    dimension(
      detail,
      'headerContact',
      upper - bearing.contact,
      upper,
      'right',
      top.headerX,
      'headerContact',
      bearing.contact,
      'down',
    );
  }
  const ends = [top.endX, top.endX - top.lastLevelCut] as const;
  const cut = onGrid(top.plumbCut, plan.sheet.step, 'nearest');
  dimension(detail, 'plumbCut', bottom, top.topY, 'left', ends, 'plumbCut', cut);
  return finish(detail);
}

/** Everything that lies in the box, and nothing of what does not. */
function beginDetail(layout: StairLayout, view: View, words: DrawingWords, box: Box): Detail {
  const around = view.width >= ROOMY_WIDTH ? ROOMY : TIGHT;
  const whole = Math.max(
    (box.right - box.left) / Math.max(40, view.width - 2 * around.side),
    (box.top - box.bottom) / Math.max(40, view.height - 2 * around.other),
  );
  const middle = point((box.left + box.right) / 2, (box.bottom + box.top) / 2);
  const half = point((view.width * whole) / 2, (view.height * whole) / 2);
  const frame: Box = {
    left: middle.x - half.x,
    right: middle.x + half.x,
    bottom: middle.y - half.y,
    top: middle.y + half.y,
  };
  const perPixel = whole / (view.zoom ?? 1);
  const all = new Sketch(perPixel);
  // The house goes on past the detail, so that its own ends lie outside.
  drawHouse(all, layout, { ...box, left: Math.min(box.left, 0) - box.right, right: box.right * 2 });
  drawWood(all, layout);
  const sketch = new Sketch(perPixel, frame);
  for (const mark of all.marks) if (mark.kind === 'shape') drawClipped(sketch, mark, box);
  return { sketch, layout, words, box, frame, around };
}

function drawClipped(sketch: Sketch, mark: ShapeMark, box: Box): void {
  if (!mark.closed) {
    mark.corners.slice(1).forEach((corner, i) => {
      const piece = clipLineToBox(mark.corners[i] as Point, corner, box);
      if (piece !== null) sketch.lineAbout(mark.about, mark.role, ...piece);
    });
    return;
  }
  const corners = clipToBox(mark.corners, box);
  if (corners.length < 3) return;
  // The stringer goes on past the detail: only its real edges are drawn, not where the view ends.
  if (mark.role !== 'stringer') {
    sketch.shape(mark.role, corners, mark.about);
    return;
  }
  sketch.shape('wood-fill', corners);
  mark.corners.forEach((corner, index) => {
    const piece = clipLineToBox(corner, mark.corners[(index + 1) % mark.corners.length] as Point, box);
    if (piece !== null) sketch.lineAbout(mark.about, 'cut-line', ...piece);
  });
}

/** @param from x of what is measured: of both ends, or of the lower and the upper one */
function dimension(
  { sketch, layout, words, box, around }: Detail,
  word: DrawingWord,
  y1: number,
  y2: number,
  side: 'left' | 'right',
  from: number | readonly [number, number],
  about: About,
  shown = Math.abs(y2 - y1),
  rounding: Rounding = 'nearest',
): void {
  const content = figureOf(shown, layout.job.units, rounding);
  const caption = captionLines(words(word));
  const [edge, away] = side === 'left' ? ([box.left, -1] as const) : ([box.right, 1] as const);
  const [low, high] = [Math.min(y1, y2), Math.max(y1, y2)];
  const columns = around === ROOMY ? [around.column, around.column * 0.4] : [around.column];
  const places = columns.flatMap((column) => {
    const x = edge + away * sketch.px(column);
    const beside = [0.5, 0.8, 0.2].map((share) =>
      sketch.besideDimension(low, high, x, content, caption, from, away, low + (high - low) * share),
    );
    return column < 40 ? beside : [sketch.sideDimension(low, high, x, content, caption, from), ...beside];
  });
  sketch.placeFirst(places, about);
}

function finish({ sketch, frame }: Detail): Drawing {
  return { marks: sketch.marks, frame, perPixel: sketch.perPixel };
}
