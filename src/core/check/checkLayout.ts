/**
 * A layout checks itself by another road: the stair is rebuilt from the sheet (rebuild.ts), stacked
 * up and measured, and every finished riser, going, tread, board and floor mark is compared with
 * what the survey and the choices ask for. Nothing leaves the program that fails it.
 *
 * It runs twice: on the unrounded sheet, where a nanometre is too much, and on the printed one,
 * where roundings may add up to a few steps but a forgotten drop or a lost riser thickness cannot hide.
 */
import { atLeast, atMost } from '../geometry/tolerance';
import { hasHangerBoard, isHung, type StairJob } from '../job/stairJob';
import type { StairLayout } from '../layout/layoutStair';
import { sign, toMm, ZERO } from '../units/exact';
import { exactSheet, type FootOnSheet, type PrintedSheet, printedSheet } from './printedSheet';
import { type Rebuilt, rebuild } from './rebuild';

/** One measurement that does not agree: what, on which step (0 where it has none), in millimetres. */
export interface CheckFault {
  readonly what: string;
  readonly step: number;
  readonly expected: number;
  readonly found: number;
}

/**
 * How far rounding alone can carry the rebuilt stair, in steps. PLACED: a point's own mark and those
 * it is measured from, half a step each. SWUNG: the climb from first tip to top end, which sets the
 * swing, carries half a step of the toe height, of the header mark, and of each mark at its two ends;
 * over the horizontal between them that is an angle, and it moves a point by its distance from the
 * first tip. So a steep or short flight gets the slack that its own shape needs, and no other.
 */
const PLACED = 2;
const SWUNG = 2.5;

/** @returns what does not agree; empty for a layout that may leave the program */
export function checkLayout(layout: StairLayout): readonly CheckFault[] {
  return [...checkSheet(layout, exactSheet(layout)), ...checkSheet(layout, printedSheet(layout))];
}

/** The same for one sheet, so that a wrong number on it can be shown to be caught. */
export function checkSheet(layout: StairLayout, sheet: PrintedSheet): readonly CheckFault[] {
  const asked = { job: layout.job, risers: layout.flight.risers, run: layout.flight.run };
  const alike: readonly (FootOnSheet | undefined)[] = [undefined];
  const each = (sheet.feet.length === 0 ? alike : sheet.feet).flatMap((foot) => {
    const built = rebuild(layout.job, sheet, foot);
    const bench = new Bench(sheet.step, sheet.ripStep, built);
    measureSteps(bench, asked, sheet, built);
    measureMarks(bench, asked, sheet, built);
    measureTreads(bench, asked, sheet, built);
    measureRisers(bench, layout.job, sheet, built);
    measureFloorMarks(bench, layout.job, sheet, built);
    measureBoard(bench, layout.job, sheet, built, foot);
    return bench.faults;
  });
  return [...each, ...measureAcross(layout.job, sheet)];
}

/**
 * Where the floor falls across, each stringer has a foot of its own: as many as stand there, the outer ones
 * beside the spacers, none farther from the next than it may be, and the board made for the tallest.
 */
function measureAcross(job: StairJob, sheet: PrintedSheet): readonly CheckFault[] {
  const { survey, stringer } = job;
  const [first, last] = [sheet.feet[0], sheet.feet.at(-1)];
  const faults: CheckFault[] = [];
  const same = (what: string, expected: number, found: number, slack = sheet.step) => {
    if (!atMost(Math.abs(found - expected), slack)) faults.push({ what, step: 0, expected, found });
  };
  if (first === undefined || last === undefined) {
    const falls = toMm(survey.fallAcross.fall) !== 0;
    same('feet', 0, falls && betweenSkirts(job) > LEAST_TREAD && betweenOuter(job) > 0 ? 1 : 0, 0);
    return faults;
  }
  const outer = toMm(survey.spacer) + toMm(stringer.stockThickness) / 2;
  same('first stringer', outer, first.fromLeft);
  same('last stringer', outer + betweenOuter(job), last.fromLeft);
  const apart = betweenOuter(job) / (sheet.feet.length - 1);
  for (const [k, { fromLeft }] of sheet.feet.entries()) same('stringer', outer + k * apart, fromLeft);
  if (stringer.count !== 'auto') same('feet', stringer.count, sheet.feet.length, 0);
  else if (!atMost(apart, toMm(stringer.spacingMax))) same('spacing', toMm(stringer.spacingMax), apart, 0);
  same('tallest toe', Math.max(...sheet.feet.map(({ toeHeight }) => toeHeight)), sheet.toeHeight, 0);
  return faults;
}

/** Shorter than this is no tread: less than the play that lets one in between skirts. */
const LEAST_TREAD = 2;

