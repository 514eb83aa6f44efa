/** Pages and files of a job, as the page and the command ask for them; and what is measured on them. */
import type { Correction } from '../../src/core/drawing/correction';
import { UNCORRECTED } from '../../src/core/drawing/correction';
import type { Box, Mark, TextMark } from '../../src/core/drawing/drawing';
import type { Page } from '../../src/core/drawing/page';
import { furnish } from '../../src/core/drawing/pageFrame';
import { printedBox } from '../../src/core/drawing/pageSketch';
import type { PaperName } from '../../src/core/drawing/paper';
import { clipLineToBox } from '../../src/core/drawing/strip';
import type { Hand, TemplateName } from '../../src/core/drawing/template';
import { draftTemplate } from '../../src/core/drawing/templatePages';
import type { Point } from '../../src/core/geometry/point';
import type { JobText } from '../../src/core/job/jobText';
import type { JudgedPlan } from '../../src/core/plan/planStair';
import { loadFonts } from '../../src/export/font/fonts';
import { PAPER_PENS } from '../../src/export/paperPens';
import { packagePages, paperWords } from '../../src/export/sheets/packagePages';
import { PACKAGE_SHEETS, type PackageSheet } from '../../src/export/sheets/sheetNames';
import { factsOf, type PaperChoice } from '../../src/export/stairFiles';
import { loadLumber } from '../../src/packs/lumber/lumber';
import { speakerFor } from '../../src/text/say';
import { planOf } from '../fixtures/stairs';
import { MM_PER_INCH } from './readPdf';

export const FONTS = await loadFonts();
export const LUMBER = await loadLumber();
export const SAY = speakerFor('us');

export interface Asked {
  readonly paper?: PaperName;
  readonly hand?: Hand;
  readonly correction?: Correction;
}

export function choiceOf({ paper = 'letter', hand = 'right', correction = UNCORRECTED }: Asked = {}): PaperChoice {
  return { paper, hand, correction, revision: 'B' };
}

export function templatePages(plan: JudgedPlan, names: readonly TemplateName[], asked: Asked = {}): readonly Page[] {
  const choice = choiceOf(asked);
  const facts = factsOf({ job: jobFor(plan), plan, say: SAY }, choice);
  if (!facts.ok) throw new Error('refused');
  const { paper, hand } = choice;
  const options = { paper, hand, correction: facts.value.correction };
  const words = paperWords(SAY);
  const drafts = names.flatMap((name) => draftTemplate(name, plan, options, words, FONTS.measure));
  return furnish(drafts, facts.value, words, FONTS.measure);
}

export function packageOf(job: JobText, asked: Asked = {}, sheets: readonly PackageSheet[] = PACKAGE_SHEETS) {
  const plan = planOf(job);
  const choice = choiceOf(asked);
  const facts = factsOf({ job, plan, say: SAY }, choice);
  if (!facts.ok) throw new Error('refused');
  return packagePages({ job, plan }, { sheets, paper: choice.paper, lumber: LUMBER }, facts.value, SAY, FONTS.measure);
}

function jobFor(plan: JudgedPlan): JobText {
  const { id, name } = plan.layout.job;
  return { format: 'pitchboard.job', version: 1, stairs: [{ id, name, survey: { rise: '' } }] };
}

export function textsOf({ marks }: Page): readonly TextMark[] {
  return marks.filter((mark): mark is TextMark => mark.kind === 'text');
}

/** Pairs of texts whose ink would touch. */
export function collisions(page: Page): string[] {
  const boxes = textsOf(page).map((mark) => ({ box: printedBox(mark, FONTS.measure), words: wordsOf(mark) }));
  return boxes.flatMap(({ box, words }, i) =>
    boxes
      .slice(i + 1)
      .flatMap((other) => (touch(box, other.box) ? [`${page.name}: "${words}" on "${other.words}"`] : [])),
  );
}

/**
 * What is wrong with a page's two bars, from its marks alone: one along each side, on a half inch, from one
 * corner, with their lengths said, and as long as the sheet allows.
 * @param least in inches: the longer and the shorter one
 */
