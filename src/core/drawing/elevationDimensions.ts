/**
 * The numbers on the elevation, in order of rank: what decides first (total rise, headroom, run),
 * then what explains. One that would touch an earlier text is left out. Frame: layout/flight, y up.
 */
import { type Point, point } from '../geometry/point';
import { nosingLineHeight } from '../layout/flight';
import type { StairLayout } from '../layout/layoutStair';
import { toMm } from '../units/exact';
import type { Box, DrawingWords, Mark } from './drawing';
import { figureOf } from './figures';
import { captionLines, type Sketch, TYPE } from './sketch';

/** Rows and columns of dimensions beside the stair, in pixels from it. */
const COLUMN = { first: 58, second: 138 };
const ROW = { first: 34, second: 96 };
/** Where the outer column breaks for its number: beside the inner one they would touch. */
const OUTER_BREAK = 0.3;
const WIDE = 760;
/** Below this height a step is too small for a number of its own. */
const LEAST_STEP_PIXELS = 17;

export function dimensionElevation(
  sketch: Sketch,
  layout: StairLayout,
  extent: Box,
  words: DrawingWords,
  width: number,
): void {
  const wide = width >= WIDE;
  dimensionRise(sketch, layout, extent, words, wide);
  dimensionHeadroom(sketch, layout, words);
  dimensionRun(sketch, layout, extent, words, wide);
  if (width >= 460) dimensionOpening(sketch, layout, words);
  drawPitch(sketch, layout);
  captionFloors(sketch, layout, extent, words);
  numberSteps(sketch, layout);
}

function dimensionRise(sketch: Sketch, layout: StairLayout, extent: Box, words: DrawingWords, wide: boolean): void {
  const { flight, job } = layout;
  const x = extent.left - sketch.px(COLUMN.first);
  const total = figureOf(flight.totalRise, job.units);
  sketch.place(
    sketch.uprightDimension(0, flight.totalRise, x, total, captionLines(words('totalRise')), extent.left),
    'totalRise',
  );
  if (!wide) return;
  const lower = -flight.lowerToAdd;
  const upper = flight.totalRise - flight.upperToAdd;
  const taped = figureOf(upper - lower, job.units);
  const far = extent.left - sketch.px(COLUMN.second);
  sketch.place(
    sketch.uprightDimension(lower, upper, far, taped, captionLines(words('riseToday')), extent.left, OUTER_BREAK),
    'survey.rise',
  );
}

function dimensionHeadroom(sketch: Sketch, layout: StairLayout, words: DrawingWords): void {
  const { opening, flight, job } = layout;
  if (opening.edgeX === null || opening.headroom === null || opening.headroom <= 0) return;
  const bottom = Math.max(0, nosingLineHeight(flight, opening.edgeX));
  const content = figureOf(opening.headroom, job.units, 'down');
  const caption = captionLines(words('headroom'));
  const top = bottom + opening.headroom;
  const placed = sketch.place(
    sketch.uprightDimension(bottom, top, opening.edgeX, content, caption, opening.edgeX),
    'headroom',
  );
  if (placed) sketch.reserveLine(opening.edgeX, bottom, top);
}

function dimensionRun(sketch: Sketch, layout: StairLayout, extent: Box, words: DrawingWords, wide: boolean): void {
  const { flight, stringer, job } = layout;
  const floor = extent.bottom;
  const end = stringer.top.hung ? flight.runToTopRiser : stringer.top.endX;
  const run = sketch.levelDimension(
    0,
    end,
    floor - sketch.px(ROW.first),
    figureOf(end, job.units),
    words('totalRun'),
    floor,
  );
  if (run) sketch.place(run, 'totalRun');
  if (!wide) return;
  const y = floor - sketch.px(ROW.second);
  const { headerX } = stringer.top;
  const header = sketch.levelDimension(0, headerX, y, figureOf(headerX, job.units), words('headerToRiser'), floor);
  if (header) sketch.place(header, 'headerFace');
}

function dimensionOpening(sketch: Sketch, layout: StairLayout, words: DrawingWords): void {
  const { openingFraming } = layout.job.survey;
  if (openingFraming === null) return;
  const { headerX } = layout.stringer.top;
  const length = toMm(openingFraming);
  const top = layout.flight.totalRise;
  const marks = sketch.levelDimension(
    headerX - length,
    headerX,
    top + sketch.px(36),
    figureOf(length, layout.job.units),
    words('opening'),
    top + sketch.px(4),
  );
  if (!marks || !sketch.place(marks, 'survey.openingFraming')) return;
  for (const x of [headerX - length, headerX]) sketch.reserveLine(x, top, top + sketch.px(46));
}

/** One step's triangle, resting on the nosing line, with the unit rise and the run. */
function drawPitch(sketch: Sketch, layout: StairLayout): void {
  const { flight, job } = layout;
  const step = Math.max(1, Math.round(flight.risers * 0.55));
  const low = point((step - 1) * flight.run - flight.nosing, step * flight.unitRise);
  const high = point(low.x + flight.run, low.y + flight.unitRise);
  const corner = point(low.x, high.y);
  const run = sketch.figure(
    'number',
    point((low.x + high.x) / 2, high.y + sketch.px(18)),
    'middle',
    figureOf(flight.run, job.units),
    TYPE.number,
  );
  const rise = sketch.figure(
    'number',
    point(low.x - sketch.px(8), (low.y + high.y) / 2),
    'end',
    figureOf(flight.unitRise, job.units),
    TYPE.number,
  );
  const triangle: Mark = { kind: 'shape', role: 'pitch-triangle', corners: [low, high, corner], closed: true };
  sketch.place([triangle, run, rise], 'pitch');
}

function captionFloors(sketch: Sketch, layout: StairLayout, extent: Box, words: DrawingWords): void {
  const { flight, job } = layout;
  const { survey } = job;
  const say = (amount: number, known: string, at: Point, anchor: 'start' | 'end') => {
    if (known !== 'unknown' && amount === 0) return;
    const text = known === 'unknown' ? words('notKnown') : words('floorToCome');
    sketch.place([sketch.words('caption', at, anchor, text)]);
  };
  const above = sketch.px(13);
  say(flight.lowerToAdd, survey.lowerToAdd.known, point(extent.right - sketch.px(4), above), 'end');
  const beside = layout.stringer.top.headerX + sketch.px(12);
  say(flight.upperToAdd, survey.upperToAdd.known, point(beside, flight.totalRise + above), 'start');
}

/** Risers numbered in the air before them, treads in the wood under them. */
function numberSteps(sketch: Sketch, layout: StairLayout): void {
  const { flight } = layout;
  if (flight.unitRise < sketch.px(LEAST_STEP_PIXELS)) return;
  for (let i = 1; i <= flight.risers; i += 1) {
    const y = (i - 0.5) * flight.unitRise - flight.treadThickness / 2;
    const riser = { kind: 'digits', text: String(i) } as const;
    sketch.place([
      sketch.figure('riser-number', point((i - 1) * flight.run - sketch.px(9), y), 'middle', riser, TYPE.small),
    ]);
  }
}
