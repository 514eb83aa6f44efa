/**
 * The numbers that leave the program for a board, a saw and a floor, and nothing else: each
 * rounded once from its exact value. Tables, drawings and sheets show these, and `checkLayout`
 * rebuilds the stair from these alone.
 */
import type { StairLayout } from '../layout/layoutStair';
import { differingFeet } from '../stringer/stringer';
import { inchMm, toMm } from '../units/exact';
import { type Rounding, roundTo } from '../units/rounding';

/** What is printed of one stringer where the floor falls across: where it stands, and its own foot. */
export interface FootOnSheet {
  /** Counted from the left when climbing, from 1. */
  readonly stringer: number;
  /** Its centre, from the face of the framing on the left. */
  readonly fromLeft: number;
  readonly toeHeight: number;
  readonly diagonal: number;
}

export interface PrintedSheet {
  /** Millimetres that marks are rounded to; 0 for the unrounded sheet. */
  readonly step: number;
  /** Down-rounding of saw settings; 0 for the unrounded sheet. */
  readonly ripStep: number;
  /** Tips, from the board's end, along its crown edge. */
  readonly tips: readonly number[];
  /** Inner corners, from the board's end, along the gauge line. */
  readonly corners: readonly number[];
  readonly gaugeLine: number;
  /** The top end of the last level cut: from the board's end, and square in from the edge. */
  readonly end: number;
  readonly endDepth: number;
  /** The master's, where the feet differ. */
  readonly toeHeight: number;
  /** How much higher the seat's back corner is than its toe, on a floor that rises that way. */
  readonly seatRise: number;
  /** Toe to the top end of the last level cut, straight across; the master's, where the feet differ. */
  readonly diagonal: number;
  /** From left to right; empty where one stringer is as another. */
  readonly feet: readonly FootOnSheet[];
  /** Down from the upper subfloor as it is today. */
  readonly headerMark: number;
  /** Out from the header's face to the stringer's toe, riser 1's finished face, nosing 1. */
  readonly toeMark: number;
  readonly riserMark: number;
  readonly nosingMark: number;
  readonly treadThickness: number;
  readonly treadRip: number;
  readonly lastTreadRip: number;
  readonly riserRips: readonly number[];
  readonly topRiserRip: number | null;
  readonly hangerRip: number | null;
  readonly stockLength: number | null;
}

/** Saw fences: rips are set to the lower of these. Common practice, no source. */
const RIP_STEP = { imperial: inchMm(1 / 16), metric: 1 };

/** The sheet as printed: marks to the job's own step, rips down. */
export function printedSheet(layout: StairLayout): PrintedSheet {
  return makeSheet(layout, toMm(layout.job.markStep), RIP_STEP[layout.job.units]);
}

/** The same sheet without rounding, so that the check has no tolerance to hide in. */
export function exactSheet(layout: StairLayout): PrintedSheet {
  return makeSheet(layout, 0, 0);
}

function makeSheet(layout: StairLayout, step: number, ripStep: number): PrintedSheet {
  const { stringer, rips, flight } = layout;
  const mark = (value: number) => onGrid(value, step, 'nearest');
  const rip = (value: number) => onGrid(value, ripStep, 'down');
  const { headerX } = stringer.top;
  const { widthFraming } = layout.job.survey;
  const middle = widthFraming === null ? 0 : toMm(widthFraming) / 2;
  return {
    step,
    ripStep,
    tips: stringer.marks.map((along) => mark(stringer.firstMark + along)),
    corners: stringer.cornerMarks.map((along) => mark(stringer.firstMark + along)),
    gaugeLine: mark(stringer.gaugeLine),
    end: mark(stringer.firstMark + stringer.endMark),
    endDepth: mark(stringer.tipInset + stringer.top.lastLevelCut * flight.sin),
    toeHeight: mark(stringer.heel.firstRiserCut),
    seatRise: mark(stringer.heel.heelY - stringer.heel.toeY),
    diagonal: mark(stringer.diagonal),
    feet: differingFeet(stringer).map((foot) => ({
      stringer: foot.stringer,
      fromLeft: mark(middle + foot.across),
      toeHeight: mark(foot.heel.firstRiserCut),
      diagonal: mark(foot.diagonal),
    })),
    headerMark: mark(stringer.top.topBelowSubfloor),
    toeMark: mark(headerX - flight.riserThickness),
    riserMark: mark(headerX),
    nosingMark: mark(headerX + flight.nosing),
    treadThickness: flight.treadThickness,
    treadRip: rip(rips.treadDepth),
    lastTreadRip: rip(rips.lastTreadDepth),
    riserRips: rips.riserHeights.map(rip),
    topRiserRip: rips.topRiserBoard === null ? null : rip(rips.topRiserBoard),
    hangerRip: rips.hangerHeight === null ? null : rip(rips.hangerHeight),
    stockLength: stringer.stockLength,
  };
}

/** A step of 0 stands for no rounding at all. */
export function onGrid(value: number, step: number, rounding: Rounding): number {
  return step === 0 ? value : roundTo(value, step, rounding);
}
