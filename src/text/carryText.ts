/** The screening in words and figures, for a page and for paper: values in the job's units, sums, and whose figures. */
import type { PublishedFigure } from '../core/carry/lumber';
import type { Carry, CarryAnswer } from '../core/carry/screenCarry';
import type { CarryOrigin, CarryStep, CarryTerm, CarryUnit } from '../core/carry/working';
import type { StairPlan } from '../core/plan/planStair';
import { inchMm } from '../core/units/exact';
import type { UnitSystem } from '../core/units/length';
import { poundsToNewtons, psfToKpa, psiToMpa } from '../core/units/load';
import { isTextKey, type Speaker } from './say';

const DEGREES = 180 / Math.PI;
/** Enough to follow a sum with a pocket calculator, and no more than the data deserves. */
const DIGITS = 5;
/** An answer is read at a glance. */
const ANSWER_DIGITS = 3;

interface Shown {
  readonly unit: string;
  /** How many of the inside's units make one. */
  readonly of: number;
}

const METRIC: Readonly<Record<CarryUnit, Shown>> = {
  mm: { unit: ' mm', of: 1 },
  mm3: { unit: ' mm³', of: 1 },
  mm4: { unit: ' mm^4', of: 1 },
  N: { unit: ' N', of: 1 },
  'N/mm': { unit: ' N/mm', of: 1 },
  Nmm: { unit: ' N·mm', of: 1 },
  MPa: { unit: ' N/mm²', of: 1 },
  kPa: { unit: ' kPa', of: 1 },
  factor: { unit: '', of: 1 },
  count: { unit: '', of: 1 },
  rad: { unit: '°', of: 1 / DEGREES },
};

const IMPERIAL: Readonly<Record<CarryUnit, Shown>> = {
  ...METRIC,
  mm: { unit: ' in', of: inchMm(1) },
  mm3: { unit: ' in³', of: inchMm(1) ** 3 },
  mm4: { unit: ' in^4', of: inchMm(1) ** 4 },
  N: { unit: ' lbf', of: poundsToNewtons(1) },
  'N/mm': { unit: ' lbf/in', of: poundsToNewtons(1) / inchMm(1) },
  Nmm: { unit: ' in-lbf', of: poundsToNewtons(1) * inchMm(1) },
  MPa: { unit: ' psi', of: psiToMpa(1) },
  kPa: { unit: ' psf', of: psfToKpa(1) },
};

function shownIn(unit: CarryUnit, units: UnitSystem): Shown {
  return (units === 'metric' ? METRIC : IMPERIAL)[unit];
}

/** The figure alone, as it stands in a sum. */
function carryFigure(value: number, unit: CarryUnit, units: UnitSystem, digits = DIGITS): string {
  return String(Number((value / shownIn(unit, units).of).toPrecision(digits)));
}

export function carryValue(value: number, unit: CarryUnit, units: UnitSystem, digits = DIGITS): string {
  return `${carryFigure(value, unit, units, digits)}${shownIn(unit, units).unit}`;
}

/** The sum of a step with its symbols, or with its figures. */
export function carrySum(
  say: Speaker,
  { formula, terms }: CarryStep,
  units: UnitSystem,
  as: 'symbols' | 'figures',
): string {
  const write = ({ symbol, value, unit }: CarryTerm) =>
    as === 'symbols' ? symbolOf(symbol) : carryFigure(value, unit, units) + (unit === 'rad' ? '°' : '');
  const values = Object.fromEntries(terms.map((term) => [term.symbol, write(term)]));
  const own = `carry.sum.${formula}.${units}`;
  const key = isTextKey(own) ? own : `carry.sum.${formula}`;
  return isTextKey(key) ? say(key, values) : formula;
}

const SYMBOLS: Readonly<Record<string, string>> = {
  theta: 'θ',
  alpha: 'fall',
  ql: 'q live',
  qd: 'q dead',
  wl: 'w live',
  wd: 'w dead',
  Mw: 'M spread',
  Mp: 'M spot',
  Vw: 'V spread',
  Vp: 'V spot',
  Em: 'E′',
  Fcm: 'Fc′',
  over: 'overhang',
  Smax: 'S max',
};

export function symbolOf(symbol: string): string {
  return SYMBOLS[symbol] ?? symbol;
}

