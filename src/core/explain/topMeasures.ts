/** The top end, the header, and the boards that are ripped. Frame of the sums: layout/flight. */

import type { PlainMeasure, RowMeasure } from './measures';
import { firstCut } from './stringerMeasures';
import { type Because, type Entry, given, same, type Teller } from './teller';

const mm = { unit: 'mm', shown: 'fine' } as const;
const mark = { unit: 'mm', shown: 'mark' } as const;
const rip = { unit: 'mm', shown: 'rip' } as const;

export const TOP = {
  lastLevelCut: {
    ...mark,
    result: ({ layout }) => layout.stringer.top.lastLevelCut,
    because: (tell) => {
      const { top } = tell.job.stringer;
      if (top === 'level-with-floor') return given(topTread(tell));
      if (top !== 'hanger-is-riser') return same(tell.of('G', 'run'));
      return { formula: 'lastLevelCut', terms: [tell.of('G', 'run'), riser(tell)] };
    },
  },
  plumbCut: {
    ...mm,
    result: ({ layout }) => layout.stringer.top.plumbCut,
    because: (tell) => ({
      formula: 'plumbCut',
      terms: [
        tell.length('d', 'stringer.stockDepth'),
        tell.length('e', 'stringer.tipInset'),
        tell.of('theta', 'pitch', 'rad'),
        tell.of('last', 'lastLevelCut'),
      ],
    }),
  },
  headerMarkFinish: {
    ...mark,
    result: ({ layout }) => layout.stringer.top.topBelowFinish,
    because: (tell) =>
      tell.plan.layout.stringer.top.hung
        ? { formula: 'headerMarkFinish', terms: [tell.of('R', 'unitRise'), tread(tell)] }
        : same(tread(tell)),
  },
  headerMark: {
    ...mark,
    result: ({ layout }) => layout.stringer.top.topBelowSubfloor,
    because: (tell) => ({
      formula: 'headerMark',
      terms: [tell.of('below', 'headerMarkFinish'), tell.length('fU', 'survey.upperToAdd')],
    }),
  },
  topHeight: {
    ...mm,
    result: ({ layout }) => layout.stringer.top.topY,
    because: (tell) => ({
      formula: 'topHeight',
      terms: [tell.of('H', 'totalRise'), tell.of('below', 'headerMarkFinish')],
    }),
  },
  stringerEnd: {
    ...mark,
    result: ({ layout }) => layout.stringer.top.endX,
    because: stringerEnd,
  },
  headerFace: {
    ...mark,
    result: ({ layout }) => layout.stringer.top.headerX,
    because: (tell) => ({
      formula: 'headerFace',
      terms: [tell.of('E', 'stringerEnd'), tell.length('th', 'stringer.hanger')],
    }),
  },
  toeMark: {
    ...mark,
    result: ({ layout: { stringer, flight } }) => stringer.top.headerX - flight.riserThickness,
    because: (tell) => ({ formula: 'toeMark', terms: [tell.of('X', 'headerFace'), riser(tell)] }),
  },
  riserMark: {
    ...mark,
    result: ({ layout }) => layout.stringer.top.headerX,
    because: (tell) => same(tell.of('X', 'headerFace')),
  },
  nosingMark: {
    ...mark,
    result: ({ layout: { stringer, flight } }) => stringer.top.headerX + flight.nosing,
    because: (tell) => ({ formula: 'nosingMark', terms: [tell.of('X', 'headerFace'), nosing(tell)] }),
  },
  headerContact: {
    unit: 'mm',
    shown: 'down',
    result: ({ layout }) => layout.stringer.bearing.contact,
    because: (tell) => ({
      formula: 'headerContact',
      terms: [...underHeaderTop(tell), tell.length('dh', 'survey.headerDepth')],
    }),
  },
  depthNeeded: {
    unit: 'mm',
    shown: 'up',
    result: ({ layout }) => layout.stringer.bearing.depthNeeded,
    because: (tell) => ({ formula: 'depthNeeded', terms: underHeaderTop(tell) }),
  },
  treadRip: {
    ...rip,
    result: ({ layout }) => layout.rips.treadDepth,
    because: treadRip,
  },
  lastTreadRip: {
    ...rip,
    result: ({ layout }) => layout.rips.lastTreadDepth,
    because: (tell) => {
      const { top } = tell.job.stringer;
      if (top === 'hanger-is-riser') return { formula: 'treadRip.butts', terms: [tell.of('G', 'run'), nosing(tell)] };
      if (top !== 'level-with-floor') return same(tell.of('tread', 'treadRip'));
      return { formula: 'lastTreadRip', terms: [tell.of('last', 'lastLevelCut'), riser(tell), nosing(tell)] };
    },
  },
  topRiserRip: {
    ...rip,
    result: ({ layout }) => layout.rips.topRiserBoard,
    because: (tell) => {
      const terms = [tell.of('R', 'unitRise'), upperNosing(tell)];
      if (onTread(tell)) return { formula: 'topRiserRip.onTread', terms };
      return { formula: 'topRiserRip.behindTread', terms: [...terms, tread(tell)] };
    },
  },
  hangerRip: {
    ...rip,
    result: ({ layout }) => layout.rips.hangerHeight,
    because: (tell) => ({
      formula: 'hangerRip',
      terms: [tell.of('R', 'unitRise'), tread(tell), upperNosing(tell), tell.of('P', 'plumbCut')],
    }),
  },
  riserOpening: {
    unit: 'mm',
    shown: 'up',
    result: ({ layout }) => layout.rips.riserOpening,
    because: (tell) => ({ formula: 'riserOpening', terms: [tell.of('R', 'unitRise'), tread(tell)] }),
  },
} satisfies Partial<Record<PlainMeasure, Entry>>;

