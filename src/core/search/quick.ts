/**
 * The figures of a candidate in floats, by the closed forms of layout/ and stringer/, a hundred times faster
 * than the layout itself. They only narrow: what they leave near a limit is decided on the layout, and what
 * is shown was planned. Frame: the elevation of layout/flight; millimetres.
 */

import type { StringerTop } from '../job/jobText';
import { isHung, type StairJob } from '../job/stairJob';
import { riseAtReading, slopeAcross, slopeAlong } from '../layout/slope';
import { stackWidth } from '../layout/width';
import { sign, toMm } from '../units/exact';

/** What does not change with risers, run and board. */
export interface Fixed {
  readonly top: StringerTop;
  readonly hung: boolean;
  readonly hanger: number;
  readonly topTreadRun: number | null;
  /** Total rise where the tape stood, and how far out from the header that was; null: where the flight lands. */
  readonly riseAtReading: number;
  readonly readFrom: number | null;
  /** What the lower floor rises toward the header, for each length. */
  readonly along: number;
  /** How much taller riser 1 is at the lower edge, and how much lower the floor is under the outermost stringer. */
  readonly aside: number;
  readonly footAside: number;
  readonly nosing: number;
  readonly tread: number;
  readonly riser: number;
  readonly seatHeight: number;
  readonly tipInset: number;
  readonly trim: number;
  readonly kicker: { readonly width: number; readonly height: number } | null;
  readonly opening: number | null;
  readonly lining: number;
  readonly floorDepth: number | null;
  readonly headerDepth: number | null;
  readonly obstacles: readonly QuickObstacle[];
  /** From the header's top up to the finished floor. */
  readonly overHeader: number;
}

/** Out from the header's face, and heights over the finished lower floor. */
export interface QuickObstacle {
  readonly near: number;
  readonly far: number;
  readonly nearY: number;
  readonly farY: number;
}

export interface Quick {
  readonly fixed: Fixed;
  readonly risers: number;
  readonly treads: number;
  readonly run: number;
  readonly depth: number;
  readonly unitRise: number;
  readonly stepLength: number;
  readonly headerX: number;
  readonly endX: number;
  readonly throat: number;
  readonly totalRise: number;
  /** Of the tallest toe and of the shortest; one and the same on a floor that is level across. */
  readonly firstRiserCut: number;
  readonly shortestCut: number;
  /** Of the tallest toe. */
  readonly seat: number;
  /** Where the longest heel ends. */
  readonly heelX: number;
  readonly plumbCut: number;
  readonly boardLength: number;
  readonly contact: number | null;
  /** Height of the nosing line under the opening's edge; null without an opening. */
  readonly lineAtEdge: number | null;
  readonly headroom: number | null;
}

/** @param stair with the top that is asked for, and the hanger that goes with it */
export function fixedOf({ survey, steps, stringer, units }: StairJob): Fixed {
  const width = stackWidth({ survey, stringer, units });
  const across = Math.abs(toMm(slopeAcross(survey)));
  const stack = width === 'too-narrow' ? null : width;
  return {
    top: stringer.top,
    hung: isHung(stringer.top),
    hanger: toMm(stringer.hanger),
    topTreadRun: stringer.topTreadRun === null ? null : toMm(stringer.topTreadRun),
    riseAtReading: toMm(riseAtReading(survey)),
    readFrom: survey.readingFromHeader === null ? null : toMm(survey.readingFromHeader),
    along: toMm(slopeAlong(survey)),
    aside: stack === null ? 0 : (across * stack.betweenSkirts) / 2,
    footAside: stack === null ? 0 : (across * stack.spacing * (stack.stringers - 1)) / 2,
    nosing: toMm(steps.nosing),
    tread: toMm(steps.treadThickness.amount),
    riser: toMm(steps.riserThickness),
    seatHeight: survey.lowerLaid === 'after-stairs' ? -toMm(survey.lowerToAdd.amount) : 0,
    tipInset: toMm(stringer.tipInset),
    trim: toMm(stringer.trim),
    kicker: stringer.kicker && { width: toMm(stringer.kicker.width), height: toMm(stringer.kicker.height) },
    opening: survey.openingFraming === null ? null : toMm(survey.openingFraming),
    lining: toMm(survey.headerLining),
    floorDepth: survey.floorDepth === null ? null : toMm(survey.floorDepth),
    headerDepth: survey.headerDepth === null ? null : toMm(survey.headerDepth),
    obstacles: survey.obstacles.map(({ near, far, height, heightFar }) => ({
      near: toMm(near),
      far: toMm(far),
      nearY: toMm(height) - toMm(survey.lowerToAdd.amount),
      farY: toMm(heightFar) - toMm(survey.lowerToAdd.amount),
    })),
    overHeader: toMm(survey.upperToAdd.amount) + toMm(survey.upperSubfloor),
  };
}

