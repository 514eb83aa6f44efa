/** Answers for every number inside it, with one panel for all of them. */
import { lazy, type ReactNode, Suspense, useCallback, useMemo, useState } from 'react';
import type { Measure } from '../../core/explain/measures';
import { measureNamed } from '../../core/explain/measures';
import { placeOfKey } from '../fields/jobPlaces';
import { useStair } from '../stairOnShow';
import { type Desk, DeskContext } from './desk';

const ExplainPanel = lazy(() => import('./ExplainPanel').then(({ ExplainPanel }) => ({ default: ExplainPanel })));

interface ExplainDeskProps {
  /** Into the field at a place of the job file. */
  readonly goTo: (place: string) => void;
  readonly children: ReactNode;
}

export function ExplainDesk({ goTo, children }: ExplainDeskProps) {
  const { plan, index } = useStair();
  const [trail, setTrail] = useState<readonly Measure[]>([]);
  const isLaidOut = plan.ok;
  const desk = useMemo<Desk>(
    () => ({
      explain: (measure) => setTrail([measure]),
      about: (about) => {
        const measure = measureNamed(about);
        if (measure === null) goTo(placeOfKey(index, about));
        else setTrail([measure]);
      },
    }),
    [goTo, index],
  );
  const onPlace = useCallback(
    (place: string) => {
      setTrail([]);
      // The panel gives the focus back as it goes; only then can it be taken farther.
      setTimeout(() => goTo(place));
    },
    [goTo],
  );
  return (
    <DeskContext value={desk}>
      {children}
      {isLaidOut && trail.length > 0 && (
        <Suspense fallback={null}>
          <ExplainPanel plan={plan.value} trail={trail} onTrail={setTrail} onPlace={onPlace} />
        </Suspense>
      )}
    </DeskContext>
  );
}
