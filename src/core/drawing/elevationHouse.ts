/**
 * What is there already, and what will be laid on it: ground, upper floor with its header, and the
 * header at the low end of the opening. Frame: layout/flight, y up.
 */
import { point } from '../geometry/point';
import type { Finish } from '../job/stairJob';
import type { StairLayout } from '../layout/layoutStair';
import { toMm } from '../units/exact';
import type { Box, Role } from './drawing';
import type { Sketch } from './sketch';

/** Two plies of framing, as an outline for the eye; nothing is computed from it. */
const HEADER_PLIES = 76;
const HATCH_PIXELS = 14;

export function drawHouse(sketch: Sketch, layout: StairLayout, extent: Box): void {
  drawLowerFloor(sketch, layout, extent);
  drawUpperFloor(sketch, layout, layout.stringer.top.headerX, extent.right, 1);
  const { openingFraming } = layout.job.survey;
  if (openingFraming === null) return;
  drawUpperFloor(sketch, layout, layout.stringer.top.headerX - toMm(openingFraming), extent.left, -1);
  drawLining(sketch, layout);
}

function drawLowerFloor(sketch: Sketch, layout: StairLayout, extent: Box): void {
  const finished = finishedFloor(layout);
  const today = (x: number) => finished(x) - layout.flight.lowerToAdd;
  const step = sketch.px(HATCH_PIXELS);
  const lowest = Math.min(today(extent.left), today(extent.right));
  const deep = Math.min(step * 0.8, lowest - extent.bottom);
  // Of a floor that lies lower than what is shown there is nothing to hatch.
  if (deep > 0) {
    for (let x = extent.left + deep; x < extent.right; x += step) {
      sketch.line('ground-hatch', point(x, today(x)), point(x - deep, today(x) - deep));
    }
  }
  drawFloor(sketch, { left: extent.left, right: extent.right }, today, finished, layout.job.survey.lowerToAdd, LOWER);
}

/** The finished lower floor in front of and under the stringer that is drawn, which may stand beside the centre line. */
export function finishedFloor({ flight, stringer }: StairLayout): (x: number) => number {
  const aside = flight.slopeAcross * stringer.master.across;
  return (x) => flight.slopeAlong * x + aside;
}

const level = (y: number) => () => y;

const LOWER = 'survey.lowerToAdd';
const UPPER = 'survey.upperToAdd';

/** A floor as the tape found it, and what is still to be laid on it or taken off; dots where nobody knows. */
function drawFloor(
  sketch: Sketch,
  span: { readonly left: number; readonly right: number },
  today: (x: number) => number,
  finished: (x: number) => number,
  finish: Finish,
  about: string,
): void {
  const { left, right } = span;
  const across = (y: (x: number) => number) => [point(left, y(left)), point(right, y(right))];
  sketch.lineAbout('survey.rise', 'floor-today', ...across(today));
  sketch.keepClear(...across(today));
  const over = sketch.px(UNKNOWN_PIXELS);
  if (finish.known === 'unknown') sketch.lineAbout(about, 'unknown', ...across((x) => today(x) + over));
  else if (finished(left) !== today(left)) sketch.lineAbout(about, 'to-come', ...across(finished));
}

/** How far over the floor of today the dots of an unknown finish lie. */
const UNKNOWN_PIXELS = 7;

/**
 * @param face x of the header's face towards the opening
 * @param away where the drawn floor ends
 * @param side 1 when the floor runs to the right of its header, −1 to the left
 */
function drawUpperFloor(sketch: Sketch, layout: StairLayout, face: number, away: number, side: 1 | -1): void {
  const { flight, job } = layout;
  const finished = flight.totalRise;
  const today = finished - flight.upperToAdd;
  const headerTop = today - flight.upperSubfloor;
  const header = shownHeaderDepth(layout);
  const bottom = headerTop - header.depth;
  const plies = face + side * HEADER_PLIES;
  const role: Role = header.known ? 'house' : 'unknown';
  const span = { left: Math.min(face, away), right: Math.max(face, away) };
  sketch.rectangle(role, Math.min(plies, away), bottom, Math.max(plies, away), headerTop);
  sketch.crossCut(role, Math.min(face, plies), bottom, Math.max(face, plies), headerTop, 'survey.headerDepth');
  sketch.rectangle('house', span.left, headerTop, span.right, today, 'survey.upperSubfloor');
  drawFloor(sketch, span, level(today), level(finished), job.survey.upperToAdd, UPPER);
  breakOff(sketch, away, bottom, today, side);
  const lower = job.survey.floorDepth === null ? bottom : finished - toMm(job.survey.floorDepth);
  sketch.keepClear(point(face, today), point(face, Math.min(bottom, lower)));
  sketch.keepClear(point(face, Math.min(bottom, lower)), point(away, Math.min(bottom, lower)));
  if (job.survey.floorDepth === null) return;
  sketch.lineAbout('survey.floorDepth', 'to-come', point(face, lower), point(away, lower));
}

/** The floor goes on where the drawing ends: a line with a kink in it. */
function breakOff(sketch: Sketch, x: number, bottom: number, top: number, side: 1 | -1): void {
  const [reach, kink] = [sketch.px(9), sketch.px(5) * side];
  const middle = (bottom + top) / 2;
  const room = (top - bottom) / 2;
  if (room < 2 * kink * side) return;
  sketch.line(
    'leader',
    point(x, top + reach),
    point(x, middle + kink * side),
    point(x + kink, middle + (kink * side) / 2),
    point(x - kink, middle - (kink * side) / 2),
    point(x, middle - kink * side),
    point(x, bottom - reach),
  );
}

/** Wallboard or trim on the low-end header: the edge that a head meets. */
function drawLining(sketch: Sketch, layout: StairLayout): void {
  const { edgeX } = layout.opening;
  if (edgeX === null) return;
  const { floorDepth, headerLining } = layout.job.survey;
  const top = layout.flight.totalRise;
  const bottom = floorDepth === null ? top - shownHeaderDepth(layout).depth : top - toMm(floorDepth);
  sketch.rectangle('house', edgeX - toMm(headerLining), bottom, edgeX, top, 'survey.headerLining');
}

/** Depth of the floor that is drawn: what is known of it, else a usual joist, dotted. */
function shownHeaderDepth(layout: StairLayout): { readonly depth: number; readonly known: boolean } {
  const { headerDepth, floorDepth } = layout.job.survey;
  if (headerDepth !== null) return { depth: toMm(headerDepth), known: true };
  if (floorDepth === null) return { depth: 240, known: false };
  const { upperToAdd, upperSubfloor } = layout.flight;
  return { depth: Math.max(60, toMm(floorDepth) - upperToAdd - upperSubfloor), known: false };
}
