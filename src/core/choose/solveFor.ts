/**
 * One of opening, headroom, run, floor depth and riser count from the others, exactly.
 *
 * With O the finished opening from the face of the top riser to the finished edge at the low end, and Df the
 * depth of the floor, the headroom is HR = min(H, (O − n) R/G) − Df. So, for a headroom that is wanted:
 *     O ≥ (HR + Df) G/R + n        Df ≤ min(H, (O − n) R/G) − HR        R ≥ (HR + Df) G/(O − n), so N ≤ H/R
 *     G ≤ (O − n) R/(HR + Df)
 * A whole top tread level with the floor takes one run off O, which puts R more under the run's fraction.
 * Where the floor falls from where the tape stood, R moves with the run and with the count: there the same
 * inequality is asked of each count, and of runs on the tape's grid by halves.
 */
import { isHung, type StairJob } from '../job/stairJob';
import type { StairLayout } from '../layout/layoutStair';
import { headerFace, sumRise } from '../layout/slope';
import { add, compare, divide, type Exact, inch, multiply, sign, subtract, times, whole } from '../units/exact';

export type Unknown = 'opening' | 'headroom' | 'run' | 'floorDepth' | 'risers';

export type NotSolved =
  /** A length that it takes was not measured. */
  | 'notMeasured'
  /** The ceiling is lower than the headroom, over the floor itself. */
  | 'ceiling'
  /** The opening ends before the first nosing under the top. */
  | 'opening'
  /** Nothing is left for it. */
  | 'nothing';

export type Solution =
  | { readonly unknown: Unknown; readonly value: Exact; readonly is: 'least' | 'most' | 'exact' }
  | { readonly unknown: Unknown; readonly value: null; readonly why: NotSolved };

const MOST_RISERS = 200;
const FEWEST_RISERS = 2;
/** Runs of a floor that falls are looked for on this, up to so many. Common practice, no source. */
const GRID = { imperial: inch(1 / 16), metric: whole(1) };
const GRID_STEPS = 640;

/** @param wanted headroom, in millimetres */
export function solveFor(unknown: Unknown, layout: StairLayout, wanted: Exact): Solution {
  const { floorDepth, openingFraming } = layout.job.survey;
  const missing =
    (unknown !== 'floorDepth' && floorDepth === null) || (unknown !== 'opening' && openingFraming === null);
  if (missing) return none(unknown, 'notMeasured');
  if (unknown === 'headroom') return { unknown, value: layout.opening.headroomExact as Exact, is: 'exact' };
  if (unknown === 'opening') return leastOpening(layout, wanted, floorDepth as Exact);
  if (unknown === 'floorDepth') return mostFloorDepth(layout, wanted, openingFraming as Exact);
  const asked = { stair: layout.job, opening: openingFraming as Exact, under: add(wanted, floorDepth as Exact) };
  return unknown === 'run' ? mostRun(layout, asked) : mostRisers(layout, asked);
}

interface Asked {
  readonly stair: StairJob;
  readonly opening: Exact;
  /** HR + Df. */
  readonly under: Exact;
}

function none(unknown: Unknown, why: NotSolved): Solution {
  return { unknown, value: null, why };
}

function leastOpening({ flight, job }: StairLayout, wanted: Exact, floorDepth: Exact): Solution {
  const { totalRise, unitRise, run, nosing } = flight.exact;
  const under = add(wanted, floorDepth);
  if (compare(totalRise, under) < 0) return none('opening', 'ceiling');
  const finished = add(divide(multiply(under, run), unitRise), nosing);
  const setback = subtract(headerFace(job, flight.risers, run), times(run, flight.risers - 1));
  return { unknown: 'opening', value: add(add(finished, setback), job.survey.headerLining), is: 'least' };
}

function mostFloorDepth({ flight, job }: StairLayout, wanted: Exact, opening: Exact): Solution {
  const { run, unitRise, totalRise } = flight.exact;
  const climbed = divide(multiply(reachOf(job, opening, flight.risers, run), unitRise), run);
  const value = subtract(compare(climbed, totalRise) < 0 ? climbed : totalRise, wanted);
  return sign(value) > 0 ? { unknown: 'floorDepth', value, is: 'most' } : none('floorDepth', 'nothing');
}

/** O − n: from the landing nosing to the finished edge at the low end. */
function reachOf(stair: StairJob, opening: Exact, risers: number, run: Exact): Exact {
  const setback = subtract(headerFace(stair, risers, run), times(run, risers - 1));
  return subtract(subtract(subtract(opening, stair.survey.headerLining), setback), stair.steps.nosing);
}

/** True where these leave the headroom: H ≥ HR + Df, and (O − n) R ≥ (HR + Df) G. */
function leaves({ stair, opening, under }: Asked, risers: number, run: Exact): boolean {
  const totalRise = sumRise(stair, risers, run);
  const unitRise = divide(totalRise, whole(risers));
  const climbed = multiply(reachOf(stair, opening, risers, run), unitRise);
  return compare(totalRise, under) >= 0 && compare(climbed, multiply(under, run)) >= 0;
}

function mostRun({ flight }: StairLayout, asked: Asked): Solution {
  const { stair, opening, under } = asked;
  const { totalRise, unitRise } = flight.exact;
  const moves = sign(stair.survey.fallAlong.fall) !== 0 && stair.survey.readingFromHeader !== null;
  if (moves) return mostRunOnGrid(flight.risers, asked);
  if (compare(totalRise, under) < 0) return none('run', 'ceiling');
  const takesRun = !isHung(stair.stringer.top) && stair.stringer.topTreadRun === null;
  // The reach without the run that a whole top tread takes.
  const reach = add(reachOf(stair, opening, flight.risers, flight.exact.run), takesRun ? flight.exact.run : whole(0));
  if (sign(reach) <= 0) return none('run', 'opening');
  const over = takesRun ? add(under, unitRise) : under;
  return { unknown: 'run', value: divide(multiply(reach, unitRise), over), is: 'most' };
}

function mostRunOnGrid(risers: number, asked: Asked): Solution {
  const grid = GRID[asked.stair.units];
  const holds = (steps: number) => leaves(asked, risers, times(grid, steps));
  let [least, most] = [0, GRID_STEPS];
  if (!holds(1))
    return none('run', compare(sumRise(asked.stair, risers, grid), asked.under) < 0 ? 'ceiling' : 'opening');
  while (most - least > 1) {
    const middle = Math.floor((least + most) / 2);
    if (holds(middle)) least = middle;
    else most = middle;
  }
  return { unknown: 'run', value: times(grid, least), is: 'most' };
}

/** More risers climb less in each run, so the last count that leaves the headroom is the most. */
function mostRisers({ flight }: StairLayout, asked: Asked): Solution {
  const { run } = flight.exact;
  for (let risers = MOST_RISERS; risers >= FEWEST_RISERS; risers -= 1) {
    if (leaves(asked, risers, run)) return { unknown: 'risers', value: whole(risers), is: 'most' };
  }
  const ceiling = compare(sumRise(asked.stair, FEWEST_RISERS, run), asked.under) < 0;
  return none('risers', ceiling ? 'ceiling' : 'opening');
}
