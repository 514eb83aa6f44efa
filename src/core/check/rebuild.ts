/**
 * Builds the stair a second time, the way a carpenter does: from the sheet and a tape.
 *
 * Nothing of the layout is used but its printed numbers, and nothing of the printed numbers but
 * what one can do with them. The points are marked on a board; the board is stood with its toe on
 * the floor that will be there, at its own place across, and swung until its top meets the header mark. That swing, and not
 * the pitch that the layout computed, gives every height and every run that is then measured.
 *
 * Frames: the board has u along the crown edge from its end and v square in; the elevation has
 * x from the finished face of riser 1 and y from the finished lower floor. Millimetres.
 */
import { type Point, point } from '../geometry/point';
import type { StairJob } from '../job/stairJob';
import { toMm, ZERO } from '../units/exact';
import type { FootOnSheet, PrintedSheet } from './printedSheet';

export interface Site {
  /** Height of what the stringer stands on, at x from riser 1's finished face and y right of the centre line. */
  readonly seatAt: (x: number, y: number) => number;
  /** Rise of that floor toward the header, for each length. */
  readonly along: number;
  readonly upperToday: number;
  readonly upperFinished: number;
}

export interface Rebuilt {
  readonly site: Site;
  /** Angle of the crown edge over level, radians, as the board hangs. */
  readonly swing: number;
  /** Tips and inner corners where they came to stand in the elevation. */
  readonly tips: readonly Point[];
  readonly corners: readonly Point[];
  readonly end: Point;
  /** The plumb end's lower corner. */
  readonly endBottom: Point;
  /** Board coordinates of the toe's foot, and how far along the seat the lower edge is met. */
  readonly toeOnBoard: Point;
  readonly seat: number;
}

/**
 * Where the floors are and will be, straight from the survey.
 * @param riserMark as printed: how far out from the header riser 1 comes to stand on the sloping floor
 */
export function siteOf(job: StairJob, riserMark: number): Site {
  const { survey } = job;
  const along = toMm(survey.fallAlong.fall) / toMm(survey.fallAlong.over);
  const across = toMm(survey.fallAcross.fall) / toMm(survey.fallAcross.over);
  const stoodAt = survey.readingFromHeader === null ? riserMark : toMm(survey.readingFromHeader);
  const lowerToday = -toMm(survey.lowerToAdd.amount);
  // Farther out than the tape stood, the floor lies lower by its fall.
  const lower = toMm(survey.footBelowReading) + (riserMark - stoodAt) * along;
  const upperToday = lowerToday + lower + toMm(survey.rise);
  const seat = survey.lowerLaid === 'before-stairs' ? 0 : lowerToday;
  return {
    seatAt: (x, y) => seat + x * along - y * across,
    along,
    upperToday,
    upperFinished: upperToday + toMm(survey.upperToAdd.amount),
  };
}

/** @param foot which stringer is stood up, and with it where on the floor; left out where all are alike */
export function rebuild(job: StairJob, sheet: PrintedSheet, foot?: FootOnSheet): Rebuilt {
  const site = siteOf(job, sheet.riserMark);
  const across = foot === undefined ? 0 : foot.fromLeft - toMm(job.survey.widthFraming ?? ZERO) / 2;
  const { toeHeight } = foot ?? sheet;
  const inset = toMm(job.stringer.tipInset);
  const depth = toMm(job.stringer.stockDepth);
  const first = point(sheet.tips[0] as number, inset);
  const toeX = toMm(job.steps.riserThickness);
  const firstY = site.seatAt(toeX, across) + toeHeight;
  const endY = site.upperToday - sheet.headerMark;
  const swing = swingOf(point(sheet.end - first.x, sheet.endDepth - inset), endY - firstY);
  const sin = Math.sin(swing);
  const cos = Math.cos(swing);
  const place = (u: number, v: number): Point =>
    point(toeX + (u - first.x) * cos + (v - inset) * sin, firstY + (u - first.x) * sin - (v - inset) * cos);
  const toeOnBoard = point(first.x - toeHeight * sin, inset + toeHeight * cos);
  const plumb = (depth - sheet.endDepth) / cos;
  return {
    site,
    swing,
    tips: sheet.tips.map((u) => place(u, inset)),
    corners: sheet.corners.map((u) => place(u, sheet.gaugeLine)),
    end: place(sheet.end, sheet.endDepth),
    endBottom: place(sheet.end - plumb * sin, depth),
    toeOnBoard,
    // The floor meets the edge at the angle by which the board is steeper than it.
    seat: (depth - toeOnBoard.y) / Math.sin(swing - Math.atan(site.along)),
  };
}

/**
 * The angle at which a line fixed on the board, (along, in) from the first tip, climbs by `climb`:
 * along · sin − in · cos = climb.
 */
function swingOf(line: Point, climb: number): number {
  const reach = Math.hypot(line.x, line.y);
  return Math.asin(Math.max(-1, Math.min(1, climb / reach))) + Math.atan2(line.y, line.x);
}
