/**
 * Boundary cases of codes other than the first, each judged by its own rule pack, and a printed table
 * of pitches. The code and its section stand in each name.
 */
import { beforeAll, describe, expect, test } from 'vitest';
import { PACK_LIST } from '../../src/packs/packList';
import { loadPack } from '../../src/packs/ruleBook';
import { answerOf, bare, type Changes, changed } from '../fixtures/stairs';

beforeAll(async () => {
  await Promise.all(PACK_LIST.map(({ id }) => loadPack(id)));
});

function judged(
  pack: string,
  profile: string | undefined,
  rise: string,
  changes: Changes,
  local: [string, string][] = [],
) {
  const units = rise.endsWith('mm') ? 'metric' : 'imperial';
  const rules = {
    pack,
    ...(profile === undefined ? {} : { profile }),
    local: local.map(([field, value]) => ({ field, value })),
  };
  return answerOf(
    changed(bare(units, rise), {
      ...changes,
      rules,
      survey: { lowerToAdd: '0 in', upperToAdd: '0 in', ...changes.survey },
      steps: { treadThickness: '1 in', ...changes.steps },
      stringer: {
        top: 'header-behind-riser',
        stockDepth: units === 'metric' ? '400 mm' : '14 in',
        ...changes.stringer,
      },
    }),
  );
}

const status = (answer: ReturnType<typeof judged>, field: string) =>
  answer.findings.find((each) => each.field === field)?.status;

const step = (riser: string, run: string, extra: Changes['steps'] = {}): [string, Changes] => {
  const [figure = '0', unit = 'mm'] = riser.split(' ');
  return [`${(Number(figure) * 12).toFixed(4)} ${unit}`, { steps: { risers: 12, run, ...extra } }];
};

