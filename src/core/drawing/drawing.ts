/**
 * One drawing model for screen, paper and file: a plain list of marks in millimetres, each with a
 * ROLE and never a colour. Every target maps roles to pens; what is shown is what is printed.
 *
 * Frame: x to the right, y UP, in millimetres of the thing drawn (a target that draws downward turns
 * it over). Text and ticks have a size too: they are made for one scale, which the drawing states.
 */
import type { Point } from '../geometry/point';
import type { TapeNumber } from '../units/format';

export type Role =
  // Wood that is built.
  | 'stringer'
  | 'tread'
  | 'riser'
  | 'hanger'
  | 'kicker'
  | 'landing-nosing'
  // The same wood in pieces, where a drawing is broken into rows: fill and cut lines apart.
  | 'wood-fill'
  | 'cut-line'
  // What is there already.
  | 'house'
  | 'floor-today'
  | 'ground-hatch'
  // What is not there yet, hidden, or not decided.
  | 'to-come'
  | 'unknown'
  | 'board-fill'
  | 'board-line'
  // Lines that are drawn and not built.
  | 'nosing-line'
  | 'gauge-line'
  | 'dimension'
  | 'leader'
  | 'tick'
  | 'mark-point'
  | 'pitch-triangle'
  // Words and numbers.
  | 'number-main'
  | 'number'
  | 'caption'
  | 'riser-number'
  | 'tread-number'
  // Paper: what is cut out of it, what is waste, how sheets are joined, and what proves their size.
  | 'template-cut'
  | 'waste-hatch'
  | 'registration'
  | 'tile-edge'
  | 'proof-bar'
  // What a page is set in.
  | 'rule'
  | 'rule-strong'
  | 'heading'
  | 'body'
  | 'body-strong'
  | 'small';

/** What a mark belongs to: a key of the job file, or a result, so that both can light up together. */
export type About = string;

export interface ShapeMark {
  readonly kind: 'shape';
  readonly role: Role;
  readonly corners: readonly Point[];
  readonly closed: boolean;
  readonly about?: About;
}

/** A number as a tape reads it (inches), or as plain digits (millimetres). */
export type FigureText =
  | { readonly kind: 'tape'; readonly number: TapeNumber }
  | { readonly kind: 'digits'; readonly text: string };

/** A number or words, level, centred on its height at `at`. */
export interface TextMark {
  readonly kind: 'text';
  readonly role: Role;
  readonly at: Point;
  readonly anchor: 'start' | 'middle' | 'end';
  /** Height of the letters' em box, in millimetres of the drawing. */
  readonly size: number;
  readonly content: FigureText | { readonly kind: 'words'; readonly text: string };
  readonly about?: About;
}

export type Mark = ShapeMark | TextMark;

export interface Box {
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  readonly top: number;
}

export interface Drawing {
  readonly marks: readonly Mark[];
  /** What a target shows: everything lies inside. */
  readonly frame: Box;
  /** Millimetres of the drawing to one pixel of the view that it was made for. */
  readonly perPixel: number;
}

/** The words that a drawing needs, already in the reader's language. */
export type DrawingWords = (key: DrawingWord) => string;

export type DrawingWord =
  | 'totalRise'
  | 'riseToday'
  | 'headroom'
  | 'headroomShort'
  | 'opening'
  | 'totalRun'
  | 'headerToRiser'
  | 'floorToCome'
  | 'notKnown'
  | 'gaugeLine'
  | 'unitRise'
  | 'firstCut'
  | 'belowSubfloor'
  | 'headerContact'
  | 'plumbCut'
  | 'notchDepth'
  | 'stepLength'
  | 'tread'
  | 'alreadyDropped'
  | 'raised'
  | 'wholeRiser'
  | 'headerMark'
  | 'totalRiseSoFar'
  | 'firstCutMarked'
  | 'levelSpan'
  | 'slopeSpan'
  | 'throatLeft'
  | 'clearance'
  | 'floorHigher'
  | 'floorLower'
  | 'firstRiserHere';

/** Size in pixels of the place where the drawing will be shown. */
export interface View {
  readonly width: number;
  readonly height: number;
  /**
   * How many times larger than the whole would be shown there; 1 where left out. The thing keeps its place and the
   * frame stays that of the whole, while texts keep their pixels: what had no room before gets its number.
   */
  readonly zoom?: number;
}
