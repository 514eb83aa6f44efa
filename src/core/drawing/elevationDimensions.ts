/**
 * The numbers on the elevation, in order of rank: what decides first (total rise, headroom, run),
 * then what is set out and cut by, then what explains. One that has no free place is left out.
 * Frame: layout/flight, y up.
 */
import { type Point, point } from '../geometry/point';
import type { Finish } from '../job/stairJob';
import { nosingLineHeight } from '../layout/flight';
import type { StairLayout } from '../layout/layoutStair';
import { toMm } from '../units/exact';
import type { Dimensioning } from './dimensioning';
import type { FigureText, Mark, TextMark } from './drawing';
import { drawHeelSum } from './elevationHeelSum';
import { dimensionObstacles } from './elevationObstacles';
import { figureOf } from './figures';
import { captionLines, type Sketch, TYPE, textBox } from './sketch';

/** Rows and columns of dimensions beside the stair, in pixels from it. */
const COLUMN = { first: 50, second: 136 };
/** Where there is room, so far out that the headroom's own words find a place beside its line. */
const FIRST_WHERE_WIDE = 68;
const ROW = { first: 36, second: 98 };
/** Where a line may break for its number: beside another column the same height would touch. */
const BREAKS = [0.5, 0.62, 0.74, 0.38, 0.26];
const OUTER_BREAKS = [0.3, 0.2, 0.7, 0.8];
const MIDDLE = 460;
const WIDE = 1000;
const WIDEST = 1100;
/** Below this height a step is too small for a number of its own, or for two. */
const LEAST_STEP_PIXELS = { riser: 20, tread: 30 };

export function dimensionElevation(to: Dimensioning): void {
  dimensionRise(to);
  dimensionHeadroom(to);
  dimensionObstacles(to);
  dimensionRun(to);
  if (to.width >= MIDDLE) dimensionOpening(to);
  drawPitch(to);
  captionFinish(to, to.layout.job.survey.lowerToAdd, 'survey.lowerToAdd', lowerPlaces(to));
  captionFinish(to, to.layout.job.survey.upperToAdd, 'survey.upperToAdd', upperPlaces(to));
  if (to.width >= MIDDLE) dimensionHeaderMark(to);
  if (to.width >= WIDEST) drawHeelSum(to);
  numberSteps(to);
}

function dimensionRise({ sketch, layout, extent, words, width }: Dimensioning): void {
  const { flight, job } = layout;
  const total = figureOf(flight.totalRise, job.units);
  const caption = captionLines(words(layout.draft ? 'totalRiseSoFar' : 'totalRise'));
  const columns = (width >= MIDDLE ? [FIRST_WHERE_WIDE, COLUMN.first] : [COLUMN.first]).map((pixels) =>
    sketch.px(pixels),
  );
  const near = extent.left - sketch.px(14);
  const upright = (each: readonly string[], left: number) =>
    BREAKS.map((share) => sketch.uprightDimension(0, flight.totalRise, left, total, each, extent.left, share));
  sketch.placeFirst(
    [caption, []].flatMap((each) => [
      ...columns.flatMap((column) => upright(each, extent.left - column)),
      sketch.besideDimension(0, flight.totalRise, near, total, each, extent.left, -1),
    ]),
    'totalRise',
  );
  if (width < WIDE) return;
  const lower = -flight.lowerToAdd;
  const upper = flight.totalRise - flight.upperToAdd;
  const taped = figureOf(upper - lower, job.units);
  const far = extent.left - sketch.px(COLUMN.second);
  const today = captionLines(words('riseToday'));
  sketch.placeFirst(
    OUTER_BREAKS.map((share) => sketch.uprightDimension(lower, upper, far, taped, today, extent.left, share)),
    'survey.rise',
  );
}

