// @vitest-environment jsdom
import { describe, expect, it } from 'vitest';
import { boardFrame, toBoard } from '../../src/core/stringer/board';
import { elevationFile, stringerSvgFile } from '../../src/export/stairFiles';
import { LOFT, planOf, SLAB } from '../fixtures/stairs';
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

  it.each([
    ['imperial', LOFT],
    ['metric', SLAB],
  ])('has the corners of the layout within a hundredth of a millimetre, measured in it: %s', async (_units, job) => {
    const text = await textOf(stringerSvgFile(sourceOf(job), choiceOf()));
    const document = new DOMParser().parseFromString(text, 'image/svg+xml');
    const { layout } = planOf(job);
    const { stringer, flight } = layout;
    const frame = boardFrame(flight, stringer.tipInset);
    const ends = [...document.querySelectorAll('polyline[stroke-width="0.52"]')].flatMap((line) =>
      (line.getAttribute('points') ?? '').split(' ').map((pair) => pair.split(',').map(Number)),
    );
    // The first corner of the board's upper edge is the origin of what is measured along it.
    const board = [...document.querySelectorAll('polyline[stroke-width="0.26"]')].map((line) =>
      (line.getAttribute('points') ?? '').split(' ').map((pair) => pair.split(',').map(Number)),
    );
    const [[left = 0, edge = 0] = []] = board.find(([a, b]) => a?.[1] === b?.[1]) ?? [[]];
    const off = (u: number, v: number) =>
      Math.min(...ends.map(([x = 0, y = 0]) => Math.hypot(x - left - stringer.firstMark - u, y - edge - v)));
    for (const corner of stringer.outline) {
      const { x: u, y: v } = toBoard(frame, corner);
      expect(off(u, v)).toBeLessThan(0.01);
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
