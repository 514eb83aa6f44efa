/** What is built: stringer, kicker, hanger, risers, treads, landing nosing. Frame: layout/flight, y up. */
import { point } from '../geometry/point';
import { hasHangerBoard, isHung } from '../job/stairJob';
import { floorHeight } from '../layout/flight';
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
    const { heel, master } = stringer;
    const x = flight.riserThickness;
    const back = floorHeight(flight, x + width, master.across);
    if (flight.slopeAlong === 0) sketch.crossCut('kicker', x, back, x + width, back + height, 'stringer.kicker');
    else {
      const corners = [point(x, heel.toeY), point(x + width, back), point(x + width, back + height)];
      sketch.shape('kicker', [...corners, point(x, heel.toeY + height)], 'stringer.kicker');
    }
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
    const foot = i === 1 ? underRiser(layout) : (i - 1) * flight.unitRise - flight.treadThickness + lift;
    const atTop = i === flight.risers && isHung(job.stringer.top);
    if (atTop && job.stringer.top === 'hanger-is-riser') return;
    const head = atTop ? underLandingNosing(layout) : i * flight.unitRise - flight.treadThickness;
    sketch.rectangle('riser', face, foot, face + thick, head, 'steps.riserThickness');
  }
}

/** The board of riser 1 is scribed to the floor: it is drawn down to the lower of its two edges. */
function underRiser({ flight, stringer }: StairLayout): number {
  const at = (x: number) => floorHeight(flight, x, stringer.master.across);
  return Math.min(at(0), at(flight.riserThickness));
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
