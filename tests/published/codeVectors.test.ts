/**
 * Arithmetic that a code decides for a straight flight, and its boundary cases. Limits: IRC 2021,
 * R311.7 and R312, as held in the rule pack; the quotients follow from them by division.
 */
import { describe, expect, test } from 'vitest';
import { answerOf, bare, type Changes, changed, inInches } from '../fixtures/stairs';

function flight(rise: string, changes: Changes = {}) {
  const units = rise.endsWith('mm') ? 'metric' : 'imperial';
  return answerOf(
    changed(bare(units, rise), {
      ...changes,
      survey: { lowerToAdd: '0 in', upperToAdd: '0 in', ...changes.survey },
      steps: { treadThickness: '1 in', ...changes.steps },
      stringer: { top: 'header-behind-riser', ...changes.stringer },
    }),
  );
}

const status = (answer: ReturnType<typeof flight>, field: string) =>
  answer.findings.find((each) => each.field === field)?.status;

describe('fewest risers, IRC 2021 R311.7.5.1 (7 3/4 in) and R311.7.3 (151 in)', () => {
  test.each([
    [94, 13, 7.2308, 120, 35.87, 'meets'],
    [100.5, 13, 7.7308, 120, 37.71, 'meets'],
    [105, 14, 7.5, 130, 36.87, 'meets'],
    [106.5, 14, 7.6071, 130, 37.26, 'meets'],
    [108, 14, 7.7143, 130, 37.65, 'meets'],
    [109.125, 15, 7.275, 140, 36.04, 'meets'],
    [120.375, 16, 7.5234, 150, 36.96, 'meets'],
    [151, 20, 7.55, 190, 37.05, 'meets'],
    [151.125, 20, 7.5563, 190, 37.08, 'breaks'],
  ])('%d in: %d risers', (rise, risers, unitRise, run, degrees, oneFlight) => {
    const answer = flight(`${rise} in`);
    expect(answer.risers).toBe(risers);
    expect(Math.abs(inInches(answer.unitRise) - unitRise)).toBeLessThanOrEqual(0.00005 + 1e-9);
    expect(inInches(answer.totalRun)).toBeCloseTo(run, 9);
    expect(Math.abs(answer.pitchDegrees - degrees)).toBeLessThanOrEqual(0.005 + 1e-9);
    expect(status(answer, 'flight.maxVerticalRise')).toBe(oneFlight);
    expect(status(answer, 'riser.max')).toBe('meets');
  });
});

describe('fewest risers of other codes, their limits given as local rules', () => {
  test.each([
    ['Approved Document K (2013), private stair: 220 mm', '220 mm', 220, 2600, 12, 216.667, 653.33, 44.56],
    ['Approved Document K (2013), private stair: 220 mm', '220 mm', 220, 2700, 13, 207.692, 635.38, 43.35],
    ['Approved Document K (2013), private stair: 220 mm', '220 mm', 220, 2750, 13, 211.538, 643.08, 43.88],
    ['Approved Document K (2013), private stair: 220 mm', '220 mm', 220, 3000, 14, 214.286, 648.57, 44.25],
    ['NCC 2022, Housing Provisions 11.2: 190 mm', '190 mm', 240, 2600, 14, 185.714, 611.43, 37.73],
    ['NCC 2022, Housing Provisions 11.2: 190 mm', '190 mm', 240, 2700, 15, 180, 600, 36.87],
    ['NCC 2022, Housing Provisions 11.2: 190 mm', '190 mm', 240, 2750, 15, 183.333, 606.67, 37.38],
    ['NCC 2022, Housing Provisions 11.2: 190 mm', '190 mm', 240, 3000, 16, 187.5, 615, 38],
    ['NBC 2020, 9.8, private stair: 200 mm', '200 mm', 255, 2600, 13, 200, 655, 38.11],
    ['NBC 2020, 9.8, private stair: 200 mm', '200 mm', 255, 2700, 14, 192.857, 640.71, 37.1],
    ['NBC 2020, 9.8, private stair: 200 mm', '200 mm', 255, 2750, 14, 196.429, 647.86, 37.61],
    ['NBC 2020, 9.8, private stair: 200 mm', '200 mm', 255, 3000, 15, 200, 655, 38.11],
    ['DIN 18065, dwelling: 200 mm', '200 mm', 230, 2600, 13, 200, 630, 41.01],
    ['DIN 18065, dwelling: 200 mm', '200 mm', 230, 2700, 14, 192.857, 615.71, 39.98],
    ['DIN 18065, dwelling: 200 mm', '200 mm', 230, 2750, 14, 196.429, 622.86, 40.5],
    ['DIN 18065, dwelling: 200 mm', '200 mm', 230, 3000, 15, 200, 630, 41.01],
  ])('%s (%s, run %d), %d mm: %d risers', (_, value, run, rise, risers, unitRise, twoRAndG, degrees) => {
    const answer = flight(`${rise} mm`, {
      rules: { local: [{ field: 'riser.max', value }] },
      steps: { run: `${run} mm` },
    });
    expect(answer.risers).toBe(risers);
    expect(Math.abs(answer.unitRise - unitRise)).toBeLessThanOrEqual(0.0005 + 1e-9);
    expect(Math.abs(answer.twoRisePlusRun - twoRAndG)).toBeLessThanOrEqual(0.005 + 1e-9);
    expect(Math.abs(answer.pitchDegrees - degrees)).toBeLessThanOrEqual(0.005 + 1e-9);
  });
});

