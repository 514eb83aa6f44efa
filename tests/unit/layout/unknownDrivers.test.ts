import { describe, expect, test } from 'vitest';
import { unknownDrivers } from '../../../src/core/layout/unknownDrivers';
import { type Changes, changed, inInches, LOFT, planOf } from '../../fixtures/stairs';

const drivers = (changes: Changes) =>
  unknownDrivers(planOf(changed(LOFT, changes)).layout).map(({ surface, firstRiser, lastRiser }) => [
    surface,
    Number(inInches(firstRiser).toFixed(6)),
    Number(inInches(lastRiser).toFixed(6)),
  ]);

describe('which unknown moves riser 1 most', () => {
  test('none where everything is known', () => {
    expect(drivers({})).toEqual([]);
  });

  // Usual finishes go from nothing to 1 in; a floor at the head never touches riser 1.
  test('the lower floor before the upper one', () => {
    expect(drivers({ survey: { upperToAdd: 'unknown', lowerToAdd: 'unknown' } })).toEqual([
      ['lower', 1, 0],
      ['upper', 0, 1],
    ]);
  });

  test('a floor laid before the stair moves the last riser, and the treads move both', () => {
    const both = {
      survey: { lowerToAdd: 'unknown', lowerLaid: 'before-stairs' },
      steps: { treadThickness: 'unknown' },
    };
    expect(drivers(both as Changes)).toEqual([
      ['tread', 1, 1],
      ['lower', 0, 1],
    ]);
  });

  test('equal ones by the last riser', () => {
    const all = { survey: { lowerToAdd: 'unknown', upperToAdd: 'unknown' }, steps: { treadThickness: 'unknown' } };
    expect(drivers(all as Changes).map(([surface]) => surface)).toEqual(['tread', 'lower', 'upper']);
  });
});