export function stepTitle(say: Speaker, { name }: Pick<CarryStep, 'name'>): string {
  return say(`carry.step.${name}`);
}

/** Where a figure comes from; one that nobody has read in its document says so wherever it stands. */
export function carryWhence(say: Speaker, origin: CarryOrigin): string {
  switch (origin.from) {
    case 'rule': {
      const where = [origin.source, origin.section].filter((part) => part !== '').join(', ');
      return `${where} (${say(`carry.sure.${origin.confidence}`)})`;
    }
    case 'data':
      return `${say(`carry.data.${origin.what}`)}: ${origin.sources[0]} (${say(`carry.sure.${origin.confidence}`)})`;
    case 'none':
      return `${say(`carry.data.${origin.what}`)}: ${say('carry.from.none')}`;
    case 'step':
      return stepTitle(say, { name: origin.step });
    case 'measure':
      return say('carry.from.measure', { name: nameAt(say, `number.${origin.measure}`) });
    case 'job':
    case 'default':
      return say(`carry.from.${origin.from}`, { name: nameAt(say, `field.${origin.key}`) });
  }
}

function nameAt(say: Speaker, key: string): string {
  return isTextKey(key) ? say(key) : key;
}

/** `comes to 648 psi; the data allows 750 psi (86 %)`. */
export function answerLine(say: Speaker, { is, may, unit }: CarryAnswer, units: UnitSystem): string {
  if (is === null) return '';
  const comes = answerValue(is, unit, units);
  if (may === null) return say('carry.lineOpen', { is: comes });
  return say('carry.line', { is: comes, may: answerValue(may, unit, units), share: shareText(say, is, may) });
}

export function answerValue(value: number, unit: CarryUnit, units: UnitSystem): string {
  return carryValue(value, unit, units, ANSWER_DIGITS);
}

/** Rounded up, so that it never looks better than it is. */
export function shareText(say: Speaker, is: number, may: number): string {
  return say('carry.share', { percent: Math.ceil((is / may) * 100 - 1 / 1000) });
}

/**
 * A printed figure as it was printed, and in the job's own unit beside it where that is another.
 * @param own the same length in words of the job's units
 */
export function printedFigure({ value, unit }: PublishedFigure, own: string, units: UnitSystem): string {
  if (unit === 'count') return String(value);
  const printed = `${value} ${unit}`;
  return (unit === 'mm') === (units === 'metric') ? printed : `${printed} = ${own}`;
}

/** What the screening was told, and what it took where it was not: each with its name. */
export function toldRows(say: Speaker, { layout }: Pick<StairPlan, 'layout'>, { loads }: Carry): [string, string][] {
  const { carry: told, units } = layout.job;
  const choice = (name: 'species' | 'grade' | 'service', value: string | null) => {
    if (value === null) return say('choice.carry.notSaid');
    const key = `choice.carry.${name}.${value}`;
    return isTextKey(key) ? say(key) : say('choice.carry.unlisted', { name: value });
  };
  const load = ({ value, unit, origin }: CarryTerm) => `${carryValue(value, unit, units)}: ${shortWhence(say, origin)}`;
  return [
    [say('field.carry.species'), choice('species', told.species)],
    [say('field.carry.grade'), choice('grade', told.grade)],
    [say('field.carry.service'), choice('service', told.service)],
    [say('field.carry.treatment'), say(`choice.carry.treatment.${told.treatment ?? 'usual'}`)],
    [say('field.carry.support'), say(`choice.carry.support.${told.support ?? 'free-standing'}`)],
    [say('field.carry.duration'), say(`choice.carry.duration.${told.duration ?? 'occupancy'}`)],
    [say('field.carry.live'), load(loads.live)],
    [say('field.carry.point'), load(loads.point)],
    [say('field.carry.dead'), load(loads.dead)],
  ];
}

/** On one line where it can be. */
function shortWhence(say: Speaker, origin: CarryOrigin): string {
  if (origin.from === 'rule') return [origin.source, origin.section].filter((part) => part !== '').join(', ');
  if (origin.from === 'data') return `${say(`carry.data.${origin.what}`)} (${say(`carry.sure.${origin.confidence}`)})`;
  return say('carry.typed');
}
