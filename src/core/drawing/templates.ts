/**
 * The three places of a stringer that are worth a pattern, and the whole of it. Their corners are the
 * layout's own, unrounded: what is rounded is the number beside an edge, which a tape checks.
 *
 * Frames: triangle, heel and top end as they will stand, x in the direction of climbing; the whole
 * stringer on its board, x along the crown edge from the first tip, y = 0 the edge, wood below it.
 */
import type { PrintedSheet } from '../check/printedSheet';
import { distance, type Point, point } from '../geometry/point';
import type { StairLayout } from '../layout/layoutStair';
import type { StairPlan } from '../plan/planStair';
import { boardFrame, toBoard } from '../stringer/board';
import { innerCorner, tip } from '../stringer/outline';
import type { Box } from './drawing';
import { figureOf } from './figures';
import { FULL_SIZE_HATCH, hatchAlong, type Stroke } from './hatch';
import type { PaperWord, PaperWords, TextMeasure } from './page';
import { PageSketch, PRINT } from './pageSketch';
import { clipLineToBox } from './strip';
import type { Template } from './template';

/** Beside a full-size edge: read with the paper lying on a board. */
const NUMBER = 7;
/** Paper kept round what is cut out. */
const ROUND = FULL_SIZE_HATCH.reach + 1;
/** How much of the crown edge a pattern shows past its tip. */
const CROWN_SHOWN = 26;
const CROSS = 5;
/** A foot on the header may be as short as a hand; its words are not. */
const NARROWEST = 96;

export type Maker = (plan: Pick<StairPlan, 'layout' | 'sheet'>, words: PaperWords, measure: TextMeasure) => Template;

/** One notch as a pitch board: level cut, plumb cut, crown edge. x = y = 0 at the lower tip. */
export const makeTriangle: Maker = ({ layout }, words, measure) => {
  const { run, unitRise, stepLength, sin, cos } = layout.flight;
  const inset = layout.stringer.tipInset;
  const pen = new Pen(layout, words, measure);
  const corners = [point(0, 0), point(run, 0), point(run, unitRise)] as const;
  const [low, corner, high] = corners;
  const cuts: Stroke[] = [
    [low, corner],
    [corner, high],
  ];
  pen.hatch(cuts, corners, 'inside');
  for (const [a, b] of cuts) pen.sketch.line('template-cut', a, b);
  const out = point(-sin * inset, cos * inset);
  pen.sketch.line('board-line', point(low.x + out.x, low.y + out.y), point(high.x + out.x, high.y + out.y));
  if (inset > 0) pen.sketch.line('gauge-line', low, high);
  for (const at of corners) pen.sketch.cross('registration', at, CROSS);
  pen.label(point(run * 0.5, 19), 'middle', 'levelCut', run);
  pen.label(point(run - 9, unitRise * 0.42), 'end', 'plumbCut', unitRise);
  pen.label(point(run * 0.53, unitRise * 0.53 - 26), 'middle', 'thisEdgeCrown', stepLength);
  pen.arrow(point(run * 0.53, unitRise * 0.53 - 18), point(run * 0.53 - sin * 12, unitRise * 0.53 - 18 + cos * 12));
  pen.word(point(run * 0.16, 9), 'middle', 'tip');
  pen.word(point(run - 9, unitRise * 0.86), 'end', 'tip');
  pen.word(point(run - 9, 9), 'end', 'corner');
  return {
    name: 'triangle',
    marks: pen.sketch.marks,
    extent: { left: Math.min(0, out.x) - 1, right: run + 1, bottom: -1, top: unitRise + Math.max(0, out.y) + 1 },
    datum: low,
    along: 'levelFromFirstTip',
    isStrip: false,
    hand: 'right',
  };
};

