/** Hands the stair on show to a part of the page; what it is said in goes by a way of its own. */
import { type ReactNode, useMemo } from 'react';
import { StairContext, type StairOnShow, WordsContext } from './stairOnShow';

interface StairProviderProps {
  readonly value: StairOnShow;
  readonly children: ReactNode;
}

export function StairProvider({ value, children }: StairProviderProps) {
  const { say, units, index } = value;
  const words = useMemo(() => ({ say, units, index }), [say, units, index]);
  return (
    <WordsContext value={words}>
      <StairContext value={value}>{children}</StairContext>
    </WordsContext>
  );
}
