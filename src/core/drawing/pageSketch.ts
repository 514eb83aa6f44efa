/**
 * Sets words and figures on paper. Unlike a screen's, a page's letters are known, so widths are
 * measured and lines broken by them; what a user wrote is cut short rather than let run off the sheet.
 * Frame: the sheet's, y up, millimetres; a text is centred on its height.
 */
import { type Point, point } from '../geometry/point';
import type { Box, FigureText, Mark, Role, TextMark } from './drawing';
import { isBold, type TextMeasure } from './page';
import { tapeParts } from './sketch';

/** Heights of the em in millimetres; digits and capitals are 0.73 of it, so none is under 2.4 mm. */
export const PRINT = { title: 6.2, strong: 5, figure: 4.9, body: 3.9, small: 3.3 } as const;
/** Between two lines of running text, in ems. */
export const LEADING = 1.35;
/** Digits of a stacked fraction, of the whole number's size. */
export const STACKED = 0.69;
/** Feet of the two digits of a stack, over and under the middle, and its bar, in ems of the whole number. */
export const STACK = { upper: 0.09, lower: -0.6, bar: 0.06, barInset: 0.05 };
const STACK_AIR = 0.12;
const ELLIPSIS = '…';

export class PageSketch {
  readonly marks: Mark[] = [];

  constructor(readonly measure: TextMeasure) {}

  line(role: Role, ...corners: Point[]): void {
    this.marks.push({ kind: 'shape', role, corners, closed: false });
  }

  level(role: Role, left: number, right: number, y: number): void {
    this.line(role, point(left, y), point(right, y));
  }

  upright(role: Role, x: number, bottom: number, top: number): void {
    this.line(role, point(x, bottom), point(x, top));
  }

  box(role: Role, { left, right, bottom, top }: Box): void {
    const corners = [point(left, bottom), point(right, bottom), point(right, top), point(left, top)];
    this.marks.push({ kind: 'shape', role, corners, closed: true });
  }

  cross(role: Role, at: Point, reach: number): void {
    this.level(role, at.x - reach, at.x + reach, at.y);
    this.upright(role, at.x, at.y - reach, at.y + reach);
  }

  words(role: Role, at: Point, text: string, size: number, anchor: TextMark['anchor'] = 'start'): void {
    if (text === '') return;
    this.marks.push({ kind: 'text', role, at, anchor, size, content: { kind: 'words', text } });
  }

  /** Words that end before they have used up the room; the rest is left out, and seen to be. */
  fitted(role: Role, at: Point, text: string, size: number, room: number, anchor: TextMark['anchor'] = 'start'): void {
    this.words(role, at, cutToFit(text, room / size, isBold(role), this.measure), size, anchor);
  }

  figure(role: Role, at: Point, content: FigureText, size: number, anchor: TextMark['anchor'] = 'start'): void {
    this.marks.push({ kind: 'text', role, at, anchor, size, content });
  }

  /** In a column: whole numbers end and fractions begin at x. Stacked digits would be too small there. */
  column(at: Point, content: FigureText, size: number): void {
    const text = content.kind === 'digits' ? content.text : '';
    const [digits = '', decimals] = text.split('.');
    const parts = content.kind === 'tape' ? tapeParts(content.number) : null;
    const whole = parts ? parts.whole : digits;
    this.words('body-strong', at, whole.replace('-', '−'), size, 'end');
    const fraction = parts ? fractionLine(parts) : decimals === undefined ? '' : `.${decimals}`;
    const gap = parts ? size * 0.25 : 0;
    this.words('body', point(at.x + gap, at.y), fraction, size);
  }

  width(text: string, size: number, bold: boolean): number {
    return this.measure(text, bold) * size;
  }

  /** A number and what it is are not torn apart where a sheet ends. */
  together(about: string, draw: () => void): void {
    const from = this.marks.length;
    draw();
    const drawn = this.marks.splice(from);
    this.marks.push(...drawn.map((mark) => ({ ...mark, about })));
  }

