/** What a drawing cannot do, and what has hurt people: short sentences, each where it applies. */
import { LEADING, PageSketch, PRINT, wrap } from '../../core/drawing/pageSketch';
import { point } from '../../core/geometry/point';
import type { TextKey } from '../../text/say';
import type { LeafMaker } from './leaf';
import { NO_SCALE } from './listLeaves';

const CAUTIONS: readonly TextKey[] = Array.from({ length: 15 }, (_, i) => `caution.${i + 1}` as TextKey);
const NUMBER_ROOM = 9;
const GAP = 2.2;

/** On as many sheets as it takes: none runs off the paper. */
export const makeCautions: LeafMaker = ({ say, content, measure }) => {
  // A line that fills its room to the last hair would touch the margin of a corrected printer.
  const room = content.right - content.left - 2;
  const { body } = PRINT;
  let sketch = new PageSketch(measure);
  const sketches = [sketch];
  let y = sketch.paragraph('body-strong', content.left, content.top - 1, room, say('results.caution'), body) - GAP;
  CAUTIONS.forEach((key, i) => {
    const lines = wrap(say(key), () => (room - NUMBER_ROOM) / body, false, measure).length;
    if (y - lines * body * LEADING < content.bottom) {
      sketch = new PageSketch(measure);
      sketches.push(sketch);
      y = content.top - 1;
    }
    sketch.words('body-strong', point(content.left, y - (body * LEADING) / 2), String(i + 1), body);
    y = sketch.paragraph('body', content.left + NUMBER_ROOM, y, room - NUMBER_ROOM, say(key), body) - GAP;
  });
  return sketches.map(({ marks }) => ({ title: say('sheets.cautions'), under: '', scale: NO_SCALE, marks }));
};
