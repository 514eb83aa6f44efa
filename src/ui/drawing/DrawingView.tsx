/** A drawing of the core on screen, whole and at rest. Its numbers lead somewhere where somebody is there to lead. */
import { type MouseEvent, useMemo, useRef } from 'react';
import type { Drawing } from '../../core/drawing/drawing';
import { type Point, point } from '../../core/geometry/point';
import { useWords } from '../stairOnShow';
import { DrawingMarks } from './DrawingMarks';
import { Targets } from './Targets';
import { type Target, targetsOf } from './targetBoxes';

interface DrawingViewProps {
  readonly drawing: Drawing;
  readonly alternative: string;
  readonly lit: string | null;
  readonly nameOf: (target: Target) => string;
  readonly onAbout: ((about: string) => void) | null;
}

export function DrawingView({ drawing, alternative, lit, nameOf, onAbout }: DrawingViewProps) {
  const { units } = useWords();
  const place = useRef<SVGSVGElement>(null);
  const targets = useMemo(() => targetsOf(drawing, units), [drawing, units]);
  const { left, right, top, bottom } = drawing.frame;
  const width = right - left;
  const shown = { width: width / drawing.perPixel, height: (top - bottom) / drawing.perPixel };
  const placeOf = (event: MouseEvent): Point => {
    const box = place.current?.getBoundingClientRect();
    const scale = box === undefined || box.width === 0 ? drawing.perPixel : width / box.width;
    return point(left + (event.clientX - (box?.left ?? 0)) * scale, top - (event.clientY - (box?.top ?? 0)) * scale);
  };
  return (
    <svg className="drawing" ref={place} viewBox={`0 0 ${shown.width} ${shown.height}`} {...shown} role="presentation">
      <DrawingMarks drawing={drawing} alternative={alternative} lit={lit} />
      {onAbout !== null && (
        <Targets drawing={drawing} targets={targets} nameOf={nameOf} onAbout={onAbout} placeOf={placeOf} />
      )}
    </svg>
  );
}
