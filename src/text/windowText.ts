/** A finish window in words: rounded inward, so that what is said never allows more than there is. */
import type { FinishWindow } from '../core/layout/finishEffect';
import { inch, whole } from '../core/units/exact';
import { formatLength } from '../core/units/format';
import type { UnitSystem } from '../core/units/length';
import type { Speaker } from './say';

const STEP = { imperial: inch(1 / 16), metric: whole(1) };

export function windowWords(say: Speaker, window: FinishWindow | null, units: UnitSystem): string {
  if (window === null) return say('window.none');
  const { low, high } = window;
  const step = STEP[units];
  const least = low === null ? '' : formatLength(low, step, units, 'up');
  const most = high === null ? '' : formatLength(high, step, units, 'down');
  if (low === null) return high === null ? say('window.any') : say('window.most', { most });
  if (high === null) return say('window.least', { least });
  return low === high ? say('window.only', { least }) : say('window.between', { least, most });
}
