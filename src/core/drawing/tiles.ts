/**
 * Cuts a template into windows that fit a sheet. Edges of windows lie on whole quarter inches, or
 * 5 mm, from the template's datum, so that each sheet can be set to one tape: the error of a sheet
 * then stays on that sheet, however many there are. Neighbours overlap, and share their crosses.
 */
import { type Point, point } from '../geometry/point';
import { inchMm } from '../units/exact';
import type { UnitSystem } from '../units/length';
import type { Box, Mark, ShapeMark, TextMark } from './drawing';
import { boxHeight, boxWidth, type TextMeasure, type Tile } from './page';
import { printedBox } from './pageSketch';
import { clipLineToBox } from './strip';
import type { Template } from './template';

/** What two neighbours both show, at least. */
export const OVERLAP = inchMm(1 / 2);
const GRID: Readonly<Record<UnitSystem, number>> = { imperial: inchMm(1 / 4), metric: 5 };
const CROSS = 4;
/** A sliver has no room for the numbers of its edges. */
const NARROWEST = 60;

export interface Room {
  readonly width: number;
  readonly height: number;
}

export interface Window {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
  readonly window: Box;
}

/** Rows are counted from the top, as they are laid out on a floor. */
export function windowsOf(template: Template, room: Room, units: UnitSystem): readonly Window[] {
  const { extent, datum } = template;
  const grid = GRID[units];
  // Lanes are all of one length, so that what stands on them has the same place on each.
  const across = split(extent.left, extent.right, room.width, datum.x, grid, template.isStrip);
  const up = split(extent.bottom, extent.top, room.height, datum.y, grid, false);
  return [...up].reverse().flatMap(([bottom, top], row) =>
    across.map(([left, right], column) => ({
      row,
      column,
      rows: up.length,
      columns: across.length,
      window: { left, right, bottom, top },
    })),
  );
}

function split(
  from: number,
  to: number,
  room: number,
  datum: number,
  grid: number,
  isFull: boolean,
): readonly (readonly [number, number])[] {
  const first = datum + Math.floor((from - datum) / grid) * grid;
  const last = datum + Math.ceil((to - datum) / grid) * grid;
  if (last - first <= room) return [[first, last]];
  if (to - from <= room) return [[from, to]];
  const size = Math.floor(room / grid) * grid;
  const step = size - Math.ceil(OVERLAP / grid) * grid;
  const count = 1 + Math.ceil((to - first - size) / step);
  return Array.from({ length: count }, (_, i) => {
    const end = first + i * step + size;
    const least = first + i * step + Math.min(size, Math.ceil(NARROWEST / grid) * grid);
    return [first + i * step, isFull ? end : Math.max(least, Math.min(last, end))] as const;
  });
}

/** How many sheets these windows take. */
export function sheetsFor(windows: readonly Window[], template: Template, room: Room): number {
  return template.isStrip ? Math.ceil(windows.length / lanesOn(template, room)) : windows.length;
}

/** How many lanes of a strip lie on one sheet, one under the other. */
export function lanesOn(template: Template, room: Room): number {
  return Math.max(1, Math.floor(room.height / boxHeight(template.extent)));
}

/** The template's marks that show in one window, in the sheet's frame, with its edge and its crosses. */
export function marksInTile(
  template: Template,
  tile: Tile,
  all: readonly Window[],
  measure: TextMeasure,
): readonly Mark[] {
  const { window, at } = tile;
  const dx = at.x - window.left;
  const dy = at.y - window.bottom;
  const groups = groupsOf(template, measure);
  const texts = groups.flatMap((group) => {
    const shift =
      group.tick === null ? shiftInto(group, template, window, all) : shiftBeside(group, group.tick, window);
    if (shift === null) return [];
    return group.texts.map((mark) => ({ ...mark, at: point(mark.at.x + dx + shift.x, mark.at.y + dy + shift.y) }));
  });
  const lines: Mark[] = [];
  for (const mark of template.marks) if (mark.kind === 'shape') addPieces(lines, mark, window, dx, dy);
  const crosses = all.length > 1 ? crossesIn(window, all, groups) : [];
  return [...lines, ...texts, ...edgeOf(tile, template), ...crosses.flatMap(({ x, y }) => cross(x + dx, y + dy))];
}

