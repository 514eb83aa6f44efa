/** The numbers of a drawing as things to touch: named, in reach of Tab, and a fingertip wide. */
import type { KeyboardEvent, MouseEvent } from 'react';
import type { About, Box, Drawing } from '../../core/drawing/drawing';
import type { Point } from '../../core/geometry/point';
import { boxInPixels, pixelsOf } from './pixels';
import { type Target, targetAt } from './targetBoxes';

interface TargetsProps {
  /** The one that they belong to. */
  readonly drawing: Drawing;
  readonly targets: readonly Target[];
  readonly nameOf: (target: Target) => string;
  readonly onAbout: (about: About) => void;
  /** The place of the drawing under the pointer. */
  readonly placeOf: (event: MouseEvent) => Point;
  readonly onReach?: ((box: Box) => void) | undefined;
}

export function Targets({ drawing, targets, nameOf, onAbout, placeOf, onReach }: TargetsProps) {
  const pixels = pixelsOf(drawing);
  // Fields may lie over each other where numbers stand close: the nearer number is the one that is meant.
  const onClick = (event: MouseEvent, touched: Target) => onAbout((targetAt(targets, placeOf(event)) ?? touched).about);
  const onKeyDown = (event: KeyboardEvent, target: Target) => {
    if (event.key !== 'Enter' && event.key !== ' ') return;
    event.preventDefault();
    onAbout(target.about);
  };
  return (
    <g className="targets">
      {targets.map((target, index) => (
        // biome-ignore lint/a11y/useSemanticElements: SVG has no button of its own
        <g
          // biome-ignore lint/suspicious/noArrayIndexKey: a drawing is made anew as a whole
          key={index}
          className="target"
          role="button" // oxlint-disable-line jsx-a11y/prefer-tag-over-role
          tabIndex={0}
          aria-label={nameOf(target)}
          data-about={target.about}
          onClick={(event) => onClick(event, target)}
          onKeyDown={(event) => onKeyDown(event, target)}
          onFocus={() => onReach?.(target.hit)}
        >
          <rect className="target-hit" {...boxInPixels(target.hit, pixels)} />
        </g>
      ))}
    </g>
  );
}
