/**
 * The story pole: every height of the flight, and where a level at a known height meets them.
 * Frame: the elevation of layout/flight. Heights are given twice, because a stick can only stand on
 * the floor that is there: over the finished lower floor, and over that floor as it is today.
 */
import type { StairLayout } from './layoutStair';

export interface PoleRow {
  /** 0 is the lower floor, N the upper one. */
  readonly step: number;
  readonly finished: number;
  readonly finishedToday: number;
  /** The stringer's level cut under that tread; null where it has none. */
  readonly cut: number | null;
  readonly cutToday: number | null;
}

/** Heights over a level line: negative is below it. */
export interface LaserRow {
  readonly step: number;
  readonly finished: number;
  readonly cut: number | null;
}

/** @returns 0 … N, unrounded: each row is rounded on its own when it is shown */
export function storyPole({ flight }: StairLayout): readonly PoleRow[] {
  // Today's floor lies under the finished one by what is still to be laid on it, before or after the stair.
  const toToday = flight.lowerToAdd;
  return flight.finishedTops.map((finished, step) => {
    const cut = step >= 1 && step <= flight.treads ? finished - flight.treadThickness : null;
    return {
      step,
      finished,
      finishedToday: finished + toToday,
      cut,
      cutToday: cut === null ? null : cut + toToday,
    };
  });
}

/** @param laserHeight height of the level line over the lower floor as it is today, where the stair lands */
export function laserTable(rows: readonly PoleRow[], laserHeight: number): readonly LaserRow[] {
  return rows.map(({ step, finishedToday, cutToday }) => ({
    step,
    finished: finishedToday - laserHeight,
    cut: cutToday === null ? null : cutToday - laserHeight,
  }));
}
