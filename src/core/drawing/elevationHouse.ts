/**
 * What is there already, and what will be laid on it: ground, upper floor with its header, and the
 * header at the low end of the opening. Frame: layout/flight, y up.
 */
import { point } from '../geometry/point';
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
  const today = -layout.flight.lowerToAdd;
  const step = sketch.px(HATCH_PIXELS);
  for (let x = extent.left; x < extent.right; x += step) {
    sketch.line('ground-hatch', point(x, today), point(x - step * 0.6, today - step * 0.6));
  }
  sketch.line('floor-today', point(extent.left, today), point(extent.right, today));
  const lower = layout.job.survey.lowerToAdd;
  if (lower.known === 'unknown')
    sketch.line('unknown', point(extent.left, today + sketch.px(6)), point(extent.right, today + sketch.px(6)));
  else if (layout.flight.lowerToAdd !== 0) sketch.line('to-come', point(extent.left, 0), point(extent.right, 0));
}

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
  sketch.rectangle(role, Math.min(plies, away), bottom, Math.max(plies, away), headerTop);
  sketch.crossCut(role, Math.min(face, plies), bottom, Math.max(face, plies), headerTop);
  sketch.rectangle('house', Math.min(face, away), headerTop, Math.max(face, away), today);
  sketch.line('floor-today', point(face, today), point(away, today));
  if (job.survey.upperToAdd.known === 'unknown')
    sketch.line('unknown', point(face, today + sketch.px(6)), point(away, today + sketch.px(6)));
  else if (flight.upperToAdd !== 0) sketch.line('to-come', point(face, finished), point(away, finished));
  if (job.survey.floorDepth === null) return;
  const ceiling = finished - toMm(job.survey.floorDepth);
  sketch.line('to-come', point(face, ceiling), point(away, ceiling));
}

/** Wallboard or trim on the low-end header: the edge that a head meets. */
function drawLining(sketch: Sketch, layout: StairLayout): void {
  const { edgeX } = layout.opening;
  if (edgeX === null) return;
  const { floorDepth, headerLining } = layout.job.survey;
  const top = layout.flight.totalRise;
  const bottom = floorDepth === null ? top - shownHeaderDepth(layout).depth : top - toMm(floorDepth);
  sketch.rectangle('house', edgeX - toMm(headerLining), bottom, edgeX, top);
}

/** Depth of the floor that is drawn: what is known of it, else a usual joist, dotted. */
function shownHeaderDepth(layout: StairLayout): { readonly depth: number; readonly known: boolean } {
  const { headerDepth, floorDepth } = layout.job.survey;
  if (headerDepth !== null) return { depth: toMm(headerDepth), known: true };
  if (floorDepth === null) return { depth: 240, known: false };
  const { upperToAdd, upperSubfloor } = layout.flight;
  return { depth: Math.max(60, toMm(floorDepth) - upperToAdd - upperSubfloor), known: false };
}
