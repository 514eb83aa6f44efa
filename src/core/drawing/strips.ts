/**
 * Two tapes on paper: the running marks along a board, and the heights of a story pole. Their ticks
 * stand exactly where the printed number beside them says, so that strip and tape cannot differ.
 * Frame: x along the strip from its datum, y = 0 its lower edge.
 */
import { point } from '../geometry/point';
import { storyPole } from '../layout/storyPole';
import { roundTo } from '../units/rounding';
import { figureOf } from './figures';
import { PageSketch, PRINT } from './pageSketch';
import type { Template } from './template';
import type { Maker } from './templates';

/** Six of them on a sheet that lies. */
const STRIP_HEIGHT = 25.5;
const TICK = 5.5;
/** From either edge to the row in which a lane says which it is. */
const MIDDLE_ROW = 9.5;
/** Room past the last mark. */
const AFTER = 12;

/** Tips hang from the upper edge, which goes on the crown edge; corners stand on the lower, for the gauge line. */
export const makeMarksStrip: Maker = ({ layout, sheet }, words, measure) => {
  const { units } = layout.job;
  const sketch = new PageSketch(measure);
  const from = sheet.tips[0] as number;
  const left = -from;
  const right = Math.max(sheet.end, sheet.corners.at(-1) ?? 0, sheet.tips.at(-1) as number) - from + AFTER;
  const upper = STRIP_HEIGHT;
  drawEdges(sketch, left, right);
  drawStart(sketch, left);
  sheet.tips.forEach((tip, i) => {
    sketch.together(`tip ${i + 1}`, () => {
      sketch.upright('template-cut', tip - from, upper - TICK, upper);
      sketch.figure('number', point(tip - from + 2, upper - 4.4), figureOf(tip, units), PRINT.strong);
    });
  });
  sheet.corners.forEach((corner, i) => {
    sketch.together(`corner ${i + 1}`, () => {
      sketch.upright('template-cut', corner - from, 0, TICK);
      sketch.figure('number', point(corner - from + 2, 4.4), figureOf(corner, units), PRINT.strong);
    });
  });
  sketch.together('end', () => {
    sketch.upright('template-cut', sheet.end - from, 0, TICK);
    sketch.words('small', point(sheet.end - from - 2, 4.4), words('end'), PRINT.small, 'end');
    sketch.figure('number', point(sheet.end - from + 2, 4.4), figureOf(sheet.end, units), PRINT.strong);
  });
  sketch.words('small', point(left + 2, 4.4), words('boardEnd'), PRINT.small);
  return strip('marksStrip', sketch, { left, right }, 'fromFirstTip', 'right');
};

/** Finished tops on the upper edge, the stringer's level cuts on the lower. Stands on today's lower floor. */
export const makePoleStrip: Maker = ({ layout, sheet }, words, measure) => {
  const { flight, job } = layout;
  const { units } = job;
  const sketch = new PageSketch(measure);
  const mark = (value: number) => (sheet.step === 0 ? value : roundTo(value, sheet.step));
  const rows = storyPole(layout);
  const right = mark(rows.at(-1)?.finishedToday as number) + AFTER;
  drawEdges(sketch, 0, right);
  drawStart(sketch, 0);
  // On a floor that falls any way the heights hold in one place only.
  const isLevel = flight.slopeAlong === 0 && flight.slopeAcross === 0;
  sketch.words('small', point(2, 4.4), words(isLevel ? 'floor' : 'floorHere'), PRINT.small);
  for (const { step, finishedToday, cutToday } of rows.slice(1)) {
    const top = mark(finishedToday);
    sketch.together(`top ${step}`, () => {
      sketch.upright('template-cut', top, STRIP_HEIGHT - TICK, STRIP_HEIGHT);
      sketch.figure('number', point(top - 2, STRIP_HEIGHT - 4.4), figureOf(top, units), PRINT.strong, 'end');
      sketch.words('small', point(top + 2, STRIP_HEIGHT - 4.4), `${step}`, PRINT.small);
    });
    if (cutToday === null) continue;
    const cut = mark(cutToday);
    sketch.together(`cut ${step}`, () => {
      sketch.upright('template-cut', cut, 0, TICK);
      sketch.figure('number', point(cut - 2, 4.4), figureOf(cut, units), PRINT.strong, 'end');
    });
  }
  return strip('poleStrip', sketch, { left: 0, right }, 'upFromFloor', null);
};

/** Where the tape begins: open in the middle, where a lane says which it is. */
function drawStart(sketch: PageSketch, x: number): void {
  sketch.upright('template-cut', x, 0, MIDDLE_ROW);
  sketch.upright('template-cut', x, STRIP_HEIGHT - MIDDLE_ROW, STRIP_HEIGHT);
}

function drawEdges(sketch: PageSketch, left: number, right: number): void {
  for (const y of [0, STRIP_HEIGHT]) sketch.level('template-cut', left, right, y);
}

function strip(
  name: Template['name'],
  sketch: PageSketch,
  { left, right }: { readonly left: number; readonly right: number },
  along: Template['along'],
  hand: Template['hand'],
): Template {
  return {
    name,
    marks: sketch.marks,
    // Half a millimetre more than its lines, or those on the very edge would be cut off.
    extent: { left: left - 0.5, right, bottom: -0.5, top: STRIP_HEIGHT + 0.5 },
    datum: point(0, 0),
    along,
    isStrip: true,
    hand,
  };
}
