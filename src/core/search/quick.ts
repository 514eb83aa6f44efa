/**
 * The figures of a candidate in floats, by the closed forms of layout/ and stringer/, a hundred times faster
 * than the layout itself. They only narrow: what they leave near a limit is decided on the layout, and what
 * is shown was planned. Frame: the elevation of layout/flight; millimetres.
 */

import type { StringerTop } from '../job/jobText';
import { isHung, type StairJob } from '../job/stairJob';
import { sumRise } from '../layout/flight';
import { sign, toMm } from '../units/exact';

/** What does not change with risers, run and board. */
export interface Fixed {
  readonly top: StringerTop;
  readonly hung: boolean;
  readonly hanger: number;
  readonly topTreadRun: number | null;
  readonly totalRise: number;
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
  /** Height of the header's top. */
  readonly headerTop: number;
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
  readonly firstRiserCut: number;
  readonly seat: number;
  readonly plumbCut: number;
  readonly boardLength: number;
  readonly contact: number | null;
  /** Height of the nosing line under the opening's edge; null without an opening. */
  readonly lineAtEdge: number | null;
  readonly headroom: number | null;
}

/** @param stair with the top that is asked for, and the hanger that goes with it */
export function fixedOf({ survey, steps, stringer }: StairJob): Fixed {
  const totalRise = toMm(sumRise(survey));
  return {
    top: stringer.top,
    hung: isHung(stringer.top),
    hanger: toMm(stringer.hanger),
    topTreadRun: stringer.topTreadRun === null ? null : toMm(stringer.topTreadRun),
    totalRise,
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
    headerTop: totalRise - toMm(survey.upperToAdd.amount) - toMm(survey.upperSubfloor),
  };
}

export function quickFigures(fixed: Fixed, risers: number, run: number, depth: number): Quick {
  const { totalRise, hung, tread, riser } = fixed;
  const unitRise = totalRise / risers;
  const stepLength = Math.sqrt(unitRise * unitRise + run * run);
  const [sin, cos] = [unitRise / stepLength, run / stepLength];
  const behindRiser = fixed.top === 'hanger-is-riser' ? 0 : riser;
  const topTread = fixed.topTreadRun ?? run;
  const endX = (risers - 1) * run + behindRiser + (hung ? 0 : topTread);
  const headerX = endX + fixed.hanger;
  const under = depth - fixed.tipInset;
  const firstRiserCut = unitRise - tread - fixed.seatHeight;
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
    firstRiserCut,
    seat: under / sin - (firstRiserCut * run) / unitRise,
    plumbCut,
    boardLength: end + firstRiserCut * sin,
    contact: contactOf(fixed, topY, topY - plumbCut),
    lineAtEdge,
    headroom:
      lineAtEdge === null || fixed.floorDepth === null ? null : totalRise - fixed.floorDepth - Math.max(0, lineAtEdge),
  };
}

function contactOf({ headerDepth, headerTop }: Fixed, topY: number, endBottom: number): number | null {
  return headerDepth === null ? null : Math.min(topY, headerTop) - Math.max(endBottom, headerTop - headerDepth);
}

/**
 * The least by which the candidate stays clear of leaving no geometry, against every refusal of layout/ and
 * stringer/: near zero the layout itself has to say.
 */
export function shapeMargin(quick: Quick): number {
  const { fixed, run, seat, plumbCut, firstRiserCut, throat } = quick;
  // Only a board may stand between the stringer and its header; what was typed for one is refused without it.
  if (fixed.top === 'header-behind-riser' && fixed.hanger !== 0) return -fixed.hanger;
  let least = Math.min(run - 2 * fixed.nosing, run - 4 * fixed.riser, quick.depth - fixed.tipInset);
  least = Math.min(least, firstRiserCut, throat, seat, plumbCut, quick.endX - fixed.riser - seat);
  if (fixed.topTreadRun !== null) least = Math.min(least, fixed.topTreadRun, run - fixed.topTreadRun);
  if (fixed.kicker === null) return least;
  return Math.min(least, firstRiserCut - fixed.kicker.height, seat - fixed.kicker.width);
}

/** Opening framed for a headroom, as layout/opening has it; null where no opening gives it. */
export function openingFor(quick: Quick, headroom: number): number | null {
  const { fixed, run, unitRise, risers, headerX } = quick;
  if (fixed.floorDepth === null || fixed.totalRise - fixed.floorDepth < headroom) return null;
  const finished = ((headroom + fixed.floorDepth) * run) / unitRise + fixed.nosing;
  return finished + headerX - (risers - 1) * run + fixed.lining;
}

/** True where the tread is seen through from riser to riser. */
export function hasOpenRisers(job: StairJob): boolean {
  return sign(job.steps.riserThickness) === 0;
}
