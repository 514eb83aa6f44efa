/** What hangs over the flight, each with its clearance at the tightest place. Frame: layout/flight, y up. */
import { type Point, point } from '../geometry/point';
import type { StairLayout } from '../layout/layoutStair';
import type { Clearance } from '../layout/obstacles';
import { toMm } from '../units/exact';
import type { Dimensioning } from './dimensioning';
import { figureOf } from './figures';
import { captionLines, type Sketch } from './sketch';

/** How thick it is drawn, upward: only its underside is known. */
const THICK = 90;
/** And how wide at least, for the eye: a lamp has no width of its own. */
const NARROWEST = 24;
const BREAKS = [0.5, 0.62, 0.38, 0.74, 0.26];

export function drawObstacles(sketch: Sketch, layout: StairLayout): void {
  layout.obstacles.forEach((clearance, at) => {
    const [far, near] = undersideOf(clearance);
    const over = (corner: Point) => point(corner.x, corner.y + THICK);
    const about = aboutObstacle(at);
    sketch.shape('house', [far, near, over(near), over(far)], about);
    sketch.lineAbout(about, 'house', far, near);
    sketch.keepClear(far, near);
  });
}

export function dimensionObstacles({ sketch, layout, words }: Dimensioning): void {
  layout.obstacles.forEach(({ clearance, worstX, stands, under }, at) => {
    if (clearance <= 0) return;
    const [bottom, top] = [toMm(stands), toMm(under)];
    const content = figureOf(clearance, layout.job.units, 'down');
    const caption = captionLines(words('clearance'));
    const middle = (share: number) => bottom + (top - bottom) * share;
    sketch.placeFirst(
      [
        ...BREAKS.map((share) => sketch.uprightDimension(bottom, top, worstX, content, caption, worstX, share)),
        ...BREAKS.flatMap((share) =>
          ([-1, 1] as const).flatMap((side) => [
            sketch.besideDimension(bottom, top, worstX, content, caption, worstX, side, middle(share)),
            sketch.besideDimension(bottom, top, worstX, content, [], worstX, side, middle(share)),
          ]),
        ),
      ],
      aboutObstacle(at),
    );
  });
}

function undersideOf({ nearX, farX, nearY, farY }: Clearance): readonly [far: Point, near: Point] {
  const widen = Math.max(0, NARROWEST - (nearX - farX)) / 2;
  return [point(farX - widen, farY), point(nearX + widen, nearY)];
}

/** The number that explains it, so that a touch leads there. */
function aboutObstacle(at: number): string {
  return `obstacle:${at + 1}`;
}
