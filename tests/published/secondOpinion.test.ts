/**
 * A second opinion by a geometry library that knows no stairs: the stringer is sawn out of a board
 * with its set operations, as a carpenter would, and laid over the outline. polyclip-ts computes
 * with unlimited digits, so what differs is ours.
 */
import { difference, intersection, union, xor } from 'polyclip-ts';
import { describe, expect, test } from 'vitest';
import type { Point } from '../../src/core/geometry/point';
import { signedArea } from '../../src/core/geometry/point';
import type { StairLayout } from '../../src/core/layout/layoutStair';
import { type Changes, changed, LOFT, planOf, SLAB } from '../fixtures/stairs';

type Polygon = [number, number][][];
type Pieces = ReturnType<typeof union>;

const FAR = 20_000;
const HAIR = 0.01;

function polygon(points: readonly (readonly [number, number])[]): Polygon {
  return [[...points, points[0] as readonly [number, number]].map(([x, y]) => [x, y])];
}

const box = (left: number, bottom: number, right: number, top: number): Polygon =>
  polygon([
    [left, bottom],
    [right, bottom],
    [right, top],
    [left, top],
  ]);

function area(pieces: Pieces): number {
  const ring = (points: readonly (readonly number[])[]) =>
    Math.abs(signedArea(points.slice(0, -1).map(([x, y]): Point => ({ x: x as number, y: y as number }))));
  return pieces.reduce(
    (sum, [outer, ...holes]) => sum + ring(outer ?? []) - holes.reduce((h, hole) => h + ring(hole), 0),
    0,
  );
}

/** A strip along the pitch: from so far in from the tips to so far in. */
function strip(layout: StairLayout, from: number, to: number): Polygon {
  const { flight } = layout;
  const first = { x: flight.riserThickness, y: flight.unitRise - flight.treadThickness };
  const at = (u: number, v: number): [number, number] => [
    first.x + u * flight.cos + v * flight.sin,
    first.y + u * flight.sin - v * flight.cos,
  ];
  return polygon([at(-FAR, from), at(FAR, from), at(FAR, to), at(-FAR, to)]);
}

/** A board, less the air over every tread, less what is before the toe, behind the end and under the floor. */
function sawn(layout: StairLayout): Pieces {
  const { flight, stringer } = layout;
  const board = strip(layout, -stringer.tipInset, stringer.stockDepth - stringer.tipInset);
  const treads = Array.from({ length: flight.treads }, (_, i) =>
    box(
      flight.riserThickness + i * flight.run,
      (flight.finishedTops[i + 1] as number) - flight.treadThickness,
      i === flight.treads - 1 ? FAR : flight.riserThickness + (i + 1) * flight.run,
      FAR,
    ),
  );
  const kicker = stringer.kicker
    ? [
        box(
          flight.riserThickness,
          flight.seatHeight,
          flight.riserThickness + stringer.kicker.width,
          flight.seatHeight + stringer.kicker.height,
        ),
      ]
    : [];
  return difference(
    board,
    ...treads,
    ...kicker,
    box(-FAR, -FAR, flight.riserThickness, FAR),
    box(stringer.top.endX, -FAR, FAR, FAR),
    box(-FAR, -FAR, FAR, flight.seatHeight),
  );
}

const TOPS: readonly (readonly [string, Changes['stringer']])[] = [
  ['header behind the riser', { top: 'header-behind-riser', hanger: undefined }],
  ['hanger is the riser', {}],
  ['hanger behind the riser', { top: 'hanger-behind-riser' }],
  ['level with the floor', { top: 'level-with-floor', hanger: undefined, topTreadRun: '3 1/2 in' }],
];
const CASES = TOPS.flatMap(([name, top]) =>
  (['tread-butts-riser', 'riser-on-tread'] as const).flatMap((joint) =>
    [true, false].map((kicked) => {
      const stringer = kicked ? top : { ...top, kicker: undefined };
      return [
        `${name}, ${joint}, ${kicked ? 'kicker' : 'no kicker'}`,
        changed(LOFT, { stringer: { tipInset: '1/8 in', ...stringer }, steps: { joint } }),
      ] as const;
    }),
  ),
);

describe.each([...CASES, ['metric, tile to come', SLAB] as const])('%s', (_, job) => {
  const { layout } = planOf(job);
  const { flight, stringer } = layout;
  const outline = polygon(stringer.outline.map(({ x, y }) => [x, y] as const));
  const alone = union(outline);

  test('the outline is one piece without a hole, and crosses itself nowhere', () => {
    expect(alone).toHaveLength(1);
    expect(alone[0]).toHaveLength(1);
    expect(area(alone)).toBeCloseTo(Math.abs(signedArea(stringer.outline)), 4);
  });

  test('sawn out of a board it is the same piece', () => {
    const wood = sawn(layout);
    expect(wood).toHaveLength(1);
    expect(area(wood)).toBeCloseTo(area(alone), 3);
    // A hair of 1e-6 mm along six metres of edges.
    expect(area(xor(wood, outline))).toBeLessThan(0.02);
  });

  test('the throat: ripped a hair deeper than the gauge line it stays whole, a hair shallower it falls into its teeth', () => {
    const rip = (depth: number) => difference(outline, strip(layout, depth, FAR));
    const corner = stringer.stockDepth - stringer.throat - stringer.tipInset;
    expect(rip(corner + HAIR)).toHaveLength(1);
    expect(rip(corner - HAIR)).toHaveLength(flight.treads);
  });

  test('it fits in a box of its board length and the depth of the board, and in no smaller one', () => {
    const whole = area(alone);
    const boardBox = (length: number, depth: number) => {
      const { sin, cos } = flight;
      const toe = -stringer.heel.firstRiserCut * sin;
      const first = { x: flight.riserThickness, y: flight.unitRise - flight.treadThickness };
      const at = (u: number, v: number): [number, number] => [first.x + u * cos + v * sin, first.y + u * sin - v * cos];
      // Edges that lie almost on each other are what such a library is worst at: the box stands off by a hair.
      return polygon([at(toe - HAIR, -HAIR), at(toe + length, -HAIR), at(toe + length, depth), at(toe - HAIR, depth)]);
    };
    const depth = stringer.stockDepth - stringer.tipInset;
    const inside = (length: number, deep: number) => area(intersection(outline, boardBox(length, deep)));
    // With a kicker the toe's corner is gone, and the piece starts a little later: still inside.
    expect(inside(stringer.boardLength + HAIR, depth + HAIR)).toBeCloseTo(whole, 2);
    expect(inside(stringer.boardLength - 1, depth + HAIR)).toBeLessThan(whole - 0.1);
    expect(inside(stringer.boardLength + HAIR, depth - 1)).toBeLessThan(whole - 100);
  });

  test('the seat and the plumb cut are as long as the floor and the header meet them', () => {
    const floor = intersection(outline, box(-FAR, flight.seatHeight, FAR, flight.seatHeight + 0.001));
    const header = intersection(outline, box(stringer.top.endX - 0.001, -FAR, stringer.top.endX, FAR));
    const seat = stringer.heel.seat - (stringer.kicker?.width ?? 0);
    expect(area(floor) / 0.001).toBeCloseTo(seat, 1);
    expect(area(header) / 0.001).toBeCloseTo(stringer.top.plumbCut, 1);
  });
});
