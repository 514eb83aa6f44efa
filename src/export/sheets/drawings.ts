/** The stair from the side with its dimensions, and its two ends enlarged. */
import { drawHeel, drawTopEnd } from '../../core/drawing/details';
import { drawElevation } from '../../core/drawing/elevation';
import { drawingWords, type LeafMaker, placeDrawing, viewFor } from './leaf';

export const makeElevation: LeafMaker = ({ say, content, plan, measure }) => {
  const { marks, ratio } = placeDrawing(drawElevation(plan, viewFor(content), drawingWords(say)), content, measure);
  return [{ title: say('drawing.elevation'), under: '', scale: { kind: 'ratio', ratio }, marks }];
};

/** Both on sheets of their own: what is read here to a thirty-second must not be small. */
export const makeDetails: LeafMaker = ({ say, content, plan, measure }) => {
  const view = viewFor(content);
  const heel = placeDrawing(drawHeel(plan, view, drawingWords(say)), content, measure);
  const top = placeDrawing(drawTopEnd(plan, view, drawingWords(say)), content, measure);
  const { stringer } = plan.layout.stringer.master;
  const tallest = stringer === 0 ? '' : say('sheets.heel.tallest', { stringer });
  return [
    { title: say('drawing.heel'), under: tallest, scale: { kind: 'ratio', ratio: heel.ratio }, marks: heel.marks },
    { title: say('drawing.topEnd'), under: '', scale: { kind: 'ratio', ratio: top.ratio }, marks: top.marks },
  ];
};
