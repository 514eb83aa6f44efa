import { describe, expect, it } from 'vitest';
import { UNCORRECTED } from '../../src/core/drawing/correction';
import { mirrored } from '../../src/core/drawing/template';
import { makeTemplate } from '../../src/core/drawing/templatePages';
import { OVERLAP, windowsOf } from '../../src/core/drawing/tiles';
import type { Point } from '../../src/core/geometry/point';
import type { JudgedPlan } from '../../src/core/plan/planStair';
import { pdfOf } from '../../src/export/pdf';
import { paperWords } from '../../src/export/sheets/packagePages';
import { changed, DECK, LOFT, planOf, SLAB } from '../fixtures/stairs';
import { MM_PER_INCH, type ReadLine, readPdf } from './readPdf';
import { FONTS, SAY, templatePages } from './sheets';

const CLOSE = 0.01;
const CUT_PEN = 0.35;
const WORDS = paperWords(SAY);

const loft = planOf(LOFT);
const slab = planOf(SLAB);
const flush = planOf(changed(LOFT, { stringer: { top: 'level-with-floor', topTreadRun: '3 1/2 in', hanger: '0 in' } }));
const inset = planOf(changed(LOFT, { stringer: { tipInset: '1/4 in' } }));

/** Lines of the cutting pen, moved back into the template's own frame. */
async function cutsOn(
  plan: JudgedPlan,
  name: 'heel' | 'topEnd' | 'stringer' | 'triangle',
  paper: 'letter' | 'a4' | 'roll36',
) {
  const pages = templatePages(plan, [name], { paper });
  const { pages: read } = await readPdf(await pdfOf(pages, FONTS));
  return read.flatMap((page, i) => {
    const tile = pages[i]?.tiles[0];
    if (tile === undefined) throw new Error('no tile');
    const back = ([x, y]: readonly [number, number]): Point => ({
      x: x - tile.at.x + tile.window.left,
      y: y - tile.at.y + tile.window.bottom,
    });
    const cuts = page.lines.filter(({ width, dashed }) => Math.abs(width - CUT_PEN) < 0.001 && !dashed);
    return cuts.map(({ points }): readonly [Point, Point] => [back(points[0] as never), back(points[1] as never)]);
  });
}

/** How far a point is from the line through two others, and where along it, in mm. */
function against(p: Point, a: Point, b: Point): { readonly off: number; readonly along: number } {
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  const [dx, dy] = [(b.x - a.x) / length, (b.y - a.y) / length];
  return { off: Math.abs((p.x - a.x) * dy - (p.y - a.y) * dx), along: (p.x - a.x) * dx + (p.y - a.y) * dy };
}

/** The parts of an edge that some line of the paper covers, as lengths along it. */
function covered(
  a: Point,
  b: Point,
  lines: readonly (readonly [Point, Point])[],
): readonly (readonly [number, number])[] {
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  return lines.flatMap(([from, to]) => {
    const [start, end] = [against(from, a, b), against(to, a, b)];
    const on = [start, end].every(({ off, along }) => off < CLOSE && along > -CLOSE && along < length + CLOSE);
    return on ? [[Math.min(start.along, end.along), Math.max(start.along, end.along)] as const] : [];
  });
}

function gapIn(parts: readonly (readonly [number, number])[], length: number): number {
  let reached = 0;
  let gap = 0;
  for (const [from, to] of [...parts].sort((one, other) => one[0] - other[0])) {
    gap = Math.max(gap, from - reached);
    reached = Math.max(reached, to);
  }
  return Math.max(gap, length - reached);
}

