/**
 * Hands the stair on show to a part of the page. What it is said in goes by a way of its own, and so does what has
 * to be there at the very key: all else on the page follows once the drawing has been painted.
 */
import { type ReactNode, useDeferredValue, useMemo } from 'react';
import { StairContext, StairNowContext, type StairOnShow, WordsContext } from './stairOnShow';

interface StairProviderProps {
  readonly value: StairOnShow;
  /** Nothing may lag behind: what is on show may be on paper in the next moment. */
  readonly atOnce?: boolean;
  readonly children: ReactNode;
}

export function StairProvider({ value, atOnce = false, children }: StairProviderProps) {
  const { say, units, index } = value;
  const words = useMemo(() => ({ say, units, index }), [say, units, index]);
  const late = useDeferredValue(value);
  return (
    <WordsContext value={words}>
      <StairNowContext value={value}>
        <StairContext value={!atOnce && mayLag(late, value) ? late : value}>{children}</StairContext>
      </StairNowContext>
    </WordsContext>
  );
}

/** Only the same stair in the same words: another one, or one less in the list, is there at once and everywhere. */
function mayLag(late: StairOnShow, now: StairOnShow): boolean {
  if (late.say !== now.say || late.units !== now.units || late.index !== now.index) return false;
  const [before, after] = [late.job.stairs, now.job.stairs];
  return before.length === after.length && before.every(({ id }, at) => id === after[at]?.id);
}
