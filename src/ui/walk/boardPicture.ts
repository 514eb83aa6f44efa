/**
 * The board with the stringer on it, crown edge up, as it lies on the horses. The whole of it, or of a
 * very long one on a narrow screen the piece round the mark; the toe and the top end close up. Where the
 * board goes on beside the picture it is broken off, so that no end of it is taken for its own.
 */
import { type Point, point } from '../../core/geometry/point';
import type { StairPlan } from '../../core/plan/planStair';
import { boardFrame, toBoard } from '../../core/stringer/board';
import type { MarkEntry } from '../../core/stringer/markList';
import {
  box,
  breakMark,
  DOWN,
  LEFT,
  line,
  type Picture,
  type PictureMark,
  type PictureSize,
  RIGHT,
  shape,
  UP,
} from './picture';

const SIDE = 24;
const ABOVE = 30;
const BELOW = 24;
const CLOSE_ABOVE = 16;
const CLOSE_MARGIN = 1.55;
/** A board drawn thinner than this shows no notch that one can point at, in pixels. */
const LEAST_DEPTH = 18;
/** And thinner than this no line along it that one can point at. */
const LEAST_FOR_LINE = 44;

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
  const whole = wholeScale(total, stockDepth, size);
  const isClose = CLOSE_UP.includes(current.what) || (current.what === 'gauge' && whole * stockDepth < LEAST_FOR_LINE);
  const scale = isClose ? closeScale(plan, size) : whole;
  const left = leftEdge(plan, current, total, scale, size.width);
  const top = isClose ? CLOSE_ABOVE : ABOVE + Math.max(0, (size.height - ABOVE - BELOW - stockDepth * scale) / 2);
  const at: Place = (along, into) => point((along - left) * scale, top + into * scale);
  const shown = { from: at(0, 0).x, to: at(total, 0).x };
  const from = shown.from < 0 ? BROKEN_OFF : shown.from;
  const to = shown.to > size.width ? size.width - BROKEN_OFF : shown.to;
  const outline = between(outlineOn(plan, at), from, to);
  const blank = box('blank', from, top, to, top + stockDepth * scale);
  const level = at(0, sheet.gaugeLine).y;
  const breaks = [from, to].filter((x) => x !== shown.from && x !== shown.to);
  const middle = Math.min(top + (stockDepth * scale) / 2, (top + size.height) / 2);
  return {
    shapes: [
      blank,
      shape('wood', ...outline),
      line('gauge', point(from, level), point(to, level)),
      ...breaks.flatMap((x) => breakMark(x, middle)),
    ],
    marks: entries.flatMap((entry) => markOf(plan, entry, at)).filter(({ at: { x } }) => x >= from && x <= to),
    ...runOf(plan, current, at),
  };
}

/** From the picture's edge to where a board that goes on is broken off, in pixels. */
const BROKEN_OFF = 14;

/** What of a shape lies between two uprights. */
function between(corners: readonly Point[], from: number, to: number): Point[] {
  return cutAt(
    cutAt(corners, from, (x) => x >= from),
    to,
    (x) => x <= to,
  );
}

function cutAt(corners: readonly Point[], cut: number, isKept: (x: number) => boolean): Point[] {
  return corners.flatMap((corner, i) => {
    const before = corners.at(i - 1) ?? corner;
    const kept = isKept(corner.x) ? [corner] : [];
    if (isKept(before.x) === isKept(corner.x)) return kept;
    const share = (cut - before.x) / (corner.x - before.x);
    return [point(cut, before.y + share * (corner.y - before.y)), ...kept];
  });
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
