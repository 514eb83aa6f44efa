/**
 * What is ripped for the flight: tread depths, riser heights, the boards at the top. Exact, in
 * millimetres; a page rounds rips down, so that the stringer and never the riser carries the tread.
 * Frame of the sums: layout/flight.
 */
import { hasHangerBoard, isHung, type StairJob } from '../job/stairJob';
import { type Flight, floorHeight } from '../layout/flight';
import type { WidthStack } from '../layout/width';
import type { Stringer } from '../stringer/stringer';
import { toMm } from '../units/exact';

export interface Rips {
  readonly treadDepth: number;
  /** The tread at the top, where it differs. */
  readonly lastTreadDepth: number;
  /** Riser boards from the first up; the top one apart. Empty for open risers. */
  readonly riserHeights: readonly number[];
  /** Clear opening between treads of open risers, else null. */
  readonly riserOpening: number | null;
  /** Board between the top tread and the landing nosing; null where the hanger is it or there is none. */
  readonly topRiserBoard: number | null;
  /** Null without a hanger behind a hung stringer. */
  readonly hangerHeight: number | null;
}

export function ripParts(flight: Flight, stair: StairJob, stringer: Stringer, width: WidthStack | null): Rips {
  const { unitRise, run, nosing, treadThickness, riserThickness } = flight;
  const { top } = stair.stringer;
  const onTread = stair.steps.joint === 'riser-on-tread';
  const open = riserThickness === 0;
  const upperNosing = toMm(stair.steps.upperNosingThickness);
  const treadDepth = run + nosing + (onTread ? riserThickness : 0);
  const hungWithHanger = isHung(top) && hasHangerBoard(top);
  return {
    treadDepth,
    lastTreadDepth: lastTread(flight, stair, stringer, treadDepth),
    riserHeights: open ? [] : boards(flight, onTread, width),
    riserOpening: open ? unitRise - treadThickness : null,
    topRiserBoard:
      open || !isHung(top) || top === 'hanger-is-riser'
        ? null
        : unitRise - upperNosing + (onTread ? 0 : treadThickness),
    hangerHeight: hungWithHanger ? unitRise + treadThickness - upperNosing + stringer.top.plumbCut : null,
  };
}

/** At the top the tread meets a board or the header instead of the next riser. */
function lastTread(flight: Flight, stair: StairJob, stringer: Stringer, usual: number): number {
  if (stair.stringer.top === 'hanger-is-riser') return flight.run + flight.nosing;
  if (!isHung(stair.stringer.top)) return stringer.top.lastLevelCut + flight.riserThickness + flight.nosing;
  return usual;
}

/**
 * Riser 1 stands on what the stringer stands on, and is scribed to it where that slopes: its board is as high
 * as at the lowest corner of its foot. Behind the tread (J1) a board runs from level cut
 * to the underside of the next tread: a whole unit rise. On the tread (J2) it loses the tread.
 */
function boards(flight: Flight, onTread: boolean, width: WidthStack | null): number[] {
  const first = flight.unitRise - flight.treadThickness - lowestUnderRiser(flight, width);
  const rest = onTread ? flight.unitRise - flight.treadThickness : flight.unitRise;
  return Array.from({ length: flight.treads }, (_, index) => (index === 0 ? first : rest));
}

/** Under riser 1's board: it reaches from its finished face back to the stringer, and from skirt to skirt. */
function lowestUnderRiser(flight: Flight, width: WidthStack | null): number {
  const half = width === null ? 0 : width.betweenSkirts / 2;
  const corners = [0, flight.riserThickness].flatMap((x) => [-half, half].map((y) => floorHeight(flight, x, y)));
  return Math.min(...corners);
}
