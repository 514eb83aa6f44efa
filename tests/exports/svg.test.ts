// @vitest-environment jsdom
import { describe, expect, it } from 'vitest';
import { elevationFile, stringerSvgFile } from '../../src/export/stairFiles';
import { LOFT, planOf } from '../fixtures/stairs';
import { NAMES, named, sourceOf, textOf } from './asNamed';
import { choiceOf } from './sheets';

describe('SVG', () => {
  const ALLOWED = new Set(['svg', 'title', 'rect', 'polygon', 'polyline', 'line', 'text']);

  it.each(NAMES)('is inert, and well formed: %j', async (name) => {
    for (const file of [elevationFile, stringerSvgFile]) {
      const text = await textOf(file(sourceOf(named(LOFT, name)), choiceOf()));
      const document = new DOMParser().parseFromString(text, 'image/svg+xml');
      for (const element of document.querySelectorAll('*')) {
        expect(ALLOWED).toContain(element.tagName);
        for (const { name: attribute } of element.attributes) expect(attribute).not.toMatch(/^on|href|style/);
      }
    }
  });

  it('is as wide as the board at full size', async () => {
    const text = await textOf(stringerSvgFile(sourceOf(LOFT), choiceOf()));
    const [, width = '', box = ''] = /width="([\d.]+)mm".* viewBox="0 0 ([\d.]+) /.exec(text) ?? [];
    expect(width).toBe(box);
    const { stringer } = planOf(LOFT).layout;
    expect(Number(width)).toBeCloseTo(stringer.firstMark + stringer.endMark + stringer.trim + 12, 1);
  });
});
