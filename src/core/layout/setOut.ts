/**
 * What is marked in the house before the stringers are hung: on the header, on the lower floor, and
 * across the stair. Every number says what the tape is hooked on, because three marks on one floor
 * that differ by a board's thickness are easily taken for one another.
 *
 * Frame across the stair: 0 is the face of the framing on the left when climbing, growing to the right.
 */
import { onGrid, type PrintedSheet } from '../check/printedSheet';
import { toMm } from '../units/exact';
import type { StairLayout } from './layoutStair';

export type SetOutFrom = 'subfloor' | 'header' | 'left-framing';

export interface SetOutMark {
  readonly what: 'header' | 'toe-mark' | 'riser-mark' | 'nosing-mark' | 'stringer-centre' | 'spacer';
  /** Counted from the left, from 1; 0 where there is only one. */
  readonly step: number;
  readonly value: number;
  /** `subfloor`: down from the upper subfloor as it is today. `header`: level, out from its face. */
  readonly from: SetOutFrom;
}

/** @param sheet the printed one for numbers to mark by, the exact one for numbers to reckon with */
export function setOut(layout: StairLayout, sheet: PrintedSheet): readonly SetOutMark[] {
  return [
    { what: 'header', step: 0, value: sheet.headerMark, from: 'subfloor' },
    { what: 'toe-mark', step: 0, value: sheet.toeMark, from: 'header' },
    { what: 'riser-mark', step: 0, value: sheet.riserMark, from: 'header' },
    { what: 'nosing-mark', step: 0, value: sheet.nosingMark, from: 'header' },
    ...across(layout, sheet.step),
  ];
}

/** Nothing is known across a stair whose walls were not measured. */
function across({ job, stringer, width }: StairLayout, step: number): SetOutMark[] {
  const { widthFraming } = job.survey;
  if (width === null || widthFraming === null) return [];
  const spacer = toMm(job.survey.spacer);
  const first = spacer + stringer.stockThickness / 2;
  const mark = (value: number) => onGrid(value, step, 'nearest');
  const centres = Array.from({ length: width.stringers }, (_, k): SetOutMark => {
    return { what: 'stringer-centre', step: k + 1, value: mark(first + k * width.spacing), from: 'left-framing' };
  });
  // The face of each spacer that the outer stringer lies against.
  const faces = spacer === 0 ? [] : [spacer, toMm(widthFraming) - spacer];
  const spacers = faces.map((face, i): SetOutMark => {
    return { what: 'spacer', step: i + 1, value: mark(face), from: 'left-framing' };
  });
  return [...spacers, ...centres];
}
