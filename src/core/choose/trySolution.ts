/**
 * A solution as a change of one key, on the tape's grid on its safe side, tried on the whole stair; and what a
 * small pull on each lever does to the head, in the same way. Nothing is promised from a formula.
 */
import { limitFor } from '../codes/rulePack';
import type { JobText } from '../job/jobText';
import { planStair, type RuleBook, type StairPlan } from '../plan/planStair';
import { type Exact, inch, negate, subtract, times, toMm, whole } from '../units/exact';
import { exactText } from '../units/exactText';
import type { UnitSystem } from '../units/length';
import { changeStair, type KeyChange, type StepChange } from './changeStair';
import { brokenFields } from './figures';
import type { Solution } from './solveFor';

export interface Tried {
  /** The solution; and the number of risers where it was left to the rules and would not stay what it is. */
  readonly changes: readonly [KeyChange, ...KeyChange[]];
  /** As it would be taken: millimetres, or a count. */
  readonly taken: number;
  readonly headroom: number | null;
  /** Rules that the stair would break with it. */
  readonly breaks: readonly string[];
}

const KEYS = {
  opening: 'survey.openingFraming',
  run: 'steps.run',
  floorDepth: 'survey.floorDepth',
  risers: 'steps.risers',
} as const;

/** An opening is framed, everything else read off a tape, to this. Common practice, no source. */
const FRAMED: Readonly<Record<UnitSystem, Exact>> = { imperial: inch(1 / 8), metric: whole(1) };
const TAPED: Readonly<Record<UnitSystem, Exact>> = { imperial: inch(1 / 16), metric: whole(1) };

/** @returns null where there is nothing to take: no solution, or a headroom, which is no choice; or no stair with it */
export function trySolution(job: JobText, index: number, book: RuleBook, solution: Solution): Tried | null {
  if (solution.value === null || solution.unknown === 'headroom') return null;
  const units = job.units ?? 'imperial';
  const { unknown, value } = solution;
  if (unknown === 'risers') {
    const risers = toMm(value);
    return attempt(job, index, book, [{ key: KEYS.risers, value: risers }], risers);
  }
  const grid = unknown === 'opening' ? FRAMED[units] : TAPED[units];
  const taken = onGrid(value, grid, unknown === 'opening' ? 'up' : 'down');
  const change = { key: KEYS[unknown], value: exactText(taken, units) };
  const before = planStair(job, index, book);
  const after = planStair(changeStair(job, index, [change]), index, book);
  // On a floor that falls another run is another rise, and the rules may count it into other risers.
  const counts = [before, after].map((plan) => (plan.ok ? plan.value.layout.flight.risers : null));
  const stays: KeyChange[] =
    counts[0] == null || counts[0] === counts[1] ? [] : [{ key: KEYS.risers, value: counts[0] }];
  return attempt(job, index, book, [change, ...stays], toMm(taken));
}

function attempt(job: JobText, index: number, book: RuleBook, changes: Tried['changes'], taken: number): Tried | null {
  const plan = planStair(changeStair(job, index, changes), index, book);
  if (!plan.ok) return null;
  const { layout, findings } = plan.value;
  return { changes, taken, headroom: layout.opening.headroom, breaks: brokenFields(findings, 'rule') };
}

/** Exactly, so that a value on the grid stays what it is. */
function onGrid(value: Exact, grid: Exact, way: 'up' | 'down'): Exact {
  const [steps, rest] = [
    (value.num * grid.den) / (value.den * grid.num),
    (value.num * grid.den) % (value.den * grid.num),
  ];
  return times(grid, Number(steps) + (way === 'up' && rest > 0n ? 1 : 0));
}

export type Pull = StepChange | { readonly key: 'survey.floorDepth'; readonly value: string };

export interface Lever {
  readonly change: Pull;
  /** What is changed, millimetres or risers, with its sign. */
  readonly by: number;
  /** What that adds to the headroom at the opening, and to the least clearance under what hangs overhead. */
  readonly headroom: number | null;
  readonly overhead: number | null;
}

const PULLS: Readonly<Record<UnitSystem, { readonly small: Exact; readonly large: Exact }>> = {
  imperial: { small: inch(1 / 4), large: inch(1) },
  metric: { small: whole(5), large: whole(25) },
};

/** @returns in the order of what they cost on site, as the trade counts it: common practice, no source */
export function tryLevers(job: JobText, index: number, book: RuleBook, plan: StairPlan): readonly Lever[] {
  const { layout } = plan;
  const { units, survey, steps } = layout.job;
  const { small, large } = PULLS[units];
  const { run } = layout.flight.exact;
  const text = (length: Exact) => exactText(length, units);
  const pulls: { change: Pull; by: number }[] = [
    { change: { key: 'steps.run', value: text(subtract(run, small)) }, by: -toMm(small) },
    { change: { key: 'steps.nosing', value: text(subtract(steps.nosing, small)) }, by: -toMm(small) },
    { change: { key: 'steps.risers', value: layout.flight.risers - 1 }, by: -1 },
  ];
  if (survey.openingFraming !== null) {
    const longer = subtract(survey.openingFraming, negate(large));
    pulls.push({ change: { key: 'survey.openingFraming', value: text(longer) }, by: toMm(large) });
  }
  if (survey.floorDepth !== null) {
    const thinner = subtract(survey.floorDepth, large);
    pulls.push({ change: { key: 'survey.floorDepth', value: text(thinner) }, by: -toMm(large) });
  }
  return pulls.flatMap(({ change, by }) => {
    const tried = planStair(changeStair(job, index, [change]), index, book);
    if (!tried.ok) return [];
    const then = tried.value.layout;
    return [
      {
        change,
        by,
        headroom: gain(layout.opening.headroom, then.opening.headroom),
        overhead: gain(tightest(layout), tightest(then)),
      },
    ];
  });
}

function gain(before: number | null, after: number | null): number | null {
  return before === null || after === null ? null : after - before;
}

function tightest({ obstacles }: StairPlan['layout']): number | null {
  return obstacles.length === 0 ? null : Math.min(...obstacles.map(({ clearance }) => clearance));
}

/** The headroom that the rules ask for; null where they ask for none. */
export function headroomWanted({ rules }: StairPlan): Exact | null {
  return limitFor(rules, 'headroom.min');
}
