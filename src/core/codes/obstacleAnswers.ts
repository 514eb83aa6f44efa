/** What hangs over the flight, each against its own clearance, or against what the rules ask of headroom. */
import type { StairLayout } from '../layout/layoutStair';
import type { Clearance } from '../layout/obstacles';
import { compare, divide, type Exact, negate, sign, whole } from '../units/exact';
import { type Judgement, judgeAtLeast } from './judge';
import { type Measure, readRise } from './measures';
import { inRuleUnit, type RuleSet } from './rulePack';
import type { Limit } from './rules';

type Asked = Limit & { readonly exact: Exact };

/** What is left under one of them, against what is asked; no limit where nobody asks anything. */
export interface ObstacleAnswer {
  readonly field: string;
  readonly limit: Asked | null;
  readonly judgement: Judgement;
}

/** @returns one for each obstacle, in the job's order */
export function obstacleAnswers(layout: StairLayout, rules: RuleSet, doubt: Exact | null): readonly ObstacleAnswer[] {
  return layout.obstacles.map((clearance, at) => {
    const limit = clearanceAsked(layout, rules, clearance);
    const judgement: Judgement =
      limit === null
        ? { status: 'not-checked', actual: null, readAgain: [] }
        : judgeAtLeast({ layout, limit, rules, doubt }, measureOf(layout, clearance, at));
    return { field: `obstacle.${at + 1}`, limit, judgement };
  });
}

/** Its own clearance, else the headroom of the rules; null where neither says. */
export function clearanceAsked(
  { job }: Pick<StairLayout, 'job'>,
  rules: RuleSet,
  { obstacle }: Pick<Clearance, 'obstacle'>,
): Asked | null {
  if (obstacle.clearance !== null) {
    const unit = job.units === 'metric' ? 'mm' : 'in';
    const value = inRuleUnit(obstacle.clearance, unit);
    const own = { field: 'headroom.min', value, unit, section: '', source: '', confidence: 'local' } as const;
    return { ...own, exact: obstacle.clearance };
  }
  for (const limit of rules.limits) {
    if (limit.field === 'headroom.min' && limit.exact !== null && !limit.advice)
      return { ...limit, exact: limit.exact };
  }
  return null;
}

/** The underside moves it by its own height; the nosing line by the place of it, and by the rise that it grows with. */
function measureOf({ flight, ...layout }: StairLayout, clearance: Clearance, index: number): Measure {
  const { exact, at, stands, standsOn, obstacle } = clearance;
  const key = (name: string) => `survey.obstacles[${index}].${name}`;
  const isSloping = compare(obstacle.height, obstacle.heightFar) !== 0;
  const height = { key: key(at === 'far' && isSloping ? 'heightFar' : 'height'), weight: whole(1) };
  const { unitRise, run, totalRise } = flight.exact;
  const place = { key: key(at === 'far' ? 'far' : 'near'), weight: divide(unitRise, run) };
  const onRise = sign(stands) === 0 ? [] : readRise({ flight, ...layout }, negate(divide(stands, totalRise)));
  return { exact, readings: [height, ...(standsOn === 'flight' ? [place] : []), ...onRise] };
}
