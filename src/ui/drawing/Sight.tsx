/**
 * A drawing that one can come closer to. Until the camera has come, the same drawing stands there whole
 * and at rest, in the same place, and its numbers lead on already.
 */
import { lazy, Suspense, useMemo } from 'react';
import type { Drawing, View } from '../../core/drawing/drawing';
import { DrawingView } from './DrawingView';
import type { Target } from './targetBoxes';

const LiveSight = lazy(() => import('./LiveSight').then(({ LiveSight }) => ({ default: LiveSight })));

export interface SightProps {
  /** What is looked at: a few words. */
  readonly title: string;
  /** What it shows, for who cannot see it. */
  readonly alternative: string;
  /** The place that it fills, in pixels. */
  readonly view: View;
  /** Draws for a view; must be the same function as long as it draws the same thing. */
  readonly draw: (view: View) => Drawing;
  /** The key whose meaning lights up. */
  readonly lit: string | null;
  readonly nameOf: (target: Target) => string;
  /** What a touched number leads to; null where nobody leads. */
  readonly onAbout: ((about: string) => void) | null;
}

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
