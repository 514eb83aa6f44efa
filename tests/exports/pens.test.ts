import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Role } from '../../src/core/drawing/drawing';
import { ROLE_PENS } from '../../src/core/drawing/pens';
import { colourPen } from '../../src/export/colourPens';
import { PAPER_PENS } from '../../src/export/paperPens';

/** Widths in the style sheet of the screen → the weights that they stand for. */
const SCREEN: Readonly<Record<string, readonly string[]>> = {
  'var(--ln)': ['fine', 'narrow'],
  'var(--lw)': ['middle', 'wide'],
  'calc(var(--lw) * 1.5)': ['heavy'],
};

describe('pens', () => {
  it('are on the screen what the drawing model says, for every role that has one there', () => {
    const css = readFileSync('src/ui/look/pens.css', 'utf8');
    const roles = new Set<string>();
    for (const [, selectors = '', body = ''] of css.matchAll(/([^{}]+)\{([^{}]*)\}/g)) {
      const width = /stroke-width: ([^;]+);/.exec(body)?.[1];
      if (width === undefined) continue;
      for (const [, role = ''] of selectors.matchAll(/\.role-([a-z-]+)/g)) {
        const pen = ROLE_PENS[role as Role];
        expect(SCREEN[width], `${role}: ${width}`).toContain(pen.weight);
        const dash = /stroke-dasharray: ([^;]+);/.exec(body)?.[1] ?? '';
        expect(dash, role).toBe(colourPen(role as Role).dash.join(' '));
        roles.add(role);
      }
    }
    expect(roles.size).toBeGreaterThan(15);
  });

  it('are narrow to wide as one to two, in the series of technical pens', () => {
    // ISO 128-2: 0.13 · 0.18 · 0.25 · 0.35 · 0.5 · 0.7 · 1 · 1.4 · 2 mm. From memory.
    const series = new Set([0.13, 0.18, 0.25, 0.35, 0.5, 0.7, 1, 1.4, 2]);
    for (const { width } of Object.values(PAPER_PENS)) if (width > 0) expect(series).toContain(width);
    expect(PAPER_PENS.stringer.width / PAPER_PENS.dimension.width).toBe(2);
    expect(PAPER_PENS.tick.width).toBeGreaterThan(PAPER_PENS.dimension.width);
  });
});
