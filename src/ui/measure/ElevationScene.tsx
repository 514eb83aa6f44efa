/** A stair between two floors, from the side, in no scale: dashed while it is only a guess. */

const RISERS = 8;
const RISE = 20;
const RUN = 24;
const FLOOR = 214;
const UPPER = FLOOR - RISERS * RISE;
const HEADER = 300;
const LOW_HEADER = 90;
const TOE = HEADER - (RISERS - 1) * RUN;
const SUBFLOOR = 6;
const JOIST = 36;
const PLIES = 12;
const PLUMB_CUT = 30;

export function ElevationScene({ built }: { readonly built: boolean }) {
  return (
    <>
      <Ground from={10} to={390} y={FLOOR} />
      <UpperFloor face={HEADER} end={390} />
      <UpperFloor face={LOW_HEADER} end={10} />
      <polygon className={built ? 'role-stringer' : 'role-to-come'} points={pointsOf(STRINGER)} />
      {built && TREADS.map((x, i) => <Step key={x} x={x} y={FLOOR - (i + 1) * RISE} />)}
    </>
  );
}

const TREADS = Array.from({ length: RISERS - 1 }, (_, i) => TOE + i * RUN);

const STRINGER: readonly (readonly [number, number])[] = [
  [TOE, FLOOR],
  ...TREADS.flatMap((x, i): [number, number][] => [
    [x, FLOOR - (i + 1) * RISE],
    [x + RUN, FLOOR - (i + 1) * RISE],
  ]),
  [HEADER, UPPER + RISE + PLUMB_CUT],
  [TOE + 1.5 * RUN, FLOOR],
];

function Step({ x, y }: { readonly x: number; readonly y: number }) {
  return (
    <>
      <rect className="role-riser" x={x - 2.5} y={y} width={2.5} height={RISE} />
      <rect className="role-tread" x={x - 4} y={y - 4} width={RUN + 4} height={4} />
    </>
  );
}

function Ground({ from, to, y }: { readonly from: number; readonly to: number; readonly y: number }) {
  const count = Math.floor((to - from) / 16);
  return (
    <>
      {Array.from({ length: count }, (_, i) => from + 14 + i * 16).map((x) => (
        <line key={x} className="role-ground-hatch" x1={x} y1={y} x2={x - 10} y2={y + 12} />
      ))}
      <line className="role-floor-today" x1={from} y1={y} x2={to} y2={y} />
    </>
  );
}

function UpperFloor({ face, end }: { readonly face: number; readonly end: number }) {
  const side = Math.sign(end - face);
  const behind = face + side * PLIES;
  const top = UPPER + SUBFLOOR;
  const bottom = top + JOIST;
  return (
    <>
      <rect className="role-house" x={Math.min(behind, end)} y={top} width={Math.abs(end - behind)} height={JOIST} />
      <rect className="role-house" x={Math.min(face, behind)} y={top} width={PLIES} height={JOIST} />
      <path className="role-dimension" d={`M${face} ${top}L${behind} ${bottom}M${behind} ${top}L${face} ${bottom}`} />
      <rect className="role-house" x={Math.min(face, end)} y={UPPER} width={Math.abs(end - face)} height={SUBFLOOR} />
      <line className="role-floor-today" x1={face} y1={UPPER} x2={end} y2={UPPER} />
    </>
  );
}

function pointsOf(corners: readonly (readonly [number, number])[]): string {
  return corners.map(([x, y]) => `${x},${y}`).join(' ');
}
