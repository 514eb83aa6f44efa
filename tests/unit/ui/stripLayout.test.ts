import { describe, expect, it } from 'vitest';
import { layStrip } from '../../../src/ui/results/stripLayout';

const strip = (
  count: number,
  riser: number,
  units: 'imperial' | 'metric',
  width: number,
  limit: number | null = null,
) =>
  layStrip(
    Array.from({ length: count }, () => riser),
    limit,
    units,
    width,
  );

describe('the riser strip', () => {
  it('sets its figures smaller before it takes a second row', () => {
    const [large, small, smaller] = [1400, 880, 700].map((width) => strip(13, 200.5, 'metric', width));
    expect([large, small, smaller].map((one) => one?.rows.length)).toEqual([1, 1, 1]);
    const sizes = [large, small, smaller].map((one) => one?.rows[0]?.boards[1]?.size);
    expect(sizes).toEqual([22, 18, 15]);
  });

  it('has large figures again where one row holds them at no size', () => {
    const { rows } = strip(40, 200.5, 'metric', 760);
    expect(rows.length).toBeGreaterThan(1);
    expect(rows[0]?.boards[1]?.size).toBe(22);
    expect(rows.flatMap(({ boards }) => boards.map(({ number }) => number))).toEqual(
      Array.from({ length: 40 }, (_, i) => i + 1),
    );
  });

  it.each([320, 480, 760, 1100, 1600])('no board goes beyond a place %d wide, nor over the next one', (width) => {
    for (const count of [2, 7, 14, 22]) {
      const limit = 9.525;
      for (const { boards } of strip(count, 191.5, 'imperial', width, limit).rows) {
        expect((boards.at(-1)?.left ?? 0) + (boards.at(-1)?.width ?? 0)).toBeLessThanOrEqual(width);
        for (const [i, board] of boards.slice(1).entries()) {
          const before = boards[i];
          expect(board.left).toBeGreaterThan((before?.left ?? 0) + (before?.width ?? 0));
        }
      }
    }
  });
});
