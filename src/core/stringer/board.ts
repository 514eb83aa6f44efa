/**
 * From the elevation to the board and back.
 *
 * Board frame: u runs along the crown edge, uphill, from the first tip T1; v runs square in from
 * the physical edge, into the board. The tips stand at v = tip inset. For a point at Δx, Δy from T1:
 *     u = Δx cos θ + Δy sin θ        v = Δx sin θ − Δy cos θ + inset
 * (u, v) is a mirror image of the elevation turned by the pitch, so lengths and areas keep.
 */
import { type Point, point } from '../geometry/point';
import { atMost } from '../geometry/tolerance';
import type { Flight } from '../layout/flight';
import { inchMm } from '../units/exact';
import type { UnitSystem } from '../units/length';

export interface BoardFrame {
  /** T1 in the elevation. */
  readonly origin: Point;
  readonly sin: number;
  readonly cos: number;
  readonly tipInset: number;
}

export function boardFrame(flight: Flight, tipInset: number): BoardFrame {
  return {
    origin: point(flight.riserThickness, flight.unitRise - flight.treadThickness),
    sin: flight.sin,
    cos: flight.cos,
    tipInset,
  };
}

/** @returns x = u, y = v */
export function toBoard(frame: BoardFrame, at: Point): Point {
  const dx = at.x - frame.origin.x;
  const dy = at.y - frame.origin.y;
  return point(dx * frame.cos + dy * frame.sin, dx * frame.sin - dy * frame.cos + frame.tipInset);
}

/** Lengths in which boards are sold: every 2 ft from 8 to 24 ft, every 300 mm from 2.4 to 7.2 m. */
export const STOCK_LENGTHS = {
  imperialFeet: [8, 10, 12, 14, 16, 18, 20, 22, 24],
  metricMm: [2400, 2700, 3000, 3300, 3600, 3900, 4200, 4500, 4800, 5100, 5400, 5700, 6000, 6300, 6600, 6900, 7200],
} as const;

/** @returns the shortest board sold that is at least as long; null if none is */
export function shortestStock(needed: number, units: UnitSystem): number | null {
  const lengths =
    units === 'metric' ? STOCK_LENGTHS.metricMm : STOCK_LENGTHS.imperialFeet.map((feet) => inchMm(12 * feet));
  return lengths.find((length) => atMost(needed, length)) ?? null;
}
