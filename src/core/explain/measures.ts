/**
 * What can be asked about, and what an explanation is made of. Symbols are those of the glossary; words
 * for them, and for the formulas, are the screen's affair.
 */

const PLAIN_MEASURES = [
  'totalRise',
  'risers',
  'treads',
  'unitRise',
  'run',
  'totalRun',
  'twoRisePlusRun',
  'pitch',
  'stepLength',
  'seatHeight',
  'floorAtToe',
  'notchDepth',
  'gaugeLine',
  'throat',
  'firstCut',
  'drop',
  'seat',
  'kickerToe',
  'kickerSeat',
  'plumbCut',
  'lastLevelCut',
  'headerMarkFinish',
  'headerMark',
  'stringerEnd',
  'headerFace',
  'toeMark',
  'riserMark',
  'nosingMark',
  'topHeight',
  'endAlong',
  'boardLength',
  'stockLength',
  'firstMark',
  'end',
  'endDepth',
  'diagonal',
  'spread',
  'sawPlumb',
  'sawLevel',
  'squareTongue',
  'squareBlade',
  'treadRip',
  'lastTreadRip',
  'topRiserRip',
  'hangerRip',
  'riserOpening',
  'openingEdge',
  'headroom',
  'openingNeeded',
  'headerContact',
  'depthNeeded',
  'widthFinished',
  'betweenSkirts',
  'treadLength',
  'treadOverhang',
  'stringers',
  'spacing',
] as const;
export type PlainMeasure = (typeof PLAIN_MEASURES)[number];

/** One of a row: `tip:3`, counted as on the board and the pole; the pole begins at 0, all else at 1. */
const ROW_MEASURES = [
  'tip',
  'corner',
  'riserRip',
  'asCut',
  'pole',
  'poleCut',
  'poleToday',
  'poleCutToday',
  'stringerCentre',
  'toe',
  'obstacle',
  'obstacleUnder',
  'obstacleStands',
] as const;
export type RowMeasure = (typeof ROW_MEASURES)[number];

export type Measure = PlainMeasure | `${RowMeasure}:${number}`;

/** What a text asks about, if it is the name of a number. The names alone: their sums are large, and come later. */
export function measureNamed(text: string): Measure | null {
  const [name = '', step] = text.split(':');
  if (step === undefined) return PLAIN_MEASURES.find((known) => known === name) ?? null;
  const row = ROW_MEASURES.find((known) => known === name);
  return row !== undefined && /^\d+$/.test(step) ? `${row}:${Number(step)}` : null;
}

export type MeasureUnit = 'mm' | 'count' | 'rad';

/** Where a value came from. Keys are paths in the stair's part of the job file, or of the whole. */
export type Origin =
  | { readonly from: 'job'; readonly key: string }
  | { readonly from: 'default'; readonly key: string }
  /** Nobody knows it yet; the value is what the layout was made with. */
  | { readonly from: 'unknown'; readonly key: string }
  | { readonly from: 'rule'; readonly field: string }
  | { readonly from: 'measure'; readonly measure: Measure }
  /** A figure of the program's own, common practice without a source. */
  | { readonly from: 'practice' }
  /** Which one of the row was asked for. */
  | { readonly from: 'place' };

export interface Term {
  readonly symbol: string;
  readonly value: number;
  readonly unit: MeasureUnit;
  readonly origin: Origin;
}

/**
 * How the number is shown. `mark`: to the job's mark step, nearest. `rip`: down to the fence. `fine`:
 * as fine as the tape, nearest. `down`, `up`: so that it never looks better than it is. `angle`: to a
 * tenth of a degree. `count`: a whole number as it stands. `stock`: as sold.
 */
export type Shown = 'mark' | 'rip' | 'fine' | 'down' | 'up' | 'angle' | 'count' | 'stock';

export interface Explanation {
  readonly measure: Measure;
  /** Says which sum the terms go into; where a choice changes the sum, each has a code of its own. */
  readonly formula: string;
  readonly terms: readonly Term[];
  /** Unrounded: what the layout itself came to. */
  readonly result: number;
  readonly unit: MeasureUnit;
  readonly rounding: Shown;
}
