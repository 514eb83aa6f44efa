/**
 * How long the main job takes, as ratios to a fixed piece of arithmetic in the same run: absolute
 * times say more about the machine than about the program.
 */
import { checkLayout } from '../../src/core/check/checkLayout';
import { findOn } from '../../src/core/codes/findings';
import { chooseRules, limitFor } from '../../src/core/codes/rulePack';
import { drawBoard } from '../../src/core/drawing/board';
import { drawElevation } from '../../src/core/drawing/elevation';
import type { JobText } from '../../src/core/job/jobText';
import { readStair } from '../../src/core/job/readStair';
import { layoutStair } from '../../src/core/layout/layoutStair';
import { planStair } from '../../src/core/plan/planStair';
import { rankLayouts } from '../../src/core/search/rank';
import { readWishes } from '../../src/core/search/readWishes';
import { type SearchResult, searchLayouts } from '../../src/core/search/searchLayouts';
import { askSearch } from '../../src/core/search/wishes';
import { inch } from '../../src/core/units/exact';
import { demoJob } from '../../src/document/demoJob';
import { BOOK, DEFAULT_PACK, findPack, TASTES } from '../../src/packs/ruleBook';

const VIEW = { width: 1000, height: 640 };

/** Microseconds of one call: the least of several rounds, so that the machine's other work drops out. */
function time(work: () => unknown, calls: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let round = 0; round < 15; round += 1) {
    const start = performance.now();
    for (let i = 0; i < calls; i += 1) sink(work());
    least = Math.min(least, ((performance.now() - start) / calls) * 1000);
  }
  return least;
}

let kept: unknown;
function sink(value: unknown): void {
  kept = value;
}

/** 120 points through an affine map, and the length of each: the arithmetic floor. */
function arithmeticFloor(): number {
  let sum = 0;
  for (let i = 0; i < 120; i += 1) {
    const x = i * 1.25;
    const y = i * 0.75;
    sum += Math.hypot(0.8 * x - 0.6 * y + 3, 0.6 * x + 0.8 * y + 5);
  }
  return sum;
}

function withRisers(risers: number): JobText {
  const [stair] = demoJob.stairs;
  if (stair === undefined) throw new Error('the demo job has no stair');
  const rise = `${(risers * 7.5).toFixed(4)} in`;
  return { ...demoJob, stairs: [{ ...stair, survey: { ...stair.survey, rise }, steps: { ...stair.steps, risers } }] };
}

/** Text → exact lengths → layout → findings → rips, without the second road. */
function layOut(job: JobText) {
  const rules = chooseRules({ pack: DEFAULT_PACK }, findPack);
  const stair = readStair(job, 0);
  if (!rules.ok || !stair.ok) throw new Error('the bench job does not read');
  const layout = layoutStair(stair.value, {
    riserMax: limitFor(rules.value, 'riser.max'),
    treadMin: limitFor(rules.value, 'tread.min'),
    headroomMin: limitFor(rules.value, 'headroom.min'),
  });
  if (!layout.ok) throw new Error('the bench job does not lay out');
  return { layout: layout.value, findings: findOn(layout.value, rules.value, TASTES) };
}

function planAndDraw(job: JobText): number {
  const plan = planStair(job, 0, BOOK);
  if (!plan.ok) throw new Error('the bench job does not plan');
  const words = (key: string) => key;
  return drawElevation(plan.value, VIEW, words).marks.length + drawBoard(plan.value, VIEW, words).marks.length;
}

/** All tops, riser counts and runs of one survey: looked through and ranked. */
function searchAll(job: JobText): SearchResult {
  const wished = readWishes({}, 'imperial', BOOK);
  if (!wished.ok) throw new Error('no wishes were refused');
  const asked = askSearch(job, 0, BOOK, wished.value.wishes, inch(1 / 16));
  if (!asked.ok) throw new Error('the bench job cannot be searched');
  const result = finish(searchLayouts(asked.value));
  sink(finish(rankLayouts(asked.value, result, wished.value.order)));
  return result;
}

/** A survey without an opening: nothing closes the long runs, and thousands are allowed. */
function withoutOpening(job: JobText): JobText {
  const [stair] = job.stairs;
  if (stair === undefined) throw new Error('the job has no stair');
  return { ...job, stairs: [{ ...stair, survey: { ...stair.survey, openingFraming: undefined } }] };
}

function finish<T>(steps: Generator<undefined, T>): T {
  for (;;) {
    const { done, value } = steps.next();
    if (done === true) return value;
  }
}

export function benchCore(): { readonly name: string; readonly ratio: number; readonly goal: number }[] {
  const usual = withRisers(15);
  const { layout } = layOut(usual);
  const floor = time(arithmeticFloor, 4000);
  const laid = time(() => layOut(usual), 200);
  const checked = time(() => checkLayout(layout), 200);
  const drawn = time(() => planAndDraw(usual), 100);
  const few = time(() => layOut(withRisers(10)), 200);
  const many = time(() => layOut(withRisers(200)), 60);
  const open = withoutOpening(usual);
  const [tight, loose] = [searchAll(usual), searchAll(open)];
  const [searchedTight, searchedLoose] = [time(() => searchAll(usual), 4), time(() => searchAll(open), 2)];
  sink(kept);
  return [
    { name: 'job to layout, findings and rips, 15 risers / arithmetic floor', ratio: laid / floor, goal: 150 },
    { name: 'the same with its own check and both drawings / without', ratio: drawn / laid, goal: 6 },
    { name: '200 risers / 10 risers', ratio: many / few, goal: 25 },
    { name: 'the check by the second road alone / arithmetic floor', ratio: checked / floor, goal: 150 },
    {
      name: `all layouts, one of ${tight.looked} candidates (${tight.found.length} allowed) / arithmetic floor`,
      ratio: searchedTight / tight.looked / floor,
      goal: 5,
    },
    {
      name: `all layouts, one of ${loose.looked} candidates (${loose.found.length} allowed), ranked / arithmetic floor`,
      ratio: searchedLoose / loose.looked / floor,
      goal: 5,
    },
    {
      name: `the whole of the latter: ${(searchedLoose / 1000).toFixed(1)} ms here / 6,000 times 5 floors`,
      ratio: searchedLoose / floor / 30_000,
      goal: 1,
    },
  ];
}