  /** Running text from the given height down. @returns the height under its last line */
  paragraph(role: Role, left: number, top: number, room: number, text: string, size: number): number {
    let y = top;
    for (const line of wrap(text, () => room / size, isBold(role), this.measure)) {
      this.words(role, point(left, y - (size * LEADING) / 2), line, size);
      y -= size * LEADING;
    }
    return y;
  }
}

function fractionLine({ numerator, denominator, heavy }: ReturnType<typeof tapeParts>): string {
  const fraction = numerator === '' ? '' : `${numerator}/${denominator}`;
  return [fraction, heavy ? '+' : ''].filter((part) => part !== '').join(' ');
}

/** @param room in ems */
export function cutToFit(text: string, room: number, bold: boolean, measure: TextMeasure): string {
  if (measure(text, bold) <= room) return text;
  const letters = Array.from(text);
  const cut = (kept: number) => (kept === 0 ? '' : letters.slice(0, kept).join('').trimEnd() + ELLIPSIS);
  // More letters are never narrower: the most that fit are found by halving.
  let [fits, tooMany] = [0, letters.length];
  while (tooMany - fits > 1) {
    const middle = (fits + tooMany) >> 1;
    if (measure(cut(middle), bold) > room) tooMany = middle;
    else fits = middle;
  }
  return cut(fits);
}

/** @param roomFor width in ems of the line with this number, from 0 */
export function wrap(
  text: string,
  roomFor: (line: number) => number,
  bold: boolean,
  measure: TextMeasure,
): readonly string[] {
  const lines: string[] = [];
  let line = '';
  // A word too long for a line of its own goes on after its hyphens.
  const parts = text.split(' ').map((word) => (measure(word, bold) > roomFor(0) ? word.split(/(?<=-)/) : [word]));
  for (const [at, part] of parts.flatMap((word) => word.map((part, at) => [at, part] as const))) {
    const longer = line === '' ? part : `${line}${at === 0 ? ' ' : ''}${part}`;
    if (line !== '' && measure(longer, bold) > roomFor(lines.length)) {
      lines.push(line);
      line = cutToFit(part, roomFor(lines.length), bold, measure);
    } else line = line === '' ? cutToFit(part, roomFor(lines.length), bold, measure) : longer;
  }
  return line === '' ? lines : [...lines, line];
}

/** The room that a text takes on paper. */
export function printedBox(mark: TextMark, measure: TextMeasure): Box {
  const width = printedEms(mark, measure) * mark.size;
  const left = mark.anchor === 'start' ? mark.at.x : mark.anchor === 'end' ? mark.at.x - width : mark.at.x - width / 2;
  const stacked = mark.content.kind === 'tape' && mark.content.number.numerator !== 0;
  // Digits of a stack reach 0.62 of the size over and under the middle; letters 0.4.
  const half = mark.size * (stacked ? 0.62 : 0.42);
  return { left, right: left + width, bottom: mark.at.y - half, top: mark.at.y + half };
}

export interface FigureSetting {
  readonly whole: number;
  readonly stack: number;
  readonly heavy: number;
}

/** Widths in ems of the three pieces of a tape's number. */
export function figureSetting(mark: TextMark, measure: TextMeasure): FigureSetting {
  if (mark.content.kind !== 'tape') return { whole: printedEms(mark, measure), stack: 0, heavy: 0 };
  const bold = isBold(mark.role);
  const parts = tapeParts(mark.content.number);
  const digits = Math.max(measure(parts.numerator, bold), measure(parts.denominator, bold));
  return {
    whole: measure(parts.whole.replace('-', '−'), bold),
    stack: parts.numerator === '' ? 0 : digits * STACKED + STACK_AIR,
    heavy: parts.heavy ? measure('+', bold) : 0,
  };
}

function printedEms(mark: TextMark, measure: TextMeasure): number {
  if (mark.content.kind !== 'tape') return measure(mark.content.text, isBold(mark.role));
  const { whole, stack, heavy } = figureSetting(mark, measure);
  return whole + stack + heavy;
}
