import { describe, expect, it } from 'vitest';
import type { JobText } from '../../../src/core/job/jobText';
import { readWishes, type WishTexts } from '../../../src/core/search/readWishes';
import { edgesOf, kindsIn, type Region, regionOf, spotAt, stretchesOf } from '../../../src/core/search/region';
import { searchLayouts } from '../../../src/core/search/searchLayouts';
import { askSearch } from '../../../src/core/search/wishes';
import { BOOK, changed, LOFT } from '../../fixtures/stairs';

const LONG = changed(LOFT, { survey: { openingFraming: '131 in' } });

function region(job: JobText, texts: WishTexts = {}, now = { risers: 14, steps: 160 }): Region {
  const read = readWishes(texts, 'imperial', BOOK);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const search = askSearch(job, 0, BOOK, read.value.wishes);
  if (!search.ok) throw new Error(JSON.stringify(search.problems));
  const steps = searchLayouts(search.value);
  for (;;) {
    const { done, value } = steps.next();
    if (done === true) return regionOf({ result: value }, 'hanger-is-riser', now);
  }
}

function row({ rows }: Region, risers: number) {
  const found = rows.find((each) => each.risers === risers);
  if (found === undefined) throw new Error(`no row for ${risers}`);
  return found;
}

describe('the region', () => {
  it('has a row either side of what fits, and an inch of run', () => {
    const { rows, from, to } = region(LONG);
    expect(rows.map(({ risers }) => risers)).toEqual([13, 14, 15]);
    expect(from).toBe(144);
    expect(to).toBeGreaterThanOrEqual(176);
    for (const { cells } of rows) expect(cells).toHaveLength(to - from + 1);
  });

  it('says in each cell what closes it', () => {
    const all = region(LONG, { run: '131 in', longest: '13 ft' });
    const at = (risers: number, steps: number) => kindsIn(row(all, risers).cells[steps - all.from] as number);
    // 9 15/16 in is under the least run; 13 × 10 1/16 and 3/4 of hanger are over 131 in of floor.
    expect(at(14, 159)).toEqual(['rule', 'stock']);
    expect(at(14, 161)).toContain('run');
    expect(at(13, 160)).toContain('rule');
    expect(at(15, 170)).toContain('headroom');
  });

  it('has an edge of each kind where the next run is closed by it, or no longer', () => {
    const all = region(LONG, { run: '131 in' });
    const edges = edgesOf(row(all, 14), all.from);
    expect(edges).toContainEqual({ kind: 'rule', at: 159.5, closesLonger: false });
    expect(edges).toContainEqual({ kind: 'run', at: 160.5, closesLonger: true });
    const head = edgesOf(row(region(LONG), 14), all.from).find(({ kind }) => kind === 'headroom');
    // 80 in over 13 1/4 in of floor, as the trade reckons it: the opening is (80 + 13 1/4) G / R + n.
    const R = 105.5625 / 14;
    const longest = (131 - 0.5 - 0.75 - 1.125) / (93.25 / R);
    expect((head?.at ?? 0) / 16).toBeCloseTo(Math.floor(longest * 16) / 16 + 1 / 32, 9);
  });

  it('joins neighbouring cells into stretches, one after the other without a gap', () => {
    const all = region(LONG);
    for (const each of all.rows) {
      const stretches = stretchesOf(each, all.from);
      expect(stretches[0]?.from).toBe(all.from);
      expect(stretches.at(-1)?.to).toBe(all.to);
      stretches.slice(1).forEach((stretch, i) => {
        expect(stretch.from).toBe((stretches[i]?.to ?? 0) + 1);
        expect(stretch.cell).not.toBe(stretches[i]?.cell);
      });
    }
  });

  it('is drawn about the stair in hand where nothing fits, and of nothing more than nine rows', () => {
    const none = region(changed(LOFT, { survey: { openingFraming: '100 in' } }));
    expect(none.rows.map(({ risers }) => risers)).toEqual([12, 13, 14, 15, 16]);
    expect(none.from).toBe(128);
    expect(none.rows.every(({ cells }) => cells.every((cell) => cell !== 0))).toBe(true);
    const many = region(changed(LOFT, { survey: { openingFraming: undefined } }), {}, { risers: 20, steps: 160 });
    expect(many.rows.map(({ risers }) => risers)).toEqual([16, 17, 18, 19, 20, 21, 22, 23, 24]);
  });
});

describe('where a finger comes down', () => {
  it('the nearest that fits within its reach is meant, else the place itself', () => {
    const all = region(LONG);
    expect(spotAt(all, 1, 150, 12)).toEqual({ risers: 14, steps: 160 });
    expect(spotAt(all, 1, 150.4, 4)).toEqual({ risers: 14, steps: 150 });
    expect(spotAt(all, 1, 162, 12)).toEqual({ risers: 14, steps: 162 });
    expect(spotAt(all, 0, 900, 0)).toEqual({ risers: 13, steps: all.to });
    expect(spotAt(all, 7, 160, 0)).toBeNull();
  });
});
