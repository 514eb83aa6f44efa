/**
 * What rules look at, exactly, and how far each tape reading moves it.
 *
 * A weight is the millimetres by which the figure moves for each millimetre that the reading is out:
 * its derivative, in closed form. With H the total rise, N risers, G the run, Df the floor's depth,
 * O the opening, and y the height of the nosing line under the opening's edge:
 *
 *   H          dH/dM = 1            R = H / N       dR/dM = 1 / N
 *   riser 1    R ± |py| W / 2       d/dfall = W / 2 over, d/dW = |py| / 2, at the edges between skirts
 *   headroom   H − Df − y           y = R + (R/G)(x + n), x falling by 1 for each that O grows:
 *              d/dM = 1 − y / H     d/dO = R / G    d/dDf = −1
 *   throat     d − e − RG / U       d/dd = 1         d/dR = −(G/U)³
 *
 * What was chosen (a run, a nosing) and what is made to a thickness is no reading and moves nothing.
 */
import type { StairJob } from '../job/stairJob';
import { type AcrossFlight, acrossFlight, steepness } from '../layout/acrossFlight';
import type { StairLayout } from '../layout/layoutStair';
import { headerFace, slopeAlong } from '../layout/slope';
import {
  add,
  compare,
  divide,
  type Exact,
  fromNumber,
  inch,
  multiply,
  negate,
  sign,
  subtract,
  times,
  toMm,
  whole,
  ZERO,
} from '../units/exact';
import type { UnitSystem } from '../units/length';

export interface Reading {
  /** The job's key, as within its stair: `survey.rise`. */
  readonly key: string;
  readonly weight: Exact;
}

export interface Measure {
  readonly exact: Exact;
  readonly readings: readonly Reading[];
}

/** How far a reading may be out. Common practice, no source: half of what a tape shows, both ways. */
export const USUAL_TAPE_DOUBT: Readonly<Record<UnitSystem, Exact>> = { imperial: inch(1 / 16), metric: whole(1) };

/** @returns how far each reading of this stair may be out, in millimetres: what the job says, or what is usual */
export function doubtIn(job: StairJob, asked: Exact | 'usual' | null): Exact | null {
  return asked === 'usual' ? (job.tapeDoubt ?? USUAL_TAPE_DOUBT[job.units]) : asked;
}

/** Something that no reading moves. */
export function chosen(exact: Exact): Measure {
  return { exact, readings: [] };
}

export function totalRise(layout: StairLayout): Measure {
  return { exact: layout.flight.exact.totalRise, readings: readRise(layout, whole(1)) };
}

export function unitRise(layout: StairLayout): Measure {
  const { exact, risers } = layout.flight;
  return { exact: exact.unitRise, readings: readRise(layout, divide(whole(1), whole(risers))) };
}

/** The tallest riser: on a floor that falls across, riser 1 at the lower edge. */
export function tallestRiser(layout: StairLayout): Measure {
  return edgeRiser(layout, 'tallest', 1);
}

export function shortestRiser(layout: StairLayout): Measure {
  return edgeRiser(layout, 'shortest', -1);
}

function edgeRiser(layout: StairLayout, which: 'tallest' | 'shortest', way: 1 | -1): Measure {
  const across = acrossFlight(layout);
  const unit = unitRise(layout);
  if (across === null) return unit;
  const half = acrossReadings(layout, across).map(({ key, weight }) => ({
    key,
    weight: divide(times(weight, way), whole(2)),
  }));
  return { exact: across[which], readings: [...unit.readings, ...half] };
}

/**
 * How far risers of one flight differ before any is cut: the floor's fall between the skirts, or the part of
 * it by which riser 1 differs from its neighbour, and from what was planned. Null where nobody has measured
 * how wide the stair is.
 */
export function riserVariation(layout: StairLayout, part: 'whole' | 'half'): Measure | null {
  if (sign(layout.flight.exact.slopeAcross) === 0) return chosen(ZERO);
  const across = acrossFlight(layout);
  if (across === null) return null;
  const share = whole(part === 'whole' ? 1 : 2);
  return {
    exact: divide(across.spread, share),
    readings: acrossReadings(layout, across).map(({ key, weight }) => ({ key, weight: divide(weight, share) })),
  };
}

/** What the fall between the skirts is read from. */
function acrossReadings(layout: StairLayout, across: AcrossFlight): readonly Reading[] {
  const { fall, over } = layout.job.survey.fallAcross;
  const way = whole(sign(fall));
  return [
    { key: 'survey.fallAcross', weight: divide(multiply(way, across.between), over) },
    { key: 'survey.widthFraming', weight: steepness(layout) },
  ];
}

export function twoRisesAndRun(layout: StairLayout): Measure {
  const { exact, readings } = unitRise(layout);
  return {
    exact: add(times(exact, 2), layout.flight.exact.run),
    readings: readings.map(({ key, weight }) => ({ key, weight: times(weight, 2) })),
  };
}

