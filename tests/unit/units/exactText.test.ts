import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compare, type Exact, fraction, inch, inches } from '../../../src/core/units/exact';
import { exactText } from '../../../src/core/units/exactText';
import { parseLength } from '../../../src/core/units/length';

const back = (text: string): Exact => {
  const reading = parseLength(text);
  if (!reading.ok) throw new Error(`${text}: ${reading.fault}`);
  return reading.length;
};

describe('a length that the program found, as text', () => {
  test.each([
    [inch(10.25), 'imperial', '10 1/4 in'],
    [inch(10), 'imperial', '10 in'],
    [inch(0.75), 'imperial', '3/4 in'],
    [inch(0), 'imperial', '0 in'],
    [fraction(255n, 1n), 'imperial', '255 mm'],
    [inch(10.25), 'metric', '260.35 mm'],
    [inches(fraction(31n, 3n)), 'metric', '10 1/3 in'],
    [inches(fraction(1n, 3n)), 'imperial', '1/3 in'],
  ] as const)('case %#', (length, units, expected) => {
    expect(exactText(length, units)).toBe(expected);
  });

  test('reads back as the very same fraction, in either system', () => {
    fc.assert(
      fc.property(fc.nat(400_000), fc.nat(400_000), fc.constantFrom('imperial', 'metric'), (a, b, units) => {
        // A typed inch reading and a typed decimal of millimetres, added up.
        const sixtyFourths = inches(fraction(BigInt(a), 64n));
        const sum = { num: sixtyFourths.num * 1000n + BigInt(b) * sixtyFourths.den, den: sixtyFourths.den * 1000n };
        for (const length of [sum, inches(fraction(BigInt(a), 48n))]) {
          expect(compare(back(exactText(length, units)), length)).toBe(0);
        }
      }),
    );
  });
});
