/** The board, the bottom end, and every mark along the edge. Frames of the sums: layout/flight, stringer/board. */
import { STOCK_LENGTHS } from '../stringer/board';
import { inchMm } from '../units/exact';
import { across, along, isLevel, scribedRiser } from './floorMeasures';
import type { PlainMeasure, RowMeasure } from './measures';
import type { Because, Entry, Teller } from './teller';

const mm = { unit: 'mm', shown: 'fine' } as const;
const mark = { unit: 'mm', shown: 'mark' } as const;

export const STRINGER = {
  seatHeight: {
    ...mm,
    result: ({ layout }) => layout.flight.seatHeight,
    because: (tell) =>
      standsOnFinish(tell)
        ? { formula: 'seatHeight.floorFirst', terms: [] }
        : { formula: 'seatHeight.floorLater', terms: [tell.length('fL', 'survey.lowerToAdd')] },
  },
  notchDepth: {
    ...mm,
    result: ({ layout }) => layout.stringer.notchDepth,
    because: (tell) => ({
      formula: 'notchDepth',
      terms: [tell.of('R', 'unitRise'), tell.of('G', 'run'), tell.of('U', 'stepLength')],
    }),
  },
  gaugeLine: {
    ...mark,
    result: ({ layout }) => layout.stringer.gaugeLine,
    because: (tell) => ({
      formula: 'gaugeLine',
      terms: [tell.length('e', 'stringer.tipInset'), tell.of('notch', 'notchDepth')],
    }),
  },
  throat: {
    unit: 'mm',
    shown: 'down',
    result: ({ layout }) => layout.stringer.throat,
    because: (tell) => ({ formula: 'throat', terms: [...board(tell), tell.of('notch', 'notchDepth')] }),
  },
  firstCut: {
    ...mark,
    result: ({ layout }) => layout.stringer.heel.firstRiserCut,
    because: (tell) => firstCut(tell, 'firstCut'),
  },
  drop: {
    ...mm,
    result: ({ layout }) => layout.stringer.heel.drop,
    because: (tell) => {
      const tread = tell.length('t', 'steps.treadThickness');
      if (!isLevel(tell.job.survey)) return { formula: 'drop.onSlope', terms: [tread, tell.of('floor', 'floorAtToe')] };
      if (standsOnFinish(tell)) return { formula: 'drop.floorFirst', terms: [tread] };
      return { formula: 'drop.floorLater', terms: [tread, tell.length('fL', 'survey.lowerToAdd')] };
    },
  },
  seat: {
    ...mm,
    result: ({ layout }) => layout.stringer.heel.seat,
    because: (tell) => {
      const terms = [...board(tell), tell.of('h1', 'firstCut'), tell.of('theta', 'pitch', 'rad')];
      if (isLevel(tell.job.survey)) return { formula: 'seat', terms };
      return { formula: 'seat.onSlope', terms: [...terms, ...along(tell)] };
    },
  },
  kickerToe: {
    unit: 'mm',
    shown: 'down',
    result: ({ layout: { stringer } }) =>
      stringer.kicker === null ? null : stringer.heel.firstRiserCut - stringer.kicker.height,
    because: (tell) => ({
      formula: 'kickerToe',
      terms: [tell.of('h1', 'firstCut'), tell.length('kh', 'stringer.kicker.height')],
    }),
  },
  kickerSeat: {
    unit: 'mm',
    shown: 'down',
    result: ({ layout: { stringer } }) =>
      stringer.kicker === null ? null : stringer.heel.seat - stringer.kicker.width,
    because: (tell) => ({
      formula: 'kickerSeat',
      terms: [tell.of('s', 'seat'), tell.length('kw', 'stringer.kicker.width')],
    }),
  },
  endAlong: {
    ...mm,
    result: ({ layout }) => layout.stringer.endMark,
    because: (tell) => ({
      formula: 'endAlong',
      terms: [
        tell.of('T', 'treads', 'count'),
        tell.of('U', 'stepLength'),
        tell.of('last', 'lastLevelCut'),
        tell.of('theta', 'pitch', 'rad'),
      ],
    }),
  },
  boardLength: {
    unit: 'mm',
    shown: 'up',
    result: ({ layout }) => layout.stringer.boardLength,
    because: (tell) => ({ formula: 'boardLength', terms: [tell.of('end', 'endAlong'), ...toe(tell)] }),
  },
  stockLength: {
    unit: 'mm',
    shown: 'stock',
    result: ({ layout }) => layout.stringer.stockLength,
    because: (tell) => ({
      formula: 'stockLength',
      terms: [tell.of('L', 'boardLength'), tell.length('trim', 'stringer.trim'), ...stockRow(tell)],
    }),
  },
  firstMark: {
    ...mark,
    result: ({ layout }) => layout.stringer.firstMark,
    because: (tell) => ({ formula: 'firstMark', terms: [tell.length('trim', 'stringer.trim'), ...toe(tell)] }),
  },
  end: {
    ...mark,
    result: ({ layout }) => layout.stringer.firstMark + layout.stringer.endMark,
    because: (tell) => ({ formula: 'end', terms: [tell.of('s0', 'firstMark'), tell.of('end', 'endAlong')] }),
  },
  endDepth: {
    ...mark,
    result: ({ layout: { stringer, flight } }) => stringer.tipInset + stringer.top.lastLevelCut * flight.sin,
    because: (tell) => ({
      formula: 'endDepth',
      terms: [tell.length('e', 'stringer.tipInset'), tell.of('last', 'lastLevelCut'), tell.of('theta', 'pitch', 'rad')],
    }),
  },
  diagonal: {
    ...mark,
    result: ({ layout }) => layout.stringer.diagonal,
    because: (tell) => ({
      formula: 'diagonal',
      terms: [
        tell.of('E', 'stringerEnd'),
        tell.length('tr', 'steps.riserThickness'),
        tell.of('top', 'topHeight'),
        isLevel(tell.job.survey) ? tell.of('zs', 'seatHeight') : tell.of('zs', 'floorAtToe'),
      ],
    }),
  },
  spread: {
    unit: 'mm',
    shown: 'up',
    result: ({ layout }) => layout.stringer.asCut.spread,
    because: (tell) => {
      const { risers } = tell.plan.layout.stringer.asCut;
      const at = (value: number) => risers.indexOf(value) + 1;
      return {
        formula: 'spread',
        terms: [
          tell.of('tallest', `asCut:${at(Math.max(...risers))}`),
          tell.of('shortest', `asCut:${at(Math.min(...risers))}`),
        ],
      };
    },
  },
} satisfies Partial<Record<PlainMeasure, Entry>>;

