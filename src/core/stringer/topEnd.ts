/**
 * The top end: where the plumb end stands, how long the last level cut is, and how much of the
 * plumb cut really bears on the header. Frame: the elevation of layout/flight.
 *
 * Three ways hang the stringer one riser below the floor; they differ in whether its end stops
 * behind the riser board (a = riser thickness) or at the board that is the riser (a = 0), and
 * in what stands between it and the header. The fourth carries a tread level with the floor.
 */
import { isHung, type StairJob } from '../job/stairJob';
import type { Flight } from '../layout/flight';
import { toMm } from '../units/exact';

export interface TopEnd {
  /** x of the plumb end. */
  readonly endX: number;
  /** x of the header's face. */
  readonly headerX: number;
  /** Height of the last level cut. */
  readonly topY: number;
  readonly lastLevelCut: number;
  /** P: length of the plumb cut, down to the board's lower edge. */
  readonly plumbCut: number;
  /** Down from the finished upper floor to the last level cut, and from the bare subfloor. */
  readonly topBelowFinish: number;
  readonly topBelowSubfloor: number;
  readonly hanger: number;
  readonly hung: boolean;
}

/** @param depth board depth left under the tips: stock depth − tip inset */
export function cutTopEnd(flight: Flight, stair: StairJob, depth: number): TopEnd {
  const { top } = stair.stringer;
  const hung = isHung(top);
  const hanger = toMm(stair.stringer.hanger);
  const { risers, unitRise, run, treadThickness, riserThickness } = flight;
  const behindRiser = top === 'hanger-is-riser' ? 0 : riserThickness;
  const topTreadRun = stair.stringer.topTreadRun === null ? run : toMm(stair.stringer.topTreadRun);
  const endX = (risers - 1) * run + behindRiser + (hung ? 0 : topTreadRun);
  const topBelowFinish = hung ? unitRise + treadThickness : treadThickness;
  const lastLevelCut = hung ? run + behindRiser - riserThickness : topTreadRun;
  return {
    endX,
    headerX: endX + hanger,
    topY: flight.totalRise - topBelowFinish,
    lastLevelCut,
    // From the last level cut down to the lower edge, which has climbed by (R/G) × that cut since the last tip.
    plumbCut: depth / flight.cos - (unitRise / run) * lastLevelCut,
    topBelowFinish,
    topBelowSubfloor: topBelowFinish - flight.upperToAdd,
    hanger,
    hung,
  };
}

/** How the plumb cut meets the header behind it. */
export interface HeaderBearing {
  /** Length of plumb cut that touches the header; negative is the gap between them; null without a header depth. */
  readonly contact: number | null;
  /** Depth of header or hanger, from the header's top, on which the whole plumb cut bears. */
  readonly depthNeeded: number;
}

export function bearOnHeader(flight: Flight, top: TopEnd, headerDepth: number | null): HeaderBearing {
  const headerTop = flight.totalRise - flight.upperToAdd - flight.upperSubfloor;
  const endBottom = top.topY - top.plumbCut;
  const contact =
    headerDepth === null ? null : Math.min(top.topY, headerTop) - Math.max(endBottom, headerTop - headerDepth);
  return { contact, depthNeeded: headerTop - endBottom };
}
