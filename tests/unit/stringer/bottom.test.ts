import { describe, expect, test } from 'vitest';
import { hasFirstCut } from '../../../src/core/stringer/heel';
import { cutStringer } from '../../../src/core/stringer/stringer';
import { inch } from '../../../src/core/units/exact';
import { answerOf, type Changes, changed, DECK, faultsOf, inInches, LOFT, planOf, SLAB } from '../../fixtures/stairs';

const of = (changes: Changes) => answerOf(changed(LOFT, changes));

describe('the first cut', () => {
  test.each<[string, Changes, number, number]>([
    ['floor to come after the stair', {}, 7.102679, 0.4375],
    ['floor to come before the stair', { survey: { lowerLaid: 'before-stairs' } }, 6.477679, 1.0625],
    ['floor is there', { survey: { lowerToAdd: '0 in' } }, 106.1875 / 14 - 1.0625, 1.0625],
    [
      'floor thicker than the tread: something is added',
      { survey: { lowerToAdd: '1 1/4 in' } },
      104.9375 / 14 + 0.1875,
      -0.1875,
    ],
    [
      'covering to be stripped, stair stands on it',
      { survey: { lowerToAdd: '-1/4 in' } },
      106.4375 / 14 - 1.3125,
      1.3125,
    ],
    [
      'covering stripped before the stair',
      { survey: { lowerToAdd: '-1/4 in', lowerLaid: 'before-stairs' } },
      106.4375 / 14 - 1.0625,
      1.0625,
    ],
  ])('%s', (_, changes, cut, drop) => {
    expect(Math.abs(inInches(of(changes).firstRiserCut) - cut)).toBeLessThan(1e-6);
    expect(inInches(of(changes).drop)).toBeCloseTo(drop, 9);
  });

  test('a drop that leaves nothing of the first riser is refused', () => {
    expect(faultsOf(changed(LOFT, { steps: { treadThickness: '9 in' } }))).toEqual([
      'stairs[0].steps.treadThickness toe.none',
    ]);
  });

  test('exactly nothing is nothing too, and a millionth of a millimetre is something', () => {
    const exactly = {
      survey: { rise: '2600 mm', lowerToAdd: '0 mm', upperToAdd: '0 mm' },
      stringer: { kicker: undefined },
    };
    expect(faultsOf(changed(LOFT, { ...exactly, steps: { risers: 13, treadThickness: '200 mm' } }))).toEqual([
      'stairs[0].steps.treadThickness toe.none',
    ]);
    expect(faultsOf(changed(LOFT, { ...exactly, steps: { risers: 13, treadThickness: '199.999999 mm' } }))).toEqual([]);
  });
});

