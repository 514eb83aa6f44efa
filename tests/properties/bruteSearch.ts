/**
 * Every layout of a survey, found by asking each: independent of src/core, with which it shares nothing but
 * the rows of the packs as data. Lengths are whole nanometres, and every comparison is one of whole numbers:
 * what has a root in it is squared first. With H the total rise and N risers, R = H / N is never divided out.
 */
import type { RuleRow } from '../../src/core/codes/rulePack';

export const FOUR_TOPS = ['hanger-is-riser', 'header-behind-riser', 'hanger-behind-riser', 'level-with-floor'] as const;
type Top = (typeof FOUR_TOPS)[number];

/** Whole nanometres. */
export interface House {
  readonly totalRise: number;
  readonly lowerToAdd: number;
  readonly laidAfter: boolean;
  readonly floorDepth: number | null;
  readonly opening: number | null;
  readonly lining: number;
  readonly nosing: number;
  readonly tread: number;
  readonly riser: number;
  readonly hanger: number;
  readonly depths: readonly number[];
  readonly thickness: number;
  readonly inset: number;
  readonly trim: number;
  readonly kicker: { readonly width: number; readonly height: number } | null;
  readonly runAvailable: number | null;
  readonly headroomWished: number | null;
  readonly longest: number;
}

const NM = { in: 25_400_000, mm: 1_000_000 } as const;

/** @param rows of the pack, for one profile */
export function isLegal(house: House, rows: readonly RuleRow[], top: Top, risers: number, run: number): boolean {
  return house.depths.some((depth) => isLegalWith(house, rows, top, BigInt(risers), BigInt(run), BigInt(depth)));
}

const big = (nm: number) => BigInt(nm);

/** All that is reckoned once for a candidate; x and lengths in nanometres, `N` times a height where it says so. */
function measure(house: House, top: Top, N: bigint, G: bigint, depth: bigint) {
  const [H, t, tr] = [big(house.totalRise), big(house.tread), big(house.riser)];
  const zs = house.laidAfter ? -big(house.lowerToAdd) : 0n;
  const isLevel = top === 'level-with-floor';
  const hasBoard = top === 'hanger-is-riser' || top === 'hanger-behind-riser';
  const hanger = hasBoard ? big(house.hanger) : 0n;
  const endX = (N - 1n) * G + (top === 'hanger-is-riser' ? 0n : tr) + (isLevel ? G : 0n);
  const lastCut = isLevel ? G : G + (top === 'hanger-is-riser' ? 0n : tr) - tr;
  // N × the first riser cut, and N² × the step length squared.
  const firstCutN = H - N * (t + zs);
  const stepN2 = H * H + N * N * G * G;
  return {
    H,
    t,
    tr,
    isLevel,
    headerX: endX + hanger,
    endX,
    lastCut,
    firstCutN,
    stepN2,
    under: depth - big(house.inset),
  };
}

function isLegalWith(house: House, rows: readonly RuleRow[], top: Top, N: bigint, G: bigint, depth: bigint): boolean {
  const stair = measure(house, top, N, G, depth);
  return (
    keepsRules(house, rows, stair, N, G, depth) && keepsWishes(house, stair, N, G) && leavesAStair(house, stair, N, G)
  );
}

type Stair = ReturnType<typeof measure>;

/** Whether a × √s is more than b, without the root. */
function rootIsMore(a: bigint, s: bigint, b: bigint): boolean {
  if (a <= 0n) return false;
  return b < 0n || a * a * s > b * b;
}

function leavesAStair(house: House, stair: Stair, N: bigint, G: bigint): boolean {
  const { H, tr, under, firstCutN, stepN2, endX, lastCut } = stair;
  if (2n * big(house.nosing) >= G || 4n * tr > G) return false;
  if (under <= 0n || firstCutN <= 0n) return false;
  // Throat: under > R G / U; seat: under U > h1 G; plumb cut: under U > R × the last level cut.
  if (!rootIsMore(under, stepN2, H * G)) return false;
  if (!rootIsMore(under, stepN2, firstCutN * G)) return false;
  if (!rootIsMore(under, stepN2, H * lastCut)) return false;
  // The heel ends before the plumb end: under U / R − h1 G / R < endX − tr.
  if (rootIsMore(under, stepN2, H * (endX - tr) + firstCutN * G - 1n)) return false;
  if (house.kicker === null) return true;
  if (N * big(house.kicker.height) >= firstCutN) return false;
  return rootIsMore(under, stepN2, H * big(house.kicker.width) + firstCutN * G);
}

/** Two sides × N G, both whole. */
function hasHeadroom(house: House, { H, headerX }: Stair, N: bigint, G: bigint, least: bigint): boolean {
  if (house.opening === null || house.floorDepth === null) return true;
  const edge = headerX - big(house.opening) + big(house.lining);
  const line = H * (G + edge + big(house.nosing));
  return (H - big(house.floorDepth) - least) * N * G >= (line > 0n ? line : 0n);
}

