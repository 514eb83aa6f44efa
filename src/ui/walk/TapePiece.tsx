/**
 * The piece of tape round the mark, as it lies under the pencil: the mark always in the middle, the tape's
 * own numbers and no others beside it.
 */

import { mmToInches } from '../../core/units/exact';
import type { UnitSystem } from '../../core/units/length';
import { useStair } from '../stairOnShow';
import { usePlace } from './usePlace';
import { CrowsFoot } from './WalkPicture';

/** How a tape is divided: shares of its numbered unit, the longest tick first. */
interface Division {
  /** Millimetres or inches of one numbered unit. */
  readonly unit: number;
  readonly parts: number;
  /** Tick length against the tape's width, by how many parts it closes. */
  readonly ticks: readonly (readonly [every: number, length: number])[];
  /** Numbered units that are in sight at least; fewer where they would grow too wide. */
  readonly inSight: number;
  readonly widest: number;
}

const DIVISIONS: Readonly<Record<UnitSystem, Division>> = {
  imperial: {
    unit: 1,
    parts: 16,
    ticks: [
      [16, 1],
      [8, 0.68],
      [4, 0.5],
      [2, 0.36],
      [1, 0.24],
    ],
    inSight: 1.9,
    widest: 460,
  },
  metric: {
    unit: 10,
    parts: 10,
    ticks: [
      [10, 1],
      [5, 0.6],
      [1, 0.34],
    ],
    inSight: 4.2,
    widest: 190,
  },
};

const ABOVE = 30;
const NUMBER_GAP = 7;

export function TapePiece({ mm }: { readonly mm: number }) {
  const { units } = useStair();
  const [place, { width, height }] = usePlace<HTMLDivElement>();
  const division = DIVISIONS[units];
  const value = units === 'metric' ? mm : mmToInches(mm);
  const perUnit = Math.min(division.widest, width / division.inSight) / division.unit;
  const middle = width / 2;
  const x = (at: number) => middle + (at - value) * perUnit;
  const foot = height - 1;
  return (
    <div className="walk-tape" ref={place}>
      <svg aria-hidden="true" viewBox={`0 0 ${width} ${height}`} width={width} height={height}>
        <path className="walk-tape-edge" d={`M${Math.max(-4, x(0))} ${foot}V${ABOVE}H${width + 4}V${foot}Z`} />
        {ticksIn(division, value, middle / perUnit).map(({ at, length, isUnit }) => (
          <g key={at} className={isUnit ? 'walk-tape-unit' : 'walk-tape-tick'}>
            <line x1={x(at)} x2={x(at)} y1={ABOVE} y2={ABOVE + (foot - ABOVE) * length} />
            {isUnit && <UnitNumber x={x(at)} y={foot - 8} number={Math.round(at)} mark={middle} />}
          </g>
        ))}
        <line className="walk-tape-mark" x1={middle} x2={middle} y1={ABOVE} y2={ABOVE + (foot - ABOVE) * 0.6} />
        <CrowsFoot at={{ x: middle, y: ABOVE }} opens={{ x: 0, y: -1 }} />
      </svg>
    </div>
  );
}

interface UnitNumberProps {
  readonly x: number;
  readonly y: number;
  readonly number: number;
  readonly mark: number;
}

/** To the right of its line, as on a tape; to the left where the mark would lie on it. */
function UnitNumber({ x, y, number, mark }: UnitNumberProps) {
  const width = String(number).length * 16 + 2 * NUMBER_GAP;
  const isCovered = mark > x + 1 && mark < x + width;
  return (
    <text x={isCovered ? x - NUMBER_GAP : x + NUMBER_GAP} y={y} textAnchor={isCovered ? 'end' : 'start'}>
      {number}
    </text>
  );
}

interface Tick {
  readonly at: number;
  readonly length: number;
  readonly isUnit: boolean;
}

/** @param reach how far to either side is in sight, in the tape's measure */
function ticksIn({ unit, parts, ticks }: Division, value: number, reach: number): Tick[] {
  const step = unit / parts;
  const first = Math.max(0, Math.floor((value - reach - unit) / step));
  const last = Math.ceil((value + reach) / step);
  return Array.from({ length: last - first + 1 }, (_, i) => {
    const part = first + i;
    const [, length = 0] = ticks.find(([every]) => part % every === 0) ?? [];
    return { at: part * step, length, isUnit: part % parts === 0 && part > 0 };
  });
}
