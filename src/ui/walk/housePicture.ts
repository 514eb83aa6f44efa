/**
 * The marks in the house. On the header: its face from the side. On the floor: the foot of the stair close
 * up, a break, and the header's face plumbed down at the right. Across the stair: as one sees it going up.
 */
import { point } from '../../core/geometry/point';
import type { StairPlan } from '../../core/plan/planStair';
import type { MarkEntry } from '../../core/stringer/markList';
import { toMm } from '../../core/units/exact';
import {
  box,
  breakMark,
  DOWN,
  LEFT,
  line,
  type Picture,
  type PictureMark,
  type PictureShape,
  type PictureSize,
  shape,
  UP,
} from './picture';

const SIDE = 24;
const ABOVE = 34;
const FLOOR = 14;

export function housePicture(
  plan: StairPlan,
  entries: readonly MarkEntry[],
  current: MarkEntry,
  size: PictureSize,
): Picture {
  const alike = entries.filter(({ from }) => from === current.from);
  if (current.from === 'subfloor') return headerPicture(plan, current, size);
  if (current.from === 'header') return floorPicture(plan, alike, current, size);
  return acrossPicture(plan, alike, current, size);
}

function headerPicture({ layout }: StairPlan, { id, value }: MarkEntry, { width, height }: PictureSize): Picture {
  const { stringer, flight, job } = layout;
  const depth = flight.upperSubfloor + toMm(job.survey.headerDepth ?? job.stringer.stockDepth);
  const scale = (height - ABOVE - 8) / (depth + flight.upperToAdd);
  const top = ABOVE + flight.upperToAdd * scale;
  const face = width * 0.55;
  const headerTop = top + flight.upperSubfloor * scale;
  const mark = point(face, top + value * scale);
  const end = face - stringer.top.hanger * scale;
  const foot = Math.min(height, mark.y + stringer.top.plumbCut * scale);
  const away = Math.max(0, end - stringer.top.lastLevelCut * scale);
  return {
    shapes: [
      shape('wood', point(away, mark.y), point(end, mark.y), point(end, foot), point(away, height)),
      ...(stringer.top.hanger === 0 ? [] : [box('wood', end, headerTop, face, foot)]),
      box('house', face, headerTop, face + 76 * scale, top + depth * scale),
      box('house', face, top, width, headerTop),
      line('heavy-line', point(face, top), point(width, top)),
      line('to-come', point(face, ABOVE), point(width, ABOVE)),
    ],
    marks: [{ id, at: mark, out: LEFT }],
    run: [point(face, top), mark],
    opens: LEFT,
  };
}

function floorPicture(
  { layout, sheet }: StairPlan,
  alike: readonly MarkEntry[],
  current: MarkEntry,
  { width, height }: PictureSize,
): Picture {
  const { flight } = layout;
  const floor = height - FLOOR - 14;
  const scale = (floor - ABOVE) / flight.unitRise;
  const riser = width * 0.3;
  const face = width - SIDE - 30;
  const gap = face - 70;
  const at = (fromHeader: number) => riser + (sheet.riserMark - fromHeader) * scale;
  const treadTop = floor - flight.unitRise * scale;
  const treadFoot = treadTop + flight.treadThickness * scale;
  const nosing = at(sheet.nosingMark);
  const shapes: PictureShape[] = [
    box('house', 0, floor, width, floor + FLOOR),
    box('wood', at(sheet.toeMark), treadFoot, gap - 24, floor),
    ...(flight.riserThickness === 0 ? [] : [box('wood', riser, treadFoot, at(sheet.toeMark), floor)]),
    box('wood', nosing, treadTop, Math.min(gap - 24, nosing + layout.rips.treadDepth * scale), treadFoot),
    box('house', face, 0, face + 26, ABOVE + 6),
    line('to-come', point(face, ABOVE), point(face, floor)),
    line('heavy-line', point(0, floor), point(width, floor)),
    ...breakMark(gap, floor),
  ];
  const mark = point(at(current.value), floor);
  const marks = alike.map(({ id, value }): PictureMark => ({ id, at: point(at(value), floor), out: DOWN }));
  return { shapes, marks, run: [point(face, floor), mark], opens: DOWN };
}

function acrossPicture(
  { layout }: StairPlan,
  alike: readonly MarkEntry[],
  current: MarkEntry,
  { width, height }: PictureSize,
): Picture {
  const between = toMm(layout.job.survey.widthFraming ?? layout.job.stringer.stockDepth);
  const wall = 18;
  const left = SIDE + wall;
  const scale = (width - 2 * left) / between;
  const right = left + between * scale;
  const floor = height - FLOOR - 6;
  const top = ABOVE + 10;
  const x = (value: number) => left + value * scale;
  const half = (layout.stringer.stockThickness / 2) * scale;
  const spacer = toMm(layout.job.survey.spacer) * scale;
  const shapes: PictureShape[] = [
    box('house', 0, floor, width, floor + FLOOR),
    box('house', left - wall, 0, left, floor),
    box('house', right, 0, right + wall, floor),
    ...(spacer === 0
      ? []
      : [box('blank', left, top, left + spacer, floor), box('blank', right - spacer, top, right, floor)]),
    ...alike
      .filter(({ what }) => what === 'stringer-centre')
      .map(({ value }) => box('wood', x(value) - half, top, x(value) + half, floor)),
    line('heavy-line', point(0, floor), point(width, floor)),
  ];
  return {
    shapes,
    marks: alike.map(({ id, value }): PictureMark => ({ id, at: point(x(value), top), out: UP })),
    run: [point(left, top), point(x(current.value), top)],
    opens: UP,
  };
}
