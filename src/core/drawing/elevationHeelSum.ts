/**
 * The first cut as a sum, in the empty corner under the stair: the place where a stringer is dropped
 * twice, or not at all. It ends in what has been taken off already. Frame: layout/flight, y up.
 */
import { type Point, point } from '../geometry/point';
import { isPositive } from '../geometry/tolerance';
import type { StairLayout } from '../layout/layoutStair';
import { toMm } from '../units/exact';
import type { Dimensioning } from './dimensioning';
import type { About, DrawingWord, FigureText, Mark, Role } from './drawing';
import { finishedFloor } from './elevationHouse';
import { figureOf } from './figures';
import { contentEms, type Sketch, TYPE, textBox } from './sketch';

interface SumLine {
  readonly sign: '' | '+' | '−';
  readonly content: FigureText;
  readonly word: DrawingWord;
  readonly about: About;
}

/** Pixels: one line of the sum, between figures and words, and between the sum and the wood. */
const LINE = 30;
const GAP = 10;
const AIR = 24;
/** Heights over the floor at which it may stand: on the floor, or over what is said of the floor. */
const LEVELS = [20, 46];

export function drawHeelSum(to: Dimensioning): void {
  const { sketch, layout, words, extent } = to;
  const lines = linesOf(to);
  const parts = lines.map((line) => ({ line, caption: words(line.word) }));
  const [figures, captions] = [
    Math.max(...lines.map(({ content }) => contentEms(content) + SIGN_EMS)) * sketch.px(TYPE.number),
    Math.max(...parts.map(({ caption }) => contentEms({ kind: 'words', text: caption }))) * sketch.px(TYPE.caption),
  ];
  const { flight, stringer } = layout;
  sketch.placeFirst(
    LEVELS.map((level) => {
      // On a slope the floor rises under the sum, to its far end.
      const floor = finishedFloor(layout);
      const highest = Math.max(floor(0), floor(extent.right));
      const bottom = highest + Math.max(0, -flight.lowerToAdd) + sketch.px(level);
      const top = bottom + sketch.px(LINE * lines.length);
      // Clear of the lower edge, which rises from the heel along the pitch.
      const edge = stringer.heel.heelX + ((top - stringer.heel.heelY) * flight.run) / flight.unitRise;
      const left = edge + sketch.px(AIR);
      const column = left + figures;
      const right = column + sketch.px(GAP) + captions;
      if (right > extent.right) return null;
      const height = (row: number) => top - sketch.px(LINE * row);
      const sum = parts.flatMap(({ line, caption }, row) =>
        lineOfSum(sketch, line, point(column, height(row + 0.5)), caption),
      );
      const total = lines.length - 2;
      const foot = point(stringer.heel.heelX + sketch.px(6), stringer.heel.heelY + sketch.px(8));
      return [
        ...sum,
        open('tick', point(left, height(total)), point(right, height(total))),
        open('leader', foot, point(left - sketch.px(8), height(total + 0.5))),
      ];
    }),
  );
}

const SIGN_EMS = 0.8;

function open(role: Role, ...corners: Point[]): Mark {
  return { kind: 'shape', role, closed: false, corners };
}

/** The sign and the figure end at the column's edge, the words begin behind it. */
function lineOfSum(sketch: Sketch, { sign, content, about }: SumLine, at: Point, caption: string): Mark[] {
  const number = sketch.figure('number', at, 'end', content, TYPE.number);
  const before = point(textBox(number).left - sketch.px(3), at.y);
  return [
    ...(sign === '' ? [] : [{ ...sketch.words('number', before, 'end', sign, TYPE.number), about }]),
    { ...number, about },
    { ...sketch.words('caption', point(at.x + sketch.px(GAP), at.y), 'start', caption), about },
  ];
}

function linesOf({ layout, sheet }: Dimensioning): readonly SumLine[] {
  const { flight, stringer, job } = layout;
  const { units } = job;
  const { drop } = stringer.heel;
  const tread = job.steps.treadThickness;
  const floor = job.survey.lowerToAdd;
  const isLaidLater = job.survey.lowerLaid === 'after-stairs';
  const unknownFloor = isLaidLater && floor.known === 'unknown';
  const length = (mm: number) => figureOf(Math.abs(mm), units);
  const not: FigureText = { kind: 'digits', text: '?' };
  return [
    { sign: '', content: length(flight.unitRise), word: 'unitRise', about: 'unitRise' },
    {
      sign: '−',
      content: tread.known === 'unknown' ? not : length(toMm(tread.amount)),
      word: 'tread',
      about: 'steps.treadThickness',
    },
    ...(unknownFloor || flight.seatHeight !== 0
      ? [
          {
            sign: flight.seatHeight > 0 ? '−' : '+',
            content: unknownFloor ? not : length(flight.seatHeight),
            word: 'floorToCome',
            about: 'survey.lowerToAdd',
          } as const,
        ]
      : []),
    ...slopeLine(layout),
    { sign: '', content: figureOf(sheet.toeHeight, units), word: 'firstCutMarked', about: 'firstCut' },
    {
      sign: '',
      content: length(drop),
      word: drop > 0 ? 'alreadyDropped' : drop < 0 ? 'raised' : 'wholeRiser',
      about: 'drop',
    },
  ];
}

/** How much higher or lower the sloping floor is under this toe than at the landing line. */
function slopeLine({ flight, stringer, job }: StairLayout): readonly SumLine[] {
  const lower = flight.seatHeight - stringer.heel.toeY;
  if (!isPositive(Math.abs(lower))) return [];
  const about = stringer.master.stringer === 0 ? 'survey.fallAlong' : 'survey.fallAcross';
  const content = figureOf(Math.abs(lower), job.units);
  return [{ sign: lower > 0 ? '+' : '−', content, word: lower > 0 ? 'floorLower' : 'floorHigher', about }];
}