export const MARKS = {
  tip: {
    ...mark,
    result: ({ layout: { stringer } }, step) => from(stringer.firstMark, stringer.marks[step - 1]),
    because: (tell, step) => ({
      formula: 'tip',
      terms: [tell.place(step), tell.of('s0', 'firstMark'), tell.of('U', 'stepLength')],
    }),
  },
  corner: {
    ...mark,
    result: ({ layout: { stringer } }, step) => from(stringer.firstMark, stringer.cornerMarks[step - 1]),
    because: (tell, step) => ({
      formula: 'corner',
      terms: [tell.of('tip', `tip:${step}`), tell.of('G', 'run'), tell.of('theta', 'pitch', 'rad')],
    }),
  },
  asCut: {
    ...mm,
    result: ({ layout }, step) => layout.stringer.asCut.risers[step - 1] ?? null,
    because: (tell, step) => {
      if (step === 1) return firstAsCut(tell);
      return step > tell.plan.layout.flight.treads ? restAsCut(tell) : betweenAsCut(tell, step);
    },
  },
} satisfies Partial<Record<RowMeasure, Entry>>;

/** The floor that comes later gives some of the drop back. Riser 1's board is as high as the first cut. */
export function firstCut(tell: Teller, formula: 'firstCut' | 'riserRip'): Because {
  if (!isLevel(tell.job.survey)) return formula === 'firstCut' ? firstCutOnSlope(tell) : scribedRiser(tell);
  const terms = [tell.of('R', 'unitRise'), tell.length('t', 'steps.treadThickness')];
  if (standsOnFinish(tell)) return { formula: `${formula}.floorFirst`, terms };
  return { formula: `${formula}.floorLater`, terms: [...terms, tell.length('fL', 'survey.lowerToAdd')] };
}

