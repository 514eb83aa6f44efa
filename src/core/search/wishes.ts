/**
 * What a search for layouts is asked: the stair as it was surveyed, the rules, and what the user wishes on
 * top of them. Risers, run, top and board of the stair in hand are what the search varies; all else of the
 * job stays as it is typed.
 */
import { doubtIn } from '../codes/measures';
import { chooseRules, type RuleSet } from '../codes/rulePack';
import type { JobText, StringerTop } from '../job/jobText';
import { readStair } from '../job/readStair';
import type { StairJob } from '../job/stairJob';
import type { LayoutLimits } from '../layout/flight';
import { riseAtReading } from '../layout/slope';
import { limitsOf, type RuleBook, type TapeDoubt } from '../plan/planStair';
import { failure, problem, type Result, success } from '../result';
import { STOCK_LENGTHS } from '../stringer/board';
import { compare, type Exact, inchMm, sign, toMm } from '../units/exact';
import type { UnitSystem } from '../units/length';

export const TOPS: readonly StringerTop[] = [
  'hanger-is-riser',
  'header-behind-riser',
  'hanger-behind-riser',
  'level-with-floor',
];

/** Null and empty: no wish. */
export interface Wishes {
  /** Level, from the header's face out to the face of riser 1. */
  readonly runAvailable: Exact | null;
  /** Beside what the rules ask. */
  readonly headroom: Exact | null;
  /** Lengths of board that can be bought, shortest first, millimetres. */
  readonly stockLengths: readonly number[];
  /** Depths of board that can be bought, shallowest first; empty: the stair's own board. */
  readonly stockDepths: readonly Exact[];
  readonly tops: readonly StringerTop[];
}

export interface Search {
  readonly job: StairJob;
  readonly rules: RuleSet;
  readonly limits: LayoutLimits;
  readonly wishes: Wishes;
  /** How far a tape reading may be out; only cautions hang on it. */
  readonly doubt: Exact | null;
}

/** @returns millimetres, shortest first */
export function soldLengths(units: UnitSystem): readonly number[] {
  return units === 'metric' ? STOCK_LENGTHS.metricMm : STOCK_LENGTHS.imperialFeet.map((feet) => inchMm(12 * feet));
}

/** @returns the search, or what of the job or its rules cannot be read, or that there is nothing to climb */
export function askSearch(
  job: JobText,
  index: number,
  book: RuleBook,
  wishes: Wishes,
  tapeDoubt: TapeDoubt = null,
): Result<Search> {
  const rules = chooseRules({ ...job.rules, pack: job.rules?.pack ?? book.defaultPack }, book.findPack);
  const stair = readStair(job, index);
  if (!rules.ok || !stair.ok) {
    return failure([...(rules.ok ? [] : rules.problems), ...(stair.ok ? [] : stair.problems)]);
  }
  const totalRise = riseAtReading(stair.value.survey);
  if (sign(totalRise) <= 0) {
    const place = `${stair.value.place}.survey.rise`;
    return failure([problem(place, 'rise.notPositive', { totalRiseMm: toMm(totalRise) })]);
  }
  const limits = limitsOf(rules.value);
  return success({
    job: stair.value,
    rules: rules.value,
    limits,
    wishes: inOrder(wishes),
    doubt: doubtIn(stair.value, tapeDoubt),
  });
}

/** What the head is to have: what the rules ask or what is wished, whichever is more; null where neither says. */
export function headroomAsked({ limits, wishes }: Search): Exact | null {
  const [rule, wish] = [limits.headroomMin, wishes.headroom];
  if (rule === null || wish === null) return rule ?? wish;
  return compare(rule, wish) >= 0 ? rule : wish;
}

function inOrder(wishes: Wishes): Wishes {
  return {
    ...wishes,
    stockLengths: [...wishes.stockLengths].sort((a, b) => a - b),
    stockDepths: [...wishes.stockDepths].sort(compare),
  };
}
