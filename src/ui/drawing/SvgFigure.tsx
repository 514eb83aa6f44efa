import { useMemo } from 'react';
import { figureNodes, type PlacedFigure } from './figureNodes';
import { Painted } from './Painted';

/** A number in a picture that is otherwise React's. */
export function SvgFigure(figure: PlacedFigure) {
  const { content, x, y, anchor, size, leastDigits } = figure;
  const nodes = useMemo(
    () => figureNodes({ content, x, y, anchor, size, leastDigits }),
    [content, x, y, anchor, size, leastDigits],
  );
  return <Painted nodes={nodes} />;
}
