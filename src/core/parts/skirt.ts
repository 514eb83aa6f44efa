/**
 * The skirt along a wall: the board beside the steps whose top edge runs parallel to the nosing line.
 * Frame: the elevation of layout/flight.
 *
 * Method: the top edge lies a plumb margin above the nosing line and is cut off plumb where it has come
 * down to the height of the baseboard at either floor; both ends meet it, so the edge is N steps long.
 * The foot of the lower end hangs below the edge, square to which it reaches back past the cut.
 */
import type { Flight } from '../layout/flight';
import { inchMm } from '../units/exact';
import type { UnitSystem } from '../units/length';

export interface SkirtChoice {
  /** Plumb, from the nosing line up to the top edge. */
  readonly margin: number;
  /** Height of the baseboard that the skirt meets at both floors, over the finished floor. */
  readonly baseHeight: number;
  /** Height of what its foot stands on: 0 is the finished floor. */
  readonly foot: number;
}

export interface Skirt {
  readonly topEdge: number;
  /** What the board must hold, between square ends. */
  readonly boardLength: number;
  /** Square to the edge, to cover every inner corner of tread and riser. */
  readonly widthNeeded: number;
  /** x of the two plumb cuts; the lower one is mostly in front of riser 1, so negative. */
  readonly lowerCutX: number;
  readonly upperCutX: number;
}

/** Margin and baseboard that one would start from. Common practice, no source. */
const USUAL = {
  imperial: { margin: inchMm(4), baseHeight: inchMm(5.5), foot: 0 },
  metric: { margin: 100, baseHeight: 140, foot: 0 },
};

export function usualSkirt(units: UnitSystem): SkirtChoice {
  return USUAL[units];
}

export function laySkirt(flight: Flight, { margin, baseHeight, foot }: SkirtChoice): Skirt {
  const { risers, unitRise, run, nosing, stepLength, sin, cos } = flight;
  const topEdge = risers * stepLength;
  const lowerCutX = (run / unitRise) * (baseHeight - unitRise - margin) - nosing;
  return {
    topEdge,
    boardLength: topEdge + (baseHeight - foot) * sin,
    // From the edge in to the nosing line, and on to the corner under the next tread's nosing.
    widthNeeded: margin * cos + (run + nosing) * sin,
    lowerCutX,
    upperCutX: lowerCutX + risers * run,
  };
}
