/**
 * Which stringer is screened, how far it spans, and what width of the stair it carries. Frame: the elevation of
 * layout/flight for the span; across the stair for the width. Millimetres.
 *
 * The span runs level from the middle of what is left of the seat to the plumb end. Bearing lengths are not taken
 * off it, so it is a little longer than the clear span.
 */
import type { StairLayout } from '../layout/layoutStair';
import type { StairPlan } from '../plan/planStair';
import { toMm } from '../units/exact';
import type { CarryTerm, Working } from './working';

/** `inner` and `outer`, or the most that a spacing may be where the width is not known. */
export type Member = 'inner' | 'outer' | 'most';

/** @returns null where every stringer lies along a wall, so that none spans */
export function memberOf({ job, width }: StairLayout): Member | null {
  const alongWalls = job.carry.support === 'along-walls';
  if (width === null) return alongWalls && job.stringer.count === 2 ? null : 'most';
  const hasInner = width.stringers > 2;
  if (alongWalls) return hasInner ? 'inner' : null;
  return hasInner && width.spacing >= outerWidth(width.spacing, width.treadOverhang, toMm(job.stringer.stockThickness))
    ? 'inner'
    : 'outer';
}

/** Half of what lies between, and what the tread reaches past the middle of the stringer. */
function outerWidth(spacing: number, overhang: number, thickness: number): number {
  return (spacing + thickness) / 2 + Math.max(0, overhang);
}

/**
 * What the kicker leaves of the seat, level: where the floor falls along the stair the seat lies on its slope. Of
 * stringers that stand at different heights it is the master's, whose seat is the shortest and whose span the longest.
 */
function addSeat(working: Working, plan: StairPlan): void {
  const { flight, stringer } = plan.layout;
  const { heel, kicker } = stringer;
  const terms: CarryTerm[] = [
    { symbol: 's', value: heel.seat, unit: 'mm', origin: { from: 'measure', measure: 'seat' } },
  ];
  const isLevel = flight.slopeAlong === 0;
  if (!isLevel) {
    const value = Math.atan(flight.slopeAlong);
    terms.push({ symbol: 'alpha', value, unit: 'rad', origin: { from: 'job', key: 'survey.fallAlong' } });
  }
  if (kicker !== null) terms.push(keyTerm(plan, 'kw', 'stringer.kicker.width', kicker.width));
  const left = heel.heelX - flight.riserThickness - (kicker?.width ?? 0);
  const formula = `seat${isLevel ? '' : '.onSlope'}${kicker === null ? '' : '.kicker'}`;
  working.add('seat', 'mm', terms, left, formula);
}

/** @returns the level span */
export function addSpan(working: Working, plan: StairPlan): number {
  const { flight, stringer } = plan.layout;
  const { kicker, top } = stringer;
  addSeat(working, plan);
  const seat = working.of('a', 'seat');
  const terms: CarryTerm[] = [
    { symbol: 'E', value: top.endX, unit: 'mm', origin: { from: 'measure', measure: 'stringerEnd' } },
    keyTerm(plan, 'tr', 'steps.riserThickness', flight.riserThickness),
    seat,
  ];
  if (kicker !== null) terms.push(keyTerm(plan, 'kw', 'stringer.kicker.width', kicker.width));
  const span = top.endX - flight.riserThickness - (kicker?.width ?? 0) - seat.value / 2;
  working.add('span', 'mm', terms, span, kicker === null ? 'span' : 'span.kicker');
  working.add('slope', 'mm', [working.of('L', 'span'), pitchTerm(plan)], span / flight.cos);
  return span;
}

/** @returns the width of stair that the stringer carries */
export function addTributary(working: Working, plan: StairPlan, member: Member): number {
  const { width, stringer, job } = plan.layout;
  if (width === null || member === 'most') {
    const most = toMm(job.stringer.spacingMax);
    return working.add('tributary', 'mm', [keyTerm(plan, 'Smax', 'stringer.spacingMax', most)], most, 'tributary.most');
  }
  const spacing: CarryTerm = {
    symbol: 'spacing',
    value: width.spacing,
    unit: 'mm',
    origin: { from: 'measure', measure: 'spacing' },
  };
  if (member === 'inner') return working.add('tributary', 'mm', [spacing], width.spacing, 'tributary.inner');
  const thickness = keyTerm(plan, 'ws', 'stringer.stockThickness', stringer.stockThickness);
  const reach = outerWidth(width.spacing, width.treadOverhang, stringer.stockThickness);
  if (width.treadOverhang <= 0) return working.add('tributary', 'mm', [spacing, thickness], reach, 'tributary.flush');
  const overhang: CarryTerm = {
    symbol: 'over',
    value: width.treadOverhang,
    unit: 'mm',
    origin: { from: 'measure', measure: 'treadOverhang' },
  };
  return working.add('tributary', 'mm', [spacing, thickness, overhang], reach, 'tributary.outer');
}

export function keyTerm({ layout }: StairPlan, symbol: string, key: string, value: number): CarryTerm {
  const isUsual = layout.defaults.some((used) => used.key === key);
  return { symbol, value, unit: 'mm', origin: { from: isUsual ? 'default' : 'job', key } };
}

export function pitchTerm({ layout }: StairPlan): CarryTerm {
  return { symbol: 'theta', value: layout.flight.pitch, unit: 'rad', origin: { from: 'measure', measure: 'pitch' } };
}
