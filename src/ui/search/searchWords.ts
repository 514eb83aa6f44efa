/** Figures of a search in words. */
import '../../text/lateFindings';
import type { Finding } from '../../core/codes/findings';
import type { Limit } from '../../core/codes/rules';
import { figureOf } from '../../core/drawing/figures';
import type { Bound } from '../../core/search/bounds';
import { mmToInches } from '../../core/units/exact';
import type { UnitSystem } from '../../core/units/length';
import { limitWords, ruleWords } from '../../text/findingText';
import type { Speaker } from '../../text/say';
import { lengthText, plainFigure } from '../numbers/figures';

const INCHES_IN_FOOT = 12;

/** Without a unit where every figure beside it has the same. */
export function runText(mm: number, units: UnitSystem): string {
  return plainFigure(figureOf(mm, units)).replaceAll(' ', '\u00a0');
}

/** A board as it is asked for in the yard. */
export function boardText(say: Speaker, mm: number, units: UnitSystem): string {
  const feet = mmToInches(mm) / INCHES_IN_FOOT;
  const isWhole = Math.abs(feet - Math.round(feet)) < 1e-6;
  return units === 'imperial' && isWhole ? say('board.feet', { feet: Math.round(feet) }) : lengthText(mm, units, 'up');
}

/** What a bound asks, or would have to ask: a rule in its own unit, a wish in the job's. */
export function askedText(say: Speaker, bound: Bound, value: number | null, units: UnitSystem): string {
  const { id, limit } = bound;
  if (limit !== null) return limitWords(say, findingOf(limit, value ?? true));
  if (value === null) return '';
  if (id === 'wish.stock') return boardText(say, value, units);
  return lengthText(value, units, id === 'wish.headroom' || id === 'wish.obstacle' ? 'down' : 'up');
}

/** A rule with a figure in the words of the findings. */
function findingOf(limit: Limit, value: Finding['limit']): Finding {
  const { field, unit, section, source, confidence } = limit;
  const rest = { actual: null, readAgain: [], replaced: null } as const;
  return { field, kind: 'rule', status: 'breaks', limit: value, unit, section, source, confidence, ...rest };
}

export function boundName(say: Speaker, { id, limit }: Bound): string {
  if (limit !== null) return ruleWords(say, id);
  if (id === 'wish.obstacle') return say('search.wish.obstacle');
  return say(
    id === 'wish.run' ? 'search.wish.run' : id === 'wish.headroom' ? 'search.wish.headroom' : 'search.wish.longest',
  );
}
