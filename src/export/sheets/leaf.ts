/** What a maker of package sheets is given, and what it gives back: leaves, still without their frames. */
import type { LumberBook } from '../../core/carry/lumber';
import type { Box, Drawing, DrawingWords, Mark, TextMark } from '../../core/drawing/drawing';
import { boxHeight, boxWidth, type PageScale, type TextMeasure } from '../../core/drawing/page';
import { printedBox } from '../../core/drawing/pageSketch';
import { overlap } from '../../core/drawing/sketch';
import type { JobText } from '../../core/job/jobText';
import type { JudgedPlan } from '../../core/plan/planStair';
import type { Speaker } from '../../text/say';

export interface LeafContext {
  readonly job: JobText;
  readonly lumber: LumberBook;
  readonly plan: JudgedPlan;
  readonly say: Speaker;
  readonly measure: TextMeasure;
  /** What the frame leaves of the sheet. */
  readonly content: Box;
}

export interface Leaf {
  readonly title: string;
  readonly under: string;
  readonly scale: PageScale;
  readonly marks: readonly Mark[];
}

export type LeafMaker = (context: LeafContext) => readonly Leaf[];

/**
 * Millimetres of paper to a pixel of a drawing's view: its least digits, those of stacked fractions,
 * come to 2.4 mm, and its captions too.
 */
export const PAPER_PIXEL = 0.26;

export function drawingWords(say: Speaker): DrawingWords {
  return (key) => say(`drawing.${key}`);
}

/** The size of view that fills a box at that scale. */
export function viewFor(box: Box, pixel = PAPER_PIXEL): { readonly width: number; readonly height: number } {
  return { width: boxWidth(box) / pixel, height: boxHeight(box) / pixel };
}

export interface Placed {
  readonly marks: readonly Mark[];
  /** Millimetres of the thing to one millimetre of paper. */
  readonly ratio: number;
}

/**
 * A drawing that was made for a view, on paper: its frame's upper left corner goes to the box's. It
 * was made without knowing the letters' true widths, so a caption that leaves the box or touches
 * another text is left out here; a number never is.
 */
export function placeDrawing(drawing: Drawing, box: Box, measure: TextMeasure, pixel = PAPER_PIXEL): Placed {
  const scale = pixel / drawing.perPixel;
  const { frame } = drawing;
  const move = ({ x, y }: { readonly x: number; readonly y: number }) => ({
    x: box.left + (x - frame.left) * scale,
    y: box.top + (y - frame.top) * scale,
  });
  const marks = drawing.marks.map((mark): Mark => {
    if (mark.kind === 'shape') return { ...mark, corners: mark.corners.map(move) };
    return { ...mark, at: move(mark.at), size: mark.size * scale };
  });
  const isCaption = (mark: Mark): mark is TextMark => mark.kind === 'text' && mark.role === 'caption';
  const taken = marks.flatMap((mark) => (mark.kind === 'text' && !isCaption(mark) ? [printedBox(mark, measure)] : []));
  const kept = marks.filter((mark) => {
    if (!isCaption(mark)) return true;
    const own = printedBox(mark, measure);
    const fits = own.left >= box.left && own.right <= box.right && own.bottom >= box.bottom && own.top <= box.top;
    if (!fits || taken.some((other) => overlap(own, other))) return false;
    taken.push(own);
    return true;
  });
  return { marks: kept, ratio: 1 / scale };
}
