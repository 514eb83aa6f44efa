/**
 * One notch on the board: tip, inner corner, next tip, with the run, the unit rise, the step length
 * along the edge and the notch depth square to it. Frame: the board's, edge along y = 0, y up.
 */
import { type Point, point } from '../geometry/point';
import type { StairPlan } from '../plan/planStair';
import type { UnitSystem } from '../units/length';
import type { Box, Drawing, DrawingWords, View } from './drawing';
import { figureOf } from './figures';
import { captionLines, Sketch, TYPE } from './sketch';
import { clipLine, clipToStrip } from './strip';

const MARGIN = { x: 130, top: 70, bottom: 20 };

export function drawStep({ layout }: Pick<StairPlan, 'layout'>, view: View, words: DrawingWords): Drawing {
  const { flight, stringer, job } = layout;
  const { stepLength, cos, run } = flight;
  const corners = [-1, 0, 1].map((i) => point(i * stepLength + run * cos, -stringer.notchDepth));
  const [before, corner, after] = corners as [Point, Point, Point];
  const left = before.x * 0.8;
  const right = stepLength + (after.x - stepLength) * 0.8;
  const depth = stringer.stockDepth - stringer.tipInset;
  const perPixel = Math.max(
    (right - left) / Math.max(40, view.width - 2 * MARGIN.x),
    depth / Math.max(40, view.height - MARGIN.top - MARGIN.bottom),
  );
  const middle = (left + right) / 2;
  const half = (view.width * perPixel) / 2;
  const top = perPixel * MARGIN.top;
  const frame: Box = { left: middle - half, right: middle + half, top, bottom: top - view.height * perPixel };
  const sketch = new Sketch(perPixel / (view.zoom ?? 1), frame);
  sketch.rectangle('board-fill', left, -depth, right, 0);
  const teeth = [before, point(0, 0), corner, point(stepLength, 0), after];
  sketch.shape('wood-fill', clipToStrip([...teeth, point(after.x, -depth), point(before.x, -depth)], left, right));
  teeth.slice(1).forEach((tooth, i) => {
    const piece = clipLine(teeth[i] as Point, tooth, left, right);
    if (piece !== null) sketch.line('cut-line', ...piece);
  });
  for (const y of [0, -depth]) sketch.lineAbout('stringer.stockDepth', 'board-line', point(left, y), point(right, y));
  sketch.lineAbout('gaugeLine', 'gauge-line', point(left, corner.y), point(right, corner.y));
  dimensionStep(
    sketch,
    stringer.notchDepth,
    { corner, stepLength, right, run, unitRise: flight.unitRise },
    job.units,
    words,
  );
  return { marks: sketch.marks, frame, perPixel: sketch.perPixel };
}

interface Notch {
  readonly corner: Point;
  readonly stepLength: number;
  /** Where the drawn piece of board ends. */
  readonly right: number;
  readonly run: number;
  readonly unitRise: number;
}

function dimensionStep(
  sketch: Sketch,
  notchDepth: number,
  { corner, stepLength, right, run, unitRise }: Notch,
  units: UnitSystem,
  words: DrawingWords,
): void {
  const across = figureOf(stepLength, units);
  sketch.placeFirst(
    [sketch.levelDimension(0, stepLength, sketch.px(34), across, words('stepLength'), 0)],
    'stepLength',
  );
  const depth = figureOf(notchDepth, units);
  const caption = captionLines(words('notchDepth'));
  sketch.placeFirst(
    [
      sketch.sideDimension(corner.y, 0, right + sketch.px(62), depth, caption, right),
      sketch.besideDimension(corner.y, 0, right + sketch.px(18), depth, caption, right, 1),
    ],
    'notchDepth',
  );
  const figure = (value: number, x: number, y: number, about: string) =>
    sketch.place([sketch.figure('number', point(x, y), 'middle', figureOf(value, units), TYPE.number)], about);
  figure(run, corner.x / 2 - sketch.px(26), corner.y / 2 - sketch.px(16), 'run');
  figure(unitRise, (corner.x + stepLength) / 2 + sketch.px(40), corner.y / 2 - sketch.px(16), 'unitRise');
}
