/**
 * Drawing → SVG text that stands alone: for the figures of docs/maths and for files. The page draws
 * the same model itself. No scripts, no links, no styles from elsewhere; every text is escaped.
 */
import type { Drawing, Mark, TextMark } from '../core/drawing/drawing';
import { fractionEms, type TapeParts, tapeParts } from '../core/drawing/sketch';
import type { Point } from '../core/geometry/point';
import { colourPen } from './colourPens';
import { plainText } from './plainText';

/**
 * @param title what it shows, for whoever cannot see it
 * @param size `view`: at the size of the view it was made for; `true`: one millimetre is one millimetre
 * @returns an SVG document in the drawing's own millimetres
 */
export function svgOf(drawing: Drawing, title: string, size: 'view' | 'true' = 'view'): string {
  const { frame, perPixel } = drawing;
  const width = frame.right - frame.left;
  const height = frame.top - frame.bottom;
  const shown = (mm: number) => (size === 'true' ? `${number(mm)}mm` : number(mm / perPixel));
  const body = drawing.marks
    .map((mark) => (mark.kind === 'text' ? textSvg(mark, frame) : shapeSvg(mark, drawing)))
    .join('\n');
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${shown(width)}" height="${shown(height)}" viewBox="0 0 ${number(width)} ${number(height)}" role="img" font-family="system-ui, 'Noto Sans', sans-serif">
<title>${escapeXml(title)}</title>
<rect width="100%" height="100%" fill="#FFFFFF"/>
${body}
</svg>
`;
}

function shapeSvg(mark: Extract<Mark, { kind: 'shape' }>, { frame, perPixel }: Drawing): string {
  const pen = colourPen(mark.role);
  const points = mark.corners.map((corner) => pointText(corner, frame)).join(' ');
  const dash =
    pen.dash.length === 0 ? '' : ` stroke-dasharray="${pen.dash.map((part) => number(part * perPixel)).join(' ')}"`;
  const fill = mark.closed ? pen.fill : 'none';
  return `<${mark.closed ? 'polygon' : 'polyline'} points="${points}" fill="${fill}" stroke="${pen.line}" stroke-width="${number(pen.width * perPixel)}" stroke-linejoin="round"${dash}/>`;
}

function textSvg(mark: TextMark, frame: Drawing['frame']): string {
  const x = mark.at.x - frame.left;
  const y = frame.top - mark.at.y;
  const { fill } = colourPen(mark.role);
  const bold = mark.content.kind === 'words' ? 400 : 700;
  if (mark.content.kind !== 'tape') return label(x, y, mark.anchor, mark.size, bold, fill, mark.content.text);
  const parts = tapeParts(mark.content.number);
  const wholeEms = parts.whole.length * 0.6;
  const width = (wholeEms + fractionEms(parts) + (parts.heavy ? 0.6 : 0)) * mark.size;
  const left = mark.anchor === 'start' ? x : mark.anchor === 'end' ? x - width : x - width / 2;
  const afterFraction = left + (wholeEms + fractionEms(parts)) * mark.size;
  return [
    parts.whole === '' ? '' : label(left, y, 'start', mark.size, bold, fill, parts.whole),
    fractionSvg(parts, left + wholeEms * mark.size, y, mark.size, fill),
    parts.heavy ? label(afterFraction, y, 'start', mark.size, bold, fill, '+') : '',
  ].join('');
}

function fractionSvg(parts: TapeParts, left: number, y: number, size: number, fill: string): string {
  if (parts.numerator === '') return '';
  const width = fractionEms(parts) * size;
  const middle = left + width / 2;
  const bar = `<line x1="${number(left + size * 0.05)}" x2="${number(left + width - size * 0.05)}" y1="${number(y)}" y2="${number(y)}" stroke="${fill}" stroke-width="${number(size * 0.06)}"/>`;
  return (
    label(middle, y - size * 0.36, 'middle', size * 0.69, 600, fill, parts.numerator) +
    bar +
    label(middle, y + size * 0.38, 'middle', size * 0.69, 600, fill, parts.denominator)
  );
}

function label(x: number, y: number, anchor: string, size: number, weight: number, fill: string, text: string): string {
  // The baseline lies a third of an em under the middle of the figures.
  return `<text x="${number(x)}" y="${number(y + size * 0.35)}" text-anchor="${anchor}" font-size="${number(size)}" font-weight="${weight}" fill="${fill}">${escapeXml(text)}</text>`;
}

function pointText({ x, y }: Point, frame: Drawing['frame']): string {
  return `${number(x - frame.left)},${number(frame.top - y)}`;
}

/** Three decimals of a millimetre, without a tail of zeros or a minus before nothing. */
function number(value: number): string {
  return String(Math.round(value * 1000) / 1000 + 0);
}

function escapeXml(text: string): string {
  // A control character would end the document for every reader of XML.
  return plainText(text).replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;');
}
