/**
 * What every drawing of every stair owes its reader: no text over another, nothing cut off by the
 * frame, and no number left out that a hand marks from.
 */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { beamHeight, drawBeam } from '../../src/core/drawing/beam';
import { drawBoard } from '../../src/core/drawing/board';
import { drawHeel, drawTopEnd } from '../../src/core/drawing/details';
import type { Box, Drawing, DrawingWord, Mark, Role, TextMark } from '../../src/core/drawing/drawing';
import { drawElevation, elevationHeight } from '../../src/core/drawing/elevation';
import { boxOf, overlap, textBox } from '../../src/core/drawing/sketch';
import { drawStep } from '../../src/core/drawing/stepDetail';
import { clipLineToBox } from '../../src/core/drawing/strip';
import type { Point } from '../../src/core/geometry/point';
import type { StairPlan } from '../../src/core/plan/planStair';
import { demoJob } from '../../src/document/demoJob';
import { speakerFor, type Terms } from '../../src/text/say';
import { nodesOf } from '../../src/ui/drawing/DrawingMarks';
import type { SvgNode } from '../../src/ui/drawing/paint';
import { anyStair, planOrSkip } from '../fixtures/anyStair';
import { holds, planned } from './measure';
import { randomStair } from './randomStairs';

const WIDTHS = [320, 768, 1180, 1920];
const wordsOf = (terms: Terms) => (word: DrawingWord) => speakerFor(terms)(`drawing.${word}`);
const words = wordsOf('us');

function textsOf({ marks }: Drawing): readonly TextMark[] {
  return marks.filter((mark): mark is TextMark => mark.kind === 'text');
}

function writing({ content }: TextMark): string {
  return content.kind === 'tape' ? JSON.stringify(content.number) : content.text;
}

function isIn(box: Box, frame: Box, slack: number): boolean {
  return (
    box.left >= frame.left - slack &&
    box.right <= frame.right + slack &&
    box.bottom >= frame.bottom - slack &&
    box.top <= frame.top + slack
  );
}

function boxOfMark(mark: Mark): Box {
  return mark.kind === 'text' ? textBox(mark) : boxOf(mark.corners);
}

/** Throws where a text lies over another one, or a mark outside of the frame. */
function mustBeReadable(name: string, drawing: Drawing): void {
  const { frame, perPixel } = drawing;
  const slack = perPixel * 0.01;
  for (const mark of drawing.marks) {
    const what = mark.kind === 'text' ? writing(mark) : mark.role;
    holds(isIn(boxOfMark(mark), frame, slack), `${name}: ${what} sticks out of the frame`);
  }
  const texts = textsOf(drawing).map((text) => ({ text, box: textBox(text) }));
  texts.forEach(({ text, box }, i) => {
    for (const other of texts.slice(i + 1)) {
      holds(!overlap(box, other.box), `${name}: ${writing(text)} lies over ${writing(other.text)}`);
    }
  });
  for (const { text, box } of texts) {
    if (!STANDS_FREE.includes(text.role)) continue;
    for (const [a, b] of drawing.marks.flatMap(dimensionLines)) {
      holds(clipLineToBox(a, b, box) === null, `${name}: a dimension line goes through ${writing(text)}`);
    }
  }
}

/** Numbers in corners and in the wood have lines round them, and are in the way of none. */
const STANDS_FREE: readonly Role[] = ['number-main', 'number', 'caption'];

function dimensionLines(mark: Mark): readonly (readonly [Point, Point])[] {
  if (mark.kind !== 'shape' || mark.role !== 'dimension') return [];
  return mark.corners.slice(1).map((corner, i) => [mark.corners[i] as Point, corner] as const);
}

function drawingsOf(plan: StairPlan, width: number, zoom: number): [string, Drawing][] {
  const view = (height: number) => ({ width, height, zoom });
  return [
    ['elevation', drawElevation(plan, view(elevationHeight(width, plan)), words)],
    ['low elevation', drawElevation(plan, view(260), words)],
    ['board', drawBoard(plan, view(0), words)],
    ['heel', drawHeel(plan, view(300), words)],
    ['top end', drawTopEnd(plan, view(300), words)],
    ['beam', drawBeam(plan, view(beamHeight(width, plan)), words)],
    ['low beam', drawBeam(plan, view(240), words)],
    ['notch', drawStep(plan, view(300), words)],
  ];
}

test('no text lies over another, and nothing leaves the frame, 500 stairs at four widths', () => {
  fc.assert(
    fc.property(randomStair, fc.constantFrom(1, 1, 1.5, 3, 8), (stair, zoom) => {
      const plan = planned(stair);
      for (const width of WIDTHS) {
        for (const [name, drawing] of drawingsOf(plan, width, zoom)) {
          mustBeReadable(`${name} at ${width}, ${zoom} times`, drawing);
        }
      }
    }),
    { numRuns: 500 },
  );
}, 120_000);

/** A drawing is looked at and dragged on a slow tablet: the browser has to keep up with it. */
const MOST_NODES = 800;