/** The toe: first plumb cut, seat, kicker notch and the first level cut up to its corner. */
export const makeHeel: Maker = ({ layout }, words, measure) => {
  const { flight, stringer } = layout;
  const { heel, kicker } = stringer;
  const first = tip(flight, 1);
  const corner = flight.treads > 1 ? innerCorner(flight, 1) : point(stringer.top.endX, stringer.top.topY);
  const box: Box = {
    left: flight.riserThickness - ROUND,
    right: Math.max(corner.x, heel.heelX) + ROUND,
    bottom: Math.min(heel.toeY, heel.heelY) - ROUND,
    top: first.y + CROWN_SHOWN,
  };
  const pen = new Pen(layout, words, measure);
  pen.piece(box, first);
  for (const at of [first, corner, point(heel.heelX, heel.heelY)]) pen.sketch.cross('registration', at, CROSS);
  const toeX = flight.riserThickness;
  pen.label(point(toeX + 9, first.y - 34), 'start', 'firstPlumbCut', heel.firstRiserCut);
  pen.word(point(toeX + 9, first.y - 48), 'start', 'alreadyDropped', 'small');
  pen.label(point((first.x + corner.x) / 2 + 14, first.y - 12), 'middle', 'levelCut', corner.x - first.x);
  const highest = Math.max(heel.toeY, heel.heelY);
  const bearingFrom = toeX + (kicker?.width ?? 0);
  const seatMiddle = (bearingFrom + heel.heelX) / 2;
  if (heel.heelX - bearingFrom > 40) {
    const along = heel.seat / (heel.heelX - toeX);
    pen.label(point(seatMiddle, highest + 11), 'middle', 'seat', (heel.heelX - bearingFrom) * along);
  }
  if (kicker !== null) {
    const over = highest + kicker.height + 21;
    pen.label(point(toeX + 9, over), 'start', 'kickerWide', kicker.width);
    pen.label(point(toeX + 50, over), 'start', 'kickerHigh', kicker.height);
  }
  pen.label(
    point(seatMiddle, highest + Math.min(60, heel.firstRiserCut * 0.42)),
    'middle',
    'tipToHeel',
    distance(first, point(heel.heelX, heel.heelY)),
  );
  return {
    name: 'heel',
    marks: pen.sketch.marks,
    extent: box,
    datum: first,
    along: 'levelFromFirstTip',
    isStrip: false,
    hand: 'right',
  };
};

/** The plumb end at the header, with the last level cut and the tip in front of it. */
export const makeTopEnd: Maker = ({ layout, sheet }, words, measure) => {
  const { flight, stringer } = layout;
  const { top } = stringer;
  const last = tip(flight, flight.treads);
  const end = point(top.endX, top.topY);
  const lower = point(top.endX, top.topY - top.plumbCut);
  const box: Box = {
    left: Math.min(last.x - ROUND, top.endX - NARROWEST),
    right: top.endX + ROUND,
    bottom: lower.y - ROUND,
    top: top.topY + CROWN_SHOWN,
  };
  const pen = new Pen(layout, words, measure);
  pen.piece(box, last);
  for (const at of [last, end, lower]) pen.sketch.cross('registration', at, CROSS);
  pen.label(point((last.x + end.x) / 2, top.topY - 12), 'middle', 'lastLevelCut', top.lastLevelCut);
  const deep = top.topY - Math.min(Math.max(58, top.plumbCut * 0.5), Math.max(30, top.plumbCut - 14));
  pen.label(point(end.x - 9, deep), 'end', 'endPlumbCut', top.plumbCut);
  // A short plumb cut has room for its own length and no more.
  if (top.plumbCut > 110 && top.lastLevelCut > 74)
    pen.label(point(end.x - 9, deep - 24), 'end', 'tipToEnd', distance(last, lower));
  // Its words are as long as that.
  if (top.plumbCut > 80 && top.lastLevelCut > 80)
    pen.label(point(last.x + 9, top.topY - 34), 'start', 'headerMark', sheet.headerMark);
  return {
    name: 'topEnd',
    marks: pen.sketch.marks,
    extent: box,
    datum: last,
    along: 'levelFromLastTip',
    isStrip: false,
    hand: 'right',
  };
};

/** The whole stringer on its board; for a plotter's roll. */
export const makeStringer: Maker = ({ layout, sheet }, words, measure) => {
  const { stringer, flight } = layout;
  const frame = boardFrame(flight, stringer.tipInset);
  const pen = new Pen(layout, words, measure);
  const outline = stringer.outline.map((corner) => {
    const { x: u, y: v } = toBoard(frame, corner);
    return point(u, -v);
  });
  pen.outline(outline, lowerEdgeOf(layout));
  const depth = stringer.stockDepth;
  const left = -stringer.firstMark;
  const right = stringer.endMark + stringer.trim;
  for (const y of [0, -depth]) pen.sketch.level('board-line', left, right, y);
  pen.sketch.upright('board-line', left, -depth, 0);
  pen.sketch.level('gauge-line', left, right, -stringer.gaugeLine);
  pen.tickTips(sheet, stringer.marks, -stringer.tipInset);
  pen.tickCorners(sheet, stringer);
  pen.word(point(left + 12, -depth + 12), 'start', 'boardEnd');
  pen.word(point(flight.stepLength / 2, 14), 'middle', 'thisEdgeCrown');
  pen.arrow(point(flight.stepLength / 2 + 40, 12), point(flight.stepLength / 2 + 40, 2));
  return {
    name: 'stringer',
    marks: pen.sketch.marks,
    extent: { left: left - ROUND, right: right + ROUND, bottom: -depth - 22, top: 24 },
    datum: point(0, 0),
    along: 'fromFirstTip',
    isStrip: false,
    hand: 'right',
  };
};