function dimensionHeadroom({ sketch, layout, words }: Dimensioning): void {
  const { opening, flight, job } = layout;
  if (opening.edgeX === null || opening.headroom === null || opening.headroom <= 0) return;
  const x = opening.edgeX;
  const bottom = Math.max(0, nosingLineHeight(flight, x));
  const top = bottom + opening.headroom;
  const content = figureOf(opening.headroom, job.units, 'down');
  const caption = captionLines(words('headroom'));
  // On a phone the one word has to do.
  const short = [words('headroomShort')];
  const at = (share: number) => bottom + (top - bottom) * share;
  sketch.placeFirst(
    [
      ...BREAKS.map((share) => sketch.uprightDimension(bottom, top, x, content, caption, x, share)),
      ...BREAKS.map((share) => sketch.besideDimension(bottom, top, x, content, caption, x, -1, at(share))),
      ...BREAKS.map((share) => sketch.besideDimension(bottom, top, x, content, caption, x, 1, at(share))),
      ...[short, []].flatMap((each) =>
        [...BREAKS, 0.84, 0.9].flatMap((share) =>
          ([-1, 1] as const).map((side) => sketch.besideDimension(bottom, top, x, content, each, x, side, at(share))),
        ),
      ),
    ].filter((group) => group !== null && textsLieBetween(group, bottom, top)),
    'headroom',
  );
}

/** A text that stands over or under its line's ends would read as the size of something else. */
function textsLieBetween(group: readonly Mark[], bottom: number, top: number): boolean {
  return group.every((mark) => {
    if (mark.kind !== 'text') return true;
    const box = textBox(mark);
    return box.bottom >= bottom && box.top <= top;
  });
}

function dimensionRun({ sketch, layout, extent, words, width }: Dimensioning): void {
  const { flight, stringer, job } = layout;
  const floor = extent.bottom;
  const end = stringer.top.hung ? flight.runToTopRiser : stringer.top.endX;
  const y = floor - sketch.px(ROW.first);
  sketch.placeFirst(levelPlaces(sketch, 0, end, y, figureOf(end, job.units), words('totalRun'), floor), 'totalRun');
  if (width < WIDE) return;
  const { headerX } = stringer.top;
  const lower = floor - sketch.px(ROW.second);
  const content = figureOf(headerX, job.units);
  sketch.placeFirst(levelPlaces(sketch, 0, headerX, lower, content, words('headerToRiser'), floor), 'headerFace');
}

/** Between its ends, or else beside them, with its caption or without. */
function levelPlaces(
  sketch: Sketch,
  x1: number,
  x2: number,
  y: number,
  content: FigureText,
  caption: string,
  from: number,
): readonly (readonly Mark[] | null)[] {
  return [
    sketch.levelDimension(x1, x2, y, content, caption, from),
    sketch.shortDimension(x1, x2, y, content, caption, from, 1),
    sketch.shortDimension(x1, x2, y, content, '', from, 1),
    sketch.shortDimension(x1, x2, y, content, '', from, -1),
  ];
}

function dimensionOpening({ sketch, layout, words }: Dimensioning): void {
  const { openingFraming } = layout.job.survey;
  if (openingFraming === null) return;
  const { headerX } = layout.stringer.top;
  const length = toMm(openingFraming);
  const top = layout.flight.totalRise;
  const content = figureOf(length, layout.job.units);
  const y = top + sketch.px(36);
  sketch.placeFirst(
    [sketch.levelDimension(headerX - length, headerX, y, content, words('opening'), top + sketch.px(4))],
    'survey.openingFraming',
  );
}

/** One step's triangle, resting on the nosing line, with the unit rise and the run. */
function drawPitch({ sketch, layout }: Dimensioning): void {
  const { flight, job } = layout;
  const shares = [0.55, 0.45, 0.65, 0.35, 0.75, 0.25];
  sketch.placeFirst(
    shares.map((share) => {
      const step = Math.max(1, Math.round(flight.risers * share));
      const low = point((step - 1) * flight.run - flight.nosing, step * flight.unitRise);
      const high = point(low.x + flight.run, low.y + flight.unitRise);
      const above = point((low.x + high.x) / 2, high.y + sketch.px(18));
      const rise = figureOf(flight.unitRise, job.units);
      // Over the nosing line, however small the step.
      const middle = Math.max((low.y + high.y) / 2, low.y + sketch.px(TYPE.number));
      const before = point(low.x - sketch.px(8), middle);
      const triangle = [low, high, point(low.x, high.y)];
      return [
        { kind: 'shape', role: 'pitch-triangle', corners: triangle, closed: true, about: 'pitch' },
        { ...sketch.figure('number', above, 'middle', figureOf(flight.run, job.units), TYPE.number), about: 'run' },
        { ...sketch.figure('number', before, 'end', rise, TYPE.number), about: 'unitRise' },
      ];
    }),
  );
}

interface FinishPlace {
  readonly at: Point;
  readonly anchor: 'start' | 'end';
}

