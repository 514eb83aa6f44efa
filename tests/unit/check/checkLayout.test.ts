import { describe, expect, test } from 'vitest';
import { checkLayout, checkSheet } from '../../../src/core/check/checkLayout';
import { exactSheet, type PrintedSheet, printedSheet } from '../../../src/core/check/printedSheet';
import { rebuild, siteOf } from '../../../src/core/check/rebuild';
import type { StairLayout } from '../../../src/core/layout/layoutStair';
import { inch } from '../../../src/core/units/exact';
import { type Changes, changed, DECK, LOFT, planOf, SLAB } from '../../fixtures/stairs';

const IN = 25.4;
const layoutOf = (changes: Changes = {}): StairLayout => planOf(changed(LOFT, changes)).layout;

const TOPS: Readonly<Record<string, Changes>> = {
  'hanger is the riser': {},
  'header behind the riser': { stringer: { top: 'header-behind-riser', hanger: undefined } },
  'hanger behind the riser': { stringer: { top: 'hanger-behind-riser' } },
  'level with the floor': { stringer: { top: 'level-with-floor', hanger: undefined, topTreadRun: '3 1/2 in' } },
};

type Slip = (sheet: PrintedSheet, layout: StairLayout) => Partial<PrintedSheet>;

const at = (numbers: readonly number[], index: number, by: number): number[] =>
  numbers.map((number, i) => (i === index ? number + by : number));

/** What goes wrong on a site, put on the sheet. The check sees only the sheet and the survey. */
const SLIPS: Readonly<Record<string, Slip>> = {
  'the drop forgotten': (s, l) => ({ toeHeight: s.toeHeight + l.stringer.heel.drop }),
  'the drop taken twice': (s, l) => ({ toeHeight: s.toeHeight - l.stringer.heel.drop }),
  'the sign of the floor to come': (s, l) => ({ toeHeight: s.toeHeight - 2 * l.flight.lowerToAdd }),
  'the tread forgotten in the drop': (s, l) => ({ toeHeight: s.toeHeight + l.flight.treadThickness }),
  'the header mark without the upper floor to come': (s, l) => ({ headerMark: s.headerMark + l.flight.upperToAdd }),
  'the upper floor to come counted twice': (s, l) => ({ headerMark: s.headerMark - l.flight.upperToAdd }),
  'the header mark a tread too high': (s, l) => ({ headerMark: s.headerMark - l.flight.treadThickness }),
  'the toe mark at the riser': (s) => ({ toeMark: s.riserMark }),
  'the riser mark at the toe': (s) => ({ riserMark: s.toeMark }),
  'the nosing mark at the riser': (s) => ({ nosingMark: s.riserMark }),
  'all floor marks short by the riser': (s, l) => ({
    toeMark: s.toeMark - l.flight.riserThickness,
    riserMark: s.riserMark - l.flight.riserThickness,
    nosingMark: s.nosingMark - l.flight.riserThickness,
  }),
  'the last cut longer by the riser': (s, l) => ({
    end: s.end + l.flight.riserThickness * l.flight.cos,
    endDepth: s.endDepth + l.flight.riserThickness * l.flight.sin,
  }),
  'the last cut shorter by the riser': (s, l) => ({
    end: s.end - l.flight.riserThickness * l.flight.cos,
    endDepth: s.endDepth - l.flight.riserThickness * l.flight.sin,
  }),
  'the gauge line 1/4 in deep': (s) => ({ gaugeLine: s.gaugeLine + IN / 4 + 3 * s.step }),
  'the gauge line 1/4 in shallow': (s) => ({ gaugeLine: s.gaugeLine - IN / 4 - 3 * s.step }),
  'treads ripped short by the riser': (s, l) => ({ treadRip: s.treadRip - l.flight.riserThickness }),
  'treads ripped without their nosing': (s, l) => ({ treadRip: s.treadRip - l.flight.nosing }),
  'treads ripped long by the riser': (s, l) => ({ treadRip: s.treadRip + l.flight.riserThickness }),
  'the last tread short by the riser': (s, l) => ({ lastTreadRip: s.lastTreadRip - l.flight.riserThickness }),
  'the first riser board as high as the others': (s) => ({
    riserRips: s.riserRips.map(() => s.riserRips[1] as number),
  }),
  'riser boards short by the tread': (s, l) => ({ riserRips: s.riserRips.map((rip) => rip - l.flight.treadThickness) }),
  'riser boards 1/4 in high': (s) => ({ riserRips: s.riserRips.map((rip) => rip + IN / 4) }),
  'a tip forgotten': (s) => ({ tips: s.tips.slice(0, -1) }),
  'a tip too many': (s, l) => ({ tips: [...s.tips, (s.tips.at(-1) as number) + l.flight.stepLength] }),
  'treads counted as risers': (s, l) => ({
    tips: s.tips.map(
      (_, i) => (s.tips[0] as number) + ((i * l.flight.stepLength * l.flight.risers) / l.flight.treads) * 0.99,
    ),
  }),
  'stepped off with a rounded rise': (s, l) => {
    const step = Math.hypot(Math.ceil(l.flight.unitRise / (IN / 16)) * (IN / 16), l.flight.run);
    return { tips: s.tips.map((_, i) => (s.tips[0] as number) + i * step + i * (s.step / 4)) };
  },
  'the board one length too short': (s) => ({ stockLength: (s.stockLength as number) - 24 * IN }),
  'the trim forgotten': (s, l) => ({
    tips: s.tips.map((u) => u - l.stringer.trim),
    corners: s.corners.map((u) => u - l.stringer.trim),
    end: s.end - l.stringer.trim,
  }),
  'the diagonal of the whole rise': (_, l) => ({ diagonal: Math.hypot(l.stringer.top.endX, l.flight.totalRise) }),
};