/** From the first stringer's centre to the last one's, between framing and spacers. */
function betweenOuter({ survey, stringer }: StairJob): number {
  return toMm(survey.widthFraming ?? ZERO) - 2 * toMm(survey.spacer) - toMm(stringer.stockThickness);
}

function betweenSkirts({ survey }: StairJob): number {
  return toMm(survey.widthFraming ?? ZERO) - 2 * (toMm(survey.wallboard) + toMm(survey.skirt));
}

interface Asked {
  readonly job: StairJob;
  readonly risers: number;
  readonly run: number;
}

/** Collects what does not agree, allowing for each measurement what rounding can do to it. */
class Bench {
  readonly faults: CheckFault[] = [];
  /** How far the rounded marks can turn the whole board, radians. */
  readonly turn: number;

  constructor(
    private readonly step: number,
    private readonly ripStep: number,
    built: Rebuilt,
  ) {
    const first = built.tips[0];
    this.turn = (SWUNG * step) / Math.max(step, built.end.x - (first?.x ?? 0));
  }

  /** @param arm distance across which the board's turn moves what is measured */
  same(what: string, step: number, expected: number, found: number, arm = 0): void {
    this.near(what, step, expected, found, this.slack(arm));
  }

  near(what: string, step: number, expected: number, found: number, slack: number): void {
    if (!atMost(Math.abs(found - expected), slack)) this.faults.push({ what, step, expected, found });
  }

  /** A rip may be short by its own rounding, never long. */
  rip(what: string, step: number, room: number, found: number, arm = 0): void {
    const slack = this.slack(arm);
    const fits = atMost(found, room + slack) && atLeast(found, room - slack - this.ripStep);
    if (!fits) this.faults.push({ what, step, expected: room, found });
  }

  within(what: string, least: number, found: number, arm = 0): void {
    if (!atLeast(found, least - this.slack(arm))) this.faults.push({ what, step: 0, expected: least, found });
  }

  /** @param places how many times a point's own place counts */
  slack(arm: number, places = 1): number {
    return PLACED * this.step * places + Math.abs(arm) * this.turn;
  }
}

/** Tread tops stacked from the finished lower floor to the finished upper one. */
function measureSteps(bench: Bench, asked: Asked, sheet: PrintedSheet, built: Rebuilt): void {
  const unitRise = built.site.upperFinished / asked.risers;
  const tops = [0, ...built.tips.map((tip) => tip.y + sheet.treadThickness)];
  if (isHung(asked.job.stringer.top)) tops.push(built.site.upperFinished);
  bench.same('risers', 0, asked.risers, tops.length - 1);
  for (let i = 1; i < tops.length; i += 1) {
    bench.same('riser', i, unitRise, (tops[i] as number) - (tops[i - 1] as number), asked.run);
  }
  bench.same('top', asked.risers, built.site.upperFinished, tops.at(-1) as number, asked.run);
  built.tips.forEach((tip, i) => {
    const behind = built.corners[i] ?? built.end;
    bench.same('level', i + 1, tip.y, behind.y, asked.run);
    const next = built.tips[i + 1];
    if (next === undefined) return;
    bench.same('run', i + 1, asked.run, next.x - tip.x, unitRise);
    bench.same('plumb', i + 1, next.x, behind.x, unitRise);
  });
}

/**
 * Each mark against its neighbour, along the board: a single one that is off can hide in the
 * elevation, where its error is shared between height and depth. Two marks, half a step each.
 */
function measureMarks(bench: Bench, asked: Asked, sheet: PrintedSheet, built: Rebuilt): void {
  const between = Math.hypot(built.site.upperFinished / asked.risers, asked.run);
  sheet.tips.forEach((tip, i) => {
    const next = sheet.tips[i + 1];
    if (next !== undefined) bench.near('tip mark', i + 2, between, next - tip, sheet.step);
    const corner = sheet.corners[i];
    if (corner !== undefined) bench.near('corner mark', i + 1, asked.run ** 2 / between, corner - tip, sheet.step);
  });
}

/** Each tread from its nosing back to what stands behind it. */
function measureTreads(bench: Bench, asked: Asked, sheet: PrintedSheet, built: Rebuilt): void {
  const { job } = asked;
  const riser = toMm(job.steps.riserThickness);
  const nosing = toMm(job.steps.nosing);
  const under = job.steps.joint === 'riser-on-tread' ? riser : 0;
  built.tips.forEach((tip, i) => {
    const front = tip.x - riser - nosing;
    const next = built.tips[i + 1];
    const rise = (next ?? built.end).y - tip.y;
    if (next !== undefined) bench.rip('tread', i + 1, next.x - riser + under - front, sheet.treadRip, rise);
    else bench.rip('tread', i + 1, topTreadBack(job, built) - front, sheet.lastTreadRip, rise);
  });
}