describe('corners of the limits: rise, run, twice the rise and the run, pitch', () => {
  test.each([
    ['IRC 2021', '7.75 in', '10 in', 25.5, 'in', 37.78],
    ['IBC 2021', '7 in', '11 in', 25, 'in', 32.47],
    ['IRC as some places amend it', '8.25 in', '9 in', 25.5, 'in', 42.51],
    ['29 CFR 1910.25', '9.5 in', '9.5 in', 28.5, 'in', 45],
    ['Approved Document K, private', '220 mm', '220 mm', 660, 'mm', 45],
    ['NCC 2022', '190 mm', '240 mm', 620, 'mm', 38.37],
    ['NBC 2020, private', '200 mm', '255 mm', 655, 'mm', 38.11],
    ['NBC 2010, private', '200 mm', '210 mm', 610, 'mm', 43.6],
    ['DIN 18065, dwelling', '200 mm', '230 mm', 630, 'mm', 41.01],
    ['NZ D1/AS1, main private', '190 mm', '280 mm', 660, 'mm', 34.16],
  ])('%s: %s by %s', (_, rise, run, twoRAndG, unit, degrees) => {
    const [figure = '0', name = 'in'] = rise.split(' ');
    const answer = flight(`${Number(figure) * 12} ${name}`, { steps: { risers: 12, run } });
    expect(answer.twoRisePlusRun / (unit === 'in' ? 25.4 : 1)).toBeCloseTo(twoRAndG, 9);
    expect(Math.abs(answer.pitchDegrees - degrees)).toBeLessThanOrEqual(0.005 + 1e-9);
  });
});

