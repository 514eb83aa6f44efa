import { describe, expect, test } from 'vitest';
import { checkSheet } from '../../../src/core/check/checkLayout';
import { exactSheet, printedSheet } from '../../../src/core/check/printedSheet';
import { fewestOnFloor } from '../../../src/core/layout/slope';
import { inch, toMm } from '../../../src/core/units/exact';
import {
  answerOf,
  bare,
  type Changes,
  changed,
  DECK,
  faultsOf,
  inInches,
  LOFT,
  PAD,
  planOf,
  SLAB,
  stairJobOf,
} from '../../fixtures/stairs';

const pad = (changes: Changes = {}) => planOf(changed(PAD, changes)).layout;
const inches = (mm: number) => inInches(mm).toFixed(4);
const toes = (changes: Changes = {}) => pad(changes).stringer.feet.map(({ heel }) => inches(heel.firstRiserCut));

// Worked out by hand, from px = 1/48, py = −3/16/48, H0 = 51 3/8, X = 6 × 10 1/2 + 3/4 = 63 3/4 in.
describe('a deck on a pad that drains away from the house and to the right', () => {
  test('its rise is what the tape read under the rim, and what the pad has fallen since', () => {
    const { flight } = pad();
    expect(inches(flight.totalRise)).toBe('52.7031');
    expect(inches(flight.unitRise)).toBe('7.5290');
  });

  test('each stringer has a toe of its own, from left to right', () => {
    expect(toes()).toEqual(['6.4226', '6.4680', '6.5134', '6.5588', '6.6042']);
    expect(pad().stringer.feet.map(({ across }) => inches(across))).toEqual([
      '-23.2500',
      '-11.6250',
      '0.0000',
      '11.6250',
      '23.2500',
    ]);
  });

  test('the one with the tallest toe is the master, and board and marks are its own', () => {
    const { stringer } = pad();
    expect(stringer.master.stringer).toBe(5);
    expect(inches(stringer.heel.firstRiserCut)).toBe('6.6042');
    expect(stringer.outline).toBe(stringer.master.outline);
    expect(inches(stringer.firstMark)).toBe((2 + 6.6042 * (7.52902 / 12.92038)).toFixed(4));
  });

  test('the heel under the middle runs up the pad', () => {
    const middle = pad().stringer.feet[2]?.heel;
    expect(inInches(middle?.heelX ?? 0)).toBeCloseTo(11.2781, 3);
    expect(inches(middle?.heelY ?? 0)).toBe('0.2350');
    expect(inches(middle?.toeY ?? 0)).toBe('0.0156');
    expect(inches(middle?.seat ?? 0)).toBe('10.5304');
  });

  test('what does not stand on the pad is as on a level one', () => {
    const level = planOf(DECK).layout.stringer;
    const { stringer } = pad();
    for (const name of ['throat', 'notchDepth', 'endMark'] as const) expect(stringer[name]).toBeCloseTo(level[name], 9);
    expect(stringer.top).toEqual(level.top);
    expect(stringer.marks.map(inches)).toEqual(level.marks.map(inches));
  });

  test('riser 1 is ripped for the lowest corner of its foot, and scribed', () => {
    // 7.52902 − 1 and half of 3/16 at the right.
    expect(inches(pad().rips.riserHeights[0] ?? 0)).toBe('6.6228');
    // Where the pad rises outward the board's back stands lower than its face.
    const outward = pad({ survey: { fallAlong: '-1/4 in', readingFromHeader: undefined, rise: '52.703125 in' } });
    expect(inches(outward.rips.riserHeights[0] ?? 0)).toBe((7.529018 - 1 + 0.09375 + 0.75 / 48).toFixed(4));
  });

  test('as cut, each has its own first riser over the floor in front of it, and all reach the deck', () => {
    for (const { asCut, across } of pad().stringer.feet) {
      const sum = asCut.risers.reduce((total, riser) => total + riser, 0);
      expect(inches(sum)).toBe((52.703125 + (inInches(across) * 3) / 16 / 48).toFixed(4));
    }
  });

  test('the command lists the feet', () => {
    expect(answerOf(PAD).feet?.map(({ stringer, firstRiserCut }) => [stringer, inches(firstRiserCut)])).toEqual([
      [1, '6.4226'],
      [2, '6.4680'],
      [3, '6.5134'],
      [4, '6.5588'],
      [5, '6.6042'],
    ]);
    expect(answerOf(DECK).feet).toBeNull();
  });
});

