/**
 * The closed set of rules that a straight flight decides. Each entry takes the layout and the
 * limits in force and answers for one field; a field without an entry is listed as not checked.
 *
 * Everything here is judged on exact positions, not on rounded ones, and exactly on a limit meets
 * it. Some limits are not inclusive by their own wording: a sphere of the limit's size must not pass,
 * and what is required above a drop is not required on it.
 *
 * Only where the tape's doubt is handed in, an answer that the doubt can turn is `close`.
 */
import type { StairLayout } from '../layout/layoutStair';
import { add, compare, type Exact, fromNumber, negate, sign, subtract, times, toMm, whole, ZERO } from '../units/exact';
import {
  bandOf,
  chosen,
  headroom,
  leavesThroat,
  type Measure,
  riserVariation,
  shortestRiser,
  stockDepth,
  stockThickness,
  stringerSpacing,
  tallestRiser,
  throat,
  totalRise,
  twoRisesAndRun,
  unitRise,
  width,
  worthReadingAgain,
} from './measures';
import { inRuleUnit, type RuleSet } from './rulePack';
import type { Limit } from './rules';

export type Status = 'meets' | 'breaks' | 'close' | 'not-checked';

export interface Judgement {
  readonly status: Status;
  /** In the limit's own unit; null where there is nothing to compare. */
  readonly actual: number | null;
  /** Keys of the stair whose reading would settle it, the one that counts most first; only for `close`. */
  readonly readAgain: readonly string[];
}

/** Everything that an entry may look at. */
export interface Case {
  readonly layout: StairLayout;
  readonly limit: Limit & { readonly exact: Exact };
  readonly rules: RuleSet;
  readonly doubt: Exact | null;
}

type Judge = (asked: Case) => Judgement;

const NOT_CHECKED: Judgement = { status: 'not-checked', actual: null, readAgain: [] };
/** A code that gives no number for it asks that all be alike. */
const UNIFORM = 'uniform';
const EQUAL_RISE_AND_RUN_DEG = 45;

/**
 * @param doubt how far each tape reading may be out, in millimetres; null: the readings count as they are
 * @returns the answer for one limit
 */
export function judge(layout: StairLayout, limit: Limit, rules: RuleSet, doubt: Exact | null = null): Judgement {
  if (!isFor(limit, hasOpenRisers(layout))) return { status: 'meets', actual: null, readAgain: [] };
  if (limit.field === 'openRiser.allowed') return judgeOpenRisersAllowed(layout, limit);
  const entry = Object.hasOwn(JUDGES, limit.field) ? JUDGES[limit.field] : undefined;
  if (entry === undefined) return NOT_CHECKED;
  if (isVariation(limit.field) && limit.value === UNIFORM) return judgeAlike(layout, limit);
  if (limit.exact === null) return NOT_CHECKED;
  return entry({ layout, limit: { ...limit, exact: limit.exact }, rules, doubt });
}

/** Rows that only lend their figure to another, and are answered there. */
const LENT: Readonly<Record<string, string>> = {
  'nosing.notRequiredFromTread': 'nosing.min',
  'openRiser.freeBelowHeight': 'openRiser.maxSphere',
};

/** True for a row that only lends its number to another rule in force, and is answered there. */
export function isPartOfAnother(field: string, rules: RuleSet): boolean {
  return Object.hasOwn(LENT, field) && rules.limits.some((limit) => limit.field === LENT[field]);
}

