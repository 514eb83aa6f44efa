/** One layout in outline. All of them have the same scale, and the header of all stands at the same place. */
import type { Figures } from '../../core/choose/figures';
import type { StairPlan } from '../../core/plan/planStair';
import { toMm } from '../../core/units/exact';
import { lengthText } from '../numbers/figures';
import { useStair } from '../stairOnShow';

/** What of the house all outlines have room for, in millimetres from the header's face. */
export interface ShapeFrame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const BESIDE = 500;
const OVER = 120;
const GROUND = 130;

export function frameOf(all: readonly Figures[], plan: StairPlan): ShapeFrame {
  const { job, flight } = plan.layout;
  const opening = job.survey.openingFraming === null ? 0 : toMm(job.survey.openingFraming);
  const longest = Math.max(opening, ...all.map(({ headerFace }) => headerFace));
  return { left: -longest - BESIDE, right: BESIDE, top: flight.totalRise + OVER, bottom: -GROUND };
}

interface StairShapeProps {
  readonly figures: Figures;
  readonly plan: StairPlan;
  readonly frame: ShapeFrame;
  /** The head meets the floor above. */
  readonly isLow: boolean;
}

export function StairShape({ figures, plan, frame, isLow }: StairShapeProps) {
  const { say, units } = useStair();
  const { left, right, top, bottom } = frame;
  const { survey } = plan.layout.job;
  const floor = floorDepth(plan);
  const total = figures.unitRise * figures.risers;
  const lowEdge = survey.openingFraming === null ? null : -toMm(survey.openingFraming);
  const y = (height: number) => top - height;
  return (
    <svg
      className="choose-shape"
      role="img"
      aria-label={say('choose.shape.alt', {
        risers: figures.risers,
        rise: lengthText(figures.unitRise, units),
        run: lengthText(figures.run, units),
      })}
      viewBox={`${left} 0 ${right - left} ${top - bottom}`}
    >
      <rect className="house" x={0} y={y(total)} width={right} height={floor} />
      {lowEdge !== null && <rect className="house" x={left} y={y(total)} width={lowEdge - left} height={floor} />}
      <polygon
        className="wood"
        points={outlineOf(figures)
          .map(([x, h]) => `${x.toFixed(1)},${y(h).toFixed(1)}`)
          .join(' ')}
      />
      <line className="ground" x1={left} x2={right} y1={y(0)} y2={y(0)} />
      {lowEdge !== null && figures.headroom !== null && (
        <Headroom
          x={lowEdge + toMm(survey.headerLining)}
          top={y(total - floor)}
          room={figures.headroom}
          isLow={isLow}
        />
      )}
    </svg>
  );
}

interface HeadroomProps {
  readonly x: number;
  readonly top: number;
  readonly room: number;
  readonly isLow: boolean;
}

/** Plumb from the floor's edge to the nosing line, with a stroke across either end; heavy and cracked where it is too low. */
function Headroom({ x, top, room, isLow }: HeadroomProps) {
  const end = top + room;
  const middle = top + room / 2;
  const crack = `M${x} ${top}V${middle - 260}l-110 90l220 140l-220 140l110 90V${end}`;
  return (
    <g className={isLow ? 'headroom low' : 'headroom'}>
      <path d={isLow ? crack : `M${x} ${top}V${end}`} />
      <path d={`M${x - 90} ${top}h180M${x - 90} ${end}h180`} />
    </g>
  );
}

/** Tops of treads and faces of risers, and the stringer's lower edge under them; x from the header's face. */
function outlineOf({ risers, run, unitRise, headerFace, throat, pitch }: Figures): [number, number][] {
  const foot = -headerFace;
  const steps = Array.from({ length: risers }, (_, i): [number, number][] => [
    [foot + i * run, (i + 1) * unitRise],
    [Math.min(0, foot + (i + 1) * run), (i + 1) * unitRise],
  ]).flat();
  // Without what stands between the last riser and the header, which no eye finds at this size.
  const climb = unitRise / run;
  const under = throat / Math.cos(pitch);
  const soffitAtHeader = (headerFace - run) * climb - under;
  const seat = Math.max(run / 2, under / climb + run);
  return [[foot, 0], ...steps, [0, Math.max(0, soffitAtHeader)], [Math.min(0, foot + seat), 0]];
}

function floorDepth({ layout }: StairPlan): number {
  const { floorDepth: measured, headerDepth } = layout.job.survey;
  const known = measured ?? headerDepth;
  return known === null ? 240 : toMm(known);
}
