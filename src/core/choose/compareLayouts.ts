/**
 * The neighbours of a stair: a few risers more or fewer, a run a little longer or shorter, each laid
 * out by the whole pipeline from a changed job, so that a figure in the table is the figure that one
 * gets. One that leaves no geometry stands in the list with its reason, not left out.
 */
import { chooseRules, limitFor, type RuleSet } from '../codes/rulePack';
import type { JobText } from '../job/jobText';
import { readStair } from '../job/readStair';
import type { StairJob } from '../job/stairJob';
import { fewestOnFloor, sumRise } from '../layout/slope';
import { type JudgedPlan, planStair, type RuleBook } from '../plan/planStair';
import type { Problem } from '../result';
import { add, compare, type Exact, inch, sign, subtract, toMm, whole } from '../units/exact';
import { exactText } from '../units/exactText';
import { changeStair, type KeyChange, type StepChange } from './changeStair';
import {
  brokenFields,
  countFindings,
  type Differences,
  differences,
  type Figures,
  type FindingCounts,
  figuresOf,
} from './figures';

export interface Alternative {
  /** The same for the same pair of riser count and run, whatever else changes. */
  readonly id: string;
  readonly risers: number;
  /** Millimetres. */
  readonly run: number;
  readonly chosen: boolean;
  /** What taking it up would write; empty for the chosen one. */
  readonly changes: readonly KeyChange[];
  /** Both keys of the pair: what taking it up writes into a job that has been changed since. */
  readonly pair: readonly KeyChange[];
  /** Why it leaves no geometry; empty where it lays out. */
  readonly problems: readonly Problem[];
  /** Null where it does not lay out. */
  readonly outcome: Outcome | null;
}

export interface Outcome {
  readonly figures: Figures;
  /** Against the chosen one; null while that one does not lay out. */
  readonly differences: Differences | null;
  readonly counts: FindingCounts;
  /** Fields of the rules that it breaks, and of what is hard or unwise to build. */
  readonly breaksRules: readonly string[];
  readonly breaksBuild: readonly string[];
}

type PairChange =
  | Extract<StepChange, { readonly key: 'steps.risers' }>
  | { readonly key: 'steps.run'; readonly value: string };

const RISERS_AROUND = [-2, -1, 0, 1, 2];
const FEWEST_RISERS = 2;
const MOST_RISERS = 200;
/** How far the run is moved either way: steps that one would try on a site. Common practice, no source. */
const RUN_STEPS = {
  imperial: [inch(1 / 4), inch(1 / 2), inch(1)],
  metric: [whole(5), whole(10), whole(25)],
};

/** What the two choices come to, whether or not they lay out together. */
interface Chosen {
  readonly risers: number;
  readonly run: Exact;
}

/**
 * @param tapeDoubt as for the plan itself: left out, no answer is too close to call
 * @returns by riser count, then by run; empty where no riser count or no run is to be had at all
 */
export function compareLayouts(
  job: JobText,
  index: number,
  book: RuleBook,
  tapeDoubt: Exact | 'usual' | null = null,
): readonly Alternative[] {
  const stair = readStair(job, index);
  const rules = chooseRules({ ...job.rules, pack: job.rules?.pack ?? book.defaultPack }, book.findPack);
  if (!stair.ok || !rules.ok) return [];
  const chosen = chosenOf(stair.value, rules.value);
  if (chosen === null) return [];
  const base = planStair(job, index, book, tapeDoubt);
  const against = base.ok ? figuresOf(base.value) : null;
  const runs = runsAround(stair.value, chosen.run, limitFor(rules.value, 'tread.min'));
  return countsAround(chosen.risers).flatMap((risers) =>
    runs.map((run) => {
      const isChosen = risers === chosen.risers && compare(run, chosen.run) === 0;
      const changes = changesTo(stair.value, chosen, { risers, run });
      const plan = once(() => (isChosen ? base : planStair(changeStair(job, index, changes), index, book, tapeDoubt)));
      const outcome = once(() => {
        const planned = plan();
        return planned.ok ? outcomeOf(planned.value, against) : null;
      });
      return {
        id: `${risers} x ${exactText(run, 'metric')}`,
        risers,
        run: toMm(run),
        chosen: isChosen,
        changes,
        pair: pairOf(stair.value, { risers, run }),
        get problems() {
          const planned = plan();
          return planned.ok ? [] : planned.problems;
        },
        get outcome() {
          return outcome();
        },
      };
    }),
  );
}

/** Worked out when it is first asked for: a page shows a few of the neighbours, and plans no others. */
function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | null = null;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

/** Writes an alternative, or a cure, into the job: only its own keys. */
export function applyAlternative(
  job: JobText,
  index: number,
  taken: { readonly changes: readonly KeyChange[] },
): JobText {
  return changeStair(job, index, taken.changes);
}

function chosenOf(stair: StairJob, rules: RuleSet): Chosen | null {
  const run = stair.steps.run ?? limitFor(rules, 'tread.min');
  if (run === null) return null;
  const risers = stair.steps.risers === 'auto' ? fewestFor(stair, rules, run) : stair.steps.risers;
  return risers === null ? null : { risers, run };
}

function fewestFor(stair: StairJob, rules: RuleSet, run: Exact): number | null {
  const riserMax = limitFor(rules, 'riser.max');
  if (riserMax === null || sign(riserMax) <= 0 || sign(sumRise(stair, 2, run)) <= 0) return null;
  return fewestOnFloor(stair, run, riserMax);
}

function countsAround(chosen: number): readonly number[] {
  return RISERS_AROUND.map((by) => chosen + by).filter((count) => count >= FEWEST_RISERS && count <= MOST_RISERS);
}

function runsAround(stair: StairJob, chosen: Exact, least: Exact | null): readonly Exact[] {
  const steps = RUN_STEPS[stair.units];
  const moved = steps.flatMap((step) => [subtract(chosen, step), add(chosen, step)]);
  const all = [chosen, ...moved, ...(least === null ? [] : [least])].filter((run) => sign(run) > 0).sort(compare);
  return all.filter((run, i) => i === 0 || compare(run, all[i - 1] as Exact) !== 0);
}

/** A key that already says what is wanted is left as it was typed, `auto` included. */
function changesTo(stair: StairJob, chosen: Chosen, wanted: Chosen): readonly KeyChange[] {
  const isSaid = {
    'steps.risers': wanted.risers === chosen.risers,
    'steps.run': compare(wanted.run, chosen.run) === 0,
  };
  return pairOf(stair, wanted).filter(({ key }) => !isSaid[key]);
}

function pairOf(stair: StairJob, { risers, run }: Chosen): readonly PairChange[] {
  return [
    { key: 'steps.risers', value: risers },
    { key: 'steps.run', value: exactText(run, stair.units) },
  ];
}

function outcomeOf(plan: JudgedPlan, against: Figures | null): Outcome {
  const figures = figuresOf(plan);
  return {
    figures,
    differences: against === null ? null : differences(figures, against),
    counts: countFindings(plan.findings),
    breaksRules: brokenFields(plan.findings, 'rule'),
    breaksBuild: brokenFields(plan.findings, 'build'),
  };
}
