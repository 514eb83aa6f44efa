/** A group of an SVG whose content is painted, and not React's. */
import { type SVGProps, useLayoutEffect, useRef } from 'react';
import { paint, type SvgNode } from './paint';

interface PaintedProps extends Omit<SVGProps<SVGGElement>, 'children' | 'ref'> {
  readonly nodes: readonly SvgNode[];
}

export function Painted({ nodes, ...group }: PaintedProps) {
  const place = useRef<SVGGElement>(null);
  useLayoutEffect(() => {
    if (place.current !== null) paint(place.current, nodes);
  }, [nodes]);
  return <g ref={place} {...group} />;
}
