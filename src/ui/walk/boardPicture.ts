/**
 * The board with the stringer on it, crown edge up, as it lies on the horses. The whole of it where there
 * is room; on a narrow screen the piece round the mark; the toe and the top end close up.
 */
import { type Point, point } from '../../core/geometry/point';
import type { StairPlan } from '../../core/plan/planStair';
import { boardFrame, toBoard } from '../../core/stringer/board';
import type { MarkEntry } from '../../core/stringer/markList';
import { box, DOWN, LEFT, line, type Picture, type PictureMark, type PictureSize, RIGHT, shape, UP } from './picture';

const SIDE = 24;
const ABOVE = 30;
const BELOW = 24;
const CLOSE_ABOVE = 16;
const CLOSE_MARGIN = 1.55;
/** A board drawn thinner than this shows no notch that one can point at. */
const LEAST_DEPTH = 44;

type Place = (along: number, into: number) => Point;
type Run = Pick<Picture, 'run' | 'opens'>;

export function boardPicture(
  plan: StairPlan,
  entries: readonly MarkEntry[],
  current: MarkEntry,
  size: PictureSize,
): Picture {
  const { sheet, layout } = plan;
  const { stockDepth, boardLength, trim } = layout.stringer;
  const total = sheet.stockLength ?? boardLength + 2 * trim;
  const isClose = CLOSE_UP.includes(current.what);
  const scale = isClose ? closeScale(plan, size) : wholeScale(total, stockDepth, size);
  const left = leftEdge(plan, current, total, scale, size.width);
  const top = isClose ? CLOSE_ABOVE : ABOVE + Math.max(0, (size.height - ABOVE - BELOW - stockDepth * scale) / 2);
  const at: Place = (along, into) => point((along - left) * scale, top + into * scale);
  const outline = outlineOn(plan, at);
  const blank = box('blank', at(0, 0).x, top, at(total, 0).x, top + stockDepth * scale);
  const gauge = line('gauge', at(0, sheet.gaugeLine), at(total, sheet.gaugeLine));
  return {
    shapes: [blank, shape('wood', ...outline), gauge],
    marks: entries.flatMap((entry) => markOf(plan, entry, at)),
    ...runOf(plan, current, at),
  };
}

const CLOSE_UP: readonly MarkEntry['what'][] = ['toe', 'kicker-height', 'kicker-width', 'end-depth'];

/** Nothing that is marked at the ends lies deeper than the gauge line: the rest of the board may fall out of sight. */
function closeScale({ sheet }: StairPlan, { height }: PictureSize): number {
  return Math.max(1, height - 2 * CLOSE_ABOVE) / (sheet.gaugeLine * CLOSE_MARGIN);
}

function wholeScale(total: number, depth: number, { width, height }: PictureSize): number {
  const deepest = Math.max(LEAST_DEPTH, height - ABOVE - BELOW) / depth;
  return Math.min(deepest, Math.max((width - 2 * SIDE) / total, LEAST_DEPTH / depth));
}

/** Which length of the board stands at the picture's left edge: the mark in the middle, the board never off it. */
function leftEdge(plan: StairPlan, entry: MarkEntry, total: number, scale: number, width: number): number {
  const inView = width / scale;
  const margin = SIDE / scale;
  const whole = total + 2 * margin;
  if (whole <= inView) return (total - inView) / 2;
  const wanted = alongOf(plan, entry) - inView / 2;
  return Math.min(total + margin - inView, Math.max(-margin, wanted));
}

function alongOf({ sheet }: StairPlan, { what, value }: MarkEntry): number {
  if (what === 'tip' || what === 'corner' || what === 'end') return value;
  return what === 'end-depth' ? sheet.end : 0;
}

function outlineOn(plan: StairPlan, at: Place): Point[] {
  const { stringer } = plan.layout;
  return stringer.outline.map((corner) => onBoard(plan, at, corner));
}

/** A point of the elevation, where it comes to lie on the board. */
function onBoard({ layout }: StairPlan, at: Place, corner: Point): Point {
  const { x, y } = toBoard(boardFrame(layout.flight, layout.stringer.tipInset), corner);
  return at(layout.stringer.firstMark + x, y);
}

function markOf({ sheet }: StairPlan, { id, what, value }: MarkEntry, at: Place): PictureMark[] {
  if (what === 'tip') return [{ id, at: at(value, 0), out: UP }];
  if (what === 'corner') return [{ id, at: at(value, sheet.gaugeLine), out: DOWN }];
  return what === 'end' ? [{ id, at: at(value, sheet.endDepth), out: DOWN }] : [];
}

function runOf(plan: StairPlan, { what, value }: MarkEntry, at: Place): Run {
  const { sheet, layout } = plan;
  const { flight } = layout;
  const first = sheet.tips[0] ?? 0;
  const toe = point(flight.riserThickness, layout.stringer.heel.toeY);
  const elevation = (x: number, y: number) => onBoard(plan, at, point(toe.x + x, toe.y + y));
  const runs: Partial<Record<MarkEntry['what'], Run>> = {
    corner: { run: [at(0, sheet.gaugeLine), at(value, sheet.gaugeLine)], opens: UP },
    end: { run: [at(0, sheet.endDepth), at(value, sheet.endDepth)], opens: UP },
    gauge: { run: [at(first / 2, 0), at(first / 2, value)], opens: DOWN },
    'end-depth': { run: [at(sheet.end, 0), at(sheet.end, value)], opens: RIGHT },
    toe: { run: [at(first, 0), elevation(0, 0)], opens: LEFT },
    'kicker-height': { run: [elevation(0, 0), elevation(0, value)], opens: LEFT },
    'kicker-width': { run: [elevation(0, 0), elevation(value, 0)], opens: DOWN },
  };
  return runs[what] ?? { run: [at(0, 0), at(value, 0)], opens: UP };
}