function keepsWishes(house: House, stair: Stair, N: bigint, G: bigint): boolean {
  const { H, tr, headerX, endX, firstCutN, stepN2, isLevel, t } = stair;
  if (house.runAvailable !== null && headerX > big(house.runAvailable)) return false;
  if (house.headroomWished !== null && !hasHeadroom(house, stair, N, G, big(house.headroomWished))) return false;
  // Board length × U: across, (endX − tr) G; up, what the last cut lies over the first, and the first cut, times R.
  const topY = N * (H - t) - (isLevel ? 0n : H);
  const upN = topY - (H - N * t) + firstCutN;
  const boardN2 = N * N * (endX - tr) * G + upN * H;
  // boardN2 / (N² U) ≤ room, and N U = √stepN2.
  const room = big(house.longest) - 2n * big(house.trim);
  return room > 0n && !(boardN2 > 0n && boardN2 * boardN2 > room * room * N * N * stepN2);
}

type Check = (limit: bigint, row: RuleRow) => boolean;

function keepsRules(house: House, rows: readonly RuleRow[], stair: Stair, N: bigint, G: bigint, depth: bigint) {
  const isOpen = house.riser === 0;
  const inForce = rows.filter(
    ({ advice, when }) => advice !== true && (when === undefined || (when === 'open-risers') === isOpen),
  );
  const { H, t, under, stepN2, isLevel } = stair;
  const other = (field: string) => {
    const row = inForce.find((each) => each.field === field);
    return row === undefined ? null : nm(row);
  };
  const [n, treads] = [big(house.nosing), isLevel ? N : N - 1n];
  const steep = Number(H) / Number(N) / Number(G);
  const checks: Readonly<Record<string, Check>> = {
    'riser.max': (limit) => H <= N * limit,
    'riser.min': (limit) => H >= N * limit,
    'tread.min': (limit) => G >= limit,
    'tread.max': (limit) => G <= limit,
    'tread.overRun.max': (limit) => n <= limit,
    'twoRPlusG.min': (limit) => 2n * H + N * G >= N * limit,
    'twoRPlusG.max': (limit) => 2n * H + N * G <= N * limit,
    'pitch.min': (_, { value }) => steep >= slope(value, H, N, G),
    'pitch.max': (_, { value }) => steep <= slope(value, H, N, G),
    'nosing.min': (limit) => {
      const freeFrom = other('nosing.notRequiredFromTread');
      return n >= limit || (freeFrom !== null && G >= freeFrom);
    },
    'nosing.max': (limit) => n <= limit,
    'flight.maxVerticalRise': (limit) => H <= limit,
    'flight.minRisers': (_, { value }) => N >= BigInt(Number(value)),
    'flight.maxRisers': (_, { value }) => N <= BigInt(Number(value)),
    'flight.maxRisersBeforeTurn': (_, { value }) => N <= BigInt(Number(value)),
    'headroom.min': (limit) => hasHeadroom(house, stair, N, G, limit),
    'openRiser.maxSphere': (limit) => {
      if (!isOpen) return true;
      const freeBelow = other('openRiser.freeBelowHeight');
      return H < N * (limit + t) || (freeBelow !== null && H * treads - N * t <= N * freeBelow);
    },
    // A board that nothing stands under carries by its span, of which the rows say nothing in one figure.
    'treadBoard.thickness.min': (limit) => isOpen || t >= limit,
    'openRiser.overlap.min': (limit) => !isOpen || n >= limit,
    'openRiser.allowed': (_, { value }) => value !== false || !isOpen,
    // under − RG/U ≥ limit.
    'stringer.effectiveDepth.min': (limit) => under > limit && (under - limit) ** 2n * stepN2 >= (H * G) ** 2n,
    'stringer.depth.min': (limit) => depth >= limit,
    'stringer.thickness.min': (limit) => big(house.thickness) >= limit,
  };
  return inForce.every((row) => {
    const check = checks[row.field];
    return check === undefined || typeof row.value === 'string' || row.value === null || check(nm(row), row);
  });
}

function nm({ value, unit }: RuleRow): bigint {
  return typeof value === 'number' && (unit === 'in' || unit === 'mm') ? BigInt(Math.round(value * NM[unit])) : 0n;
}

/** Only 45° has a slope that a stair can stand on exactly. */
function slope(degrees: RuleRow['value'], H: bigint, N: bigint, G: bigint): number {
  if (degrees === 45) return H === N * G ? Number(H) / Number(N) / Number(G) : 1;
  return Math.tan((Number(degrees) * Math.PI) / 180);
}
