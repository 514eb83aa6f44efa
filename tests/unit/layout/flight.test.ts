import { describe, expect, test } from 'vitest';
import { layFlight, nosingLineHeight } from '../../../src/core/layout/flight';
import { fewestRisers } from '../../../src/core/layout/slope';
import { inch } from '../../../src/core/units/exact';
import {
  answerOf,
  bare,
  type Changes,
  changed,
  DECK,
  faultsOf,
  inInches,
  LOFT,
  planOf,
  SLAB,
  stairJobOf,
} from '../../fixtures/stairs';

describe('the rise', () => {
  test.each<[string, Changes, number]>([
    ['both finishes to come', {}, 105.5625],
    ['the upper floor is finished', { survey: { upperToAdd: '0 in' } }, 104.8125],
    ['the lower floor is finished', { survey: { lowerToAdd: '0 in' } }, 106.1875],
    ['a lower covering still to be stripped', { survey: { lowerToAdd: '-1/4 in' } }, 106.4375],
    ['an upper covering still to be stripped', { survey: { upperToAdd: '-1/4 in' } }, 104.5625],
    ['the floor falls away to the landing', { survey: { footBelowReading: '1 in' } }, 106.5625],
    ['the floor climbs to the landing', { survey: { footBelowReading: '-1 in' } }, 104.5625],
    ['unknown finishes count as nothing', { survey: { lowerToAdd: 'unknown', upperToAdd: 'unknown' } }, 105.4375],
  ])('%s', (_, changes, expected) => {
    expect(inInches(answerOf(changed(LOFT, changes)).totalRise)).toBeCloseTo(expected, 12);
  });

  test.each<[Changes, string]>([
    [{ survey: { rise: '0 in', lowerToAdd: '0 in', upperToAdd: '0 in' } }, 'nothing'],
    [{ survey: { rise: '5/8 in', upperToAdd: '0 in' } }, 'exactly used up by the floor to come'],
    [{ survey: { rise: '1/2 in', upperToAdd: '0 in' } }, 'less than the floor to come'],
    [{ survey: { footBelowReading: '-110 in' } }, 'all of it below the foot'],
  ])('%j is refused: %s', (changes) => {
    expect(faultsOf(changed(LOFT, changes))).toEqual(['stairs[0].survey.rise rise.notPositive']);
  });

  test('finished floors and treads, 0 to N, and the last is the upper floor exactly', () => {
    const { finishedTops, totalRise, risers } = answerOf(LOFT);
    expect(finishedTops).toHaveLength(risers + 1);
    expect([finishedTops[0], finishedTops.at(-1)]).toEqual([0, totalRise]);
  });
});

describe('the number of risers', () => {
  // Greatest riser of the rule pack: 7 3/4 in, IRC 2021 R311.7.5.1.
  test.each([
    ['108 1/2 in', 14],
    ['108 33/64 in', 15],
    ['2755.9 mm', 14],
    ['2755.900001 mm', 15],
    ['7 3/4 in', 2],
    ['3 in', 2],
    ['15 1/2 in', 2],
    ['15 33/64 in', 3],
    ['1550 in', 200],
  ])('%s left to the program: %d', (rise, count) => {
    const job = changed(bare('imperial', rise), {
      survey: { lowerToAdd: '0 in', upperToAdd: '0 in' },
      stringer: { stockDepth: '9 in' },
    });
    const read = stairJobOf(changed(job, { survey: { rise: '105 in' } }));
    const limits = { riserMax: inch(7.75), treadMin: inch(10), headroomMin: null };
    const flight = layFlight({ ...read, survey: { ...read.survey, rise: exactOf(rise) } }, limits);
    expect(flight.ok && flight.value.risers).toBe(count);
  });

  function exactOf(text: string) {
    const [figure, unit] = [text.replace(/ (in|mm)$/, ''), text.endsWith('mm') ? 'mm' : 'in'];
    if (unit === 'mm') return { num: BigInt(Math.round(Number(figure) * 1e6)), den: 1_000_000n };
    const [whole = '0', part = '0/1'] = figure.split(' ');
    const [top, bottom] = part.split('/').map(Number) as [number, number];
    return inch(Number(whole) + top / bottom);
  }

  test('more than two hundred is no flight', () => {
    expect(faultsOf(bare('imperial', '1550 1/64 in'))).toEqual(['stairs[0].steps.risers risers.tooMany']);
  });

  test.each([
    ['no pack', { rules: { pack: 'elsewhere' }, steps: { run: '10 in', risers: 'auto' } }],
    ['a limit of nothing', { rules: { local: [{ field: 'riser.max', value: '0 in' }] }, steps: { risers: 'auto' } }],
  ] as const)('left to the program with %s, it is refused', (_, changes) => {
    expect(faultsOf(changed(LOFT, changes))).toEqual(['stairs[0].steps.risers risers.noLimit']);
  });

  test('two make the least stair', () => {
    expect(fewestRisers(inch(1), inch(7.75))).toBe(2);
  });
});