describe('what a template is cut by', () => {
  it.each([
    ['loft', loft],
    ['slab', slab],
    ['deck', planOf(DECK)],
    ['level with the floor', flush],
    ['tips held back', inset],
  ])('lies where the layout has it, to a hundredth of a millimetre: %s', async (_name, plan) => {
    const { outline } = plan.layout.stringer;
    for (const part of ['heel', 'topEnd'] as const) {
      const cuts = await cutsOn(plan, part, 'letter');
      expect(cuts.length).toBeGreaterThan(2);
      for (const cut of cuts) {
        const edges = outline.map((a, i) => covered(a, outline[(i + 1) % outline.length] as Point, [cut]));
        expect(edges.flat(), `${part} ${JSON.stringify(cut)}`).not.toEqual([]);
      }
    }
  });

  it('is the whole stringer on a roll, end to end', async () => {
    for (const plan of [loft, slab, flush]) {
      const template = makeTemplate('stringer', plan, 'right', WORDS, FONTS.measure);
      const cuts = await cutsOn(plan, 'stringer', 'roll36');
      for (const mark of template.marks.filter(({ role }) => role === 'template-cut')) {
        if (mark.kind !== 'shape') continue;
        const [a, b] = mark.corners as [Point, Point];
        expect(gapIn(covered(a, b, cuts), Math.hypot(b.x - a.x, b.y - a.y))).toBeLessThan(CLOSE);
      }
    }
  });

  it('loses nothing when it is cut into Letter or A4 sheets', async () => {
    for (const [plan, paper] of [
      [loft, 'letter'],
      [slab, 'a4'],
    ] as const) {
      const template = makeTemplate('stringer', plan, 'right', WORDS, FONTS.measure);
      const cuts = await cutsOn(plan, 'stringer', paper);
      for (const mark of template.marks.filter(({ role }) => role === 'template-cut')) {
        if (mark.kind !== 'shape') continue;
        const [a, b] = mark.corners as [Point, Point];
        expect(gapIn(covered(a, b, cuts), Math.hypot(b.x - a.x, b.y - a.y))).toBeLessThan(CLOSE);
      }
    }
  });

  it('gives the triangle its run, unit rise and step length', async () => {
    const pages = templatePages(loft, ['triangle']);
    const { pages: read } = await readPdf(await pdfOf(pages, FONTS));
    const cuts = (read[0]?.lines ?? []).filter(({ width }) => Math.abs(width - CUT_PEN) < 0.001);
    const { run, unitRise } = loft.layout.flight;
    expect(cuts.map(lengthOf)).toEqual([expect.closeTo(run, 3), expect.closeTo(unitRise, 3)]);
  });

  it('is the same seen in a mirror for the other hand', () => {
    for (const name of ['triangle', 'heel', 'topEnd', 'stringer', 'marksStrip'] as const) {
      const right = makeTemplate(name, loft, 'right', WORDS, FONTS.measure);
      const left = makeTemplate(name, loft, 'left', WORDS, FONTS.measure);
      expect(left.hand).toBe('left');
      expect(mirrored(left).marks).toEqual(right.marks);
    }
    expect(makeTemplate('poleStrip', loft, 'left', WORDS, FONTS.measure)).toEqual(
      makeTemplate('poleStrip', loft, 'right', WORDS, FONTS.measure),
    );
  });
});

function lengthOf({ points }: ReadLine): number {
  const [[ax, ay], [bx, by]] = points as unknown as [[number, number], [number, number]];
  return Math.hypot(bx - ax, by - ay);
}

describe('tiles', () => {
  const plans = [loft, slab];
  const rooms = [
    { width: 253, height: 160 },
    { width: 180, height: 230 },
    { width: 60, height: 40 },
  ];

  it('cover a template once, and twice only where neighbours overlap', () => {
    for (const plan of plans) {
      for (const name of ['heel', 'topEnd', 'stringer', 'triangle'] as const) {
        const template = makeTemplate(name, plan, 'right', WORDS, FONTS.measure);
        for (const room of rooms) {
          const windows = windowsOf(template, room, plan.layout.job.units).map(({ window }) => window);
          for (const side of ['x', 'y'] as const) {
            const spans = windows.map(
              (w) => (side === 'x' ? [w.left, w.right] : [w.bottom, w.top]) as [number, number],
            );
            const unique = [...new Map(spans.map((span) => [span.join(), span])).values()].sort((a, b) => a[0] - b[0]);
            const { extent } = template;
            const [from, to] = side === 'x' ? [extent.left, extent.right] : [extent.bottom, extent.top];
            expect(unique[0]?.[0]).toBeLessThanOrEqual(from);
            expect(unique.at(-1)?.[1]).toBeGreaterThanOrEqual(to);
            unique.slice(1).forEach(([start], i) => {
              const before = unique[i] as [number, number];
              const shared = before[1] - start;
              expect(shared).toBeGreaterThan(OVERLAP - CLOSE);
              expect(shared).toBeLessThan(OVERLAP + 5);
              // The next but one begins after this one has ended.
              const third = unique[i + 2];
              if (third !== undefined) expect(third[0]).toBeGreaterThan(before[1] - CLOSE);
            });
          }
        }
      }
    }
  });

  it('have their edges on whole quarter inches or 5 mm from the first tip', () => {
    for (const [plan, grid] of [
      [loft, MM_PER_INCH / 4],
      [slab, 5],
    ] as const) {
      const template = makeTemplate('stringer', plan, 'right', WORDS, FONTS.measure);
      for (const { window } of windowsOf(template, { width: 253, height: 160 }, plan.layout.job.units)) {
        for (const edge of [window.left - template.datum.x, window.right - template.datum.x]) {
          expect(Math.abs(edge / grid - Math.round(edge / grid))).toBeLessThan(1e-6);
        }
      }
    }
  });

  it('show their crosses at the same place on both sides of a seam', () => {
    for (const name of ['stringer', 'marksStrip', 'heel'] as const) {
      const pages = templatePages(loft, [name]);
      const template = makeTemplate(name, loft, 'right', WORDS, FONTS.measure);
      const own = new Set(
        template.marks.flatMap((mark) =>
          mark.kind === 'shape' && mark.role === 'registration' ? [place(mark.corners)] : [],
        ),
      );
      const seen = new Map<string, number>();
      for (const page of pages) {
        for (const mark of page.marks) {
          if (mark.kind !== 'shape' || mark.role !== 'registration') continue;
          const tile = page.tiles.find(({ at, window }) => {
            const [x, y] = middle(mark.corners);
            return (
              x >= at.x - 5 &&
              x <= at.x + window.right - window.left + 5 &&
              y >= at.y - 0.1 &&
              y <= at.y + window.top - window.bottom + 0.1
            );
          });
          if (tile === undefined) continue;
          const key = place(
            mark.corners.map(({ x, y }) => ({
              x: x - tile.at.x + tile.window.left,
              y: y - tile.at.y + tile.window.bottom,
            })),
          );
          if (!own.has(key)) seen.set(key, (seen.get(key) ?? 0) + 1);
        }
      }
      // Crosses of the template itself are larger, and may be cut by a window's edge.
      const seams = [...seen].filter(([key]) => key.endsWith(' 8.00'));
      expect(seams.length).toBeGreaterThan(1);
      // Two arms on each of two neighbours.
      for (const [key, times] of seams) expect(times, `${name} ${key}`).toBe(4);
    }
  });
});

