/**
 * How many cautions a layout carries: what is hard or unwise to build, and rules that the tape's doubt could
 * turn. In floats, for ranking alone: the findings of the plan say which they are.
 */
import { BUILD } from '../codes/findings';
import { isFor, isPartOfAnother } from '../codes/judge';
import { atLeast, atMost } from '../geometry/tolerance';
import { toMm } from '../units/exact';
import { roundTo } from '../units/rounding';
import { hasOpenRisers, type Quick } from './quick';
import type { Search } from './wishes';

type Count = (quick: Quick) => number;

/** @returns a count for any candidate of the search */
export function cautionCounter(search: Search): Count {
  const [build, asCut, close] = [countBuild, asCutCounter(search), closeCounter(search)];
  return (quick) => build(quick) + asCut(quick) + close(quick);
}

const one = (isTrouble: boolean) => (isTrouble ? 1 : 0);

function countBuild({ throat, contact, plumbCut, shortestCut, seat, fixed }: Quick): number {
  const shallow = one(!atLeast(throat, BUILD.throatLeast));
  const hanging = one(contact !== null && !atLeast(contact, plumbCut * BUILD.bearingShare));
  if (fixed.kicker === null) return shallow + hanging;
  const toe = one(!atLeast(shortestCut - fixed.kicker.height, BUILD.kickerLeast));
  const back = one(!atLeast(seat - fixed.kicker.width, BUILD.kickerLeast));
  return shallow + hanging + toe + back;
}

/** What of the risers that come out a rule on their evenness looks at. */
const AS_CUT: Readonly<Record<string, 'spread' | 'adjacent' | 'nominal'>> = {
  'variation.riser.max': 'spread',
  'variation.riser.adjacent.max': 'adjacent',
  'variation.riser.nominal.max': 'nominal',
};

function asCutCounter({ rules, job }: Search): Count {
  const asked = rules.limits.flatMap(({ field, exact }) => {
    const what = Object.hasOwn(AS_CUT, field) ? AS_CUT[field] : undefined;
    return what === undefined || exact === null ? [] : [{ what, most: toMm(exact) }];
  });
  const step = toMm(job.markStep);
  if (asked.length === 0) return () => 0;
  return (quick) => {
    const cut = asCutAcross(quick, step);
    return asked.reduce((sum, { what, most }) => sum + one(!atMost(cut[what], most)), 0);
  };
}

/** The risers that the rounded marks give: the forecast of stringer/asCut, the tips being one step length apart. */
function asCut({ fixed, totalRise, unitRise, stepLength, firstRiserCut, treads }: Quick, step: number, toe: number) {
  const sin = unitRise / stepLength;
  const first = fixed.trim + firstRiserCut * sin;
  let riser = roundTo(toe, step) + fixed.tread + fixed.seatHeight + fixed.along * fixed.riser;
  let [sum, least, most, adjacent, nominal] = [riser, riser, riser, 0, Math.abs(riser - unitRise)];
  const next = (height: number) => {
    adjacent = Math.max(adjacent, Math.abs(height - riser));
    nominal = Math.max(nominal, Math.abs(height - unitRise));
    least = Math.min(least, height);
    most = Math.max(most, height);
    sum += height;
    riser = height;
  };
  let before = roundTo(first, step) - first;
  for (let i = 1; i < treads; i += 1) {
    const tick = first + i * stepLength;
    const error = roundTo(tick, step) - tick;
    next(unitRise + (error - before) * sin);
    before = error;
  }
  // In front of a stringer with a taller toe the floor lies lower, by as much.
  const lower = toe - (unitRise - fixed.tread - fixed.seatHeight - fixed.along * fixed.riser);
  if (fixed.hung) next(totalRise + lower - sum);
  return { most, least, adjacent, nominal };
}

/** Of the two outer stringers, which stand on the lowest and on the highest floor. */
function asCutAcross(quick: Quick, step: number) {
  const tall = asCut(quick, step, quick.firstRiserCut);
  const short = quick.fixed.footAside === 0 ? tall : asCut(quick, step, quick.shortestCut);
  return {
    spread: Math.max(tall.most, short.most) - Math.min(tall.least, short.least),
    adjacent: Math.max(tall.adjacent, short.adjacent),
    nominal: Math.max(tall.nominal, short.nominal),
  };
}

/** A figure that readings move, and how far all of them together move it; the weights are those of codes/measures. */
type Close = (quick: Quick, limit: number, doubt: Doubt) => boolean;

interface Doubt {
  readonly mm: number;
  /** Readings that go into the total rise, and the one that goes into the throat. */
  readonly ofRise: number;
  readonly ofBoard: number;
}

const ofUnit = ({ risers }: Quick, { ofRise }: Doubt) => ofRise / risers;
/** A doubt that just reaches the limit turns no answer: on the limit meets it. */
const isNear = (value: number, limit: number, band: number) => !atLeast(Math.abs(value - limit), band);

const rise: Close = (quick, limit, doubt) => isNear(quick.unitRise, limit, ofUnit(quick, doubt));
const stride: Close = (quick, limit, doubt) => isNear(2 * quick.unitRise + quick.run, limit, 2 * ofUnit(quick, doubt));
const pitch: Close = (quick, limit, doubt) =>
  isNear(quick.unitRise, quick.run * Math.tan((limit * Math.PI) / 180), ofUnit(quick, doubt));

const CLOSE: Readonly<Record<string, Close>> = {
  'riser.max': rise,
  'riser.min': rise,
  'twoRPlusG.min': stride,
  'twoRPlusG.max': stride,
  'pitch.min': pitch,
  'pitch.max': pitch,
  'headroom.min': ({ headroom, lineAtEdge, unitRise, run, totalRise }, limit, doubt) => {
    if (headroom === null || lineAtEdge === null) return false;
    const line = Math.max(0, lineAtEdge);
    const ofOpening = line === 0 ? 0 : (unitRise / run) * doubt.mm;
    const ofRise = Math.abs(1 - line / totalRise) * doubt.ofRise;
    return isNear(headroom, limit, ofOpening + doubt.mm + ofRise);
  },
  'openRiser.maxSphere': (quick, limit, doubt) =>
    quick.fixed.riser === 0 && isNear(quick.unitRise - quick.fixed.tread, limit, ofUnit(quick, doubt)),
  'stringer.effectiveDepth.min': (quick, limit, doubt) => {
    const share = (quick.run / quick.stepLength) ** 3;
    return isNear(quick.throat, limit, doubt.ofBoard + share * ofUnit(quick, doubt));
  },
};

function closeCounter({ rules, job, doubt }: Search): Count {
  if (doubt === null) return () => 0;
  const mm = toMm(doubt);
  const isTyped = (key: string) => !job.defaults.some((used) => used.key === key);
  const readings: Doubt = {
    mm,
    ofRise: (isTyped('survey.footBelowReading') ? 2 : 1) * mm,
    ofBoard: isTyped('stringer.stockDepth') ? mm : 0,
  };
  const asked = rules.limits.flatMap((limit) => {
    const close = Object.hasOwn(CLOSE, limit.field) ? CLOSE[limit.field] : undefined;
    if (close === undefined || limit.exact === null || limit.advice) return [];
    if (isPartOfAnother(limit.field, rules) || !isFor(limit, hasOpenRisers(job))) return [];
    return [{ close, limit: toMm(limit.exact) }];
  });
  return (quick) => asked.reduce((sum, { close, limit }) => sum + one(close(quick, limit, readings)), 0);
}
