/**
 * The closed set of rules that a straight flight decides. Each entry takes the layout and the
 * limits in force and answers for one field; a field without an entry is listed as not checked.
 *
 * Everything here is judged on exact positions, not on rounded ones, and exactly on a limit meets
 * it. Two limits are not inclusive by their own wording: a sphere of the limit's size must not pass.
 */
import type { StairLayout } from '../layout/layoutStair';
import { compare, type Exact, sign, subtract, times, toMm, whole, ZERO } from '../units/exact';
import { inRuleUnit, type Limit, limitFor, type RuleSet } from './rulePack';

export type Status = 'meets' | 'breaks' | 'close' | 'not-checked';

export interface Judgement {
  readonly status: Status;
  /** In the limit's own unit; null where there is nothing to compare. */
  readonly actual: number | null;
}

type Judge = (layout: StairLayout, limit: Limit & { readonly exact: Exact }, rules: RuleSet) => Judgement;

const NOT_CHECKED: Judgement = { status: 'not-checked', actual: null };

/** @returns the answer for one limit */
export function judge(layout: StairLayout, limit: Limit, rules: RuleSet): Judgement {
  const entry = Object.hasOwn(JUDGES, limit.field) ? JUDGES[limit.field] : undefined;
  if (entry === undefined || limit.exact === null) return NOT_CHECKED;
  return entry(layout, { ...limit, exact: limit.exact }, rules);
}

/** True for a row that only lends its number to another rule, and is answered there. */
export function isPartOfAnother(field: string): boolean {
  return field === 'nosing.notRequiredFromTread' || field === 'openRiser.freeBelowHeight';
}

const JUDGES: Readonly<Record<string, Judge>> = {
  'riser.max': (layout, limit) => noMoreThan(layout.flight.exact.unitRise, limit),
  'riser.min': (layout, limit) => noLessThan(layout.flight.exact.unitRise, limit),
  'tread.min': (layout, limit) => noLessThan(layout.flight.exact.run, limit),
  'tread.max': (layout, limit) => noMoreThan(layout.flight.exact.run, limit),
  'twoRPlusG.min': (layout, limit) => noLessThan(twoRisesAndRun(layout), limit),
  'twoRPlusG.max': (layout, limit) => noMoreThan(twoRisesAndRun(layout), limit),
  'nosing.min': judgeNosing,
  'nosing.max': (layout, limit) => noMoreThan(layout.flight.exact.nosing, limit),
  'variation.riser.max': (_layout, limit) => uniform(limit),
  'variation.riser.adjacent.max': (_layout, limit) => uniform(limit),
  'variation.tread.max': (_layout, limit) => uniform(limit),
  'variation.nosing.max': (_layout, limit) => uniform(limit),
  'flight.maxVerticalRise': (layout, limit) => noMoreThan(layout.flight.exact.totalRise, limit),
  'flight.minRisers': (layout, limit) => noLessThan(whole(layout.flight.risers), limit),
  'flight.maxRisers': (layout, limit) => noMoreThan(whole(layout.flight.risers), limit),
  'headroom.min': (layout, limit) => orNotChecked(layout.opening.headroomExact, limit, noLessThan),
  'width.min': (layout, limit) => orNotChecked(layout.width?.finishedExact ?? null, limit, noLessThan),
  'openRiser.maxSphere': judgeOpenRisers,
  // These two say that something is required; the job file cannot hold it yet, so it stays unchecked.
  'handrail.requiredFromRisers': (layout, limit) => requiredFrom(whole(layout.flight.risers), limit),
  'guard.requiredAboveDrop': (layout, limit) => requiredAbove(layout.flight.exact.totalRise, limit),
};

function noMoreThan(actual: Exact, limit: Limit & { readonly exact: Exact }): Judgement {
  return { status: compare(actual, limit.exact) <= 0 ? 'meets' : 'breaks', actual: inRuleUnit(actual, limit.unit) };
}

function noLessThan(actual: Exact, limit: Limit & { readonly exact: Exact }): Judgement {
  return { status: compare(actual, limit.exact) >= 0 ? 'meets' : 'breaks', actual: inRuleUnit(actual, limit.unit) };
}

function orNotChecked(
  actual: Exact | null,
  limit: Limit & { readonly exact: Exact },
  by: typeof noLessThan,
): Judgement {
  return actual === null ? NOT_CHECKED : by(actual, limit);
}

/** A straight flight laid out from one unit rise, run and nosing has no variation before it is cut. */
function uniform(limit: Limit & { readonly exact: Exact }): Judgement {
  return noMoreThan(ZERO, limit);
}

function twoRisesAndRun(layout: StairLayout): Exact {
  const { unitRise, run } = layout.flight.exact;
  return subtract(times(unitRise, 2), subtract(ZERO, run));
}

/** The least projection is not asked of treads that are deep enough. */
function judgeNosing(layout: StairLayout, limit: Limit & { readonly exact: Exact }, rules: RuleSet): Judgement {
  const judgement = noLessThan(layout.flight.exact.nosing, limit);
  const deepEnough = limitFor(rules, 'nosing.notRequiredFromTread');
  if (deepEnough === null || compare(layout.flight.exact.run, deepEnough) < 0) return judgement;
  return { ...judgement, status: 'meets' };
}

/**
 * The clear opening must be smaller than the sphere, for openings that reach higher above the lower
 * floor than the free height. The upper edge of an opening counts, which is the stricter reading.
 */
function judgeOpenRisers(layout: StairLayout, limit: Limit & { readonly exact: Exact }, rules: RuleSet): Judgement {
  const { flight } = layout;
  if (sign(flight.exact.riserThickness) > 0) return { status: 'meets', actual: 0 };
  const opening = subtract(flight.exact.unitRise, flight.exact.treadThickness);
  const highest = subtract(times(flight.exact.unitRise, flight.treads), flight.exact.treadThickness);
  const freeBelow = limitFor(rules, 'openRiser.freeBelowHeight');
  const actual = inRuleUnit(opening, limit.unit);
  if (freeBelow !== null && compare(highest, freeBelow) <= 0) return { status: 'meets', actual };
  return { status: compare(opening, limit.exact) < 0 ? 'meets' : 'breaks', actual };
}

function requiredFrom(actual: Exact, limit: Limit & { readonly exact: Exact }): Judgement {
  return { status: compare(actual, limit.exact) >= 0 ? 'not-checked' : 'meets', actual: toMm(actual) };
}

/** More than the limit: exactly on it, nothing is required. */
function requiredAbove(actual: Exact, limit: Limit & { readonly exact: Exact }): Judgement {
  return {
    status: compare(actual, limit.exact) > 0 ? 'not-checked' : 'meets',
    actual: inRuleUnit(actual, limit.unit),
  };
}
