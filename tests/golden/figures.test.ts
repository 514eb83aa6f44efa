/**
 * The figures of docs/maths are drawn by the program itself, from the job that is open at the first
 * start, so that a picture cannot show another stair than the text. Written only on purpose, like every golden file.
 */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { drawBeam } from '../../src/core/drawing/beam';
import { drawBoard } from '../../src/core/drawing/board';
import { drawHeel, drawTopEnd } from '../../src/core/drawing/details';
import type { Drawing, DrawingWord } from '../../src/core/drawing/drawing';
import { drawElevation } from '../../src/core/drawing/elevation';
import { drawStep } from '../../src/core/drawing/stepDetail';
import type { JobText, StringerTop } from '../../src/core/job/jobText';
import { planStair, type StairPlan } from '../../src/core/plan/planStair';
import { demoJob } from '../../src/document/demoJob';
import { svgOf } from '../../src/export/svg';
import { speakerFor } from '../../src/text/say';
import { BOOK } from '../fixtures/stairs';

const FOLDER = join(__dirname, '../../docs/maths/figures');
const say = speakerFor('us');
const words = (word: DrawingWord) => say(`drawing.${word}`);
const WIDE = { width: 1000, height: 640 };
const SMALL = { width: 640, height: 400 };

function planWith(top: StringerTop): StairPlan {
  const [stair] = demoJob.stairs;
  if (stair === undefined) throw new Error('the demo job has no stair');
  const { hanger: _, ...stringer } = stair.stringer ?? {};
  const job: JobText = { ...demoJob, stairs: [{ ...stair, stringer: { ...stringer, top } }] };
  const plan = planStair(job, 0, BOOK);
  if (!plan.ok) throw new Error(JSON.stringify(plan.problems));
  return plan.value;
}

const usual = planWith('hanger-is-riser');
const FIGURES: readonly (readonly [string, string, Drawing])[] = [
  ['flight', 'Side elevation of the example stair', drawElevation(usual, WIDE, words)],
  ['board', 'The stringer of the example stair on its board', drawBoard(usual, WIDE, words)],
  ['beam', 'The stringer of the example stair as a beam', drawBeam(usual, WIDE, words)],
  ['heel', 'The heel of the example stair', drawHeel(usual, SMALL, words)],
  ['step', 'One notch on the board', drawStep(usual, SMALL, words)],
  ...(['hanger-is-riser', 'header-behind-riser', 'hanger-behind-riser', 'level-with-floor'] as const).map(
    (top) => [`top-${top}`, `The top end, ${top}`, drawTopEnd(planWith(top), SMALL, words)] as const,
  ),
];

test.each(FIGURES)('docs/maths/figures/%s.svg is what the program draws', (name, title, drawing) => {
  const path = join(FOLDER, `${name}.svg`);
  const drawn = svgOf(drawing, title);
  if (process.env['PITCHBOARD_GOLDEN'] === 'write') {
    mkdirSync(FOLDER, { recursive: true });
    writeFileSync(path, drawn);
  }
  expect(readFileSync(path, 'utf8')).toBe(drawn);
});