/** Null where the survey does not hold what it takes. */
export function headroom(layout: StairLayout): Measure | null {
  const { headroomExact } = layout.opening;
  const { floorDepth } = layout.job.survey;
  if (headroomExact === null || floorDepth === null) return null;
  const { totalRise: rise, unitRise: unit, run } = layout.flight.exact;
  const line = subtract(subtract(rise, floorDepth), headroomExact);
  const onFloor = sign(line) === 0;
  const readings = [
    { key: 'survey.openingFraming', weight: onFloor ? ZERO : divide(unit, run) },
    { key: 'survey.floorDepth', weight: whole(-1) },
    ...readRise(layout, subtract(whole(1), divide(line, rise))),
  ];
  return { exact: headroomExact, readings: readings.filter(({ weight }) => sign(weight) !== 0) };
}

export function width(layout: StairLayout): Measure | null {
  if (layout.width === null) return null;
  return { exact: layout.width.finishedExact, readings: [{ key: 'survey.widthFraming', weight: whole(1) }] };
}

export function stringerSpacing(layout: StairLayout): Measure | null {
  const { widthFraming, spacer } = layout.job.survey;
  if (layout.width === null || widthFraming === null) return null;
  const gaps = whole(layout.width.stringers - 1);
  const between = subtract(subtract(widthFraming, times(spacer, 2)), layout.job.stringer.stockThickness);
  const readings = [{ key: 'survey.widthFraming', weight: divide(whole(1), gaps) }];
  return { exact: divide(between, gaps), readings };
}

/** The nearest float: whether it is over a limit is asked by `leavesThroat`, exactly. */
export function throat(layout: StairLayout): Measure {
  const { run, stepLength, risers } = layout.flight;
  const perRise = -((run / stepLength) ** 3) / risers;
  return {
    exact: fromNumber(layout.stringer.throat),
    readings: [...readIfTyped(layout, 'stringer.stockDepth', whole(1)), ...readRise(layout, fromNumber(perRise))],
  };
}

/** d − e − RG/U ≥ w, without the root in U: with c = d − e − w, c² (R² + G²) ≥ R² G². */
export function leavesThroat(layout: StairLayout, least: Exact): boolean {
  const { unitRise: rise, run } = layout.flight.exact;
  const { stockDepth: depth, tipInset } = layout.job.stringer;
  const room = subtract(subtract(depth, tipInset), least);
  const [rise2, run2] = [multiply(rise, rise), multiply(run, run)];
  const enough = compare(multiply(multiply(room, room), add(rise2, run2)), multiply(rise2, run2)) >= 0;
  return sign(room) > 0 && enough;
}

export function stockDepth(layout: StairLayout): Measure {
  const exact = layout.job.stringer.stockDepth;
  return { exact, readings: readIfTyped(layout, 'stringer.stockDepth', whole(1)) };
}

export function stockThickness(layout: StairLayout): Measure {
  const exact = layout.job.stringer.stockThickness;
  return { exact, readings: readIfTyped(layout, 'stringer.stockThickness', whole(1)) };
}

/** How far the figure can be out when every reading is out by the doubt, each in its worse way. */
export function bandOf({ readings }: Measure, doubt: Exact): Exact {
  return readings.reduce((sum, { weight }) => add(sum, multiply(size(weight), doubt)), ZERO);
}

/** The readings to take again, the one that moves the figure most first. */
export function worthReadingAgain({ readings }: Measure): readonly string[] {
  return [...readings].sort((a, b) => toMm(size(b.weight)) - toMm(size(a.weight))).map(({ key }) => key);
}

function size(weight: Exact): Exact {
  return sign(weight) < 0 ? negate(weight) : weight;
}

/** The reading from floor to floor, and what the foot lies lower, where that was read too or comes of a slope. */
export function readRise(layout: StairLayout, weight: Exact): readonly Reading[] {
  return [
    { key: 'survey.rise', weight },
    ...readIfTyped(layout, 'survey.footBelowReading', weight),
    ...readSlope(layout).map((reading) => ({ ...reading, weight: multiply(reading.weight, weight) })),
  ];
}

/** px (X − r), with px a fall over a length: by (X − r) / over for the fall, and by −px for the tape's place. */
function readSlope({ job, flight }: StairLayout): readonly Reading[] {
  const { readingFromHeader, fallAlong } = job.survey;
  if (readingFromHeader === null || sign(fallAlong.fall) === 0) return [];
  const beyond = subtract(headerFace(job, flight.risers, flight.exact.run), readingFromHeader);
  return [
    { key: 'survey.fallAlong', weight: divide(beyond, fallAlong.over) },
    { key: 'survey.readingFromHeader', weight: negate(slopeAlong(job.survey)) },
  ];
}

/** What the program filled in was read by nobody. */
function readIfTyped({ job }: StairLayout, key: string, weight: Exact): readonly Reading[] {
  return job.defaults.some((used) => used.key === key) ? [] : [{ key, weight }];
}