describe('seat, notch and throat: worked examples of our own, not published', () => {
  test('loft', () => {
    const answer = answerOf(LOFT);
    expect(Math.abs(inInches(answer.notchDepth) - 6.0205)).toBeLessThan(0.00006);
    expect(Math.abs(inInches(answer.throat) - 5.2295)).toBeLessThan(0.00006);
    expect(Math.abs(inInches(answer.seat) - 9.266343)).toBeLessThan(1e-6);
    expect(Math.abs(inInches(answer.boardLength) - 161.951689)).toBeLessThan(1e-6);
    expect(Math.abs(inInches(answer.diagonal) - 161.95)).toBeLessThan(0.005);
    expect(Math.abs(inInches(answer.firstMark) - 6.2762)).toBeLessThan(0.00006);
  });

  test('deck, on a level pad', () => {
    const answer = answerOf(DECK);
    const expected = [
      [answer.notchDepth, 6.1186],
      [answer.throat, 5.1314],
      [answer.headerFace, 63.75],
      [answer.topBelowFinish, 8.529],
      [answer.plumbCut, 6.3142],
      [answer.headerDepthNeeded, 13.843],
      [answer.totalRise - answer.topBelowFinish, 44.1741],
    ] as const;
    for (const [mm, inches] of expected) expect(Math.abs(inInches(mm) - inches)).toBeLessThan(0.0006);
    expect(Math.abs(inInches(answer.headerContact) - 1.72)).toBeLessThan(0.005);
    expect(inInches(answer.stockLength)).toBeCloseTo(96, 9);
  });

  test('slab', () => {
    const answer = answerOf(SLAB);
    const expected = [
      [answer.firstRiserCut, 176.9, 0.05],
      [answer.drop, 17, 1e-9],
      [answer.notchDepth, 152.06, 0.005],
      [answer.throat, 137.9, 0.05],
      [answer.seat, 243.7, 0.05],
      [answer.stringerEnd, 3197, 1e-9],
      [answer.headerFace, 3197, 1e-9],
      [answer.topBelowFinish, 225.9, 0.05],
      [answer.topBelowSubfloor, 207.9, 0.05],
      [answer.plumbCut, 175.9, 0.05],
      [answer.boardLength, 4051.5, 0.05],
      [answer.diagonal, 4051.5, 0.05],
      [answer.firstMark, 159.81, 0.005],
    ] as const;
    for (const [mm, figure, off] of expected) expect(Math.abs(mm - figure)).toBeLessThan(off);
    expect(Math.abs((answer.headerContact as number) - 54)).toBeLessThan(0.5);
    expect(Math.abs(answer.headerDepthNeeded - 362)).toBeLessThan(0.5);
    expect(answer.stockLength).toBe(4200);
  });

  test('held back from the edge, the tips take the inset from throat, seat and plumb cut', () => {
    const plain = answerOf(LOFT);
    const held = of({ stringer: { tipInset: '1/4 in' } });
    expect(inInches(plain.throat - held.throat)).toBeCloseTo(0.25, 9);
    expect(inInches(held.gaugeLine - plain.gaugeLine)).toBeCloseTo(0.25, 9);
    expect(held.notchDepth).toBe(plain.notchDepth);
    expect(inInches(plain.seat - held.seat)).toBeCloseTo(0.25 / 0.602051, 4);
    expect(inInches(plain.plumbCut - held.plumbCut)).toBeCloseTo(0.25 / 0.798458, 4);
    expect(held.marks).toEqual(plain.marks);
  });
});

describe('no board can carry it', () => {
  test.each<[string, Changes, string]>([
    ['notches through the board', { stringer: { stockDepth: '6 in', kicker: undefined } }, 'stockDepth throat.none'],
    [
      'a board that ends above the floor',
      { survey: { lowerToAdd: '3 in' }, stringer: { stockDepth: '6 1/4 in', kicker: undefined } },
      'stockDepth seat.none',
    ],
    [
      'nothing left of the plumb cut',
      { survey: { rise: '110 in' }, steps: { risers: 7, run: '10 in' }, stringer: { stockDepth: '7 1/4 in' } },
      'stockDepth throat.none',
    ],
    [
      'a heel behind the top end',
      { survey: { rise: '15 in' }, steps: { risers: 2 }, stringer: { stockDepth: '12 in', kicker: undefined } },
      'stockDepth heel.behindEnd',
    ],
    ['tips off the board', { stringer: { tipInset: '11 1/4 in' } }, 'tipInset tipInset.pastBoard'],
    [
      'a hanger with the header right behind',
      { stringer: { top: 'header-behind-riser', hanger: '3/4 in' } },
      'hanger hanger.notWithHeader',
    ],
  ])('%s', (_, changes, fault) => {
    expect(faultsOf(changed(LOFT, changes))).toEqual([`stairs[0].stringer.${fault}`]);
  });

  test('a top tread that is too deep eats the plumb cut', () => {
    // The flight refuses such a tread before; the stringer must not lean on that.
    const { layout } = planOf(changed(LOFT, { stringer: { top: 'level-with-floor', hanger: undefined } }));
    const stringer = { ...layout.job.stringer, topTreadRun: inch(20) };
    const result = cutStringer(layout.flight, { ...layout.job, stringer }, layout.width);
    expect(result.ok ? [] : result.problems.map(({ place, code }) => `${place} ${code}`)).toEqual([
      'stairs[0].stringer.stockDepth plumbCut.none',
    ]);
  });

  test('a header right behind the riser with a hanger of nothing is accepted', () => {
    expect(faultsOf(changed(LOFT, { stringer: { top: 'header-behind-riser', hanger: '0 in' } }))).toEqual([]);
  });

  test('a throat of exactly nothing is refused: 3, 4, 5 and a board as deep as the notch', () => {
    // R 150, G 200, U 250: the notch is 120 mm deep, exactly.
    const triangle = (stockDepth: string) =>
      faultsOf(
        changed(SLAB, {
          survey: { rise: '2100 mm', lowerToAdd: '0 mm', upperToAdd: '0 mm' },
          steps: { risers: 14, run: '200 mm', treadThickness: '100 mm' },
          stringer: { stockDepth },
        }),
      );
    expect(triangle('120 mm')).toEqual(['stairs[0].stringer.stockDepth throat.none']);
    expect(triangle('120.001 mm')).toEqual([]);
  });
});