describe('on a limit and past it', () => {
  test.each<[string, string, string | undefined, string, [string, Changes], string]>([
    [
      'Approved Document K, Table 1.1: 220 by 220 is 45 degrees',
      'adk-2013',
      'private',
      'pitch.max',
      step('220 mm', '220 mm'),
      'breaks',
    ],
    [
      'Approved Document K, Table 1.1: though both are allowed',
      'adk-2013',
      'private',
      'riser.max',
      step('220 mm', '220 mm'),
      'meets',
    ],
    [
      'Approved Document K, Table 1.1: 220 needs a going of 244.34 for 42 degrees',
      'adk-2013',
      'private',
      'pitch.max',
      step('220 mm', '244.34 mm'),
      'meets',
    ],
    [
      'Approved Document K, Table 1.1: 244.33 is not enough',
      'adk-2013',
      'private',
      'pitch.max',
      step('220 mm', '244.33 mm'),
      'breaks',
    ],
    [
      '29 CFR 1910.25(c): 9 1/2 by 9 1/2 is 45 degrees',
      'osha-1910.25',
      undefined,
      'pitch.max',
      step('9.5 in', '9.5 in'),
      'meets',
    ],
    [
      '29 CFR 1910.25(c): 9 1/2 by 7.97 is over 50 degrees',
      'osha-1910.25',
      undefined,
      'pitch.max',
      step('9.5 in', '7.97 in'),
      'breaks',
    ],
    [
      '29 CFR 1910.25(c): 6 by 11 is under 30 degrees',
      'osha-1910.25',
      undefined,
      'pitch.min',
      step('6 in', '11 in'),
      'breaks',
    ],
    ['29 CFR 1910.25(c): 6.5 by 11 is not', 'osha-1910.25', undefined, 'pitch.min', step('6.5 in', '11 in'), 'meets'],
    [
      '29 CFR 1910.25(b)(3): alike, without a number',
      'osha-1910.25',
      undefined,
      'variation.riser.max',
      step('8 in', '10 in'),
      'meets',
    ],
    [
      'NBC 9.8.4.2.(2): a nosing of 25',
      'nbc-2020',
      'private',
      'nosing.max',
      step('200 mm', '255 mm', { nosing: '25 mm' }),
      'meets',
    ],
    [
      'NBC 9.8.4.2.(2): a nosing of 26',
      'nbc-2020',
      'private',
      'nosing.max',
      step('200 mm', '255 mm', { nosing: '26 mm' }),
      'breaks',
    ],
    [
      'NBC 9.8.4.2.(2): the same as depth over run',
      'nbc-2020',
      'private',
      'tread.overRun.max',
      step('200 mm', '255 mm', { nosing: '26 mm' }),
      'breaks',
    ],
    ['NBC 2010: a run of 210', 'nbc-2010', 'private', 'tread.min', step('200 mm', '210 mm'), 'meets'],
    ['NBC 2015: a run of 210 no longer', 'nbc-2015', 'private', 'tread.min', step('200 mm', '210 mm'), 'breaks'],
    ['NBC 9.8.4.1, public: a riser of 181', 'nbc-2020', 'public', 'riser.max', step('181 mm', '280 mm'), 'breaks'],
    ['NBC 9.8.4.1, private: a riser of 181', 'nbc-2020', 'private', 'riser.max', step('181 mm', '280 mm'), 'meets'],
    ['IBC 1011.5.2, general: 7 by 11', 'ibc-2021', 'general', 'riser.max', step('7 in', '11 in'), 'meets'],
    ['IBC 1011.5.2, general: 7.01', 'ibc-2021', 'general', 'riser.max', step('7.01 in', '11 in'), 'breaks'],
    ['IBC 1011.5.2, in a dwelling: 7.01', 'ibc-2021', 'dwelling', 'riser.max', step('7.01 in', '11 in'), 'meets'],
    ['IBC 1011.5.2, general: a riser of 3.99', 'ibc-2021', 'general', 'riser.min', step('3.99 in', '11 in'), 'breaks'],
    [
      'ADA 504.3: open risers',
      'ada-2010',
      undefined,
      'openRiser.allowed',
      step('7 in', '11 in', { riserThickness: '0 in' }),
      'breaks',
    ],
    ['ADA 504.3: closed ones', 'ada-2010', undefined, 'openRiser.allowed', step('7 in', '11 in'), 'meets'],
    ['NCC 11.2.2: 190 by 240 is 620', 'ncc-2022', undefined, 'twoRPlusG.max', step('190 mm', '240 mm'), 'meets'],
    ['NCC 11.2.2: 190 by 321 is 701', 'ncc-2022', undefined, 'twoRPlusG.max', step('190 mm', '321 mm'), 'breaks'],
    ['AS 1657: 540 is enough there', 'as-1657', undefined, 'twoRPlusG.min', step('150 mm', '240 mm'), 'meets'],
    ['NCC 11.2.2: and not here', 'ncc-2022', undefined, 'twoRPlusG.min', step('150 mm', '240 mm'), 'breaks'],
    [
      'D1/AS1 Table 6, main private: 190 by 280',
      'nz-d1as1',
      'mainPrivate',
      'pitch.max',
      step('190 mm', '280 mm'),
      'meets',
    ],
    [
      'D1/AS1 Table 6, main private: 220 by 280',
      'nz-d1as1',
      'mainPrivate',
      'pitch.max',
      step('220 mm', '280 mm'),
      'breaks',
    ],
    [
      'D1/AS1 Table 6, minor private: 220 by 220',
      'nz-d1as1',
      'minorPrivate',
      'pitch.max',
      step('220 mm', '220 mm'),
      'meets',
    ],
    ['DIN 18065: 200 by 230 is 630', 'din-18065', 'private', 'twoRPlusG.max', step('200 mm', '230 mm'), 'meets'],
    ['DIN 18065: 200 by 251 is 651', 'din-18065', 'private', 'twoRPlusG.max', step('200 mm', '251 mm'), 'breaks'],
  ])('%s', (_, pack, profile, field, [rise, changes], expected) => {
    expect(status(judged(pack, profile, rise, changes), field)).toBe(expected);
  });
});

