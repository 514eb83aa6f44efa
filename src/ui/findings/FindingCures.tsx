/** The cures of one finding where it stands; one touch takes one, as one step of undo. */
import { useDeferredValue } from 'react';
import type { Finding } from '../../core/codes/findings';
import { useTaking } from '../choose/useAlternatives';
import { StairContext, useStair } from '../stairOnShow';
import { CureKeys } from './CureKeys';

export function FindingCures({ finding }: { readonly finding: Finding }) {
  // The answer is shown first, and what would clear it is looked for when there is a moment.
  const now = useStair();
  const late = useDeferredValue(now);
  // A cure of one stair is none of another.
  const shown = late.index === now.index ? late : now;
  const { take } = useTaking();
  return (
    <StairContext value={shown}>
      <CureKeys finding={finding} onTake={take} />
    </StairContext>
  );
}