const JUDGES: Readonly<Record<string, Judge>> = {
  'riser.max': (asked) => noMoreThan(asked, tallestRiser(asked.layout)),
  'riser.min': (asked) => noLessThan(asked, shortestRiser(asked.layout)),
  // The riser boards of this flight stand plumb, and so do its cuts.
  'riser.slope.max': (asked) => noMoreThan(asked, chosen(ZERO)),
  'tread.min': (asked) => noLessThan(asked, chosen(asked.layout.flight.exact.run)),
  'tread.max': (asked) => noMoreThan(asked, chosen(asked.layout.flight.exact.run)),
  // A tread is deeper than the run by what it projects.
  'tread.overRun.max': (asked) => noMoreThan(asked, chosen(asked.layout.flight.exact.nosing)),
  'twoRPlusG.min': (asked) => noLessThan(asked, twoRisesAndRun(asked.layout)),
  'twoRPlusG.max': (asked) => noMoreThan(asked, twoRisesAndRun(asked.layout)),
  'pitch.min': (asked) => judgePitch(asked, (rise, riseAtLimit) => compare(rise, riseAtLimit) >= 0),
  'pitch.max': (asked) => judgePitch(asked, (rise, riseAtLimit) => compare(rise, riseAtLimit) <= 0),
  'nosing.min': judgeNosing,
  'nosing.max': (asked) => noMoreThan(asked, chosen(asked.layout.flight.exact.nosing)),
  'variation.riser.max': (asked) => orNotChecked(riserVariation(asked.layout, 'whole'), (m) => noMoreThan(asked, m)),
  'variation.riser.adjacent.max': (asked) =>
    orNotChecked(riserVariation(asked.layout, 'half'), (m) => noMoreThan(asked, m)),
  'variation.riser.nominal.max': (asked) =>
    orNotChecked(riserVariation(asked.layout, 'half'), (m) => noMoreThan(asked, m)),
  'variation.tread.max': uniform,
  'variation.tread.adjacent.max': uniform,
  'variation.tread.nominal.max': uniform,
  'variation.nosing.max': uniform,
  'flight.maxVerticalRise': (asked) => noMoreThan(asked, totalRise(asked.layout)),
  'flight.minRisers': (asked) => noLessThan(asked, chosen(whole(asked.layout.flight.risers))),
  'flight.maxRisers': (asked) => noMoreThan(asked, chosen(whole(asked.layout.flight.risers))),
  // A straight flight does not change its direction.
  'flight.maxRisersBeforeTurn': (asked) => noMoreThan(asked, chosen(whole(asked.layout.flight.risers))),
  'headroom.min': (asked) => orNotChecked(headroom(asked.layout), (measure) => noLessThan(asked, measure)),
  'width.min': (asked) => orNotChecked(width(asked.layout), (measure) => noLessThan(asked, measure)),
  'openRiser.maxSphere': judgeOpenRisers,
  'openRiser.overlap.min': judgeOverlap,
  'stringer.effectiveDepth.min': judgeThroat,
  'stringer.depth.min': (asked) => noLessThan(asked, stockDepth(asked.layout)),
  'stringer.thickness.min': (asked) => noLessThan(asked, stockThickness(asked.layout)),
  'stringer.spacing.max': (asked) =>
    orNotChecked(stringerSpacing(asked.layout), (measure) => noMoreThan(asked, measure)),
  'treadBoard.thickness.min': judgeTreadBoard,
  // These say that something is required; the job file cannot hold it yet, so it stays unchecked.
  'handrail.requiredFromRisers': (asked) => requiredFrom(asked, chosen(whole(asked.layout.flight.risers))),
  'handrail.requiredAboveRise': (asked) => requiredAbove(asked, totalRise(asked.layout)),
  'handrail.bothSidesFromWidth': (asked) =>
    orNotChecked(width(asked.layout), (measure) => requiredFrom(asked, measure)),
  'guard.requiredAboveDrop': (asked) => requiredAbove(asked, totalRise(asked.layout)),
};

/** True where a rule is made for this kind of stair at all. */
export function isFor({ when }: Limit, hasOpen: boolean): boolean {
  return when === undefined || (when === 'open-risers') === hasOpen;
}

function hasOpenRisers(layout: StairLayout): boolean {
  return sign(layout.flight.exact.riserThickness) === 0;
}

function isVariation(field: string): boolean {
  return field.startsWith('variation.');
}

/**
 * The one comparison: does the figure hold, and would it at both ends of what the readings allow?
 * Every rule holds on one side of its limit, so what happens at the ends happens nowhere else.
 */
function weigh(
  { limit, doubt }: Case,
  measure: Measure,
  holds: (exact: Exact) => boolean,
  shown: { readonly actual?: number; readonly otherwise?: Status } = {},
): Judgement {
  const { actual = inRuleUnit(measure.exact, limit.unit), otherwise = 'breaks' } = shown;
  const held = holds(measure.exact);
  const band = doubt === null ? ZERO : bandOf(measure, doubt);
  const turns = [band, negate(band)].some((by) => holds(add(measure.exact, by)) !== held);
  if (turns) return { status: 'close', actual, readAgain: worthReadingAgain(measure) };
  return { status: held ? 'meets' : otherwise, actual, readAgain: [] };
}

function noMoreThan(asked: Case, measure: Measure): Judgement {
  return weigh(asked, measure, (exact) => compare(exact, asked.limit.exact) <= 0);
}

function noLessThan(asked: Case, measure: Measure): Judgement {
  return weigh(asked, measure, (exact) => compare(exact, asked.limit.exact) >= 0);
}

/** At least the limit, of a figure that has no field of its own in a pack. */
export function judgeAtLeast(asked: Case, measure: Measure): Judgement {
  return noLessThan(asked, measure);
}

function orNotChecked(measure: Measure | null, by: (measure: Measure) => Judgement): Judgement {
  return measure === null ? NOT_CHECKED : by(measure);
}

/** Where all must be alike and no number is given, what a sloping floor does to riser 1 is not judged. */
function judgeAlike(layout: StairLayout, { field }: Limit): Judgement {
  const variation = field.startsWith('variation.riser.') ? riserVariation(layout, 'whole') : chosen(ZERO);
  if (variation === null || sign(variation.exact) !== 0) return NOT_CHECKED;
  return { status: 'meets', actual: 0, readAgain: [] };
}