describe('where the tape stood', () => {
  test('out on the pad, only what it falls from there on is added', () => {
    const half = pad({ survey: { readingFromHeader: '31 7/8 in' } });
    expect(inches(half.flight.totalRise)).toBe((51.375 + 31.875 / 48).toFixed(4));
  });

  test('beyond the foot, what it falls is taken off', () => {
    const beyond = pad({ survey: { readingFromHeader: '111 3/4 in' } });
    expect(inches(beyond.flight.totalRise)).toBe('50.3750');
  });

  test('where the flight lands, nothing is', () => {
    expect(inches(pad({ survey: { readingFromHeader: undefined } }).flight.totalRise)).toBe('51.3750');
  });

  test('the same difference is not added twice', () => {
    const twice = changed(PAD, { survey: { footBelowReading: '1 in' } });
    expect(faultsOf(twice)).toEqual(['stairs[0].survey.footBelowReading foot.twice']);
    expect(faultsOf(changed(PAD, { survey: { footBelowReading: '1 in', readingFromHeader: undefined } }))).toEqual([]);
    expect(faultsOf(changed(PAD, { survey: { footBelowReading: '1 in', fallAlong: undefined } }))).toEqual([]);
  });

  test('level with the floor, the header stands a tread farther off', () => {
    const level = pad({ stringer: { top: 'level-with-floor', hanger: '1 in', topTreadRun: '6 in' } });
    expect(inches(level.flight.totalRise)).toBe((51.375 + (63 + 0.75 + 6 + 1) / 48).toFixed(4));
  });
});

describe('the fewest risers on a floor that falls', () => {
  const fewest = (survey: Changes['survey'], risers: 'auto' = 'auto') =>
    pad({ ...(survey && { survey }), steps: { risers } }).flight.risers;

  test('grow with the fall: one riser more also lowers the foot', () => {
    // 7 risers of 7 3/4 in reach 54 1/4; at 1/4 in per foot the seventh stands 52.70 below, at 1 in per foot
    // 56.69; rising 2 in per foot, the sixth stands 42 1/2 below, and the fifth 44 1/4 where five reach 38 3/4.
    expect(fewest({})).toBe(7);
    expect(fewest({ fallAlong: '1 in' })).toBe(8);
    expect(fewest({ fallAlong: '-2 in' })).toBe(6);
  });

  test.each([1, 3, 9, -3, -9])('are the first count that reaches, %s/16 in to the foot', (sixteenths) => {
    const job = stairJobOf(changed(PAD, { survey: { fallAlong: `${sixteenths / 16} in` } }));
    const found = fewestOnFloor(job, inch(10.5), inch(7.75)) ?? 0;
    const rise = (n: number) => 51.375 + ((n - 1) * 10.5 + 0.75) * (sixteenths / 16 / 12);
    expect(rise(found)).toBeLessThanOrEqual(found * 7.75);
    expect(rise(found - 1)).toBeGreaterThan((found - 1) * 7.75);
  });

  test('exactly reached is reached', () => {
    // 51 3/8 in + 63 3/4 / 48 = 52.703125 = 7 × 7.529017857…
    const local = [{ field: 'riser.max', value: '7 237/448 in' }];
    expect(
      planOf(changed(PAD, { rules: { pack: 'irc-2021', local }, steps: { risers: 'auto' } })).layout.flight.risers,
    ).toBe(7);
  });

  test('no count catches up with a floor as steep as the steepest stair', () => {
    const steep = { survey: { fallAlong: '8.9 in' }, steps: { risers: 'auto' } } as const;
    expect(faultsOf(changed(PAD, steep))).toEqual(['stairs[0].survey.fallAlong slope.asStair']);
  });
});

