/** The story pole lying down, its foot to the left: finished heights on the upper edge, level cuts on the lower. */
import { point } from '../../core/geometry/point';
import type { MarkEntry } from '../../core/stringer/markList';
import { box, DOWN, line, type Picture, type PictureSize, UP } from './picture';

const SIDE = 24;
const FLOOR = 12;
const THICK = 40;
const TICK = 14;
/** The pole goes on past the last height. */
const PAST = 1.03;

export function polePicture(entries: readonly MarkEntry[], current: MarkEntry, size: PictureSize): Picture {
  const foot = SIDE + FLOOR;
  const most = Math.max(...entries.map(({ value }) => value)) * PAST;
  const scale = (size.width - foot - SIDE) / most;
  const upper = size.height / 2 - THICK / 2;
  const lower = upper + THICK;
  const at = ({ what, value }: MarkEntry) => point(foot + value * scale, what === 'pole-cut' ? lower : upper);
  const isCut = current.what === 'pole-cut';
  const edge = isCut ? lower : upper;
  return {
    shapes: [
      box('house', SIDE, upper - 22, foot, lower + 22),
      box('wood', foot, upper, foot + most * scale, lower),
      line('heavy-line', point(foot, upper - 22), point(foot, lower + 22)),
      ...entries.map((entry) => {
        const { x, y } = at(entry);
        return line('line', point(x, y), point(x, entry.what === 'pole-cut' ? y - TICK : y + TICK));
      }),
    ],
    marks: entries.map((entry) => ({ id: entry.id, at: at(entry), out: entry.what === 'pole-cut' ? DOWN : UP })),
    run: [point(foot, edge), at(current)],
    opens: isCut ? DOWN : UP,
  };
}
