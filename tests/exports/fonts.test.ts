import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readFace } from '../../src/export/font/face';
import { CATALOGUES } from '../../src/text/catalogues';
import { FONTS } from './sheets';

const files = ['regular', 'bold'].map((name) => readFileSync(`src/export/font/${name}.ttf`));
const faces = files.map((file) => readFace(file));

/** What figures, sums and typed lengths are made of. */
const SIGNS = '0123456789 /+−-.,×·°±≈≤≥½¼¾⅛⅜⅝⅞⅓⅔′″‘’“”„…–—←→↑↓▲□éèêëüöäßçñåøæ';

describe('the fonts of paper', () => {
  it('have every character that the program itself can say', () => {
    // Sums are written out on the screen alone; no sheet prints one.
    const texts = Object.values(CATALOGUES).flatMap((catalogue) =>
      Object.entries(catalogue).flatMap(([key, text]) => (key.startsWith('formula.') ? [] : [text])),
    );
    const said = new Set(Array.from(texts.join('') + SIGNS).filter((char) => char !== '\n'));
    for (const char of said) {
      for (const face of faces) expect(face.has(char.codePointAt(0) ?? 0), char).toBe(true);
    }
  });

  it('show what they lack as an empty box', () => {
    expect(FONTS.printable('a日🪜b')).toBe('a□□b');
    expect(FONTS.printable('½″ é')).toBe('½″ é');
  });

  it('are small, and have the same width for every digit', () => {
    for (const file of files) expect(file.length).toBeLessThan(60_000);
    for (const face of faces) {
      const widths = Array.from('0123456789', (digit) => face.advance(digit.codePointAt(0) ?? 0));
      expect(new Set(widths).size).toBe(1);
      expect(widths[0]).toBeGreaterThan(0.5);
    }
  });

  it('come with their licence', () => {
    expect(readFileSync('src/export/font/LICENSE.txt', 'utf8')).toContain('Permission is hereby granted');
  });
});