export function barFaults(page: Page, [longer, shorter]: readonly [number, number]): string[] {
  const bars = page.marks.flatMap((mark) => {
    if (mark.kind !== 'shape' || mark.role !== 'proof-bar') return [];
    const [a, b] = mark.corners as [Point, Point];
    return [{ a, b, level: a.y === b.y, inches: Math.hypot(b.x - a.x, b.y - a.y) / MM_PER_INCH }];
  });
  const longest = (level: boolean) =>
    bars.filter((bar) => bar.level === level).sort((one, other) => other.inches - one.inches)[0];
  const [across, up] = [longest(true), longest(false)];
  if (across === undefined || up === undefined) return [`${page.name}: a bar is missing`];
  const said = textsOf(page).map(wordsOf).join(' ');
  const faults = [across, up].flatMap(({ inches }) => {
    const half = Math.round(inches * 2) / 2;
    const words = Number.isInteger(half) ? `${half} in` : `${Math.floor(half)} 1/2 in`;
    return [
      ...(Math.abs(inches - half) > 1e-6 ? [`${page.name}: a bar of ${inches} in`] : []),
      ...(said.includes(words) ? [] : [`${page.name}: "${words}" is not said`]),
    ];
  });
  const [long, short] = [Math.max(across.inches, up.inches), Math.min(across.inches, up.inches)];
  // Ink in line with a bar and touching it would be measured with it.
  for (const { a, b, level } of bars) {
    const own = level ? across : up;
    const inLine = level ? a.y === own.a.y : a.x === own.a.x;
    const within = level
      ? Math.min(a.x, b.x) >= Math.min(own.a.x, own.b.x) && Math.max(a.x, b.x) <= Math.max(own.a.x, own.b.x)
      : Math.min(a.y, b.y) >= Math.min(own.a.y, own.b.y) && Math.max(a.y, b.y) <= Math.max(own.a.y, own.b.y);
    if (inLine && !within) faults.push(`${page.name}: a tick makes a bar longer`);
  }
  if (across.a.x !== up.a.x || across.a.y !== up.a.y) faults.push(`${page.name}: bars from two corners`);
  if (long < longer || short < shorter) faults.push(`${page.name}: bars of ${long} in and ${short} in`);
  return faults;
}

/** Lines that go through a text's ink. An edge of what is only filled is none; ends on it are allowed a hair. */
export function struckThrough(page: Page): string[] {
  const lines = page.marks.flatMap((mark) =>
    mark.kind === 'shape' && PAPER_PENS[mark.role].width > 0
      ? (mark.closed ? [...mark.corners, mark.corners[0] as Point] : mark.corners)
          .slice(1)
          .map((to, i) => ({ role: mark.role, from: mark.corners[i] as Point, to }))
      : [],
  );
  return textsOf(page).flatMap((mark) => {
    const { left, right, bottom, top } = printedBox(mark, FONTS.measure);
    const ink = { left: left + 0.3, right: right - 0.3, bottom: bottom + 0.5, top: top - 0.5 };
    return lines.flatMap(({ role, from, to }) =>
      clipLineToBox(from, to, ink) === null ? [] : [`${page.name}: ${role} through "${wordsOf(mark)}"`],
    );
  });
}

function wordsOf({ content }: TextMark): string {
  return content.kind === 'tape' ? JSON.stringify(content.number) : content.text;
}

/** By more than a hair: boxes are a little larger than the ink. */
function touch(a: Box, b: Box): boolean {
  const hair = 0.25;
  return a.left < b.right - hair && b.left < a.right - hair && a.bottom < b.top - hair && b.bottom < a.top - hair;
}

/** What comes nearer to an edge of the paper than printers can be trusted with. */
export function tooNearTheEdge({ marks, sheet, name }: Page, edge: number): string[] {
  const inside = (x: number, y: number) =>
    x >= edge && y >= edge && x <= sheet.width - edge && y <= sheet.height - edge;
  return marks.flatMap((mark: Mark) => {
    // A cross stands on its middle; its arms may be cut off.
    if (mark.kind === 'shape') {
      const out = mark.role !== 'registration' && mark.corners.some(({ x, y }) => !inside(x, y));
      return out ? [`${name}: ${mark.role} ${JSON.stringify(mark.corners)}`] : [];
    }
    const { left, right, bottom, top } = printedBox(mark, FONTS.measure);
    return inside(left, bottom) && inside(right, top) ? [] : [`${name}: "${wordsOf(mark)}"`];
  });
}
