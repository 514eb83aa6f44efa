/**
 * What would clear one finding, by changing one key of the job. Nothing is promised from a formula:
 * each cure has been through the whole pipeline, where it cleared that finding and broke no rule, and
 * made nothing unwise to build, that was in order before.
 *
 * The run is first searched on the layout alone, outward from the chosen one on the tape's grid, and
 * only the nearest that clears is proven, so that a search costs a handful of plans and not a hundred.
 * Strides stay under the narrowest band that a proportion rule asks for, or one could step over it.
 */
import { type Finding, findOn } from '../codes/findings';
import { doubtIn } from '../codes/measures';
import { limitFor } from '../codes/rulePack';
import type { JobText } from '../job/jobText';
import type { StairJob } from '../job/stairJob';
import { layoutStair } from '../layout/layoutStair';
import { type JudgedPlan, limitsOf, planStair, type RuleBook } from '../plan/planStair';
import { ceiling, compare, divide, type Exact, inch, negate, sign, subtract, times, toMm, whole } from '../units/exact';
import { exactText } from '../units/exactText';
import { stepsIn } from '../units/rounding';
import { changeStair, type StepChange } from './changeStair';
import { brokenFields, type Figures, figuresOf } from './figures';

export interface Cure {
  /** One change; a list, so that it is taken up like an alternative. */
  readonly changes: readonly [StepChange];
  /** How far the key moves: millimetres, or risers. */
  readonly by: number;
  readonly figures: Figures;
  /** Rules that stay broken with it. */
  readonly stillBroken: readonly string[];
}

/** What is too close to call is cured by clear air as well as by another reading. */
const CURABLE: readonly Finding['status'][] = ['breaks', 'close'];
/** How many either way are tried. */
const RISERS_REACH = 3;
/** Grid, reach and longest stride of the search for a run: what a tape shows. Common practice, no source. */
const RUN_SEARCH = {
  imperial: { grid: inch(1 / 16), reach: 64, stride: 8 },
  metric: { grid: whole(1), reach: 100, stride: 12 },
};
/** An opening is framed to this, always the longer way. Common practice, no source. */
const OPENING_GRID = { imperial: inch(1 / 8), metric: whole(1) };
const OPENING_REACH = 8;
/** Least trouble first: a saw setting, a mark, a step more, and last a beam. Common practice, no source. */
const ORDER: readonly StepChange['key'][] = ['steps.nosing', 'steps.run', 'steps.risers', 'survey.openingFraming'];

interface Case {
  readonly finding: Finding;
  readonly before: JudgedPlan;
  readonly planWith: (change: StepChange) => ReturnType<typeof planStair>;
  readonly findingsOn: (job: StairJob) => readonly Finding[];
}

/**
 * @param tapeDoubt as the finding was made with: what is then too close to call is no cure either
 * @returns proven cures, least first; empty for a finding that is in order or that no single key clears
 */
export function cureFor(
  job: JobText,
  index: number,
  finding: Finding,
  book: RuleBook,
  tapeDoubt: Exact | 'usual' | null = null,
): readonly Cure[] {
  const before = planStair(job, index, book, tapeDoubt);
  if (!before.ok || !CURABLE.includes(finding.status)) return [];
  const { layout, rules } = before.value;
  const doubt = doubtIn(layout.job, tapeDoubt);
  const asked: Case = {
    finding,
    before: before.value,
    planWith: (change) => planStair(changeStair(job, index, [change]), index, book, tapeDoubt),
    // The same layout and findings as the pipeline's, without text and without the second road.
    findingsOn: (stair) => {
      const tried = layoutStair(stair, limitsOf(rules));
      return tried.ok ? findOn(tried.value, rules, book.tastes, doubt) : [];
    },
  };
  const cures = [...nosingCures(asked), ...runCures(asked), ...riserCures(asked), ...openingCure(asked)];
  return cures.sort((a, b) => rank(a) - rank(b) || Math.abs(a.by) - Math.abs(b.by));
}

function rank({ changes: [{ key }] }: Cure): number {
  return ORDER.indexOf(key);
}

