/**
 * Puts marks on a drawing and keeps its words apart: whatever carries text is placed in order of
 * rank. What would touch an earlier text, lie across a line that is kept clear, or leave the frame
 * goes to its next place, and is left out whole where it has none: never shrunk, never laid over.
 */
import type { Point } from '../geometry/point';
import { point } from '../geometry/point';
import type { About, Box, FigureText, Mark, Role, ShapeMark, TextMark } from './drawing';
import { clipLineToBox } from './strip';

/** Sizes in pixels of the view. Digits that a hand marks from are larger than words. */
export const TYPE = { main: 24, number: 19, caption: 14, small: 14 } as const;
const TICK = 6;
const GAP = 5;
const OVERRUN = 8;
/** A text beside a dimension line keeps this far from it. */
const BESIDE = 14;
/** Between the last line of a caption and the dimension line that goes on under it. */
const BREAK_AIR = 2.5;
/** Air that stays round a text. */
const AIR = 3;
/** Widths in ems, a little more than any system font takes: a text may seem wider, never narrower. */
const WORD_EM = 0.56;
const DIGIT_EM = 0.6;
const FRACTION_SIZE = 0.69;
/** From the bar of a stacked fraction to the outer edge of its digits and a little more, in ems of the whole number. */
const STACKED_HALF = 0.68;
/** Letters in one line of a caption beside an upright line. */
const LONGEST_LINE = 16;

export class Sketch {
  readonly marks: Mark[] = [];
  private readonly taken: Box[] = [];
  private readonly clear: (readonly [Point, Point])[] = [];

  /**
   * @param perPixel millimetres of the drawing to one pixel
   * @param within what is shown: nothing with a text is placed beyond it
   */
  constructor(
    readonly perPixel: number,
    private readonly within: Box | null = null,
  ) {}

  px(pixels: number): number {
    return pixels * this.perPixel;
  }

  shape(role: Role, corners: readonly Point[], about?: About): void {
    this.marks.push(
      about === undefined
        ? { kind: 'shape', role, corners, closed: true }
        : { kind: 'shape', role, corners, closed: true, about },
    );
  }

  rectangle(role: Role, left: number, bottom: number, right: number, top: number, about?: About): void {
    this.shape(role, [point(left, bottom), point(right, bottom), point(right, top), point(left, top)], about);
  }

  line(role: Role, ...corners: Point[]): void {
    this.marks.push(lineMark(role, corners));
  }

  /** A line that lights up with what it is about, if it is about anything. */
  lineAbout(about: About | undefined, role: Role, ...corners: Point[]): void {
    const mark = lineMark(role, corners);
    this.marks.push(about === undefined ? mark : { ...mark, about });
  }

  /** A framing member cut across: a box with its two diagonals. */
  crossCut(role: Role, left: number, bottom: number, right: number, top: number, about?: About): void {
    this.rectangle(role, left, bottom, right, top, about);
    this.line('leader', point(left, bottom), point(right, top));
    this.line('leader', point(left, top), point(right, bottom));
  }

  words(role: Role, at: Point, anchor: TextMark['anchor'], text: string, pixels: number = TYPE.caption): TextMark {
    return { kind: 'text', role, at, anchor, size: this.px(pixels), content: { kind: 'words', text } };
  }

  figure(role: Role, at: Point, anchor: TextMark['anchor'], content: FigureText, pixels: number): TextMark {
    return { kind: 'text', role, at, anchor, size: this.px(pixels), content };
  }

  /** Keeps a line free of text that is not placed yet. */
  keepClear(...corners: readonly Point[]): void {
    this.clear.push(...segments(corners));
  }

