/** Pages and files of a job, as the page and the command ask for them; and what is measured on them. */
import type { Correction } from '../../src/core/drawing/correction';
import { UNCORRECTED } from '../../src/core/drawing/correction';
import type { Box, Mark, TextMark } from '../../src/core/drawing/drawing';
import type { Page } from '../../src/core/drawing/page';
import { furnish } from '../../src/core/drawing/pageFrame';
import { printedBox } from '../../src/core/drawing/pageSketch';
import type { PaperName } from '../../src/core/drawing/paper';
import type { Hand, TemplateName } from '../../src/core/drawing/template';
import { draftTemplate } from '../../src/core/drawing/templatePages';
import type { JobText } from '../../src/core/job/jobText';
import type { JudgedPlan } from '../../src/core/plan/planStair';
import { loadFonts } from '../../src/export/font/fonts';
import { PACKAGE_SHEETS, type PackageSheet, packagePages, paperWords } from '../../src/export/sheets/packagePages';
import { factsOf, type PaperChoice } from '../../src/export/stairFiles';
import { speakerFor } from '../../src/text/say';
import { planOf } from '../fixtures/stairs';

export const FONTS = await loadFonts();
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
  return packagePages({ job, plan }, { sheets, paper: choice.paper }, facts.value, SAY, FONTS.measure);
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
