/** An explanation in words: the sum with its symbols or its values, and where each part came from. */
import type { Explanation, MeasureUnit, Term } from '../../core/explain/measures';
import type { StairPlan } from '../../core/plan/planStair';
import { mmToInches } from '../../core/units/exact';
import { exactText } from '../../core/units/exactText';
import type { UnitSystem } from '../../core/units/length';
import { roundTo } from '../../core/units/rounding';
import '../../text/lateFigures';
import { isTextKey, type Speaker } from '../../text/say';
import { labelOf } from '../fields/fieldWords';
import { placeOfKey } from '../fields/jobPlaces';
import { lengthText } from '../numbers/figures';
import { nameOfMeasure } from './desk';

const DEGREES = 180 / Math.PI;
const INCHES_IN_FOOT = 12;

/** Symbols that are not written as they are called. */
const SYMBOLS: Readonly<Record<string, string>> = {
  theta: 'θ',
  s0: 's₀',
  h1: 'h₁',
  zs: 'zₛ',
  Rmax: 'R max',
  Smax: 'S max',
  gTop: 'g top',
  tipBelow: 'tip below',
  tipFirst: 'first tip',
  tipLast: 'last tip',
};

export function symbolText(symbol: string): string {
  return SYMBOLS[symbol] ?? symbol;
}

/** To four decimals of an inch or three of a millimetre, and no zeros behind: `7.5402`. */
export function plainValue(value: number, unit: MeasureUnit, units: UnitSystem): string {
  const [figure, places] =
    unit === 'rad'
      ? [value * DEGREES, 3]
      : unit === 'count'
        ? [value, 0]
        : units === 'metric'
          ? [value, 3]
          : [mmToInches(value), 4];
  const text = String(Number(figure.toFixed(places)));
  return `${text.replace('-', '−')}${unit === 'rad' ? '°' : ''}`;
}

export function valueText(value: number, unit: MeasureUnit, units: UnitSystem): string {
  return unit === 'mm'
    ? `${plainValue(value, unit, units)} ${units === 'metric' ? 'mm' : 'in'}`
    : plainValue(value, unit, units);
}

/** The sum; null where the number is another one under a second name, or was chosen. */
export function formulaText(
  say: Speaker,
  { formula, terms }: Explanation,
  write: (term: Term) => string,
): string | null {
  const key = `formula.${formula}`;
  if (!isTextKey(key)) return null;
  return say(key, Object.fromEntries(terms.map((term) => [term.symbol, write(term)])));
}

/** A value in the place of its symbol; one with a minus stands in brackets. */
export function putIn({ value, unit }: Term, units: UnitSystem): string {
  const text = plainValue(value, unit, units);
  return value < 0 ? `(${text})` : text;
}

export function becauseText(say: Speaker, { formula }: Explanation): string {
  const key = `because.${formula}`;
  if (isTextKey(key)) return say(key);
  return say(formula === 'given' ? 'explain.given' : 'explain.same');
}

/** What a part is called. */
export function partName(say: Speaker, index: number, { origin }: Term): string {
  switch (origin.from) {
    case 'job':
    case 'default':
    case 'unknown':
      return labelOf(say, placeOfKey(index, origin.key));
    case 'measure':
      return nameOfMeasure(say, origin.measure);
    case 'rule': {
      const key = `finding.${origin.field}`;
      return isTextKey(key) ? say(key) : origin.field;
    }
    case 'practice':
      return say('origin.practiceName');
    case 'place':
      return say('origin.placeName');
  }
}

/** Where a part came from. */
export function originText(say: Speaker, plan: StairPlan, { origin }: Term): string {
  if (origin.from !== 'rule') return say(`origin.${origin.from}`);
  const limit = plan.rules.limits.find(({ field }) => field === origin.field);
  if (limit === undefined) return say('origin.ruleBare');
  return say('origin.rule', { source: limit.source, section: limit.section });
}

/** The number as it stands on the page and the sheets. */
export function shownText(say: Speaker, plan: StairPlan, { result, rounding }: Explanation, units: UnitSystem): string {
  switch (rounding) {
    case 'mark':
      return lengthText(roundTo(result, plan.sheet.step), units);
    case 'rip':
      return lengthText(roundTo(result, plan.sheet.ripStep, 'down'), units, 'down');
    case 'fine':
      return lengthText(result, units);
    case 'down':
    case 'up':
      return lengthText(result, units, rounding);
    case 'angle':
      return `${(result * DEGREES).toFixed(1)}°`;
    case 'count':
      return String(result);
    case 'stock':
      return units === 'metric'
        ? lengthText(result, units)
        : say('board.feet', { feet: Math.round(mmToInches(result) / INCHES_IN_FOOT) });
  }
}

export function roundingText(say: Speaker, plan: StairPlan, { rounding }: Explanation, units: UnitSystem): string {
  return say(`rounded.${rounding}`, { step: stepText() });

  function stepText(): string {
    if (rounding === 'mark') return exactText(plan.layout.job.markStep, units);
    if (rounding === 'rip') return lengthText(plan.sheet.ripStep, units);
    return say(`rounded.step.${units}`);
  }
}
