/** What a drawing cannot do, and what has hurt people: short sentences, each where it applies. */
import { PageSketch, PRINT } from '../../core/drawing/pageSketch';
import { point } from '../../core/geometry/point';
import type { TextKey } from '../../text/say';
import type { LeafMaker } from './leaf';
import { NO_SCALE } from './listLeaves';

const CAUTIONS: readonly TextKey[] = Array.from({ length: 15 }, (_, i) => `caution.${i + 1}` as TextKey);
const NUMBER_ROOM = 9;

export const makeCautions: LeafMaker = ({ say, content, measure }) => {
  const sketch = new PageSketch(measure);
  const room = content.right - content.left;
  let y = sketch.paragraph('body-strong', content.left, content.top - 1, room, say('results.caution'), PRINT.body) - 3;
  CAUTIONS.forEach((key, i) => {
    sketch.words('body-strong', point(content.left, y - (PRINT.body * 1.35) / 2), String(i + 1), PRINT.body);
    y = sketch.paragraph('body', content.left + NUMBER_ROOM, y, room - NUMBER_ROOM, say(key), PRINT.body) - 2.4;
  });
  return [{ title: say('sheets.cautions'), under: '', scale: NO_SCALE, marks: sketch.marks }];
};
