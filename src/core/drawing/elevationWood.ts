/** What is built: stringer, kicker, hanger, risers, treads, landing nosing. Frame: layout/flight, y up. */
import { hasHangerBoard, isHung } from '../job/stairJob';
import type { StairLayout } from '../layout/layoutStair';
import { toMm } from '../units/exact';
import type { Sketch } from './sketch';

/** How far the landing nosing is drawn back onto the floor. */
const NOSING_BACK = 60;

export function drawWood(sketch: Sketch, layout: StairLayout): void {
  const { stringer, flight } = layout;
  sketch.shape('stringer', stringer.outline, 'stringer.stockDepth');
  if (stringer.kicker !== null) {
    const { width, height } = stringer.kicker;
    const x = flight.riserThickness;
    sketch.crossCut('kicker', x, flight.seatHeight, x + width, flight.seatHeight + height, 'stringer.kicker');
  }
  drawHanger(sketch, layout);
  drawRisers(sketch, layout);
  drawTreads(sketch, layout);
}

function drawHanger(sketch: Sketch, layout: StairLayout): void {
  const { top } = layout.stringer;
  if (top.hanger === 0) return;
  const bottom = top.topY - top.plumbCut;
  const upper = hasHangerBoard(layout.job.stringer.top) ? underLandingNosing(layout) : top.topY;
  sketch.rectangle('hanger', top.endX, bottom, top.headerX, upper, 'stringer.hanger');
}

function drawRisers(sketch: Sketch, layout: StairLayout): void {
  const { flight, job } = layout;
  const thick = flight.riserThickness;
  if (thick === 0) return;
  const lift = job.steps.joint === 'riser-on-tread' ? flight.treadThickness : 0;
  for (let i = 1; i <= flight.risers; i += 1) {
    const face = (i - 1) * flight.run;
    const foot = i === 1 ? flight.seatHeight : (i - 1) * flight.unitRise - flight.treadThickness + lift;
    const atTop = i === flight.risers && isHung(job.stringer.top);
    if (atTop && job.stringer.top === 'hanger-is-riser') return;
    const head = atTop ? underLandingNosing(layout) : i * flight.unitRise - flight.treadThickness;
    sketch.rectangle('riser', face, foot, face + thick, head, 'steps.riserThickness');
  }
}

function drawTreads(sketch: Sketch, layout: StairLayout): void {
  const { flight, rips } = layout;
  for (let i = 1; i <= flight.treads; i += 1) {
    const front = (i - 1) * flight.run - flight.nosing;
    const depth = i === flight.treads ? rips.lastTreadDepth : rips.treadDepth;
    const top = i * flight.unitRise;
    sketch.rectangle('tread', front, top - flight.treadThickness, front + depth, top, 'steps.treadThickness');
  }
  if (!isHung(layout.job.stringer.top)) return;
  const front = flight.runToTopRiser - flight.nosing;
  const back = layout.stringer.top.headerX + NOSING_BACK;
  sketch.rectangle(
    'landing-nosing',
    front,
    underLandingNosing(layout),
    back,
    flight.totalRise,
    'steps.upperNosingThickness',
  );
}

function underLandingNosing(layout: StairLayout): number {
  return layout.flight.totalRise - toMm(layout.job.steps.upperNosingThickness);
}
