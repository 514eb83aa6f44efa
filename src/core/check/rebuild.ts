/**
 * Builds the stair a second time, the way a carpenter does: from the sheet and a tape.
 *
 * Nothing of the layout is used but its printed numbers, and nothing of the printed numbers but
 * what one can do with them. The points are marked on a board; the board is stood with its toe on
 * the floor that will be there and swung until its top meets the header mark. That swing, and not
 * the pitch that the layout computed, gives every height and every run that is then measured.
 *
 * Frames: the board has u along the crown edge from its end and v square in; the elevation has
 * x from the finished face of riser 1 and y from the finished lower floor. Millimetres.
 */
import { type Point, point } from '../geometry/point';
import type { StairJob } from '../job/stairJob';
import { toMm } from '../units/exact';
import type { PrintedSheet } from './printedSheet';

export interface Site {
  readonly seatY: number;
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

/** Where the floors are and will be, straight from the survey. */
export function siteOf(job: StairJob): Site {
  const { survey } = job;
  const lowerToday = -toMm(survey.lowerToAdd.amount);
  const upperToday = lowerToday + toMm(survey.footBelowReading) + toMm(survey.rise);
  return {
    seatY: survey.lowerLaid === 'before-stairs' ? 0 : lowerToday,
    upperToday,
    upperFinished: upperToday + toMm(survey.upperToAdd.amount),
  };
}

export function rebuild(job: StairJob, sheet: PrintedSheet): Rebuilt {
  const site = siteOf(job);
  const inset = toMm(job.stringer.tipInset);
  const depth = toMm(job.stringer.stockDepth);
  const first = point(sheet.tips[0] as number, inset);
  const firstY = site.seatY + sheet.toeHeight;
  const endY = site.upperToday - sheet.headerMark;
  const swing = swingOf(point(sheet.end - first.x, sheet.endDepth - inset), endY - firstY);
  const sin = Math.sin(swing);
  const cos = Math.cos(swing);
  const toeX = toMm(job.steps.riserThickness);
  const place = (u: number, v: number): Point =>
    point(toeX + (u - first.x) * cos + (v - inset) * sin, firstY + (u - first.x) * sin - (v - inset) * cos);
  const toeOnBoard = point(first.x - sheet.toeHeight * sin, inset + sheet.toeHeight * cos);
  const plumb = (depth - sheet.endDepth) / cos;
  return {
    site,
    swing,
    tips: sheet.tips.map((u) => place(u, inset)),
    corners: sheet.corners.map((u) => place(u, sheet.gaugeLine)),
    end: place(sheet.end, sheet.endDepth),
    endBottom: place(sheet.end - plumb * sin, depth),
    toeOnBoard,
    seat: (depth - toeOnBoard.y) / sin,
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