describe('boundary cases of IRC 2021', () => {
  const fourteen = (riser: number) => `${(riser * 14).toFixed(4)} in`;

  test.each<[string, string, string, Changes, string]>([
    ['R311.7.5.1: a riser of 7.75', 'riser.max', fourteen(7.75), { steps: { risers: 14 } }, 'meets'],
    ['R311.7.5.1: a riser of 7.7501', 'riser.max', fourteen(7.7501), { steps: { risers: 14 } }, 'breaks'],
    ['R311.7.5.2: a tread of 10', 'tread.min', '105 in', { steps: { run: '10 in' } }, 'meets'],
    ['R311.7.5.2: a tread of 9.99', 'tread.min', '105 in', { steps: { run: '9.99 in' } }, 'breaks'],
    [
      'R311.7.5.3: no nosing on a tread of 11',
      'nosing.min',
      '105 in',
      { steps: { run: '11 in', nosing: '0 in' } },
      'meets',
    ],
    [
      'R311.7.5.3: no nosing on a tread of 10.99',
      'nosing.min',
      '105 in',
      { steps: { run: '10.99 in', nosing: '0 in' } },
      'breaks',
    ],
    ['R311.7.5.3: a nosing of 3/4', 'nosing.min', '105 in', { steps: { nosing: '3/4 in' } }, 'meets'],
    ['R311.7.5.3: a nosing of 1 1/4', 'nosing.max', '105 in', { steps: { nosing: '1 1/4 in' } }, 'meets'],
    ['R311.7.5.3: a nosing of 1 17/64', 'nosing.max', '105 in', { steps: { nosing: '1 17/64 in' } }, 'breaks'],
    [
      'R311.7.8: three risers need no handrail',
      'handrail.requiredFromRisers',
      '22 in',
      { steps: { risers: 3 } },
      'meets',
    ],
    [
      'R311.7.8: four risers need one, which nobody has shown yet',
      'handrail.requiredFromRisers',
      '30 in',
      { steps: { risers: 4 } },
      'not-checked',
    ],
    ['R312.1.1: a drop of 30 needs no guard', 'guard.requiredAboveDrop', '30 in', { steps: { risers: 4 } }, 'meets'],
    [
      'R312.1.1: a drop of 30.01 needs one, which nobody has shown yet',
      'guard.requiredAboveDrop',
      '30.01 in',
      { steps: { risers: 4 } },
      'not-checked',
    ],
    ['R311.7.3: a flight of 151', 'flight.maxVerticalRise', '151 in', {}, 'meets'],
    ['R311.7.3: a flight of 151.01', 'flight.maxVerticalRise', '151.01 in', {}, 'breaks'],
    ['R311.7.1: 36 in between walls', 'width.min', '105 in', { survey: { widthFraming: '37 in' } }, 'meets'],
    ['R311.7.1: 35.99 in between walls', 'width.min', '105 in', { survey: { widthFraming: '36.99 in' } }, 'breaks'],
    // 14 risers of 7 1/2 in: the opening between treads is 7 1/2 less the tread.
    [
      'R311.7.5.1: an opening of 4 lets the sphere through',
      'openRiser.maxSphere',
      '105 in',
      { steps: { risers: 14, riserThickness: '0 in', treadThickness: '3 1/2 in' } },
      'breaks',
    ],
    [
      'R311.7.5.1: an opening of 3.99 does not',
      'openRiser.maxSphere',
      '105 in',
      { steps: { risers: 14, riserThickness: '0 in', treadThickness: '3.51 in' } },
      'meets',
    ],
    [
      'R311.7.5.1: openings that end 30 in or less above the floor are free',
      'openRiser.maxSphere',
      '31 in',
      { steps: { risers: 4, riserThickness: '0 in' } },
      'meets',
    ],
    [
      'R311.7.5.1: one that ends higher is not',
      'openRiser.maxSphere',
      '45 in',
      { steps: { risers: 6, riserThickness: '0 in' } },
      'breaks',
    ],
  ])('%s', (_, field, rise, changes, expected) => {
    expect(status(flight(rise, changes), field)).toBe(expected);
  });

  test.each([
    [80, 'meets'],
    [79.99, 'breaks'],
  ])('R311.7.2: a headroom of %d in %s', (wanted, expected) => {
    // R 7 1/2, G 10, nosing 1, header at 130 3/4: an opening whose edge leaves exactly that much.
    const edge = ((105 - 12 - wanted - 7.5) * 10) / 7.5 - 1;
    const opening = 130.75 - edge;
    const answer = flight('105 in', {
      survey: { floorDepth: '12 in', headerLining: '0 in', openingFraming: `${opening.toFixed(6)} in` },
      steps: { risers: 14, nosing: '1 in' },
    });
    // The edge that gives 80 in is 2/3 in behind a whole inch: rounded up to a millionth it still does.
    expect(Math.abs(inInches(answer.headroom) - wanted)).toBeLessThan(1e-6);
    expect(status(answer, 'headroom.min')).toBe(expected);
  });
});