  /**
   * Places a group of marks if its texts touch nothing and its lines go through no earlier text.
   * @param about what those marks belong to that do not say so themselves
   * @returns whether it was placed
   */
  place(group: readonly Mark[], about?: About): boolean {
    const texts = group.flatMap((mark) => (mark.kind === 'text' ? [textBox(mark)] : []));
    if (texts.some((box, i) => texts.slice(i + 1).some((other) => overlap(box, other)))) return false;
    const boxes = texts.map((box) => grow(box, this.px(AIR)));
    const lines = group.flatMap((mark) => (mark.kind === 'shape' && !mark.closed ? segments(mark.corners) : []));
    if (!boxes.every((box) => this.isFree(box)) || !this.areInside(lines)) return false;
    if (lines.some(([a, b]) => texts.some((box) => clipLineToBox(a, b, box) !== null))) return false;
    if (lines.some(([a, b]) => this.taken.some((box) => clipLineToBox(a, b, box) !== null))) return false;
    this.taken.push(...boxes);
    this.clear.push(...lines);
    this.marks.push(...(about === undefined ? group : group.map((mark) => ({ about, ...mark }))));
    return true;
  }

  /** The same text, moved sideways into the frame where it would stick out. */
  inside(mark: TextMark): TextMark {
    const { within } = this;
    if (within === null) return mark;
    const box = grow(textBox(mark), this.px(AIR));
    const move = Math.max(0, within.left - box.left) - Math.max(0, box.right - within.right);
    return { ...mark, at: point(mark.at.x + move, mark.at.y) };
  }

  /** A small number that stands in a corner: without air of its own, but over no other text. */
  placeTight(mark: TextMark, about: About): void {
    const box = textBox(mark);
    if (this.taken.some((other) => overlap(box, other)) || !this.isShown(box)) return;
    this.taken.push(box);
    this.marks.push({ ...mark, about });
  }

  private isShown(box: Box): boolean {
    return this.within === null || isWithin(box, this.within);
  }

  /** The first of several places for the same thing that is free. */
  placeFirst(places: Iterable<readonly Mark[] | null>, about?: About): boolean {
    for (const group of places) if (group !== null && this.place(group, about)) return true;
    return false;
  }

  private isFree(box: Box): boolean {
    if (!this.isShown(box)) return false;
    if (this.taken.some((other) => overlap(box, other))) return false;
    return this.clear.every(([a, b]) => clipLineToBox(a, b, box) === null);
  }

  private areInside(lines: readonly (readonly [Point, Point])[]): boolean {
    return lines.every(([a, b]) => this.isShown(boxOf([a, b])));
  }

  /** A level dimension with its number above the line and its caption below; null if it does not fit between the ends. */
  levelDimension(
    x1: number,
    x2: number,
    y: number,
    content: FigureText,
    caption: string,
    from: number,
  ): readonly Mark[] | null {
    const middle = (x1 + x2) / 2;
    const number = this.figure(
      'number',
      point(middle, y + this.px(TYPE.number * 0.85)),
      'middle',
      content,
      TYPE.number,
    );
    const under = this.words('caption', point(middle, y - this.px(TYPE.caption * 0.9)), 'middle', caption);
    const room = Math.abs(x2 - x1) - this.px(2 * TICK);
    if (boxWidth(textBox(number)) > room) return null;
    const marks: Mark[] = [
      lineMark('dimension', [point(x1, y), point(x2, y)]),
      ...this.ends(point(x1, y), point(x2, y)),
      ...[x1, x2].map((x) => this.extension(point(x, from), point(x, y))),
      number,
    ];
    return boxWidth(textBox(under)) > room || caption === '' ? marks : [...marks, under];
  }

  /** A level dimension that is too short for its number: it stands behind the line's right end, or before its left. */
  shortDimension(
    x1: number,
    x2: number,
    y: number,
    content: FigureText,
    caption: string,
    from: number,
    side: 1 | -1,
  ): readonly Mark[] {
    const beside = (side === 1 ? Math.max(x1, x2) : Math.min(x1, x2)) + side * this.px(BESIDE);
    const anchor = side === 1 ? 'start' : 'end';
    const number = this.figure('number', point(beside, y), anchor, content, TYPE.number);
    const after = beside + side * (boxWidth(textBox(number)) + this.px(8));
    return [
      lineMark('dimension', [point(x1, y), point(x2, y)]),
      ...this.ends(point(x1, y), point(x2, y)),
      ...[x1, x2].map((x) => this.extension(point(x, from), point(x, y))),
      number,
      ...(caption === '' ? [] : [this.words('caption', point(after, y), anchor, caption)]),
    ];
  }