test('a stair of twenty risers has at most 800 nodes on the page, with all its dimensions', () => {
  for (const units of ['imperial', 'metric'] as const) {
    const plan = planOrSkip({ ...demoJob, units, stairs: [twentyRisers()] });
    expect(plan.layout.flight.risers).toBe(20);
    for (const width of [...WIDTHS, 3000]) {
      for (const [name, drawing] of drawingsOf(plan, width, 1)) {
        const nodes = countNodes(nodesOf(drawing, null));
        holds(nodes <= MOST_NODES, `${name} at ${width}: ${nodes} nodes`);
      }
    }
    const most = drawElevation(plan, { width: 1920, height: 1200, zoom: 8 }, words);
    const abouts = new Set(textsOf(most).map((text) => text.about));
    for (const needed of [
      'totalRise',
      'totalRun',
      'survey.openingFraming',
      'headroom',
      'headerMark',
      'risers',
      'treads',
    ])
      holds(abouts.has(needed), `the largest drawing has no ${needed}`);
    expect(countNodes(nodesOf(most, null))).toBeLessThanOrEqual(MOST_NODES);
  }
});

function twentyRisers() {
  const [stair] = demoJob.stairs;
  if (stair === undefined) throw new Error('the example has no stair');
  return { ...stair, survey: { ...stair.survey, rise: '149 7/16 in' }, steps: { ...stair.steps, risers: 20 } };
}

function countNodes(nodes: readonly SvgNode[]): number {
  return nodes.reduce((sum, { content }) => sum + 1 + (Array.isArray(content) ? countNodes(content) : 0), 0);
}

test('nor with finishes that nobody knows and keys left out', () => {
  fc.assert(
    fc.property(anyStair, (job) => {
      const plan = planOrSkip(job);
      for (const width of WIDTHS) {
        for (const [name, drawing] of drawingsOf(plan, width, 1)) mustBeReadable(`${name} at ${width}`, drawing);
      }
    }),
    { numRuns: 100 },
  );
}, 120_000);

test('every tip and every corner has its number on the board, at any width', () => {
  fc.assert(
    fc.property(anyStair, (job) => {
      const plan = planOrSkip(job);
      for (const width of WIDTHS) {
        const about = new Set(textsOf(drawBoard(plan, { width, height: 0 }, words)).map((text) => text.about));
        plan.sheet.tips.forEach((_, i) => {
          holds(about.has(`tip:${i + 1}`), `tip ${i + 1} has no number at ${width}`);
        });
        plan.sheet.corners.forEach((_, i) => {
          holds(about.has(`corner:${i + 1}`), `corner ${i + 1} has no number at ${width}`);
        });
        holds(about.has('end'), `the end has no number at ${width}`);
      }
    }),
    { numRuns: 100 },
  );
}, 60_000);

test('total rise and run are on the elevation of any ordinary stair, however small', () => {
  fc.assert(
    fc.property(anyStair, (job) => {
      const plan = planOrSkip(job);
      for (const width of WIDTHS) {
        const view = { width, height: elevationHeight(width, plan) };
        const about = new Set(textsOf(drawElevation(plan, view, words)).map((text) => text.about));
        for (const needed of ['totalRise', 'totalRun']) holds(about.has(needed), `no ${needed} at ${width}`);
      }
    }),
    { numRuns: 100 },
  );
}, 60_000);

test('a closer look keeps everything in its place and only adds numbers', () => {
  fc.assert(
    fc.property(anyStair, fc.constantFrom(...WIDTHS), (job, width) => {
      const plan = planOrSkip(job);
      const height = elevationHeight(width, plan);
      const [far, near] = [1, 4].map((zoom) => drawElevation(plan, { width, height, zoom }, words)) as [
        Drawing,
        Drawing,
      ];
      expect(near.frame).toEqual(far.frame);
      expect(near.perPixel).toBeCloseTo(far.perPixel / 4, 9);
      const wood = (drawing: Drawing) => drawing.marks.filter(({ role }) => role === 'stringer' || role === 'tread');
      expect(wood(near)).toEqual(wood(far));
      const abouts = (drawing: Drawing) => new Set(textsOf(drawing).map((text) => text.about));
      for (const about of ['totalRise', 'totalRun', 'headroom']) {
        holds(!abouts(far).has(about) || abouts(near).has(about), `${about} is gone when one comes closer`);
      }
    }),
    { numRuns: 60 },
  );
}, 60_000);

test('the span and the throat are on the beam of any ordinary stair, however small', () => {
  fc.assert(
    fc.property(anyStair, (job) => {
      const plan = planOrSkip(job);
      for (const width of WIDTHS) {
        const about = new Set(textsOf(drawBeam(plan, { width, height: beamHeight(width, plan) }, words)).map(by));
        holds(about.has('span'), `no span at ${width}`);
        // Two steps fill a phone with their dimensions; the figure stands in the list below.
        if (plan.layout.flight.treads > 3) holds(about.has('throat'), `no throat at ${width}`);
      }
    }),
    { numRuns: 100 },
  );

  function by({ about }: TextMark) {
    return about;
  }
}, 60_000);
