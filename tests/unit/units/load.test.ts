import { describe, expect, test } from 'vitest';
import { parseLoad, poundsToNewtons, psfToKpa, psiToMpa, withLoadUnit } from '../../../src/core/units/load';

describe('units of force', () => {
  // NIST SP 811 (2008), appendix B: pound-force, psi, and pound-force per square foot in SI, to seven digits.
  test('are those of NIST SP 811', () => {
    expect(poundsToNewtons(1)).toBeCloseTo(4.448222, 6);
    expect(psiToMpa(1)).toBeCloseTo(0.006894757, 9);
    expect(psfToKpa(1)).toBeCloseTo(0.04788026, 8);
  });

  // Ontario sets 1.9 and 4.8 kPa where US codes set 40 and 100 psf: the same figures, rounded each in its unit.
  test('turn 40 and 100 psf into what Ontario’s code asks for', () => {
    expect(psfToKpa(40)).toBeCloseTo(1.9, 1);
    expect(psfToKpa(100)).toBeCloseTo(4.8, 1);
  });
});

describe('a load is text with its unit', () => {
  test.each([
    ['40 psf', 'area', psfToKpa(40)],
    ['40psf', 'area', psfToKpa(40)],
    [' 1.9 kPa ', 'area', 1.9],
    ['1.9 kN/m2', 'area', 1.9],
    ['1.9 kN/m²', 'area', 1.9],
    ['300 lbf', 'spot', poundsToNewtons(300)],
    ['300 lb', 'spot', poundsToNewtons(300)],
    ['300 LBS', 'spot', poundsToNewtons(300)],
    ['1.3 kN', 'spot', 1300],
    ['.5 kN', 'spot', 500],
    ['900 N', 'spot', 900],
  ] as const)('%s', (text, kind, load) => {
    expect(parseLoad(text, kind)).toEqual({ ok: true, load });
  });

  test.each([
    ['', 'area', 'load.empty'],
    ['   ', 'spot', 'load.empty'],
    ['40', 'area', 'load.noUnit'],
    ['1,9 kPa', 'area', 'length.decimalComma'],
    ['40 lbf', 'area', 'load.unread'],
    ['40 psf', 'spot', 'load.unread'],
    ['-40 psf', 'area', 'load.unread'],
    ['1e3 psf', 'area', 'load.unread'],
    ['NaN psf', 'area', 'load.unread'],
    ['40 psf 3', 'area', 'load.unread'],
    [`${'4'.repeat(40)} psf`, 'area', 'load.unread'],
    ['0 psf', 'area', 'load.nothing'],
    ['2100 psf', 'area', 'load.tooMuch'],
    ['100.1 kN', 'spot', 'load.tooMuch'],
  ] as const)('"%s" is refused', (text, kind, fault) => {
    expect(parseLoad(text, kind)).toEqual({ ok: false, fault });
  });

  test('a dead load may be nothing', () => {
    expect(parseLoad('0 psf', 'area', true)).toEqual({ ok: true, load: 0 });
  });

  test('a bare number gets the unit of the job, anything else stays as it is', () => {
    expect(withLoadUnit('40', 'area', 'imperial')).toBe('40 psf');
    expect(withLoadUnit(' 300 ', 'spot', 'imperial')).toBe('300 lbf');
    expect(withLoadUnit('1.9', 'area', 'metric')).toBe('1.9 kPa');
    expect(withLoadUnit('1.3', 'spot', 'metric')).toBe('1.3 kN');
    expect(withLoadUnit('40 psf', 'area', 'metric')).toBe('40 psf');
    expect(withLoadUnit('forty', 'area', 'metric')).toBe('forty');
  });
});
