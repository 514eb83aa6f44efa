/**
 * Job → StairLayout: the whole stair from one survey, as one pure function. What leaves no
 * geometry is refused here; what can be built and breaks a rule is a finding (codes/).
 */
import type { DefaultUsed, StairJob } from '../job/stairJob';
import { type Rips, ripParts } from '../parts/rips';
import { type ProblemValues, type Result, success } from '../result';
import { cutStringer, type Stringer } from '../stringer/stringer';
import { inchMm, sign, toInches, toMm } from '../units/exact';
import { decimalText } from '../units/format';
import { type Flight, type LayoutLimits, layFlight } from './flight';
import { type Clearance, clearObstacles } from './obstacles';
import { checkOpening, type Opening } from './opening';
import { stackWidth, type WidthStack } from './width';

/** Something that was not computed, or that looks odd: said, never forbidden. */
export interface Note {
  readonly code: string;
  readonly values: ProblemValues;
}

export interface StairLayout {
  readonly job: StairJob;
  /** True while a finish is unknown. */
  readonly draft: boolean;
  readonly defaults: readonly DefaultUsed[];
  readonly notes: readonly Note[];
  readonly flight: Flight;
  readonly stringer: Stringer;
  readonly opening: Opening;
  /** In the order of the job. */
  readonly obstacles: readonly Clearance[];
  readonly width: WidthStack | null;
  readonly rips: Rips;
}

/** Storeys and openings outside this look like a slip of units. Common practice, no source. */
const PLAUSIBLE = { riseLeast: inchMm(14), riseMost: inchMm(240), openingLeast: inchMm(24), openingMost: inchMm(360) };

/**
 * @param limits what the chosen rules contribute (least run, riser count, headroom wanted)
 * @returns the layout in millimetres, or the choices that leave no geometry
 */
export function layoutStair(job: StairJob, limits: LayoutLimits): Result<StairLayout> {
  const flight = layFlight(job, limits);
  if (!flight.ok) return flight;
  const width = stackWidth(job);
  const stack = width === 'too-narrow' ? null : width;
  const stringer = cutStringer(flight.value, job, stack);
  if (!stringer.ok) return stringer;
  const opening = checkOpening(flight.value, job, limits);
  const obstacles = clearObstacles(flight.value, job);
  return success({
    job,
    draft: job.unknowns.length > 0,
    defaults: [...job.defaults, ...lateDefaults(job, flight.value)],
    notes: [...notComputed(job, limits, opening, width), ...implausible(job, flight.value), ...notOver(obstacles)],
    flight: flight.value,
    stringer: stringer.value,
    opening,
    obstacles,
    width: stack,
    rips: ripParts(flight.value, job, stringer.value, stack),
  });
}

/** Left-out keys whose default is only known once the flight is. */
function lateDefaults(job: StairJob, flight: Flight): DefaultUsed[] {
  const { run } = flight.exact;
  const used = job.units === 'metric' ? `${decimalText(run)} mm` : `${decimalText(toInches(run))} in`;
  const late: DefaultUsed[] = [];
  if (job.steps.run === null) late.push({ key: 'steps.run', used });
  if (job.stringer.top === 'level-with-floor' && job.stringer.topTreadRun === null) {
    late.push({ key: 'stringer.topTreadRun', used });
  }
  return late;
}

function notComputed(job: StairJob, limits: LayoutLimits, opening: Opening, width: unknown): Note[] {
  const { survey } = job;
  const notes: Note[] = [];
  const say = (code: string) => notes.push({ code, values: {} });
  if (survey.floorDepth === null) say('note.noFloorDepth');
  else if (survey.openingFraming === null) say('note.noOpening');
  if (survey.floorDepth !== null && limits.headroomMin === null) say('note.noHeadroomLimit');
  else if (survey.floorDepth !== null && opening.needed === null) say('note.ceilingTooLow');
  if (survey.headerDepth === null) say('note.noHeaderDepth');
  if (width === null) say('note.noWidth');
  if (width === 'too-narrow') say('note.widthTooNarrow');
  const isPlaced = width !== null && width !== 'too-narrow';
  if (!isPlaced && sign(survey.fallAcross.fall) !== 0) say('note.slopeNoWidth');
  return notes;
}

/** It stays in the list: a head passes under it on the way to the stair. */
function notOver(obstacles: readonly Clearance[]): Note[] {
  return obstacles.flatMap(({ overFlight }, at) =>
    overFlight ? [] : [{ code: 'note.obstacleOutside', values: { number: at + 1 } }],
  );
}

function implausible(job: StairJob, flight: Flight): Note[] {
  const notes: Note[] = [];
  if (flight.totalRise < PLAUSIBLE.riseLeast || flight.totalRise > PLAUSIBLE.riseMost) {
    notes.push({ code: 'note.oddRise', values: { riseMm: flight.totalRise } });
  }
  const opening = job.survey.openingFraming;
  if (opening === null) return notes;
  const length = toMm(opening);
  if (length < PLAUSIBLE.openingLeast || length > PLAUSIBLE.openingMost) {
    notes.push({ code: 'note.oddOpening', values: { openingMm: length } });
  }
  return notes;
}
