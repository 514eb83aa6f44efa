/** Head, opening, and the width between walls. Frames of the sums: layout/opening, layout/width. */

import { isPositive } from '../geometry/tolerance';
import { nosingLineHeight } from '../layout/flight';
import { TREAD_PLAY } from '../layout/width';
import { toMm } from '../units/exact';
import type { PlainMeasure, RowMeasure } from './measures';
import { type Because, type Entry, given, type Teller } from './teller';

const mm = { unit: 'mm', shown: 'fine' } as const;

export const SPACE = {
  openingEdge: {
    ...mm,
    result: ({ layout }) => layout.opening.edgeX,
    because: (tell) => ({
      formula: 'openingEdge',
      terms: [
        tell.of('X', 'headerFace'),
        tell.length('O', 'survey.openingFraming'),
        tell.length('tw', 'survey.headerLining'),
      ],
    }),
  },
  headroom: {
    unit: 'mm',
    shown: 'down',
    result: ({ layout }) => layout.opening.headroom,
    because: headroom,
  },
  openingNeeded: {
    unit: 'mm',
    shown: 'up',
    result: ({ layout }) => layout.opening.needed,
    because: (tell) => ({
      formula: 'openingNeeded',
      terms: [
        tell.rule('HR', 'headroom.min'),
        tell.length('Df', 'survey.floorDepth'),
        tell.of('R', 'unitRise'),
        tell.of('G', 'run'),
        tell.length('n', 'steps.nosing'),
        tell.of('X', 'headerFace'),
        tell.of('N', 'risers', 'count'),
        tell.length('tw', 'survey.headerLining'),
      ],
    }),
  },
  widthFinished: {
    ...mm,
    result: ({ layout }) => layout.width?.finished ?? null,
    because: (tell) => ({
      formula: 'widthFinished',
      terms: [tell.length('Wf', 'survey.widthFraming'), tell.length('dw', 'survey.wallboard')],
    }),
  },
  betweenSkirts: {
    ...mm,
    result: ({ layout }) => layout.width?.betweenSkirts ?? null,
    because: (tell) => ({
      formula: 'betweenSkirts',
      terms: [tell.of('W', 'widthFinished'), tell.length('sk', 'survey.skirt')],
    }),
  },
  treadLength: {
    unit: 'mm',
    shown: 'down',
    result: ({ layout }) => layout.width?.treadLength ?? null,
    because: (tell) => ({
      formula: 'treadLength',
      terms: [tell.of('Wsk', 'betweenSkirts'), tell.practice('play', toMm(TREAD_PLAY[tell.job.units]))],
    }),
  },
  treadOverhang: {
    ...mm,
    result: ({ layout }) => layout.width?.treadOverhang ?? null,
    because: (tell) => ({
      formula: 'treadOverhang',
      terms: [
        tell.of('Wsk', 'betweenSkirts'),
        tell.length('Wf', 'survey.widthFraming'),
        tell.length('sp', 'survey.spacer'),
      ],
    }),
  },
  stringers: {
    unit: 'count',
    shown: 'count',
    result: ({ layout }) => layout.width?.stringers ?? null,
    because: (tell) => {
      const { count } = tell.job.stringer;
      if (count !== 'auto') return given(tell.count('c', 'stringer.count', count));
      return { formula: 'stringers', terms: [...betweenCentres(tell), tell.length('Smax', 'stringer.spacingMax')] };
    },
  },
  spacing: {
    ...mm,
    result: ({ layout }) => layout.width?.spacing ?? null,
    because: (tell) => ({ formula: 'spacing', terms: [...betweenCentres(tell), tell.of('c', 'stringers', 'count')] }),
  },
} satisfies Partial<Record<PlainMeasure, Entry>>;

export const CENTRES = {
  stringerCentre: {
    unit: 'mm',
    shown: 'mark',
    result: ({ layout: { job, stringer, width } }, step) =>
      width !== null && step >= 1 && step <= width.stringers
        ? toMm(job.survey.spacer) + stringer.stockThickness / 2 + (step - 1) * width.spacing
        : null,
    because: (tell, step) => ({
      formula: 'stringerCentre',
      terms: [
        tell.place(step),
        tell.length('sp', 'survey.spacer'),
        tell.length('ws', 'stringer.stockThickness'),
        tell.of('spacing', 'spacing'),
      ],
    }),
  },
} satisfies Partial<Record<RowMeasure, Entry>>;

/** Beyond the line's foot a person stands on the floor, and nothing of the stair is in the sum. */
function headroom(tell: Teller): Because {
  const under = [tell.of('H', 'totalRise'), tell.length('Df', 'survey.floorDepth')];
  const edge = tell.of('xw', 'openingEdge');
  const overFlight = isPositive(nosingLineHeight(tell.plan.layout.flight, edge.value));
  if (!overFlight) return { formula: 'headroom.overFloor', terms: under };
  return {
    formula: 'headroom.overFlight',
    terms: [...under, tell.of('R', 'unitRise'), tell.of('G', 'run'), edge, tell.length('n', 'steps.nosing')],
  };
}

function betweenCentres(tell: Teller) {
  return [
    tell.length('Wf', 'survey.widthFraming'),
    tell.length('sp', 'survey.spacer'),
    tell.length('ws', 'stringer.stockThickness'),
  ];
}
