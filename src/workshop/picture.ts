/**
 * Drawing → PNG, on the canvas that a worker has: the same marks and pens as the SVG file, in the font of
 * paper, so that widths are known and the picture does not depend on the device's own fonts.
 */
import type { Drawing, ShapeMark, TextMark } from '../core/drawing/drawing';
import { isBold } from '../core/drawing/page';
import { figureSetting, STACK, STACKED } from '../core/drawing/pageSketch';
import { tapeParts } from '../core/drawing/sketch';
import { colourPen } from '../export/colourPens';
import type { Fonts } from '../export/font/fonts';

/** Pixels of the picture to one of the drawing's view: sharp on paper too. */
const SHARP = 2;
const PAPER = '#FFFFFF';
const FAMILY = 'Sheet';
/** The middle of a digit over its foot, in ems. */
const HALF_DIGIT = 0.3645;

/** @returns the file, or null where this browser has no canvas away from the page */
export async function pngOf(drawing: Drawing, fonts: Fonts): Promise<Uint8Array | null> {
  if (typeof OffscreenCanvas === 'undefined') return null;
  const { frame, perPixel } = drawing;
  const scale = SHARP / perPixel;
  const canvas = new OffscreenCanvas(
    Math.round((frame.right - frame.left) * scale),
    Math.round((frame.top - frame.bottom) * scale),
  );
  const context = canvas.getContext('2d');
  if (context === null) return null;
  await bringFonts(fonts);
  new Painter(context, drawing, fonts, scale).paint();
  return new Uint8Array(await (await canvas.convertToBlob({ type: 'image/png' })).arrayBuffer());
}

async function bringFonts(fonts: Fonts): Promise<void> {
  const { fonts: known } = globalThis as unknown as { readonly fonts: FontFaceSet };
  for (const weight of ['regular', 'bold'] as const) {
    const bytes = Uint8Array.from(atob(fonts[weight]), (char) => char.charCodeAt(0));
    const face = new FontFace(FAMILY, bytes, { weight: weight === 'bold' ? '700' : '400' });
    known.add(await face.load());
  }
}

class Painter {
  constructor(
    private readonly to: OffscreenCanvasRenderingContext2D,
    private readonly drawing: Drawing,
    private readonly fonts: Fonts,
    private readonly scale: number,
  ) {}

  paint(): void {
    const { to, drawing } = this;
    to.fillStyle = PAPER;
    to.fillRect(0, 0, to.canvas.width, to.canvas.height);
    to.lineJoin = 'round';
    for (const mark of drawing.marks) {
      if (mark.kind === 'shape') this.shape(mark);
      else this.text(mark);
    }
  }

  private shape({ role, corners, closed }: ShapeMark): void {
    const { to } = this;
    const pen = colourPen(role);
    to.beginPath();
    for (const [i, { x, y }] of corners.entries()) {
      if (i === 0) to.moveTo(this.x(x), this.y(y));
      else to.lineTo(this.x(x), this.y(y));
    }
    if (closed) {
      to.closePath();
      if (pen.fill !== 'none') {
        to.fillStyle = pen.fill;
        to.fill();
      }
    }
    if (pen.line === 'none') return;
    to.strokeStyle = pen.line;
    to.lineWidth = pen.width * SHARP;
    to.setLineDash(pen.dash.map((part) => part * SHARP));
    to.stroke();
  }

  private text(mark: TextMark): void {
    const { content, size, anchor, at } = mark;
    const { whole, stack, heavy } = figureSetting(mark, this.fonts.measure);
    const width = (whole + stack + heavy) * size;
    const left = anchor === 'start' ? at.x : anchor === 'end' ? at.x - width : at.x - width / 2;
    const foot = at.y - HALF_DIGIT * size;
    this.to.fillStyle = colourPen(mark.role).fill;
    const bold = isBold(mark.role);
    if (content.kind !== 'tape') {
      this.set(left, foot, size, bold, content.text);
      return;
    }
    const parts = tapeParts(content.number);
    this.set(left, foot, size, bold, parts.whole.replace('-', '−'));
    const stackLeft = left + whole * size;
    if (parts.numerator !== '') {
      const middle = stackLeft + (stack * size) / 2;
      const digits = size * STACKED;
      for (const [text, rise] of [
        [parts.numerator, STACK.upper],
        [parts.denominator, STACK.lower],
      ] as const) {
        this.set(middle - (this.fonts.measure(text, bold) * digits) / 2, at.y + rise * size, digits, bold, text);
      }
      const inset = STACK.barInset * size;
      const high = STACK.bar * size * this.scale;
      this.to.fillRect(
        this.x(stackLeft + inset),
        this.y(at.y) - high / 2,
        (stack * size - 2 * inset) * this.scale,
        high,
      );
    }
    if (parts.heavy) this.set(stackLeft + stack * size, foot, size, bold, '+');
  }

  private set(x: number, foot: number, size: number, bold: boolean, text: string): void {
    this.to.font = `${bold ? 700 : 400} ${size * this.scale}px ${FAMILY}`;
    this.to.fillText(this.fonts.printable(text), this.x(x), this.y(foot));
  }

  private x(x: number): number {
    return (x - this.drawing.frame.left) * this.scale;
  }

  private y(y: number): number {
    return (this.drawing.frame.top - y) * this.scale;
  }
}