describe('what a floor may not do', () => {
  const refused = (survey: Changes['survey'], more: Changes = {}) =>
    faultsOf(changed(PAD, { ...more, ...(survey && { survey }) }));

  test('fall as steeply as the stair climbs', () => {
    expect(refused({ readingFromHeader: undefined, fallAlong: '9 in' })).toEqual([
      'stairs[0].survey.fallAlong slope.asStair',
    ]);
  });

  test('fall toward the header past square to the board', () => {
    expect(refused({ readingFromHeader: undefined, fallAlong: '-18 in' })).toEqual([
      'stairs[0].survey.fallAlong slope.pastSquare',
    ]);
  });

  test('come up to the first tread at an edge', () => {
    expect(refused({ fallAcross: '16 in' })).toEqual(['stairs[0].survey.fallAcross slope.overTread']);
  });

  test('leave a stringer without its first cut', () => {
    expect(refused({ fallAcross: '14 in' })).toEqual(['stairs[0].survey.fallAcross toe.noneOnSlope']);
    const along = refused(
      { readingFromHeader: undefined, fallAlong: '7 in', fallAcross: undefined },
      {
        steps: { riserThickness: '2 1/2 in', run: '10 in', treadThickness: '6 in' },
      },
    );
    expect(along).toEqual(['stairs[0].survey.fallAlong toe.noneOnSlope']);
  });

  test("a tread that is thicker than the riser stays the tread's fault", () => {
    expect(refused({ fallAlong: '1/8 in' }, { steps: { treadThickness: '8 in' } })).toEqual([
      'stairs[0].steps.treadThickness toe.none',
    ]);
  });

  test('be measured over nothing', () => {
    expect(refused({ fallAlongOver: '0 in' })).toEqual(['stairs[0].survey.fallAlongOver value.notPositive']);
  });
});

describe('a kicker on the pad', () => {
  const kicker = { width: '3 1/2 in', height: '1 1/2 in' };

  test('is notched over the floor under it', () => {
    const { outline, master } = pad({ stringer: { kicker } }).stringer;
    const [toe, back, over] = [outline[0], outline.at(-2), outline.at(-1)];
    expect(inches((toe?.y ?? 0) - master.heel.toeY)).toBe('1.5000');
    expect(inches((over?.y ?? 0) - (back?.y ?? 0))).toBe('1.5000');
    expect(inches((back?.y ?? 0) - master.heel.toeY)).toBe((3.5 / 48).toFixed(4));
  });

  test('has to leave something of the shortest toe and of the shortest seat', () => {
    const high = changed(PAD, { stringer: { kicker: { ...kicker, height: '6 1/2 in' } } });
    expect(faultsOf(high)).toEqual(['stairs[0].stringer.kicker.height kicker.tooHigh']);
    const wide = changed(PAD, { stringer: { kicker: { ...kicker, width: '10 1/2 in' } } });
    expect(faultsOf(wide)).toEqual(['stairs[0].stringer.kicker.width kicker.tooWide']);
  });
});

