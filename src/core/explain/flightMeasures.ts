/** Rise, run and pitch; story pole and framing square. Frame of the sums: layout/flight. */
import { storyPole } from '../layout/storyPole';
import { sign } from '../units/exact';
import { along, sinceReading } from './floorMeasures';
import type { PlainMeasure, RowMeasure } from './measures';
import { type Entry, given, same, type Teller } from './teller';

const mm = { unit: 'mm', shown: 'fine' } as const;

export const FLIGHT = {
  totalRise: {
    ...mm,
    result: ({ layout }) => layout.flight.totalRise,
    because: (tell) => {
      const { readingFromHeader, fallAlong } = tell.job.survey;
      const terms = [
        tell.length('M', 'survey.rise'),
        tell.length('foot', 'survey.footBelowReading'),
        tell.length('fU', 'survey.upperToAdd'),
        tell.length('fL', 'survey.lowerToAdd'),
      ];
      const fallsSince = readingFromHeader !== null && sign(fallAlong.fall) !== 0;
      if (fallsSince) return { formula: 'totalRise.onSlope', terms: [...terms, ...sinceReading(tell)] };
      return { formula: 'totalRise', terms };
    },
  },
  risers: {
    unit: 'count',
    shown: 'count',
    result: ({ layout }) => layout.flight.risers,
    because: (tell) => {
      const { risers } = tell.job.steps;
      if (risers !== 'auto') return given(tell.count('N', 'steps.risers', risers));
      const { readingFromHeader, fallAlong } = tell.job.survey;
      const terms = [tell.of('H', 'totalRise'), tell.rule('Rmax', 'riser.max')];
      if (readingFromHeader !== null && sign(fallAlong.fall) !== 0) {
        const perRiser = [tell.of('N', 'risers', 'count'), tell.of('G', 'run'), ...along(tell)];
        return { formula: 'risers.fewest.onSlope', terms: [...terms, ...perRiser] };
      }
      return { formula: 'risers.fewest', terms };
    },
  },
  treads: {
    unit: 'count',
    shown: 'count',
    result: ({ layout }) => layout.flight.treads,
    because: (tell) => ({
      formula: isHung(tell) ? 'treads.hung' : 'treads.level',
      terms: [tell.of('N', 'risers', 'count')],
    }),
  },
  unitRise: {
    ...mm,
    result: ({ layout }) => layout.flight.unitRise,
    because: (tell) => ({ formula: 'unitRise', terms: [tell.of('H', 'totalRise'), tell.of('N', 'risers', 'count')] }),
  },
  run: {
    ...mm,
    result: ({ layout }) => layout.flight.run,
    because: (tell) => given(tell.job.steps.run === null ? tell.rule('G', 'tread.min') : tell.length('G', 'steps.run')),
  },
  totalRun: {
    ...mm,
    result: ({ layout }) => (layout.stringer.top.hung ? layout.flight.runToTopRiser : layout.stringer.top.endX),
    because: (tell) =>
      isHung(tell)
        ? { formula: 'totalRun', terms: [tell.of('N', 'risers', 'count'), tell.of('G', 'run')] }
        : same(tell.of('E', 'stringerEnd')),
  },
  twoRisePlusRun: {
    ...mm,
    result: ({ layout }) => 2 * layout.flight.unitRise + layout.flight.run,
    because: (tell) => ({ formula: 'twoRisePlusRun', terms: riseAndRun(tell) }),
  },
  pitch: {
    unit: 'rad',
    shown: 'angle',
    result: ({ layout }) => layout.flight.pitch,
    because: (tell) => ({ formula: 'pitch', terms: riseAndRun(tell) }),
  },
  stepLength: {
    ...mm,
    result: ({ layout }) => layout.flight.stepLength,
    because: (tell) => ({ formula: 'stepLength', terms: riseAndRun(tell) }),
  },
  squareTongue: {
    ...mm,
    result: ({ layout }) => layout.flight.unitRise,
    because: (tell) => same(tell.of('R', 'unitRise')),
  },
  squareBlade: {
    ...mm,
    result: ({ layout }) => layout.flight.run,
    because: (tell) => same(tell.of('G', 'run')),
  },
  // Off a square cut across the board.
  sawPlumb: {
    unit: 'rad',
    shown: 'angle',
    result: ({ layout }) => layout.flight.pitch,
    because: (tell) => same(tell.of('theta', 'pitch', 'rad')),
  },
  sawLevel: {
    unit: 'rad',
    shown: 'angle',
    result: ({ layout }) => Math.PI / 2 - layout.flight.pitch,
    because: (tell) => ({ formula: 'sawLevel', terms: [tell.of('theta', 'pitch', 'rad')] }),
  },
} satisfies Partial<Record<PlainMeasure, Entry>>;

export const POLE = {
  pole: {
    unit: 'mm',
    shown: 'mark',
    result: ({ layout }, step) => storyPole(layout)[step]?.finished ?? null,
    because: (tell, step) => ({
      formula: 'pole',
      terms: [tell.place(step), tell.of('H', 'totalRise'), tell.of('N', 'risers', 'count')],
    }),
  },
  poleCut: {
    unit: 'mm',
    shown: 'mark',
    result: ({ layout }, step) => storyPole(layout)[step]?.cut ?? null,
    because: (tell, step) => ({
      formula: 'poleCut',
      terms: [tell.of('top', `pole:${step}`), tell.length('t', 'steps.treadThickness')],
    }),
  },
  poleToday: {
    unit: 'mm',
    shown: 'mark',
    result: ({ layout }, step) => storyPole(layout)[step]?.finishedToday ?? null,
    because: (tell, step) => ({
      formula: 'poleToday',
      terms: [tell.of('top', `pole:${step}`), tell.length('fL', 'survey.lowerToAdd')],
    }),
  },
  poleCutToday: {
    unit: 'mm',
    shown: 'mark',
    result: ({ layout }, step) => storyPole(layout)[step]?.cutToday ?? null,
    because: (tell, step) => ({
      formula: 'poleToday',
      terms: [tell.of('top', `poleCut:${step}`), tell.length('fL', 'survey.lowerToAdd')],
    }),
  },
} satisfies Partial<Record<RowMeasure, Entry>>;

function riseAndRun(tell: Teller) {
  return [tell.of('R', 'unitRise'), tell.of('G', 'run')];
}

function isHung({ plan }: Teller): boolean {
  return plan.layout.stringer.top.hung;
}