/** A template has thousands of strokes, and a window shows few of them: those are told apart before anything is made. */
function addPieces(to: Mark[], mark: ShapeMark, window: Box, dx: number, dy: number): void {
  const { corners } = mark;
  for (let i = 1; i < corners.length; i += 1) {
    const a = corners[i - 1] as Point;
    const b = corners[i] as Point;
    if ((a.x < window.left && b.x < window.left) || (a.x > window.right && b.x > window.right)) continue;
    if ((a.y < window.bottom && b.y < window.bottom) || (a.y > window.top && b.y > window.top)) continue;
    const piece = clipLineToBox(a, b, window);
    if (piece === null) continue;
    const moved = [point(piece[0].x + dx, piece[0].y + dy), point(piece[1].x + dx, piece[1].y + dy)];
    to.push({ ...mark, corners: moved, closed: false });
  }
}

interface TextGroup {
  readonly texts: readonly TextMark[];
  readonly box: Box;
  /** The upright line that the texts are the number of; null where they are about no line. */
  readonly tick: number | null;
}

/** The same for every window of a template, and worked out once. */
const known = new WeakMap<Template, readonly TextGroup[]>();

function groupsOf(template: Template, measure: TextMeasure): readonly TextGroup[] {
  const groups = known.get(template) ?? textGroups(template, measure);
  known.set(template, groups);
  return groups;
}

/** Texts about the same thing are one group; a text about nothing stands alone. */
function textGroups({ marks }: Template, measure: TextMeasure): readonly TextGroup[] {
  const groups = new Map<string, TextGroup>();
  const ticks = new Map(
    marks.flatMap((mark) =>
      mark.kind === 'shape' && mark.about !== undefined ? [[mark.about, mark.corners[0]?.x ?? 0] as const] : [],
    ),
  );
  marks.forEach((mark, i) => {
    if (mark.kind !== 'text') return;
    const key = mark.about ?? `${i}`;
    const box = printedBox(mark, measure);
    const before = groups.get(key);
    groups.set(key, {
      texts: [...(before?.texts ?? []), mark],
      box: before ? around(before.box, box) : box,
      tick: ticks.get(key) ?? null,
    });
  });
  return [...groups.values()];
}

function around(a: Box, b: Box): Box {
  return {
    left: Math.min(a.left, b.left),
    right: Math.max(a.right, b.right),
    bottom: Math.min(a.bottom, b.bottom),
    top: Math.max(a.top, b.top),
  };
}

interface Shift {
  readonly x: number;
  readonly y: number;
}

const STAY: Shift = { x: 0, y: 0 };
/** Between a tick and its number. */
const BESIDE_TICK = 2;

/** A tick and its number are shown by the same windows: one without the other would be marked wrong. */
function shiftBeside({ box }: TextGroup, tick: number, window: Box): Shift | null {
  if (tick < window.left || tick > window.right) return null;
  if (box.left >= window.left && box.right <= window.right) return STAY;
  return { x: box.left < window.left ? tick + BESIDE_TICK - box.left : tick - BESIDE_TICK - box.right, y: 0 };
}

/**
 * Words and numbers are shown whole by every window that holds them whole; those that none holds
 * are moved into the window that holds most, past the band that it shares with its neighbour, and
 * on until they lie across no line.
 */
function shiftInto({ box }: TextGroup, template: Template, window: Box, all: readonly Window[]): Shift | null {
  if (holds(window, box)) return STAY;
  if (all.some((other) => holds(other.window, box))) return null;
  const byShare = all
    .map((other) => ({ window: other.window, share: shared(other.window, box) }))
    .filter(({ share }) => share > 0)
    .sort((one, other) => other.share - one.share);
  const places = byShare.flatMap((one) => clearShift(box, template, one.window) ?? []);
  const [chosen] = places;
  if (chosen !== undefined) return chosen.window === window ? chosen.shift : null;
  // Nowhere is clear: where most of it lies, it is at least beside what it is about.
  return byShare[0]?.window === window
    ? {
        x: inward(box.left, box.right, window.left, window.right),
        y: inward(box.bottom, box.top, window.bottom, window.top),
      }
    : null;
}

/** How much farther a text is tried, and how often, into a window's middle each way. */
const FARTHER = 6;
const TIMES = 8;

function clearShift(
  box: Box,
  { marks }: Template,
  window: Box,
): { readonly window: Box; readonly shift: Shift } | null {
  const x = inward(box.left, box.right, window.left, window.right);
  const y = inward(box.bottom, box.top, window.bottom, window.top);
  const steps = Array.from({ length: TIMES }, (_, i) => i * FARTHER);
  const shifts = steps.flatMap((far) =>
    steps.flatMap((wide) => [
      { x: x + (x < 0 ? -wide : wide), y: y + (y < 0 ? -far : far) },
      { x: x + (x < 0 ? -wide : wide), y: y + (y < 0 ? far : -far) },
    ]),
  );
  const shift = shifts.find((by) => {
    const moved = { left: box.left + by.x, right: box.right + by.x, bottom: box.bottom + by.y, top: box.top + by.y };
    return holds(window, moved) && isOffLines(marks, moved);
  });
  return shift === undefined ? null : { window, shift };
}

