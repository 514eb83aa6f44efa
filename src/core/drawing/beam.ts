/**
 * The stringer as the beam that it is screened as: where it bears, how far it spans level and along the slope, the
 * throat that is left of it, and what of its end has header behind it. Frame: layout/flight, y up.
 */
import { type Point, point } from '../geometry/point';
import type { StairLayout } from '../layout/layoutStair';
import type { StairPlan } from '../plan/planStair';
import { innerCorner } from '../stringer/outline';
import type { Box, Drawing, DrawingWords, Mark, View } from './drawing';
import { drawHouse } from './elevationHouse';
import { figureOf } from './figures';
import { captionLines, Sketch, TYPE } from './sketch';
import { clipLineToBox, clipToBox } from './strip';

/** Pixels round the stringer for its dimensions. */
const ROOMY = { left: 40, right: 132, top: 56, bottom: 92 };
const TIGHT = { left: 12, right: 124, top: 44, bottom: 84 };
const ROOMY_WIDTH = 620;
/** How far under the lower edge the slope is measured. */
const SLOPE_LINE = 24;
const ARROW = 26;
/** From the middle of a number with a stacked fraction to that of the caption under it. */
const UNDER_NUMBER = 28;
const ARROW_HEAD = 7;

/** Where the stringer is held, as it is screened: the middle of what is left of its seat, and its plumb end. */
interface Bearings {
  readonly foot: Point;
  readonly head: Point;
}

function bearingsOf({ flight, stringer }: StairLayout): Bearings {
  const { heel, kicker, top } = stringer;
  const x = (heel.heelX + flight.riserThickness + (kicker?.width ?? 0)) / 2;
  return {
    foot: point(x, heel.heelY + ((heel.toeY - heel.heelY) * (heel.heelX - x)) / (heel.heelX - flight.riserThickness)),
    head: point(top.endX, top.topY - top.plumbCut),
  };
}

/** @param view size in pixels of the place that shows it */
export function drawBeam({ layout }: Pick<StairPlan, 'layout'>, view: View, words: DrawingWords): Drawing {
  const around = view.width >= ROOMY_WIDTH ? ROOMY : TIGHT;
  const box = extentOf(layout);
  const perPixel = Math.max(
    (box.right - box.left) / Math.max(40, view.width - around.left - around.right),
    (box.top - box.bottom) / Math.max(40, view.height - around.top - around.bottom),
  );
  const left = (box.left + box.right - (view.width + around.left - around.right) * perPixel) / 2;
  const bottom = box.bottom - around.bottom * perPixel;
  const frame = { left, right: left + view.width * perPixel, bottom, top: bottom + view.height * perPixel };
  const sketch = new Sketch(perPixel / (view.zoom ?? 1), frame);
  drawSurroundings(sketch, layout, box);
  sketch.shape('stringer', layout.stringer.outline, 'stringer.stockDepth');
  drawLoad(sketch, layout);
  drawBearings(sketch, layout);
  dimensionHeader(sketch, layout, words, box);
  dimensionSpans(sketch, layout, words, box);
  return { marks: sketch.marks, frame, perPixel: sketch.perPixel };
}

/** A view of this width is filled from side to side, within what a screen has room for. */
export function beamHeight(width: number, { layout }: Pick<StairPlan, 'layout'>): number {
  const around = width >= ROOMY_WIDTH ? ROOMY : TIGHT;
  const box = extentOf(layout);
  const room = Math.max(40, width - around.left - around.right);
  const tall = (room * (box.top - box.bottom)) / (box.right - box.left) + around.top + around.bottom;
  return Math.round(Math.min(560, Math.max(240, tall)));
}

function extentOf({ flight, stringer }: StairLayout): Box {
  return {
    left: -flight.run * 0.6,
    right: stringer.top.headerX + flight.run * 0.6,
    bottom: Math.min(0, -flight.lowerToAdd, stringer.heel.toeY, stringer.heel.heelY) - flight.unitRise * 0.3,
    top: flight.totalRise + flight.unitRise * 0.2,
  };
}

/** The floors and the header that carries, cut off at the edge of what is shown. */
function drawSurroundings(sketch: Sketch, layout: StairLayout, box: Box): void {
  const house = new Sketch(sketch.perPixel);
  const survey = { ...layout.job.survey, openingFraming: null };
  drawHouse(house, { ...layout, job: { ...layout.job, survey } }, { ...box, left: box.left * 3, right: box.right * 2 });
  for (const mark of house.marks) {
    if (mark.kind !== 'shape') continue;
    if (mark.closed) {
      const corners = clipToBox(mark.corners, box);
      if (corners.length >= 3) sketch.shape(mark.role, corners, mark.about);
      continue;
    }
    mark.corners.slice(1).forEach((corner, i) => {
      const piece = clipLineToBox(mark.corners[i] as Point, corner, box);
      if (piece !== null) sketch.lineAbout(mark.about, mark.role, ...piece);
    });
  }
}

/** An arrow down on every step: the load that is spread. */
function drawLoad(sketch: Sketch, { flight }: StairLayout): void {
  for (let i = 1; i <= flight.treads; i += 1) {
    const foot = point((i - 0.5) * flight.run + flight.riserThickness, i * flight.unitRise - flight.treadThickness);
    arrow(sketch, point(foot.x, foot.y + sketch.px(ARROW)), foot);
  }
}

/** An arrow up at each bearing, which is what the screening calls V. */
function drawBearings(sketch: Sketch, layout: StairLayout): void {
  const { foot, head } = bearingsOf(layout);
  for (const at of [foot, head]) arrow(sketch, point(at.x, at.y - sketch.px(ARROW * 1.4)), at);
}

