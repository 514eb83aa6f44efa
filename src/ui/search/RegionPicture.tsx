/**
 * The picture of what fits: run across, a row for each riser count. What closes a stretch is told by its
 * hatching, and each kind of edge has a line of its own; the key under the picture names both.
 */
import { type PointerEvent, useMemo } from 'react';
import {
  CLOSED,
  type Closed,
  edgesOf,
  kindsIn,
  type Region,
  type RegionRow,
  type Spot,
  spotAt,
  stretchesOf,
} from '../../core/search/region';
import { useWidth } from '../drawing/useSize';
import { lengthText } from '../numbers/figures';
import { useWords } from '../stairOnShow';
import { type Axis, axisTicks } from './axis';
import { Hatchings } from './Hatchings';
import { pointers } from './pointers';
import { RegionKey } from './RegionKey';
import { runText } from './searchWords';
import './region.css';

interface RegionPictureProps {
  readonly region: Region;
  /** Millimetres of one step of the run. */
  readonly gridMm: number;
  /** The stair in hand; its run may lie between two steps. Null where it has another top. */
  readonly now: Spot | null;
  readonly lookedAt: Spot;
  readonly onLook: (spot: Spot) => void;
}

const ROW = 52;
const BAR = 40;
const HEAD = 46;
const FOOT = 6;
const NAMES = 70;
/** Half of the longest figure on the axis. */
const RIGHT = 26;
/** A finger's reach, in pixels. */
const REACH = 24;

export function RegionPicture({ region, gridMm, now, lookedAt, onLook }: RegionPictureProps) {
  const { say, units } = useWords();
  const [place, width] = useWidth<HTMLDivElement>();
  const axis = useMemo<Axis>(
    () => ({ left: NAMES, right: Math.max(NAMES + 100, width - RIGHT), from: region.from - 0.5, to: region.to + 0.5 }),
    [region, width],
  );
  const height = HEAD + region.rows.length * ROW + FOOT;
  const x = (steps: number) => axis.left + ((steps - axis.from) / (axis.to - axis.from)) * (axis.right - axis.left);
  const y = (row: number) => HEAD + row * ROW;
  const touch = (event: PointerEvent<SVGSVGElement>) => {
    const box = event.currentTarget.getBoundingClientRect();
    const row = Math.floor((event.clientY - box.top - HEAD) / ROW);
    const perStep = (axis.right - axis.left) / (axis.to - axis.from);
    const steps = axis.from + (event.clientX - box.left - axis.left) / perStep;
    const spot = spotAt(region, Math.max(0, Math.min(region.rows.length - 1, row)), steps, REACH / perStep);
    if (spot !== null) onLook(spot);
  };
  return (
    <div ref={place} className="region">
      {/* The sliders under the picture do the same for keys and for those who do not see it. */}
      <svg
        className="region-picture"
        role="img"
        aria-label={regionWords(say, region, gridMm, units)}
        width={width}
        height={height}
        viewBox={`0 0 ${width} ${height}`}
        onPointerUp={touch}
      >
        <Hatchings />
        <text className="region-axis-name" x={8} y={HEAD - 12}>
          {say('search.region.run')}
        </text>
        {axisTicks(axis, gridMm, units).map(({ steps, text }) => (
          <g key={steps} className="region-tick">
            <path d={`M${x(steps)} ${HEAD - 6}V${height - FOOT}`} />
            <text x={x(steps)} y={HEAD - 12} textAnchor="middle">
              {text}
            </text>
          </g>
        ))}
        {region.rows.map((row, at) => (
          <g key={row.risers}>
            <Row row={row} from={region.from} x={x} y={y(at)} />
            <text className="region-count" x={8} y={y(at) + 20}>
              {row.risers}
            </text>
            <text className="region-rise" x={8} y={y(at) + 45}>
              {runText(row.unitRise, units)}
            </text>
          </g>
        ))}
        <Edges region={region} x={x} y={y} />
        <Marker spot={now} region={region} x={x} y={y} className="in-hand" />
        <Marker spot={lookedAt} region={region} x={x} y={y} className="looked-at" />
      </svg>
      <RegionKey region={region} hasNow={now !== null} />
    </div>
  );
}

