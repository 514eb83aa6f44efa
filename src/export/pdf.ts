/**
 * Pages → PDF, line by line and text by text. Whatever is at full size in a page is at full size in
 * the file: coordinates go over as they are, and the viewer is asked not to scale. The writer itself
 * is only fetched when a file is asked for. The same pages give the same bytes at any time.
 */
import type { jsPDF } from 'jspdf';
import type { ShapeMark, TextMark } from '../core/drawing/drawing';
import { isBold, type Page } from '../core/drawing/page';
import { figureSetting, STACK, STACKED } from '../core/drawing/pageSketch';
import { tapeParts } from '../core/drawing/sketch';
import type { Point } from '../core/geometry/point';
import { mmToInches } from '../core/units/exact';
import type { Fonts } from './font/fonts';
import { PAPER_PENS } from './paperPens';

const POINTS_PER_INCH = 72;
/** The middle of a digit over its foot, in ems of the font. */
const HALF_DIGIT = 0.3645;
const FAMILY = 'Sheet';
/** A fixed moment and name: they would make two files of the same pages differ. */
const MADE = "D:20260101000000+00'00'";
const FILE_ID = '0'.repeat(32);

/** @returns the file; empty pages are none of its business */
export async function pdfOf(pages: readonly Page[], fonts: Fonts): Promise<Uint8Array> {
  const { jsPDF: Writer } = await import('jspdf');
  const [first] = pages;
  if (first === undefined) throw new Error('A file without pages was asked for.');
  const doc = new Writer({ ...formatOf(first), unit: 'mm', compress: true, putOnlyUsedFonts: true });
  doc.setCreationDate(MADE);
  doc.setFileId(FILE_ID);
  doc.setProperties({ title: 'Pitchboard', creator: 'Pitchboard' });
  doc.viewerPreferences({ PrintScaling: 'None', PickTrayByPDFSize: true });
  for (const weight of ['regular', 'bold'] as const) {
    doc.addFileToVFS(`${weight}.ttf`, fonts[weight]);
    doc.addFont(`${weight}.ttf`, FAMILY, weight === 'bold' ? 'bold' : 'normal', undefined, 'Identity-H');
  }
  pages.forEach((page, index) => {
    if (index > 0) doc.addPage(formatOf(page).format, formatOf(page).orientation);
    new PageWriter(doc, page, fonts).write();
  });
  return new Uint8Array(doc.output('arraybuffer'));
}

/** The writer swaps the two sides of a format that does not match its orientation. */
function formatOf({ sheet: { width, height } }: Page): {
  readonly format: [number, number];
  readonly orientation: 'portrait' | 'landscape';
} {
  return { format: [width, height], orientation: width > height ? 'landscape' : 'portrait' };
}

class PageWriter {
  /** What the file has been told last: each page starts anew. */
  private penKey = '';
  private isBold: boolean | null = null;

  constructor(
    private readonly doc: jsPDF,
    private readonly page: Page,
    private readonly fonts: Fonts,
  ) {}

  write(): void {
    for (const mark of this.page.marks) {
      if (mark.kind === 'shape') this.shape(mark);
      else this.text(mark);
    }
  }

  private shape({ role, corners, closed }: ShapeMark): void {
    const pen = PAPER_PENS[role];
    const [first, ...others] = corners;
    if (pen.width === 0 || first === undefined) return;
    const { doc } = this;
    this.takePen(pen.width, pen.dash);
    doc.moveTo(first.x, this.down(first.y));
    for (const { x, y } of others) doc.lineTo(x, this.down(y));
    if (closed) doc.close();
    doc.stroke();
  }

  private takePen(width: number, dash: readonly number[] = []): void {
    const key = [width, ...dash].join(' ');
    if (key === this.penKey) return;
    this.penKey = key;
    this.doc.setLineWidth(width);
    this.doc.setLineDashPattern([...dash], 0);
  }

  private text(mark: TextMark): void {
    const { content, size } = mark;
    const setting = figureSetting(mark, this.fonts.measure);
    const width = (setting.whole + setting.stack + setting.heavy) * size;
    const left =
      mark.anchor === 'start' ? mark.at.x : mark.anchor === 'end' ? mark.at.x - width : mark.at.x - width / 2;
    const foot = mark.at.y - HALF_DIGIT * size;
    const bold = isBold(mark.role);
    if (content.kind !== 'tape') {
      this.set(left, foot, size, bold, content.text);
      return;
    }
    const parts = tapeParts(content.number);
    this.set(left, foot, size, bold, parts.whole.replace('-', '−'));
    const stackLeft = left + setting.whole * size;
    if (parts.numerator !== '') this.stack(mark, parts, stackLeft, setting.stack * size, bold);
    if (parts.heavy) this.set(stackLeft + setting.stack * size, foot, size, bold, '+');
  }

  private stack(
    { at, size }: TextMark,
    { numerator, denominator }: { readonly numerator: string; readonly denominator: string },
    left: number,
    width: number,
    bold: boolean,
  ): void {
    const middle = left + width / 2;
    const digits = size * STACKED;
    const centred = (text: string, foot: number) =>
      this.set(middle - (this.fonts.measure(text, bold) * digits) / 2, at.y + foot * size, digits, bold, text);
    centred(numerator, STACK.upper);
    centred(denominator, STACK.lower);
    const { doc } = this;
    this.takePen(STACK.bar * size);
    doc.moveTo(left + STACK.barInset * size, this.down(at.y));
    doc.lineTo(left + width - STACK.barInset * size, this.down(at.y));
    doc.stroke();
  }

  /** The only place where words enter the file, and the only way they do. */
  private set(x: number, foot: number, size: number, bold: boolean, text: string): void {
    const shown = this.fonts.printable(text);
    if (shown === '') return;
    if (this.isBold !== bold) this.doc.setFont(FAMILY, bold ? 'bold' : 'normal');
    this.isBold = bold;
    this.doc.setFontSize(mmToInches(size) * POINTS_PER_INCH);
    this.doc.text(shown, x, this.down(foot));
  }

  private down(y: Point['y']): number {
    return this.page.sheet.height - y;
  }
}
