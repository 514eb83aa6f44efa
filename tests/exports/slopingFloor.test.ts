/**
 * What the sheets say where the lower floor falls: nobody may cut all stringers alike from them, or stand a
 * pole where its heights do not hold. The stairs are worked examples of our own, not published; the figures
 * beside them were worked by hand from the readings.
 */
import { expect, test } from 'vitest';
import { drawTopEnd } from '../../src/core/drawing/details';
import type { TextMark } from '../../src/core/drawing/drawing';
import type { Page } from '../../src/core/drawing/page';
import type { JobText } from '../../src/core/job/jobText';
import { tapeText } from '../../src/core/units/format';
import { LOFT, PAD, planOf } from '../fixtures/stairs';
import { packageOf, SAY, templatePages, textsOf } from './sheets';

/** A cellar floor that falls 3/4 in to the right between the walls. */
const CELLAR: JobText = {
  format: 'pitchboard.job',
  version: 1,
  name: 'Cellar',
  units: 'imperial',
  markStep: '1/16 in',
  rules: { pack: 'irc-2021' },
  stairs: [
    {
      id: 'cellar',
      survey: {
        rise: '103 3/8 in',
        fallAcross: '3/4 in',
        fallAcrossOver: '37 1/2 in',
        lowerToAdd: '3/8 in',
        upperToAdd: '3/4 in',
        upperSubfloor: '3/4 in',
        headerDepth: '11 1/4 in',
        widthFraming: '40 1/2 in',
        obstacles: [{ name: 'duct', near: '120 in', far: '134 in', height: '97 in' }],
      },
      steps: { risers: 14, run: '10 in', nosing: '1 1/8 in', treadThickness: '1 1/16 in', riserThickness: '3/4 in' },
      stringer: { stockDepth: '11 1/4 in', top: 'hanger-is-riser', hanger: '3/4 in' },
    },
  ],
};

/** A low deck level with its own top tread, on a pad that drains away from it. */
const LOW_DECK: JobText = {
  ...PAD,
  stairs: PAD.stairs.map((stair) => ({
    ...stair,
    survey: { ...stair.survey, rise: '35 1/4 in' },
    steps: { ...stair.steps, risers: 5 },
    stringer: { ...stair.stringer, top: 'level-with-floor' },
  })),
};

const shown = ({ content }: TextMark) => (content.kind === 'tape' ? tapeText(content.number) : content.text);
const said = (pages: readonly Page[]) => pages.flatMap((page) => textsOf(page).map(shown));

test('only stringers that are alike are cut alike', () => {
  expect(said(packageOf(LOFT, {}, ['stringer'])).join('\n')).toMatch(/Cut \d+ alike/);
  const words = said(packageOf(CELLAR, {}, ['stringer'])).join('\n');
  expect(words).not.toContain('alike');
  expect(words).toContain('Cut 4, each with a toe height of its own');
});

test('the spread under the marks is that of all stringers, as the findings have it', () => {
  // Toes of 6 3/8 and 7 1/16 with 1 1/16 of tread over floors 3/8 under the finished one: risers 7 1/16 and 7 3/4.
  const words = said(packageOf(CELLAR, {}, ['stringer']));
  expect(words.some((text) => text.includes('at stringer 4') && text.endsWith('over all stringers 11/16.'))).toBe(true);
});

test('the riser to be inspected is the one at each side', () => {
  const page = packageOf(CELLAR, {}, ['inspection'])[0] as Page;
  const texts = textsOf(page);
  const row = (step: string) => {
    const at = texts.find((mark) => shown(mark) === step)?.at.y ?? Number.NaN;
    return texts
      .filter((mark) => Math.abs(mark.at.y - at) < 1)
      .map(shown)
      .slice(0, 3);
  };
  // 103 3/4 in 14 is 7.4107; 19 in to a side the floor lies 0.38 higher or lower.
  expect(row('1 left')).toEqual(['1 left', '7', '+']);
  expect(row('1 middle')).toEqual(['1 middle', '7', '3/8 +']);
  expect(row('1 right')).toEqual(['1 right', '7', '3/4 +']);
  expect(said(packageOf(LOFT, {}, ['inspection']))).not.toContain('1 left');
});

test('heights over a floor that falls say where on it they hold', () => {
  const here = 'floor of today at the face of riser 1, middle of the stair';
  for (const job of [CELLAR, PAD, LOW_DECK]) {
    expect(said(templatePages(planOf(job), ['poleStrip']))).toContain(here);
    expect(said(packageOf(job, {}, ['heights'])).join('\n')).toContain('mid-width');
  }
  expect(said(templatePages(planOf(LOFT), ['poleStrip']))).not.toContain(here);
});

test('the first riser board of a floor that falls across is to be scribed', () => {
  expect(said(packageOf(CELLAR, {}, ['cutList'])).join(' ')).toContain('first riser board, to be scribed');
  expect(said(packageOf(LOFT, {}, ['cutList'])).join(' ')).not.toContain('scribed');
});

test('a seat that a kicker has been notched out of is not called the whole seat', () => {
  // On its page the seat is listed whole, as it is before the notch.
  const words = said(packageOf(LOFT, {}, ['stringer']));
  expect(words).toContain('seat left behind the kicker');
  expect(words.filter((text) => text.startsWith('seat, '))).toEqual([]);
});

test.each(['letter', 'a4'] as const)('nothing that the program says is cut short: %s', (paper) => {
  for (const job of [CELLAR, PAD, LOW_DECK]) {
    const templates = templatePages(planOf(job), ['triangle', 'heel', 'topEnd', 'marksStrip', 'poleStrip'], { paper });
    const cut = said([...packageOf(job, { paper }), ...templates]).filter((text) => text.includes('…'));
    expect(cut).toEqual([]);
  }
});

test('no ground is hatched round a top end that hangs high over it', () => {
  // The deck is three feet over its pad, and what is shown of it reaches down one.
  const drawing = drawTopEnd(planOf(LOW_DECK), { width: 900, height: 700 }, () => 'x');
  expect(drawing.marks.filter(({ role }) => role === 'ground-hatch')).toEqual([]);
});

test('the plumb cut is one number on the detail and beside the marks', () => {
  // 6.4165 or so is neither a sixteenth nor a thirty-second: two ways of rounding it would differ.
  for (const job of [CELLAR, LOW_DECK]) {
    const plan = planOf(job);
    const cut = plan.layout.stringer.top.plumbCut / 25.4;
    const marked = Math.round(cut * 16);
    expect(Math.round(cut * 32)).not.toBe(marked * 2);
    const drawing = drawTopEnd(plan, { width: 900, height: 700 }, (word) => SAY(`drawing.${word}`));
    const figures = drawing.marks.flatMap((mark) =>
      mark.kind === 'text' && mark.about === 'plumbCut' && mark.content.kind === 'tape'
        ? [tapeText(mark.content.number)]
        : [],
    );
    expect(figures).toEqual([`${Math.floor(marked / 16)} ${fraction(marked % 16)}`]);
  }
});

function fraction(sixteenths: number): string {
  const by = [8, 4, 2, 1].find((one) => sixteenths % one === 0) ?? 1;
  return `${sixteenths / by}/${16 / by}`;
}