interface Places {
  readonly x: (steps: number) => number;
}

function Row({ row, from, x, y }: Places & { readonly row: RegionRow; readonly from: number; readonly y: number }) {
  return stretchesOf(row, from).map((stretch) => {
    const left = x(stretch.from - 0.5);
    const box = { x: left, y: y + (ROW - BAR) / 2, width: x(stretch.to + 0.5) - left, height: BAR };
    if (stretch.cell === 0) return <rect key={stretch.from} className="region-fits" {...box} />;
    return (
      <g key={stretch.from}>
        <rect className="region-closed" {...box} />
        {kindsIn(stretch.cell).map((kind) => (
          <rect key={kind} className="region-hatch" fill={`url(#region-${kind})`} {...box} />
        ))}
      </g>
    );
  });
}

/** Each kind of edge goes on from row to row, as far as the next row has it too. */
function Edges({ region, x, y }: Places & { readonly region: Region; readonly y: (row: number) => number }) {
  return CLOSED.map((kind) => (
    <path key={kind} className={`region-edge region-edge-${kind}`} d={edgePath(region, kind, x, y)} />
  ));
}

function edgePath(region: Region, kind: Closed, x: (steps: number) => number, y: (row: number) => number): string {
  const [above, under] = [(ROW - BAR) / 2, (ROW + BAR) / 2];
  let path = '';
  let before: readonly { readonly at: number; readonly closesLonger: boolean }[] = [];
  region.rows.forEach((row, at) => {
    const edges = edgesOf(row, region.from).filter((edge) => edge.kind === kind);
    for (const edge of edges) {
      const same = before.find(({ closesLonger }) => closesLonger === edge.closesLonger);
      if (same !== undefined) path += `M${x(same.at)} ${y(at - 1) + under}L${x(edge.at)} ${y(at) + above}`;
      path += `M${x(edge.at)} ${y(at) + above}V${y(at) + under}`;
    }
    before = edges;
  });
  return path;
}

interface MarkerProps extends Places {
  readonly spot: Spot | null;
  readonly region: Region;
  readonly y: (row: number) => number;
  readonly className: string;
}

function Marker({ spot, region, x, y, className }: MarkerProps) {
  const row = region.rows.findIndex(({ risers }) => risers === spot?.risers);
  if (spot === null || row < 0 || spot.steps < region.from || spot.steps > region.to) return null;
  const [cx, cy] = [x(spot.steps), y(row) + ROW / 2];
  if (className === 'in-hand') return <circle className="region-in-hand" cx={cx} cy={cy} r={6} />;
  return <path className="region-looked-at" d={pointers(cx, cy - BAR / 2, cy + BAR / 2)} />;
}

function regionWords(
  say: ReturnType<typeof useWords>['say'],
  region: Region,
  gridMm: number,
  units: ReturnType<typeof useWords>['units'],
): string {
  const rows = region.rows.map((row) => {
    const fits = stretchesOf(row, region.from).filter(({ cell }) => cell === 0);
    if (fits.length === 0) return say('search.region.row.none', { risers: row.risers });
    const runs = fits.map(({ from, to }) => `${lengthText(from * gridMm, units)} – ${lengthText(to * gridMm, units)}`);
    return say('search.region.row', { risers: row.risers, runs: runs.join(', ') });
  });
  const [first, last] = [region.rows[0], region.rows.at(-1)];
  return say('search.region.alt', {
    from: first?.risers ?? 0,
    to: last?.risers ?? 0,
    least: lengthText(region.from * gridMm, units),
    most: lengthText(region.to * gridMm, units),
    rows: rows.join(' '),
  });
}