describe('a kicker at the toe', () => {
  test.each<[string, NonNullable<Changes['stringer']>['kicker'], string[]]>([
    ['as high as the first cut', { width: '3 1/2 in', height: '7.2 in' }, ['height kicker.tooHigh']],
    ['as wide as the seat', { width: '9 1/2 in', height: '1 1/2 in' }, ['width kicker.tooWide']],
    ['both', { width: '20 in', height: '20 in' }, ['height kicker.tooHigh', 'width kicker.tooWide']],
    ['just inside both', { width: '9 1/4 in', height: '7 3/32 in' }, []],
  ])('%s', (_, kicker, faults) => {
    expect(faultsOf(changed(LOFT, { stringer: { kicker } }))).toEqual(
      faults.map((fault) => `stairs[0].stringer.kicker.${fault}`),
    );
  });

  test('exactly as high as the first cut is too high', () => {
    const exact = {
      survey: { rise: '2600 mm', lowerToAdd: '0 mm', upperToAdd: '0 mm' },
      steps: { risers: 13, treadThickness: '25 mm' },
    };
    const faults = (height: string) =>
      faultsOf(changed(LOFT, { ...exact, stringer: { kicker: { width: '90 mm', height } } }));
    expect(faults('175 mm')).toEqual(['stairs[0].stringer.kicker.height kicker.tooHigh']);
    expect(faults('174.999999 mm')).toEqual([]);
  });

  test('it changes the outline by one corner and two, and no other number', () => {
    const { outline: without, findings: _a, ...plain } = of({ stringer: { kicker: undefined } });
    const { outline: notched, findings: _b, ...cut } = answerOf(LOFT);
    expect(cut).toEqual(plain);
    expect(notched).toHaveLength(without.length + 2);
  });

  test('beside a board that is refused it is not judged', () => {
    const faults = faultsOf(
      changed(LOFT, { steps: { treadThickness: '9 in' }, stringer: { kicker: { width: '50 in', height: '50 in' } } }),
    );
    expect(faults).toEqual(['stairs[0].steps.treadThickness toe.none']);
    const noSeat = faultsOf(changed(LOFT, { survey: { lowerToAdd: '3 in' }, stringer: { stockDepth: '6 1/4 in' } }));
    expect(noSeat).toEqual(['stairs[0].stringer.stockDepth seat.none']);
  });
});

test('whether there is a first cut is decided exactly', () => {
  const { heel } = planOf(LOFT).layout.stringer;
  expect(hasFirstCut(heel)).toBe(true);
  expect(hasFirstCut({ ...heel, firstRiserCutExact: { num: 0n, den: 1n } })).toBe(false);
});
