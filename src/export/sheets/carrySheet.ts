/**
 * What the stringer can carry: what the screening was told, its answers, the figures that others have printed, the
 * whole working, and where each figure comes from. A figure that nobody has read in its document says so in each row.
 */
import type { Sourced } from '../../core/carry/lumber';
import { type Carry, screenCarry } from '../../core/carry/screenCarry';
import type { CarryOrigin, CarryStep } from '../../core/carry/working';
import { drawBeam } from '../../core/drawing/beam';
import { figureOf } from '../../core/drawing/figures';
import { PageSketch, PRINT } from '../../core/drawing/pageSketch';
import { tapeText } from '../../core/units/format';
import type { UnitSystem } from '../../core/units/length';
import type { Rounding } from '../../core/units/rounding';
import {
  answerValue,
  carrySum,
  carryValue,
  printedFigure,
  shareText,
  stepTitle,
  symbolOf,
  toldRows,
} from '../../text/carryText';
import type { Speaker } from '../../text/say';
import { plainText } from '../plainText';
import { drawingWords, type Leaf, type LeafContext, type LeafMaker, placeDrawing, viewFor } from './leaf';
import { listLeaves, NO_SCALE } from './listLeaves';
import { type CellText, drawTable, SMALL, words } from './table';

const GAP = 7;
/** A little finer than other drawings: it stands beside a table, and nothing is marked from it. */
const PIXEL = 0.23;
/** Below this a list of sources begins on the next sheet. */
const LEAST_LIST = 30;
const NOT_LOOKED = [1, 2, 3, 4] as const;

export const makeCarry: LeafMaker = (context) => {
  const carry = screenCarry(context.plan, context.lumber);
  const sources = sourcesOf(context.say, carry);
  return [summary(context, carry), ...published(context, carry, sources), ...working(context, carry, sources)];
};

/** On the left what it was told and what came out, on the right the beam and what was not looked at. */
function summary(context: LeafContext, carry: Carry): Leaf {
  const { say, content, measure, plan } = context;
  const sketch = new PageSketch(measure);
  const width = (content.right - content.left) * 0.56;
  const under = sketch.paragraph(
    'body-strong',
    content.left,
    content.top - 1,
    content.right - content.left,
    say('carry.lead'),
    PRINT.body,
  );
  const area = { left: content.left, top: under - 3, bottom: content.bottom };
  const given = drawTable(
    sketch,
    area,
    [
      { head: say('carry.given'), width: width * 0.28 },
      { head: '', width: width * 0.72 },
    ],
    toldRows(say, plan, carry).map(([name, text]) => [words(name), words(plainText(text), true)]),
    SMALL,
  );
  drawTable(
    sketch,
    { ...area, top: given.bottom - GAP },
    [
      { head: say('carry.check'), width: width * 0.36 },
      { head: say('carry.is'), width: width * 0.16 },
      { head: say('carry.may'), width: width * 0.17 },
      { head: say('carry.part'), width: width * 0.1 },
      { head: say('carry.answer'), width: width * 0.21 },
    ],
    answerRows(context, carry),
    SMALL,
  );
  const left = content.left + width + GAP;
  const box = { left, right: content.right, top: under - 3, bottom: under - 3 - (content.right - left) * 0.86 };
  const beam = placeDrawing(drawBeam(plan, viewFor(box, PIXEL), drawingWords(say)), box, measure, PIXEL);
  let y = box.bottom - 3;
  for (const line of remarks(say, carry)) {
    y = sketch.paragraph('body', left, y, content.right - left, line, PRINT.small) - 1.2;
  }
  return {
    title: say('carry.title'),
    under: say('carry.sheet.under'),
    scale: NO_SCALE,
    marks: [...beam.marks, ...sketch.marks],
  };
}

function remarks(say: Speaker, { member, gap, answers }: Carry): string[] {
  return [
    ...(member === null ? [] : [say(`carry.member.${member}`)]),
    ...(gap === null ? [] : [say(`carry.gap.${gap}`)]),
    ...(answers.some((answer) => answer.gap === 'hardware') ? [say('carry.gap.hardware')] : []),
    `${say('carry.notLooked')}: ${NOT_LOOKED.map((each) => say(`carry.not.${each}`)).join('; ')}.`,
  ];
}

function answerRows({ say, plan }: LeafContext, { answers }: Carry): CellText[][] {
  const { units } = plan.layout.job;
  return answers.map(({ check, answer, is, may, unit }) => [
    words(say(`carry.check.${check}`)),
    words(is === null ? '' : answerValue(is, unit, units)),
    words(may === null ? '' : answerValue(may, unit, units)),
    words(is === null || may === null ? '' : shareText(say, is, may)),
    words(say(`carry.tag.${answer}`), answer === 'exceeds'),
  ]);
}

function published(context: LeafContext, carry: Carry, sources: readonly Source[]): readonly Leaf[] {
  const { say, content, plan } = context;
  const width = content.right - content.left;
  const { units } = plan.layout.job;
  return listLeaves(context, {
    title: say('carry.published'),
    under: say('carry.sheet.published'),
    columns: [
      { head: say('carry.thing'), width: width * 0.14 },
      { head: say('carry.thisStair'), width: width * 0.11 },
      { head: say('carry.asks'), width: width * 0.19 },
      { head: say('carry.answer'), width: width * 0.11 },
      { head: say('carry.whose'), width: width * 0.27 },
      { head: say('carry.howSure'), width: width * 0.18 },
    ],
    rows: carry.published.map(({ figure, answer, is, asked }) => {
      const found = figure.sense === 'least' ? 'down' : 'up';
      const text = (mm: number, rounding: Rounding) => lengthText(mm, units, rounding);
      return [
        words(say(`carry.thing.${figure.what}`)),
        words(is === null ? say('carry.notMeasured') : figure.unit === 'count' ? String(is) : text(is, found), true),
        words(say(`carry.${figure.sense}`, { value: printedFigure(figure, text(asked, 'nearest'), units) })),
        words(say(`carry.tag.${answer}`), answer === 'exceeds' || answer === 'short'),
        words(figure.whose),
        words(
          `${say(`carry.sure.${figure.confidence}`)} ${numberOf(printedSource(say, figure), sources)}`,
          figure.confidence === 'memory',
        ),
      ];
    }),
    style: SMALL,
  });
}

