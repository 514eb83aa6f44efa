/** The boards to rip, side by side against the fence, each as high as the blade stands off it. */
import { point } from '../../core/geometry/point';
import type { MarkEntry } from '../../core/stringer/markList';
import { box, line, type Picture, type PictureSize, UP } from './picture';

const SIDE = 24;
const ABOVE = 34;
const FENCE = 16;
const BETWEEN = 20;
const WIDEST = 110;
/** What the saw takes off is drawn as if it were this. */
const OFFCUT = 12;

export function ripPicture(entries: readonly MarkEntry[], current: MarkEntry, size: PictureSize): Picture {
  const fence = size.height - FENCE - 4;
  const most = Math.max(...entries.map(({ value }) => value));
  const scale = (fence - ABOVE - OFFCUT) / most;
  const room = (size.width - 2 * SIDE) / entries.length;
  const width = Math.min(WIDEST, room - BETWEEN);
  const first = (size.width - entries.length * (width + BETWEEN) + BETWEEN) / 2;
  const boards = entries.map((entry, i) => {
    const left = first + i * (width + BETWEEN);
    return { entry, left, right: left + width, top: fence - entry.value * scale };
  });
  const lit = boards.find(({ entry }) => entry.id === current.id) ?? boards[0];
  const x = lit === undefined ? 0 : (lit.left + lit.right) / 2;
  return {
    shapes: [
      box('house', 0, fence, size.width, fence + FENCE),
      ...boards.flatMap(({ left, right, top }) => [
        box('blank', left, top - OFFCUT, right, top),
        box('wood', left, top, right, fence),
      ]),
      line('heavy-line', point(0, fence), point(size.width, fence)),
    ],
    marks: boards.map(({ entry, left, right, top }) => ({
      id: entry.id,
      at: point((left + right) / 2, top),
      out: UP,
    })),
    run: [point(x, fence), point(x, lit?.top ?? fence)],
    opens: UP,
  };
}
