/**
 * A page: marks on one sheet of paper, with what is needed to say and to prove what they are. Every
 * target that prints takes pages and knows nothing of stairs.
 */
import type { Point } from '../geometry/point';
import type { ProblemValues } from '../result';
import type { UnitSystem } from '../units/length';
import type { Correction } from './correction';
import type { Box, Mark, Role } from './drawing';
import type { Sheet } from './paper';

/** Full size, one to so many, or only a picture. */
export type PageScale =
  | { readonly kind: 'true' }
  | { readonly kind: 'ratio'; readonly ratio: number }
  | { readonly kind: 'none' };

/** A part of a template and where it lies on the sheet, before the printer is corrected. */
export interface Tile {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
  /** In the template's own frame. */
  readonly window: Box;
  /** Where the window's lower left corner lies on the sheet. */
  readonly at: Point;
}

/** Before its frame is drawn, which needs to know how many pages there are. */
export interface PageDraft {
  readonly name: string;
  readonly sheet: Sheet;
  /** What the frame and everything in it may use. */
  readonly live: Box;
  readonly title: string;
  readonly under: string;
  readonly scale: PageScale;
  readonly marks: readonly Mark[];
  readonly tiles: readonly Tile[];
  /** Frame along two edges; or in the corner that a triangle leaves. */
  readonly frame: 'edges' | Wedge;
}

/**
 * The blank half of a sheet over a triangle: bars start in the upper corner away from the right
 * angle, and words run down between there and the slope.
 */
export interface Wedge {
  /** True if the right angle is on the right, so that the blank corner is on the left. */
  readonly blankLeft: boolean;
  /** The slope's lower and upper end on the sheet. */
  readonly low: Point;
  readonly high: Point;
  readonly steps: readonly string[];
}

export interface Page {
  readonly name: string;
  readonly sheet: Sheet;
  readonly scale: PageScale;
  readonly tiles: readonly Tile[];
  /** In the sheet's frame, corrected for the printer. */
  readonly marks: readonly Mark[];
}

/** What the frame of every page says. */
export interface PageFacts {
  readonly units: UnitSystem;
  readonly revision: string;
  /** Job and stair in one line, already fit to be printed. */
  readonly job: string;
  readonly draft: boolean;
  readonly correction: Correction;
}

/** Width of a text in ems of its size. */
export type TextMeasure = (text: string, bold: boolean) => number;

/** Words with their values filled in; the keys are listed where they are said. */
export type PaperWords = (key: PaperWord, values?: ProblemValues) => string;

export type PaperWord =
  | 'pageOf'
  | 'revision'
  | 'inches'
  | 'millimetres'
  | 'scaleTrue'
  | 'scaleRatio'
  | 'scaleNone'
  | 'diagonal'
  | 'barInches'
  | 'barMm'
  | 'corrected'
  | 'notCorrected'
  | 'draft'
  | 'tile'
  | 'tileAt'
  | 'tileHeights'
  | 'triangle'
  | 'heel'
  | 'heelOf'
  | 'stringerOf'
  | 'othersShorter'
  | 'topEnd'
  | 'stringer'
  | 'marksStrip'
  | 'poleStrip'
  | 'handRight'
  | 'handLeft'
  | 'marksStripHow'
  | 'poleStripHow'
  | 'tip'
  | 'corner'
  | 'levelCut'
  | 'plumbCut'
  | 'firstPlumbCut'
  | 'endPlumbCut'
  | 'lastLevelCut'
  | 'seat'
  | 'kickerWide'
  | 'kickerHigh'
  | 'thisEdgeCrown'
  | 'tipToHeel'
  | 'tipToEnd'
  | 'headerMark'
  | 'alreadyDropped'
  | 'floor'
  | 'floorHere'
  | 'boardEnd'
  | 'end'
  | 'fromFirstTip'
  | 'levelFromFirstTip'
  | 'levelFromLastTip'
  | 'upFromFloor'
  | 'step1'
  | 'step2'
  | 'step3'
  | 'step4';

const BOLD: ReadonlySet<Role> = new Set(['number-main', 'number', 'riser-number', 'heading', 'body-strong']);

export function isBold(role: Role): boolean {
  return BOLD.has(role);
}

export function boxWidth({ left, right }: Box): number {
  return right - left;
}

export function boxHeight({ bottom, top }: Box): number {
  return top - bottom;
}