/** The top tread stops at the hanger, at the header, or at (or under) the last riser board. */
function topTreadBack(job: StairJob, built: Rebuilt): number {
  const { top } = job.stringer;
  if (top === 'hanger-is-riser' || !isHung(top) || job.steps.joint === 'riser-on-tread') return built.end.x;
  return built.end.x - toMm(job.steps.riserThickness);
}

/** Each riser board between what it stands on and the tread it carries. */
function measureRisers(bench: Bench, job: StairJob, sheet: PrintedSheet, built: Rebuilt): void {
  const lift = job.steps.joint === 'riser-on-tread' ? sheet.treadThickness : 0;
  const open = sign(job.steps.riserThickness) === 0;
  bench.same('riser boards', 0, open ? 0 : built.tips.length, sheet.riserRips.length);
  built.tips.forEach((tip, i) => {
    const below = built.tips[i - 1];
    const rip = sheet.riserRips[i];
    const foot = below === undefined ? lowestSeat(job, built) : below.y + lift;
    const run = below === undefined ? 0 : tip.x - below.x;
    if (rip !== undefined) bench.rip('riser board', i + 1, tip.y - foot, rip, run);
  });
  const underNosing = built.site.upperFinished - toMm(job.steps.upperNosingThickness);
  if (sheet.topRiserRip !== null) bench.rip('top riser board', 0, underNosing - built.end.y - lift, sheet.topRiserRip);
  if (sheet.hangerRip === null) return;
  // The plumb cut is as long as the board is deep over the cosine of the swing, and feels its turn by the tangent.
  const plumb = built.end.y - built.endBottom.y;
  bench.rip('hanger', 0, underNosing - built.endBottom.y, sheet.hangerRip, plumb * Math.tan(built.swing));
}

/** The lowest place under riser 1's board, which is scribed to the floor between the skirts. */
function lowestSeat(job: StairJob, { site }: Rebuilt): number {
  const between = Math.max(0, betweenSkirts(job));
  const corners = [0, toMm(job.steps.riserThickness)].flatMap((x) =>
    [-between / 2, between / 2].map((y) => site.seatAt(x, y)),
  );
  return Math.min(...corners);
}

function measureFloorMarks(bench: Bench, job: StairJob, sheet: PrintedSheet, built: Rebuilt): void {
  const hanger = toMm(job.stringer.hanger);
  const header = built.end.x + hanger;
  const climb = built.end.y - (built.tips[0]?.y ?? 0);
  bench.same('toe mark', 0, header - toMm(job.steps.riserThickness), sheet.toeMark, climb);
  bench.same('riser mark', 0, header, sheet.riserMark, climb);
  bench.same('nosing mark', 0, header + toMm(job.steps.nosing), sheet.nosingMark, climb);
  if (hasHangerBoard(job.stringer.top)) bench.within('hanger thickness', 0, hanger);
}

/**
 * What the seat rises with the floor. Where floor and board are nearly as steep, they meet at a small angle,
 * and what rounding does to the toe and to the swing is that much larger along the floor.
 */
function measureSeat(bench: Bench, sheet: PrintedSheet, { seat, swing, site }: Rebuilt): void {
  const slope = Math.atan(site.along);
  const apart = swing - slope;
  const steep = Math.abs(Math.sin(slope));
  const slack = bench.slack(seat * steep * (1 + 1 / Math.tan(apart)), 1 + (steep * Math.cos(swing)) / Math.sin(apart));
  bench.near('seat rise', 0, seat * Math.sin(slope), sheet.seatRise, slack);
}

/** The whole piece lies inside its board, with a seat, a throat and a plumb end left. */
function measureBoard(bench: Bench, job: StairJob, sheet: PrintedSheet, built: Rebuilt, foot?: FootOnSheet): void {
  const trim = toMm(job.stringer.trim);
  const depth = toMm(job.stringer.stockDepth);
  const { toeOnBoard } = built;
  const { toeHeight, diagonal } = foot ?? sheet;
  bench.same(
    'diagonal',
    foot?.stringer ?? 0,
    diagonal,
    Math.hypot(sheet.end - toeOnBoard.x, sheet.endDepth - toeOnBoard.y),
    toeHeight,
  );
  // The board's end is the tallest toe's; the others are cut shorter.
  if (foot === undefined || toeHeight >= sheet.toeHeight) {
    bench.same('trim', 0, trim, toeOnBoard.x, toeHeight);
    measureSeat(bench, sheet, built);
  } else bench.within('trim', trim, toeOnBoard.x, toeHeight);
  bench.within('seat', 0, built.seat);
  bench.within('throat', 0, depth - sheet.gaugeLine);
  bench.within('plumb end', 0, built.end.y - built.endBottom.y);
  if (sheet.stockLength !== null) bench.within('stock length', sheet.end + trim, sheet.stockLength);
}
