/** The first sheet: which stair this is, its main figures, what is still to be measured, who has seen it. */
import { drawElevation } from '../../core/drawing/elevation';
import { figureOf } from '../../core/drawing/figures';
import { PageSketch, PRINT } from '../../core/drawing/pageSketch';
import { point } from '../../core/geometry/point';
import { plainText } from '../plainText';
import { drawingWords, type LeafContext, type LeafMaker, placeDrawing, viewFor } from './leaf';
import { NO_SCALE } from './listLeaves';
import { fieldName, isMeasured } from './survey';
import { count, drawTable, figure, WORDS, words } from './table';

const DEGREES = 180 / Math.PI;
const FACTS_WIDTH = 92;
const SIGN_HEIGHT = 20;
const LINE = 5;
const SIGNS = ['sheets.drawnBy', 'sheets.checkedBy', 'sheets.seenOnSite'] as const;

export const makeCover: LeafMaker = (context) => {
  const { say, content, measure, plan } = context;
  const sketch = new PageSketch(measure);
  const room = content.right - content.left;
  sketch.fitted('heading', point(content.left, content.top - 4), jobName(context), PRINT.title, room);
  const foot = content.bottom + SIGN_HEIGHT;
  const facts = { left: content.left, top: content.top - 12, bottom: foot };
  const columns = [
    { head: '', width: FACTS_WIDTH - 34 },
    { head: '', width: 34 },
  ];
  const { bottom } = drawTable(sketch, facts, columns, factRows(context), WORDS);
  const right = content.left + FACTS_WIDTH + 6;
  const picture = { left: right, right: content.right, top: content.top - 10, bottom: foot };
  const elevation = placeDrawing(drawElevation(plan, viewFor(picture), drawingWords(say)), picture, measure);
  verifyList(context, sketch, bottom - 8);
  signBoxes(context, sketch);
  return [
    {
      title: say('sheets.cover'),
      under: say('sheets.cover.under', { count: tally(context, 'breaks') }),
      scale: NO_SCALE,
      marks: [...elevation.marks, ...sketch.marks],
    },
  ];
};

function jobName({ job, plan, say }: LeafContext): string {
  const names = [job.name ?? '', plan.layout.job.name].map(plainText).filter((name) => name !== '');
  return names.length === 0 ? say('app.noJobName') : names.join(' · ');
}

function tally({ plan }: LeafContext, status: string): number {
  return plan.findings.filter((finding) => finding.status === status && finding.kind !== 'taste').length;
}

function factRows(context: LeafContext) {
  const { say, plan } = context;
  const { flight, job, stringer, width } = plan.layout;
  const length = (mm: number) => figure(figureOf(mm, job.units));
  return [
    [words(say('sheets.stairId')), words(plainText(job.id), true)],
    [words(say('rise.total')), length(flight.totalRise)],
    [words(say('sheets.risers')), count(flight.risers)],
    [words(say('rise.unit')), length(flight.unitRise)],
    [words(say('rise.run')), length(flight.run)],
    [words(say('rise.totalRun')), length(stringer.top.hung ? flight.runToTopRiser : stringer.top.endX)],
    [words(say('rise.pitch')), words(`${(flight.pitch * DEGREES).toFixed(1)}°`, true)],
    [words(say('width.stringers')), width === null ? words(say('head.notWorked')) : count(width.stringers)],
    [words(say('sheets.breaks')), count(tally(context, 'breaks'))],
    [words(say('sheets.close')), count(tally(context, 'close'))],
    [words(say('sheets.notChecked')), count(tally(context, 'not-checked'))],
  ];
}

/** What nobody has measured: unknown finishes first, then usual sizes that were put in. */
function verifyList({ say, plan, content }: LeafContext, sketch: PageSketch, top: number): void {
  sketch.words('body-strong', point(content.left, top), say('sheets.verify'), PRINT.body);
  const unknown = plan.layout.job.unknowns.map((key) => say('sheets.unknown', { what: fieldName(say, key) }));
  const usual = plan.defaults
    .filter(({ key }) => isMeasured(key))
    .map(({ key, used }) => `${fieldName(say, key)}: ${plainText(used)}`);
  let y = top - 3;
  for (const line of [...unknown, ...usual]) {
    // What does not fit stands in the survey record too.
    if (y < content.bottom + SIGN_HEIGHT + LINE) return;
    y = sketch.paragraph('body', content.left, y, FACTS_WIDTH, line, PRINT.small);
  }
}

function signBoxes({ say, content }: LeafContext, sketch: PageSketch): void {
  const width = (content.right - content.left - 2 * 6) / SIGNS.length;
  SIGNS.forEach((sign, i) => {
    const left = content.left + i * (width + 6);
    sketch.box('rule', { left, right: left + width, bottom: content.bottom, top: content.bottom + SIGN_HEIGHT - 4 });
    sketch.words('small', point(left + 2, content.bottom + SIGN_HEIGHT - 7), say(sign), PRINT.small);
    sketch.words(
      'small',
      point(left + width * 0.62, content.bottom + SIGN_HEIGHT - 7),
      say('sheets.date'),
      PRINT.small,
    );
  });
}
