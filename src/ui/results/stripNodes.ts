/** The riser strip as it is painted: boards under their treads, each with its number and its height. */
import { figureOf } from '../../core/drawing/figures';
import type { UnitSystem } from '../../core/units/length';
import type { Speaker } from '../../text/say';
import { figureNode, moveTo } from '../drawing/figureNodes';
import { node, type SvgNode } from '../drawing/paint';
import { rounded } from '../drawing/pixels';
import { STRIP, type StripBoard, type StripLayout, type StripRow } from './stripLayout';

interface StripWords {
  readonly say: Speaker;
  readonly units: UnitSystem;
}

/** Digits of a fraction are never smaller than this, in pixels. */
const LEAST_DIGITS = 12;

/** @param limit greatest spread that the rules allow, or null where they have none */
export function stripNodes(strip: StripLayout, limit: number | null, words: StripWords): readonly SvgNode[] {
  return strip.rows.map((row, index) =>
    node('g', { transform: `translate(0 ${index * STRIP.height})` }, rowNodes(row, strip, limit, words)),
  );
}

function rowNodes(row: StripRow, strip: StripLayout, limit: number | null, words: StripWords): SvgNode[] {
  const { bandTop, bandBottom, hasBand } = strip;
  const { right } = row;
  const height = Math.max(0, bandBottom - bandTop);
  return [
    ...(hasBand ? [node('rect', { class: 'strip-band', x: 0, y: bandTop, width: right, height })] : []),
    ...row.boards.map((board) => boardNode(board, words)),
    ...(hasBand && limit !== null ? limitNodes(right, strip, limit, words) : []),
    node('line', { class: 'strip-floor', x1: 0, x2: right, y1: STRIP.foot, y2: STRIP.foot }),
  ];
}

function limitNodes(right: number, strip: StripLayout, limit: number, { say, units }: StripWords): SvgNode[] {
  const { bandTop, bandBottom } = strip;
  const middle = (bandTop + bandBottom) / 2;
  const place = { x: right + 12, y: middle, anchor: 'start', size: 22 } as const;
  // Over the band, and over a fraction that is higher than the band.
  const over = Math.min(bandTop - 10, middle - 26);
  return [
    ...[bandTop, bandBottom].map((y) => node('line', { class: 'strip-limit', x1: 0, x2: right + 4, y1: y, y2: y })),
    node('text', { class: 'role-caption', x: right + 8, y: over, 'font-size': 14 }, say('strip.limit')),
    figureNode({ content: figureOf(limit, units), ...place, leastDigits: LEAST_DIGITS }),
  ];
}

function boardNode(board: StripBoard, words: StripWords): SvgNode {
  const { say } = words;
  const { left, width, top, number, figure, size, off, isEnd } = board;
  const middle = rounded(width / 2);
  const label = number === 1 ? say('strip.first') : isEnd ? say('strip.last') : String(number);
  const flag = { class: 'strip-flag', x: -4, y: 0, width: width + 8, height: 2 * STRIP.numbers };
  const place = { x: middle, y: STRIP.numbers, anchor: 'middle', size, leastDigits: LEAST_DIGITS } as const;
  const name = isEnd ? 'strip-name end' : 'strip-name';
  return node('g', { class: off === 0 ? 'strip-board' : 'strip-board offender', transform: moveTo(left, 0) }, [
    ...(off === 0 ? [] : [node('rect', flag)]),
    figureNode({ content: figure, ...place }),
    node('polyline', { class: 'strip-wood', points: upperPiece(width, top) }),
    node('polyline', { class: 'strip-wood', points: lowerPiece(width) }),
    node('rect', { class: 'strip-tread', x: -4, y: top, width: width + 8, height: 6 }),
    ...(off === 0 ? [] : [howFarNode(off, middle, top, words)]),
    node('text', { class: name, x: middle, y: STRIP.label, 'font-size': 15, 'text-anchor': 'middle' }, label),
  ]);
}

/** By how much a riser is off, and which way, in words: inside a tall board, above a short one. */
function howFarNode(off: number, middle: number, top: number, { say, units }: StripWords): SvgNode {
  const y = off > 0 ? top + 20 : top - 32;
  const content = figureOf(Math.abs(off), units, 'up');
  const words = { x: middle, y: y + 26, 'font-size': 14, 'text-anchor': 'middle' };
  return node('g', { class: 'strip-off' }, [
    figureNode({ content, x: middle, y, anchor: 'middle', size: 15, leastDigits: LEAST_DIGITS }),
    node('text', words, say(off > 0 ? 'strip.tall' : 'strip.short')),
  ]);
}

/** Saw teeth where the equal middle of all boards is left out. */
function teeth(width: number, y: number): string[] {
  const count = Math.max(2, Math.round(width / 14));
  return Array.from(
    { length: count * 2 + 1 },
    (_, i) => `${rounded((width * i) / (count * 2))},${i % 2 === 0 ? y : y - 4}`,
  );
}

function upperPiece(width: number, top: number): string {
  const foot = Math.max(top + 10, STRIP.breakAt);
  return [`${width},${foot}`, `${width},${top}`, `0,${top}`, ...teeth(width, foot)].join(' ');
}

function lowerPiece(width: number): string {
  const cut = STRIP.breakAt + 8;
  return [`${width},${cut}`, `${width},${STRIP.foot}`, `0,${STRIP.foot}`, ...teeth(width, cut)].join(' ');
}
