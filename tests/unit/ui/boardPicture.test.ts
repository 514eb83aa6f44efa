import { describe, expect, it } from 'vitest';
import { markLists } from '../../../src/core/stringer/markList';
import { boardPicture } from '../../../src/ui/walk/boardPicture';
import { DECK, LOFT, planOf, SLAB } from '../../fixtures/stairs';

/** The places of the picture on a small telephone, a larger one, a tablet and a desk, in pixels. */
const PLACES = [
  { width: 320, height: 104 },
  { width: 375, height: 104 },
  { width: 768, height: 90 },
  { width: 1440, height: 118 },
];

describe.each([
  ['loft', LOFT],
  ['deck', DECK],
  ['slab', SLAB],
])('the board of the %s stair in one-number mode', (_name, job) => {
  const plan = planOf(job);
  const { marks } = markLists(plan.layout, plan.sheet);

  it.each(PLACES)('stands within %o, its ends too', (size) => {
    for (const entry of marks) {
      const xs = boardPicture(plan, marks, entry, size).shapes.flatMap(({ corners }) => corners.map(({ x }) => x));
      expect(Math.min(...xs)).toBeGreaterThan(0);
      expect(Math.max(...xs)).toBeLessThan(size.width);
    }
  });

  it.each(PLACES)('shows a tip in %o with the tip before it and the one after', (size) => {
    const tips = marks.filter(({ what }) => what === 'tip');
    expect(tips.length).toBeGreaterThan(1);
    tips.forEach((entry, i) => {
      const picture = boardPicture(plan, marks, entry, size);
      const lit = picture.run[1];
      const shown = picture.marks.map(({ id }) => id);
      for (const near of tips.slice(Math.max(0, i - 1), i + 2)) expect(shown).toContain(near.id);
      expect(lit.x).toBeGreaterThan(0);
      expect(lit.x).toBeLessThan(size.width);
    });
  });
});