describe.each(Object.keys(TOPS))('%s', (name) => {
  const layout = layoutOf(TOPS[name]);

  test('agrees with itself, rounded and unrounded', () => {
    expect(checkLayout(layout)).toEqual([]);
  });

  describe.each([
    ['the unrounded sheet', exactSheet(layout)],
    ['the printed sheet', printedSheet(layout)],
  ])('%s', (_, sheet) => {
    test.each(Object.keys(SLIPS))('%s is caught', (slip) => {
      const wrong = { ...sheet, ...(SLIPS[slip] as Slip)(sheet, layout) };
      expect(checkSheet(layout, wrong)).not.toEqual([]);
    });

    test.each(['tips', 'corners'] as const)('each of the %s off by 1/4 in either way is caught', (row) => {
      for (let i = 0; i < sheet[row].length; i += 1) {
        for (const by of [IN / 4, -IN / 4]) {
          const faults = checkSheet(layout, { ...sheet, [row]: at(sheet[row], i, by) });
          expect(faults, `${row} ${i} by ${by}`).not.toEqual([]);
        }
      }
    });
  });
});

describe('parts that only some stairs have', () => {
  const cases: readonly [string, Changes, Slip][] = [
    [
      'the top riser board',
      TOPS['header behind the riser'] as Changes,
      (s) => ({ topRiserRip: (s.topRiserRip as number) + IN / 2 }),
    ],
    ['the hanger', {}, (s) => ({ hangerRip: (s.hangerRip as number) - IN })],
    [
      'a top riser board on its tread',
      { ...TOPS['header behind the riser'], steps: { joint: 'riser-on-tread' } },
      (s, l) => ({ topRiserRip: (s.topRiserRip as number) + l.flight.treadThickness }),
    ],
    [
      'riser boards on their treads',
      { steps: { joint: 'riser-on-tread' } },
      (s, l) => ({ riserRips: s.riserRips.map((rip) => rip + l.flight.treadThickness) }),
    ],
    [
      'a tread under the riser',
      { steps: { joint: 'riser-on-tread' } },
      (s, l) => ({ treadRip: s.treadRip - l.flight.riserThickness }),
    ],
  ];

  test.each(cases)('%s', (_, changes, slip) => {
    const layout = layoutOf(changes);
    for (const sheet of [exactSheet(layout), printedSheet(layout)]) {
      expect(checkSheet(layout, sheet)).toEqual([]);
      expect(checkSheet(layout, { ...sheet, ...slip(sheet, layout) })).not.toEqual([]);
    }
  });

  test('a stair with no board long enough is not measured against one', () => {
    const layout = layoutOf({ survey: { rise: '200 in' }, steps: { risers: 26 } });
    expect(printedSheet(layout).stockLength).toBeNull();
    expect(checkLayout(layout)).toEqual([]);
  });
});