function arrow(sketch: Sketch, from: Point, to: Point): void {
  const back = Math.sign(from.y - to.y) * sketch.px(ARROW_HEAD);
  const wide = sketch.px(ARROW_HEAD / 2);
  sketch.line('leader', from, to);
  sketch.line('leader', point(to.x - wide, to.y + back), to, point(to.x + wide, to.y + back));
  sketch.keepClear(from, to);
}

function dimensionHeader(sketch: Sketch, layout: StairLayout, words: DrawingWords, box: Box): void {
  const { flight, stringer, job } = layout;
  const { contact } = stringer.bearing;
  if (contact === null || contact <= 0) return;
  const upper = Math.min(stringer.top.topY, flight.totalRise - flight.upperToAdd - flight.upperSubfloor);
  const caption = captionLines(words('headerContact'));
  const content = figureOf(contact, job.units, 'down');
  const places = [10, 4].flatMap((away) =>
    [0.5, 0.2, 0.8, -0.4].map((share) =>
      sketch.besideDimension(
        upper - contact,
        upper,
        box.right + sketch.px(away),
        content,
        caption,
        stringer.top.headerX,
        1,
        upper - contact * share,
      ),
    ),
  );
  sketch.placeFirst(places, 'headerContact');
}

/** The level span under the floor, the slope's under the stringer, and the throat in the middle of it. */
function dimensionSpans(sketch: Sketch, layout: StairLayout, words: DrawingWords, box: Box): void {
  const { job } = layout;
  const { foot, head } = bearingsOf(layout);
  const y = box.bottom - sketch.px(34);
  const level = figureOf(head.x - foot.x, job.units);
  const levelPlaces = [
    sketch.levelDimension(foot.x, head.x, y, level, words('levelSpan'), box.bottom),
    ...[words('levelSpan'), ''].flatMap((caption) =>
      ([1, -1] as const).map((side) => sketch.shortDimension(foot.x, head.x, y, level, caption, box.bottom, side)),
    ),
  ];
  sketch.placeFirst(levelPlaces, 'span');
  dimensionThroat(sketch, layout, words);
  dimensionSlope(sketch, layout, words);
}

/** Beside the lower edge; left out, with its line, where its number has no room. */
function dimensionSlope(sketch: Sketch, layout: StairLayout, words: DrawingWords): void {
  const { flight, job } = layout;
  const { foot, head } = bearingsOf(layout);
  const away = (at: Point, pixels: number) =>
    point(at.x + sketch.px(pixels) * flight.sin, at.y - sketch.px(pixels) * flight.cos);
  const [low, high] = [away(foot, SLOPE_LINE), away(head, SLOPE_LINE)];
  const content = figureOf((head.x - foot.x) / flight.cos, job.units);
  const captions = [captionLines(words('slopeSpan')), []];
  const places = captions.flatMap((caption) =>
    [0.62, 0.72, 0.5, 0.3].flatMap((share) =>
      [36, 50].map((pixels): Mark[] => {
        const at = away(point(low.x + (high.x - low.x) * share, low.y + (high.y - low.y) * share), pixels);
        return [
          dimensionLine(low, high),
          sketch.tick(low),
          sketch.tick(high),
          sketch.figure('number', at, 'start', content, TYPE.number),
          ...sketch.captionBeside(caption, point(at.x, at.y - sketch.px(UNDER_NUMBER)), 'start'),
        ];
      }),
    ),
  );
  sketch.placeFirst(places);
}

function dimensionLine(...corners: Point[]): Mark {
  return { kind: 'shape', role: 'dimension', corners, closed: false };
}

/** Square to the edge from an inner corner, at the first notch of several where its number has room. */
function dimensionThroat(sketch: Sketch, layout: StairLayout, words: DrawingWords): void {
  const { flight } = layout;
  const notches = [0.4, 0.6, 0.2, 0.8].map((share) => Math.min(flight.treads - 1, Math.ceil(flight.treads * share)));
  const captions = [captionLines(words('throatLeft')), []];
  const places = captions.flatMap((caption) =>
    notches.filter((notch) => notch >= 1).flatMap((notch) => throatPlaces(sketch, layout, notch, caption)),
  );
  sketch.placeFirst(places, 'throat');
}

function throatPlaces(sketch: Sketch, layout: StairLayout, notch: number, caption: readonly string[]): Mark[][] {
  const { flight, stringer, job } = layout;
  const inner = innerCorner(flight, notch);
  const along = (from: Point, length: number) => point(from.x + length * flight.sin, from.y - length * flight.cos);
  const lower = along(inner, stringer.throat);
  const content = figureOf(stringer.throat, job.units, 'down');
  const beyond = [SLOPE_LINE + 24, SLOPE_LINE + 44, SLOPE_LINE + 80].flatMap((pixels) =>
    (['start', 'end'] as const).map((anchor) => ({ at: along(lower, sketch.px(pixels)), pixels, anchor })),
  );
  return beyond.map(({ at, pixels, anchor }) => [
    dimensionLine(inner, lower),
    dimensionLine(lower, along(lower, sketch.px(pixels - (anchor === 'start' ? 14 : 28)))),
    sketch.tick(inner),
    sketch.tick(lower),
    sketch.figure('number', at, anchor, content, TYPE.number),
    ...sketch.captionBeside(caption, point(at.x, at.y - sketch.px(UNDER_NUMBER)), anchor),
  ]);
}
