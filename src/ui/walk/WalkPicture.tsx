/** The picture of a walk: this mark lit under the crow's foot, what is ticked off headed like a nail. */
import { useMemo } from 'react';
import type { Point } from '../../core/geometry/point';
import type { StairPlan } from '../../core/plan/planStair';
import type { WalkList } from '../../state/view';
import { boardPicture } from './boardPicture';
import { housePicture } from './housePicture';
import type { Picture, PictureMark, PictureShape, PictureSize } from './picture';
import { polePicture } from './polePicture';
import { ripPicture } from './ripPicture';
import { usePlace } from './usePlace';
import type { WalkEntry } from './useWalk';

interface WalkPictureProps {
  readonly plan: StairPlan;
  readonly list: WalkList;
  readonly entries: readonly WalkEntry[];
  readonly current: WalkEntry;
}

export function WalkPicture({ plan, list, entries, current }: WalkPictureProps) {
  const [place, size] = usePlace<HTMLDivElement>();
  const picture = useMemo(() => pictureOf(plan, list, entries, current, size), [plan, list, entries, current, size]);
  const ticked = new Set(entries.filter(({ tick }) => tick === 'ticked').map(({ id }) => id));
  return (
    <div className="walk-picture" ref={place}>
      <svg aria-hidden="true" viewBox={`0 0 ${size.width} ${size.height}`} width={size.width} height={size.height}>
        {picture.shapes.map((each, index) => (
          // A picture is made anew as a whole: its order is all the identity that a shape has.
          // biome-ignore lint/suspicious/noArrayIndexKey: shapes have no other identity
          <Shape key={index} shape={each} />
        ))}
        <Run picture={picture} />
        {picture.marks.map((mark) => (
          <Mark key={mark.id} mark={mark} isTicked={ticked.has(mark.id)} />
        ))}
        <CrowsFoot at={picture.run[1]} opens={picture.opens} />
      </svg>
    </div>
  );
}

function pictureOf(
  plan: StairPlan,
  list: WalkList,
  entries: readonly WalkEntry[],
  current: WalkEntry,
  size: PictureSize,
): Picture {
  switch (list) {
    case 'marks':
      return boardPicture(plan, entries, current, size);
    case 'rips':
      return ripPicture(entries, current, size);
    case 'pole':
      return polePicture(entries, current, size);
    case 'setting':
      return housePicture(plan, entries, current, size);
  }
}

function Shape({ shape: { role, corners, closed } }: { readonly shape: PictureShape }) {
  const points = corners.map(({ x, y }) => `${x.toFixed(1)},${y.toFixed(1)}`).join(' ');
  const name = `walk-${role}`;
  return closed ? <polygon className={name} points={points} /> : <polyline className={name} points={points} />;
}

const HOOK = 11;

function Run({ picture: { run } }: { readonly picture: Picture }) {
  const [from, to] = run;
  const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  const across = { x: (-(to.y - from.y) / length) * HOOK, y: ((to.x - from.x) / length) * HOOK };
  return (
    <g className="walk-run">
      <line x1={from.x} y1={from.y} x2={to.x} y2={to.y} />
      <line x1={from.x - across.x} y1={from.y - across.y} x2={from.x + across.x} y2={from.y + across.y} />
    </g>
  );
}

const STEM = 11;
const HEAD = 5;

function Mark({ mark: { at, out }, isTicked }: { readonly mark: PictureMark; readonly isTicked: boolean }) {
  const end = { x: at.x + out.x * STEM, y: at.y + out.y * STEM };
  return (
    <g className={isTicked ? 'walk-mark ticked' : 'walk-mark'}>
      <line x1={at.x} y1={at.y} x2={end.x} y2={end.y} />
      {isTicked && <circle cx={end.x} cy={end.y} r={HEAD} />}
    </g>
  );
}

const FOOT = { gap: 3, long: 21, half: 12 };

/** Its point is the measure: it keeps a little air, so that it is never read as a part of what it points at. */
export function CrowsFoot({ at, opens }: { readonly at: Point; readonly opens: Point }) {
  const tip = { x: at.x + opens.x * FOOT.gap, y: at.y + opens.y * FOOT.gap };
  const far = { x: tip.x + opens.x * FOOT.long, y: tip.y + opens.y * FOOT.long };
  const side = { x: -opens.y * FOOT.half, y: opens.x * FOOT.half };
  return (
    <path
      className="walk-v"
      d={`M${far.x + side.x} ${far.y + side.y}L${tip.x} ${tip.y}L${far.x - side.x} ${far.y - side.y}`}
    />
  );
}
