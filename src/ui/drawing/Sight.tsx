/**
 * A drawing that one can come closer to. Until the camera has come, the same drawing stands there whole
 * and at rest, in the same place, and its numbers lead on already.
 */
import { lazy, Suspense, useMemo } from 'react';
import { DrawingView } from './DrawingView';
import type { SightProps } from './LiveSight';

const LiveSight = lazy(() => import('./LiveSight').then(({ LiveSight }) => ({ default: LiveSight })));

export function Sight(props: SightProps) {
  return (
    <Suspense fallback={<SightAtRest {...props} />}>
      <LiveSight {...props} />
    </Suspense>
  );
}

function SightAtRest({ view, draw, alternative, lit, nameOf, onAbout }: SightProps) {
  const { width, height } = view;
  const drawing = useMemo(() => draw({ width, height }), [draw, width, height]);
  return (
    <div className="sight">
      <div className="sight-hands to-come">
        <button type="button" disabled>
          +
        </button>
      </div>
      <div className="sight-place">
        <DrawingView drawing={drawing} alternative={alternative} lit={lit} nameOf={nameOf} onAbout={onAbout} />
      </div>
    </div>
  );
}