describe('height of a flight, by edition: IRC R311.7.3, IBC 1011.8, an amendment of 148 1/2', () => {
  test.each<[string, string, [string, string][], string]>([
    ['irc-2015', '147 in', [], 'meets'],
    ['irc-2015', '147.01 in', [], 'breaks'],
    ['irc-2018', '151 in', [], 'meets'],
    ['irc-2018', '148.51 in', [['flight.maxVerticalRise', '148 1/2 in']], 'breaks'],
    ['irc-2018', '148 1/2 in', [['flight.maxVerticalRise', '148 1/2 in']], 'meets'],
    ['irc-2024', '151 in', [], 'meets'],
    ['irc-2024', '151.01 in', [], 'breaks'],
    ['ibc-2021', '144 in', [], 'meets'],
    ['ibc-2021', '144.01 in', [], 'breaks'],
    ['nbc-2020', '3700 mm', [], 'meets'],
    ['nbc-2020', '3700.01 mm', [], 'breaks'],
  ])('%s, %s %j: %s', (pack, rise, local, expected) => {
    const risers = rise.endsWith('mm') ? 19 : 20;
    const answer = judged(pack, undefined, rise, { steps: { risers, run: '11 in' } }, local);
    expect(status(answer, 'flight.maxVerticalRise')).toBe(expected);
  });
});

describe('what starts on a figure and what starts above it', () => {
  test.each<[string, string, string, string, number, string]>([
    ['Approved Document K 1.41: more than 600', 'adk-2013', 'guard.requiredAboveDrop', '600 mm', 4, 'meets'],
    ['Approved Document K 1.41: more than 600', 'adk-2013', 'guard.requiredAboveDrop', '600.1 mm', 4, 'not-checked'],
    ['NCC 11.3.3: 1 m or more', 'ncc-2022', 'guard.requiredAboveDrop', '999.9 mm', 6, 'meets'],
    ['NCC 11.3.3: 1 m or more', 'ncc-2022', 'guard.requiredAboveDrop', '1000 mm', 6, 'not-checked'],
    ['NCC 11.3.5: not under 1 m', 'ncc-2022', 'handrail.requiredAboveRise', '999.9 mm', 6, 'meets'],
    ['NCC 11.3.5: not under 1 m', 'ncc-2022', 'handrail.requiredAboveRise', '1000 mm', 6, 'not-checked'],
    ['state law: more than 1 m', 'din-18065', 'guard.requiredAboveDrop', '1000 mm', 6, 'meets'],
    ['29 CFR 1926.1052(c)(1): over 30 in', 'osha-1926.1052', 'handrail.requiredAboveRise', '30 in', 4, 'meets'],
    ['29 CFR 1926.1052(c)(1): over 30 in', 'osha-1926.1052', 'handrail.requiredAboveRise', '30.1 in', 4, 'not-checked'],
    ['NBC 9.8.7.1.(3): from three risers', 'nbc-2020', 'handrail.requiredFromRisers', '570 mm', 3, 'not-checked'],
    ['NBC 9.8.7.1.(3): from three risers', 'nbc-2020', 'handrail.requiredFromRisers', '380 mm', 2, 'meets'],
  ])('%s: %s %s at %s', (_, pack, field, rise, risers, expected) => {
    const stockDepth = rise.endsWith('mm') ? '200 mm' : '8 in';
    const changes = { steps: { risers, run: rise.endsWith('mm') ? '255 mm' : '10 in' }, stringer: { stockDepth } };
    expect(status(judged(pack, undefined, rise, changes), field)).toBe(expected);
  });
});

