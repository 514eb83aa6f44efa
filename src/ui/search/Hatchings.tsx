/** One hatching for each thing that closes a stretch; they lie over each other where more than one does. */
import type { Closed } from '../../core/search/region';

const SIZE = 12;
/** Strokes of one tile: each kind runs another way, or is of another shape. */
const STROKES: Readonly<Record<Closed, string>> = {
  rule: 'M0 3h12M0 9h12',
  headroom: 'M-3 3l6-6M0 12L12 0M9 15l6-6',
  run: 'M-3 9l6 6M0 0l12 12M9-3l6 6',
  stock: 'M3 0v12M9 0v12',
  none: 'M3 3l6 6M9 3l-6 6',
};

export function Hatchings() {
  return (
    <defs>
      {(Object.keys(STROKES) as Closed[]).map((kind) => (
        <pattern key={kind} id={`region-${kind}`} width={SIZE} height={SIZE} patternUnits="userSpaceOnUse">
          <path className="region-stroke" d={STROKES[kind]} />
        </pattern>
      ))}
    </defs>
  );
}