describe('a layout whose own numbers are wrong', () => {
  const layout = layoutOf();
  const { stringer, flight, rips } = layout;
  const wrong: readonly [string, StairLayout][] = [
    [
      'a first cut without its drop',
      { ...layout, stringer: { ...stringer, heel: { ...stringer.heel, firstRiserCut: flight.unitRise } } },
    ],
    [
      'a header mark off by a tenth of a millimetre',
      {
        ...layout,
        stringer: { ...stringer, top: { ...stringer.top, topBelowSubfloor: stringer.top.topBelowSubfloor + 0.1 } },
      },
    ],
    [
      'a header face off by a hundredth',
      { ...layout, stringer: { ...stringer, top: { ...stringer.top, headerX: stringer.top.headerX + 0.01 } } },
    ],
    ['one mark off by a hundredth', { ...layout, stringer: { ...stringer, marks: at(stringer.marks, 5, 0.01) } }],
    [
      'one corner off by a hundredth',
      { ...layout, stringer: { ...stringer, cornerMarks: at(stringer.cornerMarks, 5, 0.01) } },
    ],
    ['a gauge line off by a hundredth', { ...layout, stringer: { ...stringer, gaugeLine: stringer.gaugeLine + 0.01 } }],
    ['a riser count that is not the one cut', { ...layout, flight: { ...flight, risers: 15 } }],
    ['a run that is not the one cut', { ...layout, flight: { ...flight, run: flight.run + 1 } }],
    ['a tread rip off by a hundredth', { ...layout, rips: { ...rips, treadDepth: rips.treadDepth + 0.01 } }],
    [
      'a board without throat',
      { ...layout, job: { ...layout.job, stringer: { ...layout.job.stringer, stockDepth: inch(5.5) } } },
    ],
  ];

  test.each(wrong)('%s does not leave', (_, doctored) => {
    expect(checkLayout(doctored)).not.toEqual([]);
  });
});

describe('the stair built a second time', () => {
  test.each([
    ['loft', LOFT],
    ['deck', DECK],
    ['slab', SLAB],
  ])('%s hangs at the pitch that was laid out', (_, job) => {
    const { layout } = planOf(job);
    const built = rebuild(layout.job, exactSheet(layout));
    expect(built.swing).toBeCloseTo(layout.flight.pitch, 10);
    expect(built.seat).toBeCloseTo(layout.stringer.heel.seat, 7);
    expect(built.end.x).toBeCloseTo(layout.stringer.top.endX, 7);
  });

  test('floors come straight from the survey', () => {
    const site = siteOf(layoutOf({ survey: { footBelowReading: '1 in' } }).job, 0);
    expect([site.seatAt(0, 0) / IN, site.upperToday / IN, site.upperFinished / IN].map((n) => n.toFixed(4))).toEqual([
      '-0.6250',
      '105.8125',
      '106.5625',
    ]);
    expect(siteOf(layoutOf({ survey: { lowerLaid: 'before-stairs' } }).job, 0).seatAt(99, 99)).toBe(0);
  });

  test('a header mark that no swing can reach still gives numbers, and is caught', () => {
    const layout = layoutOf();
    const sheet = { ...exactSheet(layout), headerMark: -1e6 };
    expect(
      Object.values(rebuild(layout.job, sheet))
        .flat()
        .every((value) => !Number.isNaN(value as number)),
    ).toBe(true);
    expect(checkSheet(layout, sheet)).not.toEqual([]);
    expect(checkSheet(layout, { ...sheet, headerMark: 1e6 })).not.toEqual([]);
  });
});

test('the printed sheet is within half a step of the exact one, rips within one and never longer', () => {
  for (const job of [LOFT, DECK, SLAB]) {
    const { layout } = planOf(job);
    const exact = exactSheet(layout);
    const printed = printedSheet(layout);
    const marks = (s: PrintedSheet) => [
      ...s.tips,
      ...s.corners,
      s.gaugeLine,
      s.end,
      s.endDepth,
      s.toeHeight,
      s.diagonal,
      s.headerMark,
      s.toeMark,
      s.riserMark,
      s.nosingMark,
    ];
    const rips = (s: PrintedSheet) => [
      s.treadRip,
      s.lastTreadRip,
      ...s.riserRips,
      s.topRiserRip ?? 0,
      s.hangerRip ?? 0,
    ];
    const shown = marks(printed);
    for (const [i, mark] of marks(exact).entries())
      expect(Math.abs((shown[i] as number) - mark)).toBeLessThanOrEqual(printed.step / 2 + 1e-6);
    const sawn = rips(printed);
    for (const [i, rip] of rips(exact).entries()) {
      expect(rip - (sawn[i] as number)).toBeGreaterThanOrEqual(-1e-6);
      expect(rip - (sawn[i] as number)).toBeLessThan(printed.ripStep);
    }
  }
});