function isOffLines(marks: readonly Mark[], box: Box): boolean {
  const grown = { left: box.left - 1, right: box.right + 1, bottom: box.bottom - 1, top: box.top + 1 };
  return marks.every(
    (mark) =>
      mark.kind === 'text' ||
      mark.corners
        .slice(1)
        .every((corner, i) => clipLineToBox(mark.corners[i] as typeof corner, corner, grown) === null),
  );
}

function inward(from: number, to: number, least: number, most: number): number {
  if (from >= least && to <= most) return 0;
  return from < least ? least + OVERLAP - from : most - OVERLAP - to;
}

function holds(window: Box, box: Box): boolean {
  return box.left >= window.left && box.right <= window.right && box.bottom >= window.bottom && box.top <= window.top;
}

function shared(a: Box, b: Box): number {
  const width = Math.min(a.right, b.right) - Math.max(a.left, b.left);
  const height = Math.min(a.top, b.top) - Math.max(a.bottom, b.bottom);
  return Math.max(0, width) * Math.max(0, height);
}

/** Middles of the overlaps with its neighbours: two on a long seam, one on a lane's. */
function crossesIn(
  window: Box,
  all: readonly Window[],
  groups: readonly TextGroup[],
): readonly { readonly x: number; readonly y: number }[] {
  const others = all.map((other) => other.window).filter((other) => other !== window);
  return others.flatMap((other) => {
    const left = Math.max(window.left, other.left);
    const right = Math.min(window.right, other.right);
    const bottom = Math.max(window.bottom, other.bottom);
    const top = Math.min(window.top, other.top);
    // Neighbours share a narrow band; windows that only touch at a corner are both neighbours of a third.
    if (right - left <= 0 || top - bottom <= 0) return [];
    const upright = right - left < boxWidth(window) && top - bottom === boxHeight(window);
    const level = top - bottom < boxHeight(window) && right - left === boxWidth(window);
    const [x, y] = [(left + right) / 2, (bottom + top) / 2];
    if (upright) return seam(bottom, top, (along) => isFree(groups, x, along)).map((along) => ({ x, y: along }));
    return level ? seam(left, right, (along) => isFree(groups, along, y)).map((along) => ({ x: along, y })) : [];
  });
}

/** Shares of a seam at which a cross may stand, counted from either end: the first that is free of words. */
const SEAM_SHARES = [0.12, 0.18, 0.24, 0.3, 0.36, 0.42];
/** A seam shorter than this has one cross. */
const SHORT_SEAM = 40;

function seam(from: number, to: number, isOpen: (along: number) => boolean): readonly number[] {
  if (to - from < SHORT_SEAM) return [(from + to) / 2];
  const places = (end: number, away: number) => SEAM_SHARES.map((share) => end + away * share * (to - from));
  return [places(from, 1), places(to, -1)].map((ends) => ends.find(isOpen) ?? (ends[0] as number));
}

/** The same answer on both sides of a seam: words are looked at where the template has them. */
function isFree(groups: readonly TextGroup[], x: number, y: number): boolean {
  const reach = CROSS + 1;
  return !groups.some(
    ({ box }) => box.left < x + reach && box.right > x - reach && box.bottom < y + reach && box.top > y - reach,
  );
}

function cross(x: number, y: number): Mark[] {
  return [
    { kind: 'shape', role: 'registration', closed: false, corners: [point(x - CROSS, y), point(x + CROSS, y)] },
    { kind: 'shape', role: 'registration', closed: false, corners: [point(x, y - CROSS), point(x, y + CROSS)] },
  ];
}

function edgeOf({ window, at, rows, columns }: Tile, { isStrip }: Template): Mark[] {
  if (rows * columns === 1) return [];
  const [right, top] = [at.x + boxWidth(window), at.y + boxHeight(window)];
  const corners = [at, point(right, at.y), point(right, top), point(at.x, top)];
  // A lane's long sides are the strip's own.
  if (isStrip) return [end(at.x, at.y, top), end(right, at.y, top)];
  return [{ kind: 'shape', role: 'tile-edge', closed: true, corners }];
}

function end(x: number, bottom: number, top: number): Mark {
  return { kind: 'shape', role: 'tile-edge', closed: false, corners: [point(x, bottom), point(x, top)] };
}
