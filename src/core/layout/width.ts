/**
 * The width stack between two walls, and how many stringers carry it.
 * Across the stair, in millimetres; both sides are walls.
 */
import type { StairJob } from '../job/stairJob';
import { ceiling, divide, type Exact, inch, sign, subtract, times, toMm, whole } from '../units/exact';

export interface WidthStack {
  readonly finishedExact: Exact;
  /** Wall surface to wall surface. */
  readonly finished: number;
  readonly betweenSkirtsExact: Exact;
  readonly betweenSkirts: number;
  readonly stringers: number;
  /** Centre to centre. */
  readonly spacingExact: Exact;
  readonly spacing: number;
  readonly treadLength: number;
  /** Tread past the outer stringer's face, each side. */
  readonly treadOverhang: number;
}

/** Room left for the tread to go in between skirts. Common practice, no source. */
export const TREAD_PLAY = { imperial: inch(1 / 16), metric: subtract(whole(2), divide(whole(1), whole(2))) };

/** @returns the stack, or null without a width; `too-narrow` if its layers leave no stair */
export function stackWidth(stair: Pick<StairJob, 'survey' | 'stringer' | 'units'>): WidthStack | null | 'too-narrow' {
  const { widthFraming, wallboard, skirt, spacer } = stair.survey;
  const { stockThickness, spacingMax, count } = stair.stringer;
  if (widthFraming === null) return null;
  const finished = subtract(widthFraming, times(wallboard, 2));
  const betweenSkirts = subtract(finished, times(skirt, 2));
  const outside = subtract(widthFraming, times(spacer, 2));
  const treadLength = subtract(betweenSkirts, TREAD_PLAY[stair.units]);
  const centres = subtract(outside, stockThickness);
  if (sign(treadLength) <= 0 || sign(centres) <= 0) return 'too-narrow';
  const stringers = count === 'auto' ? Math.max(2, Number(ceiling(divide(centres, spacingMax))) + 1) : count;
  return {
    finishedExact: finished,
    finished: toMm(finished),
    betweenSkirtsExact: betweenSkirts,
    betweenSkirts: toMm(betweenSkirts),
    stringers,
    spacingExact: divide(centres, whole(stringers - 1)),
    spacing: toMm(centres) / (stringers - 1),
    treadLength: toMm(treadLength),
    treadOverhang: (toMm(betweenSkirts) - toMm(outside)) / 2,
  };
}