/** Steps first; then, by their numbers, the sources that they and the printed figures name: below, where there is room. */
function working(context: LeafContext, carry: Carry, sources: readonly Source[]): readonly Leaf[] {
  const { say, content, plan, measure } = context;
  const width = content.right - content.left;
  const area = { left: content.left, top: content.top, bottom: content.bottom };
  const columns = [
    { head: say('carry.step'), width: width * 0.21 },
    { head: say('carry.sum'), width: width * 0.22 },
    { head: say('carry.values'), width: width * 0.27 },
    { head: say('carry.result'), width: width * 0.12 },
    { head: say('carry.whence'), width: width * 0.18 },
  ];
  const leaves: Leaf[] = [];
  const begin = () => {
    const sketch = new PageSketch(measure);
    const texts = { title: say('carry.working'), under: say('carry.sheet.working') };
    leaves.push({ ...texts, scale: NO_SCALE, marks: sketch.marks });
    return sketch;
  };
  let sketch = begin();
  let bottom = content.top;
  for (let left = carry.steps.map((step) => stepRow(say, step, plan.layout.job.units, sources)); left.length > 0; ) {
    if (bottom < content.top) sketch = begin();
    const done = drawTable(sketch, area, columns, left, SMALL);
    bottom = done.bottom;
    left = left.slice(Math.max(1, done.drawn));
  }
  let top = bottom - GAP;
  for (let left = sourceRows(sources); left.length > 0; ) {
    if (top - content.bottom < LEAST_LIST) {
      sketch = begin();
      top = content.top;
    }
    const { drawn } = drawTable(sketch, { ...area, top }, sourceColumns(say, width), left, SMALL);
    left = left.slice(Math.max(1, drawn));
    top = content.bottom;
  }
  return leaves;
}

function sourceColumns(say: Speaker, width: number) {
  return [
    { head: '', width: width * 0.06 },
    { head: say('carry.sources'), width: width * 0.75 },
    { head: say('carry.howSure'), width: width * 0.19 },
  ];
}

function sourceRows(sources: readonly Source[]): CellText[][] {
  return sources.map(({ text, sure, isMemory }, at) => [
    words(`[${at + 1}]`, true),
    words(plainText(text)),
    words(sure, isMemory),
  ]);
}

function stepRow(say: Speaker, step: CarryStep, units: UnitSystem, sources: readonly Source[]): CellText[] {
  const whence = step.terms.flatMap(({ symbol, origin }) => {
    const text = termWhence(say, origin, sources);
    return text === '' ? [] : [`${symbolOf(symbol)}: ${text}`];
  });
  return [
    words(stepTitle(say, step), true),
    words(carrySum(say, step, units, 'symbols')),
    words(carrySum(say, step, units, 'figures')),
    words(carryValue(step.result, step.unit, units), true),
    words(whence.join('; ')),
  ];
}

/** The number of a source; for what the program itself has worked out before, nothing. */
function termWhence(say: Speaker, origin: CarryOrigin, sources: readonly Source[]): string {
  const source = sourceOf(say, origin);
  if (source === null) return origin.from === 'none' ? say('carry.from.none') : '';
  return numberOf(source, sources);
}

function numberOf(source: Source, sources: readonly Source[]): string {
  return `[${sources.findIndex(({ text, sure }) => text === source.text && sure === source.sure) + 1}]`;
}

interface Source {
  readonly text: string;
  readonly sure: string;
  readonly isMemory: boolean;
}

function sourceOf(say: Speaker, origin: CarryOrigin): Source | null {
  if (origin.from !== 'data' && origin.from !== 'rule') return null;
  const text =
    origin.from === 'data'
      ? origin.sources.join('; ')
      : [origin.source, origin.section].filter((part) => part !== '').join(', ');
  const isMemory = origin.confidence === 'memory';
  return { text, sure: say(`carry.sure.${origin.confidence}`), isMemory };
}

function printedSource(say: Speaker, { sources, confidence }: Sourced): Source {
  return { text: sources.join('; '), sure: say(`carry.sure.${confidence}`), isMemory: confidence === 'memory' };
}

/** Each once, in the order in which the sheets come to it. */
function sourcesOf(say: Speaker, { steps, published: printed }: Carry): readonly Source[] {
  const named = [
    ...printed.map(({ figure }) => printedSource(say, figure)),
    ...steps.flatMap(({ terms }) => terms.flatMap(({ origin }) => sourceOf(say, origin) ?? [])),
  ];
  return [...new Map(named.map((source) => [`${source.text} ${source.sure}`, source])).values()];
}

function lengthText(mm: number, units: UnitSystem, rounding: Rounding): string {
  const figure = figureOf(mm, units, rounding);
  return figure.kind === 'digits' ? `${figure.text} mm` : `${tapeText(figure.number)} in`;
}