/** Over the floor, at its end, or else before the stair. */
function lowerPlaces({ sketch, layout, extent }: Dimensioning): readonly FinishPlace[] {
  const y = Math.max(0, -layout.flight.lowerToAdd) + sketch.px(22);
  return [
    { at: point(extent.right - sketch.px(4), y), anchor: 'end' },
    { at: point(extent.left + sketch.px(4), y), anchor: 'start' },
  ];
}

function upperPlaces({ sketch, layout, extent }: Dimensioning): readonly FinishPlace[] {
  const { flight, stringer, opening } = layout;
  const y = Math.max(flight.totalRise, flight.totalRise - flight.upperToAdd) + sketch.px(22);
  const beside = stringer.top.headerX + sketch.px(14);
  return [
    { at: point(beside, y), anchor: 'start' },
    { at: point(extent.right + sketch.px(8), y), anchor: 'end' },
    ...(opening.edgeX === null ? [] : [{ at: point(extent.left, y), anchor: 'start' } as const]),
  ];
}

/** A fraction without a whole number, to be read at arm's length; pixels. */
const FINISH_SIZE = 22;

/** How much is still to be laid; a question mark where nobody knows. */
function captionFinish(
  { sketch, layout, words }: Dimensioning,
  finish: Finish,
  about: string,
  places: readonly FinishPlace[],
): void {
  const amount = toMm(finish.amount);
  const unknown = finish.known === 'unknown';
  if (!unknown && amount === 0) return;
  const caption = words(unknown ? 'notKnown' : 'floorToCome');
  const content = unknown ? ({ kind: 'digits', text: '?' } as const) : figureOf(amount, layout.job.units);
  const size = unknown ? TYPE.main : FINISH_SIZE;
  const gap = sketch.px(8);
  const bare = unknown ? places.map(({ at, anchor }) => [sketch.figure('number', at, anchor, content, size)]) : [];
  const worded = places.map(({ at, anchor }): readonly Mark[] => {
    const number = sketch.figure('number', at, anchor, content, size);
    const box = textBox(number);
    const text: TextMark =
      anchor === 'start'
        ? sketch.words('caption', point(box.right + gap, at.y), 'start', caption)
        : sketch.words('caption', point(box.left - gap, at.y), 'end', caption);
    return [text, number];
  });
  sketch.placeFirst([...worded, ...bare], about);
}

/** Shorter than this, in pixels, a header mark does not show among the lines of the floor. */
const SHORT_MARK = 44;
/** As close to the end of the floor, in pixels, as its break and the margin let a dimension stand. */
const CLOSE = 13;

/** How far under the subfloor of today the last level cut is marked: the text stands under the floor. */
function dimensionHeaderMark({ sketch, layout, sheet, extent, words }: Dimensioning): void {
  const { flight, stringer, job } = layout;
  const today = flight.totalRise - flight.upperToAdd;
  const { topY, headerX } = stringer.top;
  if (Math.abs(today - topY) < sketch.px(14)) return;
  const { floorDepth, headerDepth } = job.survey;
  const underside = Math.min(
    flight.totalRise - (floorDepth === null ? 0 : toMm(floorDepth)),
    today - flight.upperSubfloor - (headerDepth === null ? 0 : toMm(headerDepth)),
    topY,
  );
  const content = figureOf(sheet.headerMark, job.units);
  const caption = captionLines(words('headerMark'));
  const length = today - topY;
  const line = (...corners: readonly Point[]): Mark => ({ kind: 'shape', role: 'dimension', closed: false, corners });
  const at = (x: number, text: Point, anchor: TextMark['anchor']): readonly Mark[] => [
    line(point(x, today), point(x, topY)),
    ...[today, topY].map((end) => sketch.tick(point(x, end), length)),
    line(point(stringer.top.endX + sketch.px(4), topY), point(x + sketch.px(8), topY)),
    sketch.figure('number', text, anchor, content, TYPE.number),
    ...sketch.captionBeside(caption, point(text.x, text.y - sketch.px(26)), anchor),
  ];
  const inFloor = headerX + sketch.px(34);
  const y = underside - sketch.px(30);
  const under = extent.right + sketch.px(16);
  // Lines that end there may reach back to the stringer: then they stand lower, clear of its edge.
  const shown = [
    sketch.figure('number', point(under, y), 'end', content, TYPE.number),
    ...sketch.captionBeside(caption, point(under, y - sketch.px(26)), 'end'),
  ];
  const underEnd = point(under, y - clearance(layout, shown, sketch.px(8)));
  const places = [at(inFloor, point(headerX + sketch.px(18), y), 'start'), at(inFloor, underEnd, 'end')];
  // Among the lines of the floor a short dimension is lost: it stands clear of them, with its words beside it,
  // or else under the floor, and a line that leads to them.
  const clearAt = (pixels: number, text: Point, anchor: TextMark['anchor']): readonly Mark[] => {
    const x = extent.right + sketch.px(pixels);
    const over = line(point(extent.right + sketch.px(10), today), point(x + sketch.px(8), today));
    return [...at(x, text, anchor), over];
  };
  const beside = point(extent.right + sketch.px(40), topY - sketch.px(2));
  const foot = extent.right + sketch.px(CLOSE);
  const lead = line(point(foot, topY), point(foot, underEnd.y + sketch.px(16)));
  const clear = [clearAt(24, beside, 'start'), [...clearAt(CLOSE, underEnd, 'end'), lead]];
  sketch.placeFirst(length < sketch.px(SHORT_MARK) ? [...clear, ...places] : places, 'headerMark');
}

