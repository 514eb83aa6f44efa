/**
 * A printer that feeds half a per cent too far, sheet after sheet. Each sheet carries its own error and no
 * other's: its edge is set to one tape line by the distance that is printed on it. Sheets that were taped edge
 * to edge would add the errors up.
 */
import { describe, expect, it } from 'vitest';
import { makeTemplate } from '../../src/core/drawing/templatePages';
import { parseLength } from '../../src/core/units/length';
import { paperWords } from '../../src/export/sheets/packagePages';
import { LOFT, planOf, SLAB } from '../fixtures/stairs';
import { MM_PER_INCH } from './readPdf';
import { FONTS, SAY, templatePages, textsOf } from './sheets';

/** A longer sheet than it should be, both ways at once. */
const FEED = 1.005;

const CASES = [
  ['stringer', LOFT, 'letter'],
  ['stringer', SLAB, 'a4'],
  ['marksStrip', LOFT, 'letter'],
  ['poleStrip', SLAB, 'a4'],
] as const;

describe.each(CASES)('%s on a printer that feeds too far', (name, job, paper) => {
  const plan = planOf(job);
  const template = makeTemplate(name, plan, 'right', paperWords(SAY), FONTS.measure);
  const tiles = templatePages(plan, [name], { paper }).flatMap((page) => page.tiles.map((tile) => ({ page, tile })));

  it('says on every tile where its left edge lies on the tape', () => {
    for (const { page, tile } of tiles) {
      const said = textsOf(page).flatMap(({ content, at }) => {
        const text = content.kind === 'words' ? /^← (−?)(.+)$/.exec(content.text) : null;
        if (text === null || Math.abs(at.x - tile.at.x) > 15) return [];
        const bare = text[2] ?? '';
        const length = parseLength(plan.layout.job.units === 'metric' ? `${bare} mm` : `${bare} in`);
        if (!length.ok) throw new Error(`not a length: ${bare}`);
        const mm = Number(length.length.num) / Number(length.length.den);
        return [(text[1] === '' ? 1 : -1) * mm];
      });
      const true_ = tile.window.left - template.datum.x;
      expect(
        said.some((mm) => Math.abs(mm - true_) < 1e-6),
        `${said.join(' ')} for ${true_}`,
      ).toBe(true);
    }
  });

  it('is nowhere farther off than one sheet’s own error, however many there are', () => {
    let worst = 0;
    let widest = 0;
    for (const { tile } of tiles) {
      const { left, right } = tile.window;
      widest = Math.max(widest, right - left);
      for (const mark of template.marks) {
        if (mark.kind !== 'shape' || mark.role !== 'template-cut') continue;
        for (const { x } of mark.corners) {
          if (x < left || x > right) continue;
          // The sheet's left edge lies on its tape line; what is on it lies too far by the feed.
          worst = Math.max(worst, Math.abs(left + (x - left) * FEED - x));
        }
      }
    }
    expect(worst).toBeLessThanOrEqual((FEED - 1) * widest + 1e-9);
    // A sixteenth of an inch at most, where taping them edge to edge comes to far more at the last corner.
    expect(worst).toBeLessThan(MM_PER_INCH / 16);
    const { extent } = template;
    expect((FEED - 1) * (extent.right - extent.left)).toBeGreaterThan(worst * 4);
  });
});