/** A straight flight laid out from one run and nosing has no variation of them before it is cut. */
function uniform(asked: Case): Judgement {
  return noMoreThan(asked, chosen(ZERO));
}

/**
 * An angle is compared as the rise that it gives over this run. No tangent of a fraction of degrees
 * is a fraction, but that of 45: everywhere else no stair can stand exactly on the limit, and the
 * nearest float to it will do.
 */
function judgePitch(asked: Case, holds: (rise: Exact, riseAtLimit: Exact) => boolean): Judgement {
  const { run } = asked.layout.flight.exact;
  const limitDeg = toMm(asked.limit.exact);
  const tangent = Math.tan((limitDeg * Math.PI) / 180);
  const riseAtLimit = limitDeg === EQUAL_RISE_AND_RUN_DEG ? run : fromNumber(toMm(run) * tangent);
  const actual = (asked.layout.flight.pitch * 180) / Math.PI;
  return weigh(asked, unitRise(asked.layout), (rise) => holds(rise, riseAtLimit), { actual });
}

/** The least projection is not asked of treads that are deep enough. */
function judgeNosing(asked: Case): Judgement {
  const judgement = noLessThan(asked, chosen(asked.layout.flight.exact.nosing));
  const deepEnough = lent(asked, 'nosing.notRequiredFromTread');
  if (deepEnough === null || compare(asked.layout.flight.exact.run, deepEnough) < 0) return judgement;
  return { ...judgement, status: 'meets' };
}

function lent({ rules, layout }: Case, field: string): Exact | null {
  return rules.limits.find((limit) => limit.field === field && isFor(limit, hasOpenRisers(layout)))?.exact ?? null;
}

/**
 * The clear opening must be smaller than the sphere, for openings that reach higher above the lower
 * floor than the free height. The upper edge of an opening counts, which is the stricter reading.
 */
function judgeOpenRisers(asked: Case): Judgement {
  const { layout, limit } = asked;
  if (!hasOpenRisers(layout)) return { status: 'meets', actual: 0, readAgain: [] };
  const { treadThickness } = layout.flight.exact;
  const freeBelow = lent(asked, 'openRiser.freeBelowHeight');
  const isFree = (rise: Exact) => {
    const highest = subtract(times(rise, layout.flight.treads), treadThickness);
    return freeBelow !== null && compare(highest, freeBelow) <= 0;
  };
  const rise = unitRise(layout);
  const actual = inRuleUnit(subtract(rise.exact, treadThickness), limit.unit);
  const holds = (each: Exact) => isFree(each) || compare(subtract(each, treadThickness), limit.exact) < 0;
  return weigh(asked, rise, holds, { actual });
}

function judgeOpenRisersAllowed(layout: StairLayout, { value }: Limit): Judgement {
  if (typeof value !== 'boolean') return NOT_CHECKED;
  return { status: value || !hasOpenRisers(layout) ? 'meets' : 'breaks', actual: null, readAgain: [] };
}

/** Where one can look between the treads, each has to reach over the one below. */
function judgeOverlap(asked: Case): Judgement {
  const overlap = chosen(asked.layout.flight.exact.nosing);
  if (hasOpenRisers(asked.layout)) return noLessThan(asked, overlap);
  return { status: 'meets', actual: inRuleUnit(overlap.exact, asked.limit.unit), readAgain: [] };
}

/** The throat itself goes through a square root; whether it is enough is decided without one. */
function judgeThroat(asked: Case): Judgement {
  const { layout, limit } = asked;
  const measure = throat(layout);
  const holds = (exact: Exact) => leavesThroat(layout, subtract(limit.exact, subtract(exact, measure.exact)));
  return weigh(asked, measure, holds);
}

/** An open tread carries alone, and codes ask more of it by how far it spans; an unknown one has no thickness. */
function judgeTreadBoard(asked: Case): Judgement {
  const { treadThickness } = asked.layout.job.steps;
  if (hasOpenRisers(asked.layout) || treadThickness.known === 'unknown') return NOT_CHECKED;
  return noLessThan(asked, chosen(treadThickness.amount));
}

function requiredFrom(asked: Case, measure: Measure): Judgement {
  return weigh(asked, measure, (exact) => compare(exact, asked.limit.exact) < 0, { otherwise: 'not-checked' });
}

/** More than the limit: exactly on it nothing is required, unless the rule says so. */
function requiredAbove(asked: Case, measure: Measure): Judgement {
  const most = asked.limit.inclusive ? -1 : 0;
  return weigh(asked, measure, (exact) => compare(exact, asked.limit.exact) <= most, { otherwise: 'not-checked' });
}