function middle(corners: readonly Point[]): readonly [number, number] {
  const [a, b] = corners as [Point, Point];
  return [(a.x + b.x) / 2, (a.y + b.y) / 2];
}

function place(corners: readonly Point[]): string {
  const [a, b] = corners as [Point, Point];
  const [x, y] = middle(corners);
  return [x, y, Math.hypot(b.x - a.x, b.y - a.y)].map((value) => value.toFixed(2)).join(' ');
}

describe('how much paper it takes', () => {
  it('triangle, heel and top end of the main job: six Letter sheets at most', () => {
    expect(templatePages(loft, ['triangle', 'heel', 'topEnd']).length).toBeLessThanOrEqual(6);
    expect(templatePages(slab, ['triangle', 'heel', 'topEnd'], { paper: 'a4' }).length).toBeLessThanOrEqual(6);
  });

  it('marks and story pole of fourteen risers: six at most', () => {
    expect(loft.layout.flight.risers).toBe(14);
    expect(templatePages(loft, ['marksStrip', 'poleStrip']).length).toBeLessThanOrEqual(6);
    expect(templatePages(slab, ['marksStrip', 'poleStrip'], { paper: 'a4' }).length).toBeLessThanOrEqual(6);
  });

  it('a whole stringer on a roll: one sheet, and never longer than a PDF page can be', () => {
    const long = planOf(
      changed(LOFT, { survey: { rise: '170 in', openingFraming: '220 in' }, steps: { risers: 22, run: '11 in' } }),
    );
    expect(templatePages(loft, ['stringer'], { paper: 'roll36' })).toHaveLength(1);
    const pages = templatePages(long, ['stringer'], { paper: 'roll36' });
    expect(pages.length).toBeGreaterThan(1);
    for (const { sheet } of pages) expect(sheet.width).toBeLessThanOrEqual((14_400 / 72) * MM_PER_INCH);
  });
});

describe('strips', () => {
  it('have their ticks where the printed numbers say', () => {
    const strip = makeTemplate('marksStrip', loft, 'right', WORDS, FONTS.measure);
    const from = loft.sheet.tips[0] as number;
    const ticks = strip.marks.flatMap((mark) =>
      mark.kind === 'shape' && mark.corners[0]?.x === mark.corners[1]?.x ? [(mark.corners[0]?.x ?? 0) + from] : [],
    );
    for (const mark of [...loft.sheet.tips, ...loft.sheet.corners, loft.sheet.end]) {
      expect(Math.min(...ticks.map((tick) => Math.abs(tick - mark)))).toBeLessThan(1e-9);
    }
  });

  it('say every number of the sheet on some lane', () => {
    const pages = templatePages(slab, ['marksStrip'], { paper: 'a4', correction: UNCORRECTED });
    const said = pages.flatMap(({ marks }) =>
      marks.flatMap((mark) =>
        mark.kind === 'text' && mark.content.kind === 'digits' ? [Number(mark.content.text)] : [],
      ),
    );
    for (const mark of [...slab.sheet.tips, ...slab.sheet.corners, slab.sheet.end]) expect(said).toContain(mark);
  });
});