function firstCutOnSlope(tell: Teller): Because {
  const terms = [tell.of('R', 'unitRise'), tell.length('t', 'steps.treadThickness'), tell.of('floor', 'floorAtToe')];
  return { formula: 'firstCut.onSlope', terms };
}

/** How far the floor in front of the master lies over the floor on the centre line. */
function acrossAtMaster(tell: Teller) {
  const { stringer } = tell.plan.layout.stringer.master;
  return stringer === 0 ? [] : across(tell, stringer);
}

/** The toe height is rounded once, and riser 1 takes that rounding whole. */
function firstAsCut(tell: Teller): Because {
  const { survey } = tell.job;
  if (!isLevel(survey)) {
    const terms = [
      tell.of('h1', 'firstCut'),
      tell.length('step', 'markStep'),
      tell.length('t', 'steps.treadThickness'),
      tell.of('zs', 'floorAtToe'),
      ...acrossAtMaster(tell),
    ];
    return { formula: terms.length > 4 ? 'asCut.first.across' : 'asCut.first', terms };
  }
  return {
    formula: 'asCut.first',
    terms: [
      tell.of('h1', 'firstCut'),
      tell.length('step', 'markStep'),
      tell.length('t', 'steps.treadThickness'),
      tell.of('zs', 'seatHeight'),
    ],
  };
}

/** Each tick carries its own rounding, and hands none of it on. */
function betweenAsCut(tell: Teller, step: number) {
  return {
    formula: 'asCut.between',
    terms: [
      tell.of('R', 'unitRise'),
      tell.of('tip', `tip:${step}`),
      tell.of('tipBelow', `tip:${step - 1}`),
      tell.length('step', 'markStep'),
      tell.of('theta', 'pitch', 'rad'),
    ],
  };
}

/** At the top of a hung stair: what riser 1 and the ticks leave of the rise. */
function restAsCut(tell: Teller) {
  const { treads } = tell.plan.layout.flight;
  const aside = acrossAtMaster(tell);
  return {
    formula: aside.length > 0 ? 'asCut.rest.across' : 'asCut.rest',
    terms: [
      tell.of('H', 'totalRise'),
      tell.of('first', 'asCut:1'),
      tell.of('R', 'unitRise'),
      tell.of('T', 'treads', 'count'),
      tell.of('tipFirst', 'tip:1'),
      tell.of('tipLast', `tip:${treads}`),
      tell.length('step', 'markStep'),
      tell.of('theta', 'pitch', 'rad'),
      ...aside,
    ],
  };
}

function stockRow(tell: Teller) {
  const lengths =
    tell.job.units === 'metric' ? STOCK_LENGTHS.metricMm : STOCK_LENGTHS.imperialFeet.map((feet) => inchMm(12 * feet));
  const [least = 0, next = 0] = lengths;
  return [tell.practice('least', least), tell.practice('every', next - least)];
}

function board(tell: Teller) {
  return [tell.length('d', 'stringer.stockDepth'), tell.length('e', 'stringer.tipInset')];
}

function toe(tell: Teller) {
  return [tell.of('h1', 'firstCut'), tell.of('theta', 'pitch', 'rad')];
}

function standsOnFinish(tell: Teller): boolean {
  return tell.job.survey.lowerLaid === 'before-stairs';
}

function from(start: number, along: number | undefined): number | null {
  return along === undefined ? null : start + along;
}
