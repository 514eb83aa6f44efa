/**
 * A drawing that one can come closer to: with a finger or two, the wheel, keys, or the buttons, which
 * are always there. What it shows is made for the zoom at which the look has come to rest.
 */
import { useId, useLayoutEffect, useMemo } from 'react';
import type { Drawing, View } from '../../core/drawing/drawing';
import { useWords } from '../stairOnShow';
import { groundOf, viewOf } from './camera';
import { DrawingMarks } from './DrawingMarks';
import { Targets } from './Targets';
import { type Target, targetsOf } from './targetBoxes';
import { useCamera } from './useCamera';

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

export function LiveSight({ title, alternative, view, draw, lit, nameOf, onAbout }: SightProps) {
  const { say, units } = useWords();
  const keys = useId();
  const { width, height } = view;
  const whole = useMemo(() => draw({ width, height }), [draw, width, height]);
  const ground = useMemo(() => groundOf(whole), [whole]);
  const { place, group, zoom, press, reveal, placeOf, drawn } = useCamera(ground);
  const drawing = useMemo(
    () => (zoom === 1 ? whole : draw({ width, height, zoom })),
    [draw, whole, width, height, zoom],
  );
  useLayoutEffect(() => drawn(ground, zoom, drawing), [drawn, ground, zoom, drawing]);
  const targets = useMemo(() => targetsOf(drawing, units), [drawing, units]);
  const shown = viewOf(ground);
  return (
    <div className="sight">
      <div className="sight-hands">
        <button type="button" aria-label={say('sight.wholeLong', { title })} onClick={() => press('0')}>
          {say('sight.whole')}
        </button>
        <button type="button" aria-label={say('sight.back', { title })} onClick={() => press('-')}>
          −
        </button>
        <button type="button" aria-label={say('sight.closer', { title })} onClick={() => press('+')}>
          +
        </button>
      </div>
      {/* biome-ignore lint/a11y/useSemanticElements: not a set of fields, a place to look around in */}
      <div
        className="sight-place"
        ref={place}
        role="group" // oxlint-disable-line jsx-a11y/prefer-tag-over-role
        aria-label={say('sight.label', { title })}
        aria-describedby={keys}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: the arrow keys move what is in it
        tabIndex={0} // oxlint-disable-line jsx-a11y/no-noninteractive-tabindex
      >
        <svg className="drawing" width={shown.width} height={shown.height} role="presentation">
          <g ref={group}>
            <DrawingMarks drawing={drawing} alternative={alternative} lit={lit} />
            {onAbout !== null && (
              <Targets
                drawing={drawing}
                targets={targets}
                nameOf={nameOf}
                onAbout={onAbout}
                placeOf={placeOf}
                onReach={reveal}
              />
            )}
          </g>
        </svg>
      </div>
      <p className="unseen" id={keys}>
        {say('sight.keys')}
      </p>
    </div>
  );
}