export const RISER_RIPS = {
  riserRip: {
    ...rip,
    result: ({ layout }, step) => layout.rips.riserHeights[step - 1] ?? null,
    because: (tell, step) => {
      if (step === 1) return firstCut(tell, 'riserRip');
      if (!onTread(tell)) return same(tell.of('R', 'unitRise'));
      return { formula: 'riserRip.onTread', terms: [tell.of('R', 'unitRise'), tread(tell)] };
    },
  },
} satisfies Partial<Record<RowMeasure, Entry>>;

/** The three ends: at the riser's face, behind its board, and a whole tread farther back. */
function stringerEnd(tell: Teller): Because {
  const toTopRiser = [tell.of('N', 'risers', 'count'), tell.of('G', 'run')];
  const { top } = tell.job.stringer;
  if (top === 'hanger-is-riser') return { formula: 'stringerEnd.atRiser', terms: toTopRiser };
  if (top !== 'level-with-floor') return { formula: 'stringerEnd.behindRiser', terms: [...toTopRiser, riser(tell)] };
  return { formula: 'stringerEnd.level', terms: [...toTopRiser, riser(tell), tell.of('last', 'lastLevelCut')] };
}

function treadRip(tell: Teller): Because {
  const terms = [tell.of('G', 'run'), nosing(tell)];
  return onTread(tell)
    ? { formula: 'treadRip.underRiser', terms: [...terms, riser(tell)] }
    : { formula: 'treadRip.butts', terms };
}

/** How far the header's top lies over the stringer's, and the plumb cut that hangs from there. */
function underHeaderTop(tell: Teller) {
  return [tell.of('mark', 'headerMark'), tell.length('sU', 'survey.upperSubfloor'), tell.of('P', 'plumbCut')];
}

/** Left out, the top tread is as deep as the others. */
function topTread(tell: Teller) {
  return tell.job.stringer.topTreadRun === null ? tell.of('gTop', 'run') : tell.length('gTop', 'stringer.topTreadRun');
}

function onTread(tell: Teller): boolean {
  return tell.job.steps.joint === 'riser-on-tread';
}

function riser(tell: Teller) {
  return tell.length('tr', 'steps.riserThickness');
}

function tread(tell: Teller) {
  return tell.length('t', 'steps.treadThickness');
}

function nosing(tell: Teller) {
  return tell.length('n', 'steps.nosing');
}

function upperNosing(tell: Teller) {
  return tell.length('tn', 'steps.upperNosingThickness');
}
