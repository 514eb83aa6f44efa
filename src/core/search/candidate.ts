/**
 * One layout that could be: a riser count, a run on the tape's grid, a top, a board. It becomes a stair by
 * changing those keys of the job and nothing else, in the same way whether it is judged or taken.
 *
 * Frame of the search: runs from 4 to 20 in (100 to 500 mm) on the grid of the tape, and every riser count
 * from 2 up that leaves a unit rise of 3 in (75 mm). Outside of that nothing is looked at.
 */
import type { KeyChange } from '../choose/changeStair';
import { defaultText } from '../job/defaults';
import type { JobText, StringerTop } from '../job/jobText';
import { hasHangerBoard, type StairJob } from '../job/stairJob';
import { riseAtReading, sumRise } from '../layout/slope';
import { ceiling, compare, divide, type Exact, inch, negate, times, toMm, whole, ZERO } from '../units/exact';
import { exactText } from '../units/exactText';
import { parseLength, type UnitSystem } from '../units/length';
import { riseHangsOnRun } from './quick';

export interface Candidate {
  readonly risers: number;
  /** The run, counted in steps of the grid. */
  readonly steps: number;
  readonly top: StringerTop;
  readonly depth: Exact;
}

/** What a tape shows: common practice, no source. */
export const RUN_GRID: Readonly<Record<UnitSystem, Exact>> = { imperial: inch(1 / 16), metric: whole(1) };
const RUN_STEPS: Readonly<Record<UnitSystem, { readonly least: number; readonly most: number }>> = {
  imperial: { least: 4 * 16, most: 20 * 16 },
  metric: { least: 100, most: 500 },
};
/** Lower than any step is built. Common practice, no source. */
const LEAST_RISE: Readonly<Record<UnitSystem, Exact>> = { imperial: inch(3), metric: whole(75) };
const FEWEST_RISERS = 2;
const MOST_RISERS = 200;

export interface Frame {
  readonly fewest: number;
  readonly most: number;
  readonly leastSteps: number;
  readonly mostSteps: number;
  /** Millimetres of one step of the run's grid. */
  readonly gridMm: number;
}

export function frameOf(job: StairJob): Frame {
  const { least, most } = RUN_STEPS[job.units];
  return {
    fewest: FEWEST_RISERS,
    most: Math.max(FEWEST_RISERS, Math.min(MOST_RISERS, mostRises(job))),
    leastSteps: least,
    mostSteps: most,
    gridMm: toMm(RUN_GRID[job.units]),
  };
}

/** The most whole rises of the least height that go into the total rise; on a floor that falls, at the run that gives most. */
function mostRises(job: StairJob): number {
  const least = LEAST_RISE[job.units];
  const { least: shortest, most: longest } = RUN_STEPS[job.units];
  if (!riseHangsOnRun(job)) return -Number(ceiling(negate(divide(riseAtReading(job.survey), least))));
  const fits = (risers: number) =>
    [shortest, longest].some((steps) => compare(sumRise(job, risers, runOf(job, steps)), times(least, risers)) >= 0);
  let most = MOST_RISERS;
  while (most > FEWEST_RISERS && !fits(most)) most -= 1;
  return most;
}

function runOf(job: StairJob, steps: number): Exact {
  return times(RUN_GRID[job.units], steps);
}

/** The stair that taking the candidate gives. */
export function stairWith(job: StairJob, { risers, steps, top, depth }: Candidate): StairJob {
  return {
    ...job,
    steps: { ...job.steps, risers, run: runOf(job, steps) },
    stringer: {
      ...job.stringer,
      top,
      stockDepth: depth,
      hanger: hangerWith(job, top),
      topTreadRun: top === 'level-with-floor' ? job.stringer.topTreadRun : null,
    },
  };
}

/** A hanger board stays what it is; where there was none, it is the usual one, and where there is none, nothing. */
function hangerWith(job: StairJob, top: StringerTop): Exact {
  if (keepsHanger(job.stringer.top, top)) return job.stringer.hanger;
  if (!hasHangerBoard(top)) return ZERO;
  const usual = parseLength(defaultText('stringer.hanger', job.units));
  return usual.ok ? usual.length : ZERO;
}

function keepsHanger(now: StringerTop, then: StringerTop): boolean {
  return now === then || (hasHangerBoard(now) && hasHangerBoard(then));
}

/** The keys that have to be written for it; a key that already says so is left as it was typed. */
export function changesFor(text: JobText, index: number, job: StairJob, candidate: Candidate): readonly KeyChange[] {
  const { risers, steps, top, depth } = candidate;
  const typed = text.stairs[index]?.stringer ?? {};
  const run = runOf(job, steps);
  const changes: KeyChange[] = [];
  if (job.steps.risers !== risers) changes.push({ key: 'steps.risers', value: risers });
  if (job.steps.run === null || compare(job.steps.run, run) !== 0) {
    changes.push({ key: 'steps.run', value: exactText(run, job.units) });
  }
  if (compare(job.stringer.stockDepth, depth) !== 0) {
    changes.push({ key: 'stringer.stockDepth', value: exactText(depth, job.units) });
  }
  if (job.stringer.top === top) return changes;
  changes.push({ key: 'stringer.top', value: top });
  if (typed.hanger !== undefined && !keepsHanger(job.stringer.top, top)) {
    changes.push({ key: 'stringer.hanger', value: undefined });
  }
  if (typed.topTreadRun !== undefined) changes.push({ key: 'stringer.topTreadRun', value: undefined });
  return changes;
}