/** Which side of the outline is the board's own lower edge, and no cut: from the plumb end to the heel. */
function lowerEdgeOf({ flight, stringer }: StairLayout): number {
  const corners = stringer.outline.length;
  const behindHeel = stringer.kicker === null ? 0 : 2;
  return flight.treads > 0 ? corners - 2 - behindHeel : -1;
}

/** Draws a piece of the stringer with the words beside it. */
class Pen {
  readonly sketch: PageSketch;

  constructor(
    private readonly layout: StairLayout,
    private readonly say: PaperWords,
    measure: TextMeasure,
  ) {
    this.sketch = new PageSketch(measure);
  }

  /** What of the stringer lies in a box, with the crown edge through a tip. */
  piece(box: Box, at: Point): void {
    const { stringer, flight } = this.layout;
    const lowerEdge = lowerEdgeOf(this.layout);
    const cuts: Stroke[] = [];
    stringer.outline.forEach((corner, i) => {
      const line = clipLineToBox(corner, stringer.outline[(i + 1) % stringer.outline.length] as Point, box);
      if (line === null) return;
      if (i === lowerEdge) this.sketch.line('board-line', ...line);
      else cuts.push(line);
    });
    this.hatch(cuts, stringer.outline, 'outside');
    for (const [a, b] of cuts) this.sketch.line('template-cut', a, b);
    const inset = stringer.tipInset;
    const foot = point(at.x - flight.sin * inset, at.y + flight.cos * inset);
    const far = box.right - box.left;
    const crown = clipLineToBox(
      point(foot.x - far * flight.cos, foot.y - far * flight.sin),
      point(foot.x + far * flight.cos, foot.y + far * flight.sin),
      box,
    );
    if (crown === null) return;
    this.sketch.line('board-line', ...crown);
    // Beside the crown edge, over the hatching of the level cut.
    const shown = crown[1];
    this.word(point(shown.x + 4, shown.y - 4), 'start', 'thisEdgeCrown', 'small');
  }

  outline(outline: readonly Point[], lowerEdge: number): void {
    const cuts = outline.flatMap((corner, i): Stroke[] =>
      i === lowerEdge ? [] : [[corner, outline[(i + 1) % outline.length] as Point]],
    );
    this.hatch(cuts, outline, 'outside');
    for (const [a, b] of cuts) this.sketch.line('template-cut', a, b);
  }

  hatch(cuts: readonly Stroke[], outline: readonly Point[], waste: 'inside' | 'outside'): void {
    for (const [a, b] of hatchAlong(cuts, outline, waste)) this.sketch.line('waste-hatch', a, b);
  }

  /** A length beside its edge: the number for the tape, and what it is. */
  label(at: Point, anchor: 'start' | 'middle' | 'end', word: PaperWord, mm: number): void {
    this.sketch.together(word, () => {
      this.sketch.figure('number-main', at, figureOf(mm, this.layout.job.units), NUMBER, anchor);
      this.sketch.words('body', point(at.x, at.y - NUMBER * 1.05), this.say(word), PRINT.body, anchor);
    });
  }

  word(at: Point, anchor: 'start' | 'middle' | 'end', word: PaperWord, role: 'body-strong' | 'small' = 'body-strong') {
    this.sketch.words(role, at, this.say(word), role === 'small' ? PRINT.small : PRINT.body, anchor);
  }

  arrow(from: Point, to: Point): void {
    const length = distance(from, to);
    const along = point((to.x - from.x) / length, (to.y - from.y) / length);
    const wing = (side: number) =>
      point(to.x - along.x * 3 + along.y * 1.4 * side, to.y - along.y * 3 - along.x * 1.4 * side);
    this.sketch.line('leader', from, to);
    this.sketch.line('leader', wing(1), to, wing(-1));
  }

  tickTips(sheet: PrintedSheet, marks: readonly number[], y: number): void {
    sheet.tips.forEach((number, i) => {
      const x = marks[i] as number;
      this.sketch.upright('template-cut', x, y, 6);
      this.sketch.figure('number', point(x + 3, 9), figureOf(number, this.layout.job.units), PRINT.strong);
    });
  }

  tickCorners(sheet: PrintedSheet, stringer: StairLayout['stringer']): void {
    const below = -stringer.stockDepth;
    sheet.corners.forEach((number, i) => {
      const x = stringer.cornerMarks[i] as number;
      this.sketch.cross('registration', point(x, -stringer.gaugeLine), CROSS);
      this.sketch.upright('template-cut', x, below - 4, below);
      this.sketch.figure('number', point(x + 3, below - 8), figureOf(number, this.layout.job.units), PRINT.strong);
    });
  }
}