  /**
   * An upright dimension with its number and caption in a break of the line; text stays level;
   * null where a part of the line beside the break is gone.
   * @param share where along the line the break lies: columns side by side break at different heights
   */
  uprightDimension(
    y1: number,
    y2: number,
    x: number,
    content: FigureText,
    caption: readonly string[],
    from: From,
    share = 0.5,
  ): readonly Mark[] | null {
    const middle = y1 + (y2 - y1) * share;
    const lines = caption.length;
    const half = this.px((TYPE.main * 1.5 + lines * TYPE.caption * 1.25) / 2 + (lines === 0 ? 0 : BREAK_AIR));
    if (Math.min(share, 1 - share) * Math.abs(y2 - y1) < half) return null;
    const numberY = middle + half - this.px(TYPE.main * 0.8);
    const captions = caption.map((text, i) =>
      this.words(
        'caption',
        point(x, numberY - this.px(TYPE.main * 0.85 + (i + 0.5) * TYPE.caption * 1.25)),
        'middle',
        text,
      ),
    );
    return [
      lineMark('dimension', [point(x, y1), point(x, middle - half)]),
      lineMark('dimension', [point(x, middle + half), point(x, y2)]),
      ...this.ends(point(x, y1), point(x, y2)),
      ...[y1, y2].map((y, i) => this.extension(point(starts(from)[i as 0 | 1], y), point(x, y))),
      this.figure('number-main', point(x, numberY), 'middle', content, TYPE.main),
      ...captions,
    ];
  }

  /** An upright dimension that may be too short to break: then the number and caption stand beside its line. */
  sideDimension(
    y1: number,
    y2: number,
    x: number,
    content: FigureText,
    caption: readonly string[],
    from: From,
  ): readonly Mark[] {
    return (
      this.uprightDimension(y1, y2, x, content, caption, from) ??
      this.besideDimension(y1, y2, x, content, caption, from, x >= starts(from)[0] ? 1 : -1)
    );
  }

  /**
   * An upright dimension whose line is whole, with its number and caption beside it.
   * @param side 1 to the right of the line, −1 to the left
   * @param middle height of the text; left out, that of the line's middle
   */
  besideDimension(
    y1: number,
    y2: number,
    x: number,
    content: FigureText,
    caption: readonly string[],
    from: From,
    side: 1 | -1,
    middle = (y1 + y2) / 2,
  ): readonly Mark[] {
    const beside = x + side * this.px(BESIDE);
    const anchor = side === 1 ? 'start' : 'end';
    return [
      lineMark('dimension', [point(x, y1), point(x, y2)]),
      ...this.ends(point(x, y1), point(x, y2)),
      ...[y1, y2].map((y, i) => this.extension(point(starts(from)[i as 0 | 1], y), point(x, y))),
      this.figure('number-main', point(beside, middle + this.px(14)), anchor, content, TYPE.main),
      ...this.captionBeside(caption, point(beside, middle + this.px(14 - TYPE.main * 1.15)), anchor),
    ];
  }

  /** Lines of a caption, one under the other, the first one at a point. */
  captionBeside(caption: readonly string[], at: Point, anchor: TextMark['anchor']): readonly TextMark[] {
    return caption.map((text, i) =>
      this.words('caption', point(at.x, at.y - this.px(i * TYPE.caption * 1.25)), anchor, text),
    );
  }

  /** 45° ticks across both ends of a dimension line. */
  private ends(a: Point, b: Point): Mark[] {
    return [a, b].map((end) => this.tick(end));
  }

  /** @param length of the dimension that it ends, in millimetres: the ticks of a short one do not run into each other */
  tick({ x, y }: Point, length = Number.POSITIVE_INFINITY): Mark {
    const reach = Math.min(this.px(TICK), length / 5);
    return lineMark('tick', [point(x - reach, y - reach), point(x + reach, y + reach)]);
  }

