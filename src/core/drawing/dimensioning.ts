import type { PrintedSheet } from '../check/printedSheet';
import type { StairLayout } from '../layout/layoutStair';
import type { Box, DrawingWords } from './drawing';
import type { Sketch } from './sketch';

/** What every dimension needs to know. */
export interface Dimensioning {
  readonly sketch: Sketch;
  readonly layout: StairLayout;
  readonly sheet: PrintedSheet;
  readonly extent: Box;
  readonly words: DrawingWords;
  /** Pixels that the whole drawing would be wide at this scale. */
  readonly width: number;
}