describe('the second road stands each stringer on its own place', () => {
  test.each([
    ['the pad', {}],
    ['rising outward and to the right', { survey: { fallAlong: '-3/8 in', fallAcross: '-3/4 in' } }],
    ['two stringers', { stringer: { count: 2 } }],
    ['a finish to come, laid after', { survey: { lowerToAdd: '1/2 in' } }],
    ['a finish to come, laid before', { survey: { lowerToAdd: '1/2 in', lowerLaid: 'before-stairs' } }],
    ['level with the floor', { stringer: { top: 'level-with-floor' } }],
    ['open risers', { steps: { riserThickness: '0 in' } }],
  ] as [string, Changes][])('%s: nothing is left over', (_, changes) => {
    const layout = pad(changes);
    expect(checkSheet(layout, exactSheet(layout))).toEqual([]);
    expect(checkSheet(layout, printedSheet(layout))).toEqual([]);
  });

  /** A layout made for one floor, checked on the survey of another. */
  const onto = (made: Changes, real: Changes) => {
    const layout = pad(made);
    return checkSheet({ ...layout, job: pad(real).job }, printedSheet(layout)).map(({ what }) => what);
  };

  test('a slope along that was forgotten, or turned round, is found', () => {
    expect(onto({ survey: { fallAlong: undefined } }, {})).toContain('riser');
    expect(onto({ survey: { fallAlong: '-1/4 in' } }, {})).toContain('riser');
  });

  test('a slope across that was forgotten, or turned round, is found', () => {
    expect(onto({ survey: { fallAcross: undefined } }, {})).toContain('feet');
    expect(onto({ survey: { fallAcross: '-3/4 in' } }, { survey: { fallAcross: '3/4 in' } })).toContain('riser');
  });

  test('a heel cut to another slope is found on the exact sheet', () => {
    const layout = pad({ survey: { readingFromHeader: undefined } });
    const job = pad({ survey: { readingFromHeader: undefined, fallAlong: '1/2 in' } }).job;
    expect(checkSheet({ ...layout, job }, exactSheet(layout))).not.toEqual([]);
  });

  test('feet that are missing, moved, or lower than the board was made for are found', () => {
    const layout = pad();
    const sheet = printedSheet(layout);
    const faults = (feet: typeof sheet.feet, more = {}) =>
      checkSheet(layout, { ...sheet, ...more, feet }).map(({ what }) => what);
    expect(faults(sheet.feet.slice(1))).toContain('first stringer');
    expect(faults(sheet.feet.slice(0, -1))).toContain('last stringer');
    expect(faults(sheet.feet.filter((_, k) => k !== 2))).toContain('spacing');
    expect(faults(sheet.feet.map((foot) => ({ ...foot, fromLeft: foot.fromLeft + 200 })))).toContain('stringer');
    expect(faults(sheet.feet, { toeHeight: sheet.toeHeight + 10 })).toContain('tallest toe');
    expect(faults(sheet.feet.map((foot) => ({ ...foot, diagonal: foot.diagonal + 10 })))).toContain('diagonal');
    const counted = pad({ stringer: { count: 4 } });
    const four = printedSheet(counted);
    const shown = checkSheet(counted, { ...four, feet: four.feet.slice(1) }).map(({ what }) => what);
    expect(shown).toContain('feet');
  });
});

describe('without a width', () => {
  test('the foot is that of the centre line, and that is said', () => {
    const plan = planOf(changed(PAD, { survey: { widthFraming: undefined } }));
    expect(plan.layout.stringer.feet.map(({ stringer }) => stringer)).toEqual([0]);
    expect(inches(plan.layout.stringer.heel.firstRiserCut)).toBe('6.5134');
    expect(plan.notes.map(({ code }) => code)).toContain('note.slopeNoWidth');
    expect(plan.sheet.feet).toEqual([]);
  });

  test('walls too near each other for a stair leave no feet either', () => {
    const plan = planOf(changed(PAD, { survey: { widthFraming: '2 in', skirt: '1 in' } }));
    expect(plan.notes.map(({ code }) => code)).toEqual(
      expect.arrayContaining(['note.widthTooNarrow', 'note.slopeNoWidth']),
    );
  });
});

describe('what is used where nothing was said', () => {
  test('a floor counts as level, and that is listed', () => {
    const used = planOf(LOFT).defaults.filter(({ key }) => key.startsWith('survey.fall'));
    expect(used).toEqual([
      { key: 'survey.fallAlong', used: '0 in' },
      { key: 'survey.fallAcross', used: '0 in' },
    ]);
  });

  test('a fall without a length is read over a level of the usual length', () => {
    const deck = pad({ survey: { fallAlong: '1 in', fallAlongOver: undefined } });
    expect(inches(deck.flight.totalRise)).toBe('52.7031');
    expect(deck.defaults).toContainEqual({ key: 'survey.fallAlongOver', used: '48 in' });
    const slab = planOf(changed(SLAB, { survey: { fallAlong: '25 mm' } }));
    expect(slab.layout.flight.slopeAlong).toBeCloseTo(1 / 48, 12);
    expect(planOf(bare('metric', '2700 mm')).defaults).toContainEqual({ key: 'survey.fallAlong', used: '0 mm' });
  });

  test('a level floor may say over what it was found level', () => {
    const deck = pad({ survey: { fallAcross: undefined, fallAcrossOver: '36 in' } });
    expect(toMm(deck.job.survey.fallAcross.fall)).toBe(0);
    expect(deck.stringer.feet).toHaveLength(1);
  });
});