export function quickFigures(fixed: Fixed, risers: number, run: number, depth: number): Quick {
  const { hung, tread, riser } = fixed;
  const behindRiser = fixed.top === 'hanger-is-riser' ? 0 : riser;
  const topTread = fixed.topTreadRun ?? run;
  const endX = (risers - 1) * run + behindRiser + (hung ? 0 : topTread);
  const headerX = endX + fixed.hanger;
  const totalRise = fixed.riseAtReading + (fixed.readFrom === null ? 0 : fixed.along * (headerX - fixed.readFrom));
  const unitRise = totalRise / risers;
  const stepLength = Math.sqrt(unitRise * unitRise + run * run);
  const [sin, cos] = [unitRise / stepLength, run / stepLength];
  const under = depth - fixed.tipInset;
  const cut = unitRise - tread - fixed.seatHeight - fixed.along * riser;
  const [firstRiserCut, shortestCut] = [cut + fixed.footAside, cut - fixed.footAside];
  const reach = (toe: number) => (under / sin - (toe * run) / unitRise) / (1 - (fixed.along * run) / unitRise);
  const topY = totalRise - (hung ? unitRise + tread : tread);
  const plumbCut = under / cos - (unitRise / run) * (hung ? run + behindRiser - riser : topTread);
  const end = (endX - riser) * cos + (topY - unitRise + tread) * sin;
  const edge = fixed.opening === null ? null : headerX - fixed.opening + fixed.lining;
  const lineAtEdge = edge === null ? null : unitRise + (unitRise / run) * (edge + fixed.nosing);
  return {
    fixed,
    risers,
    treads: hung ? risers - 1 : risers,
    run,
    depth,
    unitRise,
    stepLength,
    headerX,
    endX,
    throat: under - unitRise * cos,
    totalRise,
    firstRiserCut,
    shortestCut,
    seat: reach(firstRiserCut) * Math.hypot(1, fixed.along),
    heelX: riser + reach(shortestCut),
    plumbCut,
    boardLength: end + firstRiserCut * sin,
    contact: contactOf(fixed, totalRise - fixed.overHeader, topY, topY - plumbCut),
    lineAtEdge,
    headroom:
      lineAtEdge === null || fixed.floorDepth === null ? null : totalRise - fixed.floorDepth - Math.max(0, lineAtEdge),
  };
}

function contactOf({ headerDepth }: Fixed, headerTop: number, topY: number, endBottom: number): number | null {
  return headerDepth === null ? null : Math.min(topY, headerTop) - Math.max(endBottom, headerTop - headerDepth);
}

/**
 * The least by which the candidate stays clear of leaving no geometry, against every refusal of layout/ and
 * stringer/: near zero the layout itself has to say.
 */
export function shapeMargin(quick: Quick): number {
  const { fixed, run, unitRise, seat, plumbCut, shortestCut, throat } = quick;
  // Only a board may stand between the stringer and its header; what was typed for one is refused without it.
  if (fixed.top === 'header-behind-riser' && fixed.hanger !== 0) return -fixed.hanger;
  let least = Math.min(run - 2 * fixed.nosing, run - 4 * fixed.riser, quick.depth - fixed.tipInset);
  least = Math.min(least, shortestCut, throat, seat, plumbCut, quick.endX - quick.heelX, quick.totalRise);
  // The floor is less steep than the stair, and not square to it the other way; it stays under the first tread.
  const { along, aside } = fixed;
  if (along !== 0) least = Math.min(least, unitRise - along * run, run + along * unitRise);
  if (aside !== 0) least = Math.min(least, unitRise - aside);
  if (fixed.topTreadRun !== null) least = Math.min(least, fixed.topTreadRun, run - fixed.topTreadRun);
  if (fixed.kicker === null) return least;
  return Math.min(least, shortestCut - fixed.kicker.height, seat - fixed.kicker.width);
}

/** Clearance under one obstacle, as layout/obstacles has it: at its ends, and over the landing nosing between. */
export function clearUnder({ fixed, headerX, risers, run, unitRise, totalRise }: Quick, at: number): number {
  const { near, far, nearY, farY } = fixed.obstacles[at] as QuickObstacle;
  const clearAt = (x: number, under: number) =>
    under - Math.min(totalRise, Math.max(0, unitRise + (unitRise / run) * (x + fixed.nosing)));
  const [nearX, farX] = [headerX - near, headerX - far];
  const least = Math.min(clearAt(nearX, nearY), clearAt(farX, farY));
  const landing = (risers - 1) * run - fixed.nosing;
  if (landing <= farX || landing >= nearX) return least;
  return Math.min(least, clearAt(landing, farY + ((landing - farX) / (nearX - farX)) * (nearY - farY)));
}

/** Opening framed for a headroom, as layout/opening has it; null where no opening gives it. */
export function openingFor(quick: Quick, headroom: number): number | null {
  const { fixed, run, unitRise, risers, headerX } = quick;
  if (fixed.floorDepth === null || quick.totalRise - fixed.floorDepth < headroom) return null;
  const finished = ((headroom + fixed.floorDepth) * run) / unitRise + fixed.nosing;
  return finished + headerX - (risers - 1) * run + fixed.lining;
}

/** True where the tread is seen through from riser to riser. */
export function hasOpenRisers(job: StairJob): boolean {
  return sign(job.steps.riserThickness) === 0;
}

/** True where the run moves the total rise: the floor falls from where the tape stood to where the flight lands. */
export function riseHangsOnRun({ survey }: StairJob): boolean {
  return survey.readingFromHeader !== null && sign(survey.fallAlong.fall) !== 0;
}
