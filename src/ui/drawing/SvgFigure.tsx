import { useMemo } from 'react';
import { figureNodes, moveTo, type PlacedFigure } from './figureNodes';
import { Painted } from './Painted';

/** A number in a picture that is otherwise React's. */
export function SvgFigure({ content, x, y, anchor, size, leastDigits }: PlacedFigure) {
  const nodes = useMemo(
    () => figureNodes({ content, anchor, size, leastDigits }),
    [content, anchor, size, leastDigits],
  );
  return <Painted nodes={nodes} transform={moveTo(x, y)} />;
}
