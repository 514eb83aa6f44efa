/**
 * Everything that a layout has to keep to be shown: each limit of the rules that can break, and the user's
 * wishes. Each says by how much a candidate keeps it, quickly and in floats, and whether it does, on the
 * layout, by the judge that every other part of the program asks.
 *
 * A limit that risers, run, top and board cannot move is asked once, of any layout; every limit that they
 * can move stands in MARGINS, and a test holds the two lists against the judges.
 */
import { isFor, isPartOfAnother, judge } from '../codes/judge';
import { clearanceAsked } from '../codes/obstacleAnswers';
import type { Limit } from '../codes/rules';
import { atMost } from '../geometry/tolerance';
import type { StairLayout } from '../layout/layoutStair';
import type { Clearance } from '../layout/obstacles';
import { headerFace } from '../layout/slope';
import { compare, toMm } from '../units/exact';
import { clearUnder, hasOpenRisers, type Quick, riseHangsOnRun } from './quick';
import type { Search } from './wishes';

/** Which edge of the region it draws. */
export type EdgeKind = 'rule' | 'headroom' | 'run' | 'stock';
/** What of a candidate it looks at. */
export type Reach = 'risers' | 'run' | 'all' | 'none';

export type WishId = 'wish.run' | 'wish.headroom' | 'wish.stock' | 'wish.obstacle';

export interface Bound {
  /** The rule's field, or the wish's name. */
  readonly id: string;
  readonly edge: EdgeKind;
  readonly reach: Reach;
  /** Null for a wish. */
  readonly limit: Limit | null;
  /** Which of the things overhead it is about; null for all others. */
  readonly obstacle: number | null;
  /** What is asked, in the limit's unit, or millimetres for a wish. */
  readonly asked: number | null;
  /** Millimetres, or a count; less than zero breaks it. */
  readonly margin: (quick: Quick) => number;
  readonly holds: (layout: StairLayout) => boolean;
  /** What the layout has of it, in the unit of what is asked; null where that is no number. */
  readonly reached: (layout: StairLayout) => number | null;
}

interface Screened {
  readonly edge: EdgeKind;
  readonly reach: Reach;
  /** How far the figure is on the right side of the limit, both in millimetres. */
  readonly margin: (quick: Quick, limit: number, lent: (field: string) => number | null) => number;
}

const rule = (reach: Reach, margin: Screened['margin']): Screened => ({ edge: 'rule', reach, margin });
const tangent = (degrees: number) => (degrees === 45 ? 1 : Math.tan((degrees * Math.PI) / 180));
const stride = ({ unitRise, run }: Quick) => 2 * unitRise + run;

/** What cannot be reckoned is not checked, and breaks nothing. */
const FREE = Number.POSITIVE_INFINITY;

const MARGINS: Readonly<Record<string, Screened>> = {
  'riser.max': rule('risers', (quick, limit) => limit - quick.unitRise - quick.fixed.aside),
  'riser.min': rule('risers', (quick, limit) => quick.unitRise - quick.fixed.aside - limit),
  'tread.min': rule('run', (quick, limit) => quick.run - limit),
  'tread.max': rule('run', (quick, limit) => limit - quick.run),
  'twoRPlusG.min': rule('all', (quick, limit) => stride(quick) - limit),
  'twoRPlusG.max': rule('all', (quick, limit) => limit - stride(quick)),
  'pitch.min': rule('all', (quick, limit) => quick.unitRise - quick.run * tangent(limit)),
  'pitch.max': rule('all', (quick, limit) => quick.run * tangent(limit) - quick.unitRise),
  'nosing.min': rule('run', ({ fixed, run }, limit, lent) =>
    Math.max(fixed.nosing - limit, run - (lent('nosing.notRequiredFromTread') ?? FREE)),
  ),
  'flight.minRisers': rule('risers', (quick, limit) => quick.risers - limit),
  'flight.maxRisers': rule('risers', (quick, limit) => limit - quick.risers),
  'flight.maxRisersBeforeTurn': rule('risers', (quick, limit) => limit - quick.risers),
  'headroom.min': {
    edge: 'headroom',
    reach: 'all',
    margin: ({ headroom }, limit) => (headroom === null ? FREE : headroom - limit),
  },
  // Smaller than the sphere, or low enough to be free.
  'openRiser.maxSphere': rule('all', ({ fixed, unitRise, treads }, limit, lent) => {
    if (fixed.riser !== 0) return FREE;
    const highest = unitRise * treads - fixed.tread;
    return Math.max(limit - (unitRise - fixed.tread), (lent('openRiser.freeBelowHeight') ?? -FREE) - highest);
  }),
  'stringer.effectiveDepth.min': rule('all', (quick, limit) => quick.throat - limit),
  'stringer.depth.min': rule('all', (quick, limit) => quick.depth - limit),
};