  /** From the object, with a gap, to just past the dimension line. */
  private extension(object: Point, line: Point): Mark {
    const dx = Math.sign(line.x - object.x);
    const dy = Math.sign(line.y - object.y);
    return lineMark('dimension', [
      point(object.x + dx * this.px(GAP), object.y + dy * this.px(GAP)),
      point(line.x + dx * this.px(OVERRUN), line.y + dy * this.px(OVERRUN)),
    ]);
  }
}

/** Where the extension lines of an upright dimension begin: x of what is measured, or of its first and its second end. */
type From = number | readonly [number, number];

function starts(from: From): readonly [number, number] {
  return typeof from === 'number' ? [from, from] : from;
}

function lineMark(role: Role, corners: readonly Point[]): ShapeMark {
  return { kind: 'shape', role, corners, closed: false };
}

/** The room that a text takes, on the safe side. */
export function textBox(mark: TextMark): Box {
  const width = contentEms(mark.content) * mark.size;
  const left = mark.anchor === 'start' ? mark.at.x : mark.anchor === 'end' ? mark.at.x - width : mark.at.x - width / 2;
  const stacked = mark.content.kind === 'tape' && mark.content.number.numerator !== 0;
  const half = mark.size * (stacked ? STACKED_HALF : 0.5);
  return { left, right: left + width, bottom: mark.at.y - half, top: mark.at.y + half };
}

/** Width of a figure or words in ems of their own size. */
export function contentEms(content: TextMark['content']): number {
  if (content.kind === 'words') return content.text.length * WORD_EM;
  if (content.kind === 'digits') return content.text.length * DIGIT_EM;
  const parts = tapeParts(content.number);
  return parts.whole.length * DIGIT_EM + fractionEms(parts) + (parts.heavy ? DIGIT_EM : 0);
}

export interface TapeParts {
  /** With its minus; empty where there is only a fraction. */
  readonly whole: string;
  readonly numerator: string;
  readonly denominator: string;
  readonly heavy: boolean;
}

/** The pieces that a target sets: whole number, fraction on a bar, and the heavy sign. */
export function tapeParts(number: Extract<FigureText, { kind: 'tape' }>['number']): TapeParts {
  const fraction = number.numerator !== 0;
  const whole = number.whole === 0 && fraction ? '' : String(number.whole);
  return {
    whole: (number.negative ? '-' : '') + whole,
    numerator: fraction ? String(number.numerator) : '',
    denominator: fraction ? String(number.denominator) : '',
    heavy: number.heavy,
  };
}

/** Width of the stacked fraction, in ems of the whole number. */
export function fractionEms(parts: TapeParts): number {
  const digits = Math.max(parts.numerator.length, parts.denominator.length);
  return digits === 0 ? 0 : digits * DIGIT_EM * FRACTION_SIZE + 0.12;
}

/** A caption beside an upright line is broken after its commas, and in two where it is still long. */
export function captionLines(text: string): readonly string[] {
  return text.split(/(?<=,) /).flatMap((piece) => {
    if (piece.length <= LONGEST_LINE) return [piece];
    const middle = piece.length / 2;
    const spaces = [...piece.matchAll(/ /g)].map((found) => found.index);
    const at = spaces.sort((a, b) => Math.abs(a - middle) - Math.abs(b - middle))[0];
    return at === undefined ? [piece] : [piece.slice(0, at), piece.slice(at + 1)];
  });
}

/** The straight pieces of a line. */
function segments(corners: readonly Point[]): (readonly [Point, Point])[] {
  return corners.slice(1).map((corner, i) => [corners[i] as Point, corner] as const);
}

export function boxOf(corners: readonly Point[]): Box {
  const xs = corners.map(({ x }) => x);
  const ys = corners.map(({ y }) => y);
  return { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) };
}

export function isWithin(box: Box, outer: Box): boolean {
  return box.left >= outer.left && box.right <= outer.right && box.bottom >= outer.bottom && box.top <= outer.top;
}

function boxWidth(box: Box): number {
  return box.right - box.left;
}

function grow(box: Box, by: number): Box {
  return { left: box.left - by, right: box.right + by, bottom: box.bottom - by, top: box.top + by };
}

export function overlap(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.bottom < b.top && b.bottom < a.top;
}