describe('the run', () => {
  test('left out, it is the least that the rules allow', () => {
    expect(inInches(answerOf(changed(LOFT, { steps: { run: undefined } })).run)).toBeCloseTo(10, 12);
  });

  test('a local limit moves it', () => {
    const local = [{ field: 'tread.min', value: '9 in', note: 'county amendment' }];
    expect(inInches(answerOf(changed(LOFT, { steps: { run: undefined }, rules: { local } })).run)).toBeCloseTo(9, 12);
  });

  test.each<[string, Changes, string]>([
    ['no pack and no run', { rules: { pack: 'elsewhere' }, steps: { run: undefined } }, 'steps.run run.noLimit'],
    ['no run at all', { steps: { run: '0 in' } }, 'steps.run run.notPositive'],
    [
      'a least run of nothing',
      { rules: { local: [{ field: 'tread.min', value: '0 in' }] }, steps: { run: undefined } },
      'steps.run run.notPositive',
    ],
    ['a nosing of half the run', { steps: { nosing: '5 in' } }, 'steps.nosing nosing.tooDeep'],
    [
      'a riser board over a quarter of the run',
      { steps: { riserThickness: '2 33/64 in' } },
      'steps.riserThickness riserBoard.tooThick',
    ],
    [
      'a top tread deeper than the run',
      { stringer: { top: 'level-with-floor', hanger: undefined, topTreadRun: '10 1/64 in' } },
      'stringer.topTreadRun topTread.outside',
    ],
    [
      'a top tread of nothing',
      { stringer: { top: 'level-with-floor', hanger: undefined, topTreadRun: '0 in' } },
      'stringer.topTreadRun topTread.outside',
    ],
    [
      'a top tread on a hung stringer',
      { stringer: { topTreadRun: '3 1/2 in' } },
      'stringer.topTreadRun topTread.onlyLevel',
    ],
  ])('%s is refused', (_, changes, fault) => {
    expect(faultsOf(changed(LOFT, changes))).toEqual([`stairs[0].${fault}`]);
  });

  test.each<[string, Changes]>([
    ['a nosing just under half the run', { steps: { nosing: '4 63/64 in' } }],
    ['no nosing', { steps: { nosing: '0 in' } }],
    ['a riser board of a quarter of the run', { steps: { riserThickness: '2 1/2 in' } }],
    [
      'a top tread as deep as the run',
      { stringer: { top: 'level-with-floor', hanger: undefined, topTreadRun: '10 in' } },
    ],
  ])('%s is accepted', (_, changes) => {
    expect(faultsOf(changed(LOFT, changes))).toEqual([]);
  });

  test('several choices that leave no step are named together', () => {
    const faults = faultsOf(
      changed(LOFT, { steps: { nosing: '6 in', riserThickness: '3 in' }, stringer: { topTreadRun: '1 in' } }),
    );
    expect(faults).toHaveLength(3);
  });
});

describe('the pitch', () => {
  test.each([
    ['loft', LOFT, 12.52415, 37.017, 25.0804],
    ['deck', DECK, 12.92038, 35.642, 25.558],
    ['slab', SLAB, 312.463, 38.363, 632.857],
  ] as const)('%s, a worked example of our own', (_, job, stepLength, degrees, twoRAndG) => {
    const answer = answerOf(job);
    const unit = job.units === 'metric' ? 1 : 25.4;
    expect(Math.abs(answer.stepLength / unit - stepLength)).toBeLessThan(1e-3);
    expect(Math.abs(answer.pitchDegrees - degrees)).toBeLessThan(1e-3);
    expect(Math.abs(answer.twoRisePlusRun / unit - twoRAndG)).toBeLessThan(1e-3);
  });

  test('the line through the nosings passes through each of them', () => {
    const { flight } = planOf(LOFT).layout;
    for (let i = 1; i <= flight.risers; i += 1) {
      const height = nosingLineHeight(flight, (i - 1) * flight.run - flight.nosing);
      expect(height).toBeCloseTo(flight.finishedTops[i] as number, 9);
    }
  });
});