/** How much lower texts have to stand to lie in the air under the stringer's lower edge; 0 where they do; mm. */
function clearance({ flight, stringer }: StairLayout, texts: readonly TextMark[], air: number): number {
  const { topY, plumbCut, endX } = stringer.top;
  const lowerEdge = (x: number) => topY - plumbCut - (Math.max(0, endX - x) * flight.unitRise) / flight.run;
  const over = texts.map(textBox).filter(({ left }) => left - air < stringer.top.headerX);
  return Math.max(0, ...over.map(({ left, top }) => top + air - lowerEdge(left - air)));
}

/** Whether a riser's number, this high over the tread below it, stays clear of the nosing line. */
function isUnderNosingLine({ flight }: StairLayout, sketch: Sketch, over: number): boolean {
  const upper = over + sketch.px(TYPE.small * 0.45);
  const left = sketch.px(flight.risers > 9 ? 12 + TYPE.small * 0.6 : 8 + TYPE.small * 0.3);
  return flight.unitRise * (1 - (left - flight.nosing) / flight.run) > upper;
}

/** Risers numbered in the air before them, treads in the wood under them: all of a kind, or none. */
function numberSteps({ sketch, layout }: Dimensioning): void {
  const { flight, stringer } = layout;
  if (flight.unitRise < sketch.px(LEAST_STEP_PIXELS.riser)) return;
  const number = (role: 'riser-number' | 'tread-number', i: number, at: Point) =>
    sketch.figure(role, at, 'middle', { kind: 'digits', text: String(i) }, TYPE.small);
  const middle = (flight.unitRise - flight.treadThickness) / 2;
  const low = sketch.px(TYPE.small * 0.5);
  if (!isUnderNosingLine(layout, sketch, low)) return;
  for (let i = 1; i <= flight.risers; i += 1) {
    // The first one stands over the dots of a floor that nobody knows.
    const lift = i === 1 && layout.job.survey.lowerToAdd.known === 'unknown' ? sketch.px(6) : 0;
    const over = isUnderNosingLine(layout, sketch, middle) ? middle : low;
    const y = (i - 1) * flight.unitRise + over + lift;
    sketch.placeTight(number('riser-number', i, point((i - 1) * flight.run - sketch.px(i > 9 ? 12 : 8), y)), 'risers');
  }
  const wood = (stringer.stockDepth - stringer.tipInset) / flight.cos - flight.unitRise / 2;
  if (flight.unitRise < sketch.px(LEAST_STEP_PIXELS.tread) || wood < sketch.px(24)) return;
  for (let i = 1; i <= flight.treads; i += 1) {
    // A top tread that is level with the floor may end at the header soon.
    const level = i === flight.treads ? Math.min(flight.run, stringer.top.lastLevelCut) : flight.run;
    if (level < sketch.px(TYPE.small * 1.5)) return;
    const x = (i - 1) * flight.run + level * 0.5;
    const y = i * flight.unitRise - flight.treadThickness - sketch.px(11);
    sketch.placeTight(number('tread-number', i, point(x, y)), 'treads');
  }
}
