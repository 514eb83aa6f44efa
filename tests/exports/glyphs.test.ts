/** What is sent to the writer of PDF files comes out of a reader: a glyph that was dropped on the way would be missing. */
import { describe, expect, it } from 'vitest';
import type { Page } from '../../src/core/drawing/page';
import { tapeParts } from '../../src/core/drawing/sketch';
import { pdfOf } from '../../src/export/pdf';
import { LOFT, planOf, SLAB } from '../fixtures/stairs';
import { named } from './asNamed';
import { readPdf } from './readPdf';
import { FONTS, packageOf, templatePages, textsOf } from './sheets';

const SIGNS = 'Été ½ ¼ ⅛ ⅜ ⅝ ⅞ ′ ″ − × · ° ≤ → æøå ñ';

/** Every code point of a page, sorted, without blanks: how a reader splits its texts does not matter then. */
function pointsSent(page: Page): string[] {
  const texts = textsOf(page).map(({ content }) => {
    if (content.kind !== 'tape') return content.text;
    const { whole, numerator, denominator, heavy } = tapeParts(content.number);
    return `${whole.replace('-', '−')}${numerator}${denominator}${heavy ? '+' : ''}`;
  });
  return sorted(texts.map(FONTS.printable).join(''));
}

function sorted(text: string): string[] {
  return Array.from(text.normalize('NFC').replace(/\s/g, '')).sort();
}

describe('the letters of a PDF', () => {
  it.each([
    ['the package', packageOf(named(LOFT, SIGNS))],
    ['a metric package', packageOf(SLAB, { paper: 'a4' })],
    ['templates', templatePages(planOf(LOFT), ['triangle', 'heel', 'topEnd', 'marksStrip', 'poleStrip'])],
  ])('all come out again: %s', async (_name, pages) => {
    const { pages: read } = await readPdf(await pdfOf(pages, FONTS));
    expect(read).toHaveLength(pages.length);
    read.forEach(({ texts }, i) => {
      expect(sorted(texts.map(({ text }) => text).join('')), `page ${i + 1}`).toEqual(pointsSent(pages[i] as Page));
    });
  });

  it('are missed where the font lacks them, and stand as boxes', async () => {
    const pages = packageOf(named(LOFT, '木 stair'), {}, ['cover']);
    const { pages: read } = await readPdf(await pdfOf(pages, FONTS));
    expect(read[0]?.texts.map(({ text }) => text).join(' ')).toContain('□ stair');
  });
});