/** The fields whose answer risers, run, top or board can turn. */
export function movedFields(): readonly string[] {
  return Object.keys(MARGINS);
}

/** @param any one layout of the frame, for what none of them changes; null where there is none */
export function boundsOf(search: Search, any: StairLayout | null): readonly Bound[] {
  const { rules, job } = search;
  const inForce = rules.limits.filter(
    (limit) => !limit.advice && !isPartOfAnother(limit.field, rules) && isFor(limit, hasOpenRisers(job)),
  );
  return [...inForce.flatMap((limit) => boundOf(search, limit, any)), ...wishBounds(search)];
}

function boundOf(search: Search, limit: Limit, any: StairLayout | null): Bound[] {
  const asked = typeof limit.value === 'number' ? limit.value : null;
  const same = {
    id: limit.field,
    limit,
    obstacle: null,
    asked,
    holds: (layout: StairLayout) => judge(layout, limit, search.rules).status !== 'breaks',
    reached: (layout: StairLayout) => judge(layout, limit, search.rules).actual,
  };
  const screened = Object.hasOwn(MARGINS, limit.field) ? MARGINS[limit.field] : undefined;
  if (screened === undefined || limit.exact === null) {
    // It is the same for all: worth a line only where it breaks.
    if (any === null || same.holds(any)) return [];
    return [{ ...same, edge: 'rule', reach: 'none', margin: () => -FREE }];
  }
  const least = toMm(limit.exact);
  const lent = (field: string) => {
    const row = search.rules.limits.find((each) => each.field === field && isFor(each, hasOpenRisers(search.job)));
    return row?.exact == null ? null : toMm(row.exact);
  };
  const [freeTread, freeHeight] = [lent('nosing.notRequiredFromTread'), lent('openRiser.freeBelowHeight')];
  const known = (field: string) => (field === 'nosing.notRequiredFromTread' ? freeTread : freeHeight);
  const { edge } = screened;
  // Where the floor falls from where the tape stood, the rise hangs on the run as well.
  const reach = screened.reach === 'risers' && riseHangsOnRun(search.job) ? 'all' : screened.reach;
  return [{ ...same, edge, reach, margin: (quick) => screened.margin(quick, least, known) }];
}

function wishBounds({ wishes, job, rules }: Search): Bound[] {
  const bounds: Bound[] = [];
  type Rest = Pick<Bound, 'margin' | 'holds' | 'reached'> & Partial<Pick<Bound, 'obstacle'>>;
  const wish = (id: WishId, edge: EdgeKind, asked: number, rest: Rest) =>
    bounds.push({ id, edge, reach: 'all', limit: null, obstacle: null, asked, ...rest });
  const { runAvailable, headroom } = wishes;
  if (headroom !== null) {
    const least = toMm(headroom);
    wish('wish.headroom', 'headroom', least, {
      margin: (quick) => (quick.headroom === null ? FREE : quick.headroom - least),
      holds: ({ opening }) => opening.headroomExact === null || compare(opening.headroomExact, headroom) >= 0,
      reached: ({ opening }) => opening.headroom,
    });
  }
  if (runAvailable !== null) {
    const most = toMm(runAvailable);
    wish('wish.run', 'run', most, {
      margin: (quick) => most - quick.headerX,
      holds: ({ flight, job }) => compare(headerFace(job, flight.risers, flight.exact.run), runAvailable) <= 0,
      reached: ({ stringer }) => stringer.top.headerX,
    });
  }
  job.survey.obstacles.forEach((obstacle, at) => {
    const asked = clearanceAsked({ job }, rules, { obstacle });
    if (asked === null) return;
    const least = toMm(asked.exact);
    wish('wish.obstacle', 'headroom', least, {
      obstacle: at,
      margin: (quick) => clearUnder(quick, at) - least,
      holds: ({ obstacles }) => compare((obstacles[at] as Clearance).exact, asked.exact) >= 0,
      reached: ({ obstacles }) => obstacles[at]?.clearance ?? null,
    });
  });
  const longest = wishes.stockLengths.at(-1) ?? 0;
  wish('wish.stock', 'stock', longest, {
    margin: ({ boardLength, fixed }) => longest - boardLength - 2 * fixed.trim,
    holds: ({ stringer }) => atMost(stringer.boardLength + 2 * stringer.trim, longest),
    reached: ({ stringer }) => stringer.boardLength + 2 * stringer.trim,
  });
  return bounds;
}