/** The proof. A plan that is refused, or that trades one broken rule for another, is no cure. */
function prove(asked: Case, change: StepChange, by: number): Cure[] {
  const { finding, before } = asked;
  const plan = asked.planWith(change);
  if (!plan.ok || !clears(plan.value.findings, finding)) return [];
  const worse = (['rule', 'build'] as const).some((kind) => {
    const was = brokenFields(before.findings, kind);
    return brokenFields(plan.value.findings, kind).some((field) => !was.includes(field));
  });
  if (worse) return [];
  const stillBroken = brokenFields(plan.value.findings, 'rule');
  return [{ changes: [change], by, figures: figuresOf(plan.value), stillBroken }];
}

/** A pack may set one field twice, so every answer for it has to be in order. */
function clears(findings: readonly Finding[], { field, kind }: Finding): boolean {
  const answers = findings.filter((answer) => answer.field === field && answer.kind === kind);
  return answers.length > 0 && answers.every(({ status }) => status === 'meets');
}

function riserCures(asked: Case): Cure[] {
  const { risers } = asked.before.layout.flight;
  return [-1, 1].flatMap((way) => {
    for (let by = 1; by <= RISERS_REACH; by += 1) {
      const [cure] = prove(asked, { key: 'steps.risers', value: risers + way * by }, way * by);
      if (cure !== undefined) return [cure];
    }
    return [];
  });
}

/** The nosing itself is only ever moved to a limit that the rules set for it. */
function nosingCures(asked: Case): Cure[] {
  const { layout, rules } = asked.before;
  const { nosing } = layout.flight.exact;
  return ['nosing.min', 'nosing.max'].flatMap((field) => {
    const limit = limitFor(rules, field);
    if (limit === null || sign(limit) < 0 || compare(limit, nosing) === 0) return [];
    const by = toMm(subtract(limit, nosing));
    return prove(asked, { key: 'steps.nosing', value: exactText(limit, layout.job.units) }, by);
  });
}

/** From the opening that the headroom asks for, and farther while that is still too close to call. */
function openingCure(asked: Case): Cure[] {
  const { job, opening } = asked.before.layout;
  const framed = job.survey.openingFraming;
  if (framed === null || opening.needed === null) return [];
  const grid = OPENING_GRID[job.units];
  const least = Math.max(stepsIn(opening.needed, toMm(grid), 'up'), stepsAtMost(framed, grid) + 1);
  const openingAt = (j: number) => times(grid, least + j);
  const found = nearest(OPENING_REACH, 1, (j) => {
    const survey = { ...job.survey, openingFraming: openingAt(j) };
    return clears(asked.findingsOn({ ...job, survey }), asked.finding);
  });
  if (found === null) return [];
  const wanted = openingAt(found);
  const change: StepChange = { key: 'survey.openingFraming', value: exactText(wanted, job.units) };
  return prove(asked, change, toMm(subtract(wanted, framed)));
}

function runCures(asked: Case): Cure[] {
  const { job, flight } = asked.before.layout;
  const { grid, reach, stride } = RUN_SEARCH[job.units];
  const { run } = flight.exact;
  // The first grid point below and above the chosen run, which need not be on the grid itself.
  const below = -stepsAtMost(negate(run), grid) - 1;
  const above = stepsAtMost(run, grid) + 1;
  const runAt = (start: number, way: number) => (j: number) => times(grid, start + way * j);
  return [runAt(below, -1), runAt(above, 1)].flatMap((candidate) => {
    const found = nearest(reach, stride, (j) => {
      const steps = { ...job.steps, run: candidate(j) };
      return clears(asked.findingsOn({ ...job, steps }), asked.finding);
    });
    if (found === null) return [];
    const wanted = candidate(found);
    return prove(asked, { key: 'steps.run', value: exactText(wanted, job.units) }, toMm(subtract(wanted, run)));
  });
}

/** The greatest whole number of grid steps that is not more than the length. */
function stepsAtMost(length: Exact, grid: Exact): number {
  return -Number(ceiling(divide(negate(length), grid)));
}

/** The least j from 0 that holds, going out by growing strides and back in by halves; null within reach. */
function nearest(reach: number, stride: number, holds: (j: number) => boolean): number | null {
  let fails = -1;
  let at = 0;
  while (!holds(at)) {
    fails = at;
    at += Math.min(stride, at + 1);
    if (at > reach) return null;
  }
  while (at - fails > 1) {
    const middle = Math.floor((at + fails) / 2);
    if (holds(middle)) at = middle;
    else fails = middle;
  }
  return at;
}