describe('what the marks make of it', () => {
  test.each<[string, string, string | undefined, string, string, string]>([
    ['NCC 11.2.2(3): neighbours 5 mm apart at most', 'ncc-2022', undefined, 'asCut.adjacent', '9 mm', 'breaks'],
    ['NCC 11.2.2(3): neighbours 5 mm apart at most', 'ncc-2022', undefined, 'asCut.adjacent', '0.5 mm', 'meets'],
    ['DIN 18065, 7: 5 mm off what was planned', 'din-18065', 'private', 'asCut.nominal', '0.5 mm', 'meets'],
    [
      'Approved Document K 1.3: alike, without a number',
      'adk-2013',
      'private',
      'asCut.spread',
      '0.5 mm',
      'not-checked',
    ],
  ])('%s', (_, pack, profile, field, markStep, expected) => {
    const answer = judged(pack, profile, '2604.9 mm', { markStep, steps: { risers: 14, run: '250 mm' } });
    const finding = answer.findings.find((each) => each.field === field);
    expect(finding).toMatchObject({ kind: 'build', status: expected, unit: 'mm' });
    expect(finding?.actual).toBeGreaterThan(0);
  });

  test('six millimetres between neighbours breaks though the spread is under ten', () => {
    // Marks on a coarse step: what comes out is held against the pack's two limits.
    const answer = judged('ncc-2022', undefined, '2604.9 mm', {
      markStep: '9 mm',
      steps: { risers: 14, run: '250 mm' },
    });
    const of = (field: string) => answer.findings.find((each) => each.field === field);
    const neighbours = of('asCut.adjacent')?.actual ?? 0;
    const spread = of('asCut.spread')?.actual ?? 0;
    expect(neighbours).toBeGreaterThan(5);
    expect(spread).toBeLessThan(10);
    expect([of('asCut.adjacent')?.status, of('asCut.spread')?.status]).toEqual(['breaks', 'meets']);
  });
});

test('what a code calls usual is advice, and no rule', () => {
  const answer = judged('adk-2013', 'private', '2400 mm', { steps: { risers: 12, run: '301 mm' } });
  const of = (field: string) => answer.findings.find((each) => each.field === field);
  expect(of('twoRPlusG.max')).toMatchObject({ kind: 'taste', status: 'breaks', limit: 700 });
  expect(of('twoRPlusG.min')).toMatchObject({ kind: 'taste', status: 'meets' });
  expect(of('tread.max')).toMatchObject({ kind: 'rule', status: 'breaks' });
});

/** Table D-1 as Washington State prints it, WAC 296-24-74010: rise and run in inches, angle in degrees and minutes. */
describe('a printed table of pitches', () => {
  test.each([
    [30, 35, 6.5, 11],
    [32, 8, 6.75, 10.75],
    [33, 41, 7, 10.5],
    [35, 16, 7.25, 10.25],
    [36, 52, 7.5, 10],
    [38, 29, 7.75, 9.75],
    // Printed as 40° 08′; the printed rise and run come to 40° 06′.
    [40, 6, 8, 9.5],
    [41, 44, 8.25, 9.25],
    [43, 22, 8.5, 9],
    [45, 0, 8.75, 8.75],
    [46, 38, 9, 8.5],
    [48, 16, 9.25, 8.25],
    [49, 54, 9.5, 8],
  ])('%d° %d′ is %d over %d', (degrees, minutes, rise, run) => {
    const answer = judged('osha-1910.25', undefined, ...step(`${rise} in`, `${run} in`));
    expect(Math.abs(answer.pitchDegrees * 60 - (degrees * 60 + minutes))).toBeLessThan(0.6);
    expect([status(answer, 'pitch.min'), status(answer, 'pitch.max')]).toEqual(['meets', 'meets']);
    const [low, high] = [`${degrees - 0.02} deg`, `${degrees + minutes / 60 - 0.02}`.slice(0, 9)];
    expect(
      status(judged('osha-1910.25', undefined, ...step(`${rise} in`, `${run} in`), [['pitch.max', high]]), 'pitch.max'),
    ).toBe('breaks');
    expect(
      status(judged('osha-1910.25', undefined, ...step(`${rise} in`, `${run} in`), [['pitch.min', low]]), 'pitch.min'),
    ).toBe('meets');
  });
});
