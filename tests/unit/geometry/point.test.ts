import { describe, expect, test } from 'vitest';
import { distance, point, signedArea, turnAndMove } from '../../../src/core/geometry/point';
import { atLeast, atMost, isPositive } from '../../../src/core/geometry/tolerance';

describe('points', () => {
  test('distance of the oldest triangle', () => {
    expect(distance(point(1, 2), point(4, 6))).toBe(5);
  });

  test('a quarter turn, then the move', () => {
    const turned = turnAndMove(point(2, 0), Math.PI / 2, point(10, 20));
    expect(turned.x).toBeCloseTo(10, 12);
    expect(turned.y).toBeCloseTo(22, 12);
  });

  test('area is positive counter-clockwise and negative the other way', () => {
    const square = [point(0, 0), point(2, 0), point(2, 3), point(0, 3)];
    expect(signedArea(square)).toBe(6);
    expect(signedArea([...square].reverse())).toBe(-6);
    expect(signedArea([])).toBe(0);
  });
});

describe('what counts as equal', () => {
  test('exactly on the limit meets it, and so does the dust of a float', () => {
    expect([atMost(10, 10), atMost(10 + 1e-9, 10), atMost(10 + 1e-5, 10)]).toEqual([true, true, false]);
    expect([atLeast(10, 10), atLeast(10 - 1e-9, 10), atLeast(10 - 1e-5, 10)]).toEqual([true, true, false]);
  });

  test('dust is nothing', () => {
    expect([isPositive(1e-5), isPositive(1e-9), isPositive(0), isPositive(-1)]).toEqual([true, false, false, false]);
  });
});
