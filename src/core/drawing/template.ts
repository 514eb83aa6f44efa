/**
 * A template: a piece of the stringer, or of a tape, at full size. Paper gives the shape, the tape
 * gives the place: each has a datum from which a tape is run and to which sheets are set.
 * Frame: y up, millimetres; which way x runs is said where a template is made.
 */
import { type Point, point } from '../geometry/point';
import type { Box, Mark, TextMark } from './drawing';
import type { PaperWord } from './page';

export type TemplateName = 'triangle' | 'heel' | 'topEnd' | 'stringer' | 'marksStrip' | 'poleStrip';

export interface Template {
  readonly name: TemplateName;
  readonly marks: readonly Mark[];
  /** What has to be printed. */
  readonly extent: Box;
  readonly datum: Point;
  /** How distances from the datum are to be read, along and up. */
  readonly along: PaperWord;
  /** A strip is cut into lanes that are stacked on a sheet. */
  readonly isStrip: boolean;
  /** Climbs to the right on paper, or to the left; null where a hand has no meaning. */
  readonly hand: Hand | null;
}

export type Hand = 'right' | 'left';

const OTHER_END = { start: 'end', middle: 'middle', end: 'start' } as const;

/** The same seen from the other face of the board. Words stay readable. */
export function mirrored(template: Template): Template {
  const flip = (p: Point) => point(p.x === 0 ? 0 : -p.x, p.y);
  const marks = template.marks.map((mark): Mark => {
    if (mark.kind === 'shape') return { ...mark, corners: mark.corners.map(flip) };
    const anchor: TextMark['anchor'] = OTHER_END[mark.anchor];
    return { ...mark, at: flip(mark.at), anchor };
  });
  const { left, right, bottom, top } = template.extent;
  return {
    ...template,
    marks,
    extent: { left: -right, right: -left, bottom, top },
    datum: flip(template.datum),
    hand: template.hand === null ? null : 'left',
  };
}
