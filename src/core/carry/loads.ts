/** What the stair is loaded with: as typed, else as the rules in force ask, else what the lumber data calls usual. */
import type { Limit } from '../codes/rules';
import type { StairPlan } from '../plan/planStair';
import { poundsToNewtons, psfToKpa } from '../units/load';
import type { LoadName, LumberBook, UsualLoad } from './lumber';
import type { CarryTerm } from './working';

export interface Loads {
  /** Kilopascals on the level. */
  readonly live: CarryTerm;
  /** Newtons on one spot, instead of the live load. */
  readonly point: CarryTerm;
  readonly dead: CarryTerm;
}

const SYMBOLS = { live: 'ql', point: 'P', dead: 'qd' } as const;
const RULES: Readonly<Record<LoadName, string | null>> = {
  live: 'load.uniform',
  point: 'load.concentrated',
  dead: null,
};

export function loadsOf(plan: StairPlan, book: LumberBook): Loads {
  return { live: loadOf('live', plan, book), point: loadOf('point', plan, book), dead: loadOf('dead', plan, book) };
}

function loadOf(what: LoadName, { layout, rules }: StairPlan, book: LumberBook): CarryTerm {
  const unit = what === 'point' ? 'N' : 'kPa';
  const symbol = SYMBOLS[what];
  const typed = layout.job.carry[what];
  if (typed !== null) return { symbol, value: typed, unit, origin: { from: 'job', key: `carry.${what}` } };
  const rule = rules.limits.find(({ field, value, advice }) => field === RULES[what] && !advice && isFigure(value));
  if (rule !== undefined) {
    const { field, source, section, confidence } = rule;
    return { symbol, value: ofRule(rule), unit, origin: { from: 'rule', field, source, section, confidence } };
  }
  const usual = book.loads.find((load) => load.what === what) as UsualLoad;
  const { confidence, sources } = usual;
  const value = usual.unit === 'psf' ? psfToKpa(usual.value) : poundsToNewtons(usual.value);
  return { symbol, value, unit, origin: { from: 'data', what, confidence, sources } };
}

function isFigure(value: Limit['value']): value is number {
  return typeof value === 'number' && value > 0;
}

function ofRule({ value, unit }: Limit): number {
  const figure = Number(value);
  if (unit === 'psf') return psfToKpa(figure);
  if (unit === 'lbf') return poundsToNewtons(figure);
  return unit === 'kN' ? figure * 1000 : figure;
}
