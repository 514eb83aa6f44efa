import { describe, expect, test } from 'vitest';
import { answerLine, carrySum, carryValue, carryWhence, printedFigure, shareText } from '../../../src/text/carryText';
import { speakerFor } from '../../../src/text/say';
import { changed, DECK, LOFT, SLAB } from '../../fixtures/stairs';
import { answerTo, BOOK, carryOf, KNOWN } from '../carry/benchStair';

const say = speakerFor('us');

/**
 * Works a printed sum out as a reader with a pocket calculator would: from the figures that stand there and nothing
 * else. `a + b`, `−`, `×`, `÷`, brackets, `x²`, `x³`, `cos 37.0°`, `greatest of (a, b)`.
 */
function workedOut(text: string): number {
  const signs = [...text.matchAll(/greatest of|cos|[\d.]+(?:e[+-]?\d+)?|[-+−×÷(),²³°]/g)].map(([sign]) => sign);
  let at = 0;
  const next = () => signs[at++] ?? '';
  const sum = (): number => {
    let total = product();
    while (signs[at] === '+' || signs[at] === '−') total += next() === '+' ? product() : -product();
    return total;
  };
  const product = (): number => {
    let total = power();
    while (signs[at] === '×' || signs[at] === '÷') total = next() === '×' ? total * power() : total / power();
    return total;
  };
  const power = (): number => {
    const base = single();
    if (signs[at] === '²' || signs[at] === '³') return base ** (next() === '²' ? 2 : 3);
    return base;
  };
  const single = (): number => {
    const sign = next();
    if (sign === '(') {
      const inside = sum();
      expect(next()).toBe(')');
      return inside;
    }
    if (sign === 'greatest of') {
      expect(next()).toBe('(');
      const first = sum();
      expect(next()).toBe(',');
      const second = sum();
      expect(next()).toBe(')');
      return Math.max(first, second);
    }
    if (sign === 'cos') {
      const angle = Number(next());
      expect(next()).toBe('°');
      return Math.cos((angle * Math.PI) / 180);
    }
    return Number(sign);
  };
  const total = sum();
  expect(at).toBe(signs.length);
  return total;
}

test('the calculator of this test can calculate', () => {
  expect(workedOut('3 × greatest of (2, 5 − 1) ÷ (2 × 1.5)')).toBe(4);
  expect(workedOut('2 + 3² × 2³ ÷ 4')).toBe(20);
  expect(workedOut('1 ÷ cos 60°')).toBeCloseTo(2, 12);
});

describe('every sum of the working comes to what is printed beside it', () => {
  test.each([
    ['imperial', LOFT, KNOWN],
    ['imperial', DECK, { ...KNOWN, service: 'wet' as const }],
    ['metric', SLAB, { ...KNOWN, species: 'hem-fir', live: '1.9 kPa', point: '1.3 kN' }],
    ['imperial', changed(LOFT, { survey: { fallAlong: '1 in', fallAlongOver: '100 in' } }), KNOWN],
    ['imperial', changed(DECK, { survey: { fallAlong: '2 in', fallAlongOver: '80 in' } }), KNOWN],
    ['metric', { ...LOFT, units: 'metric' as const }, { ...KNOWN, service: 'wet' as const }],
  ] as const)('%s', (units, job, told) => {
    const { steps } = carryOf(told, job);
    expect(steps).toHaveLength(26);
    for (const step of steps) {
      const shown = Number.parseFloat(carryValue(step.result, step.unit, units));
      // Figures of five digits, some to the fourth power.
      expect(workedOut(carrySum(say, step, units, 'figures')) / shown, step.name).toBeCloseTo(1, 3);
      expect(carrySum(say, step, units, 'symbols')).not.toMatch(/[{}]|carry\./);
    }
  });
});

describe('words', () => {
  test('a share is rounded up, and exactly on the limit is all of it', () => {
    expect(shareText(say, 1, 1)).toBe('100 %');
    expect(shareText(say, 1.0001, 1)).toBe('101 %');
    expect(shareText(say, 0.501, 1)).toBe('51 %');
  });

  test('an answer says what it comes to, and what the data allows where it does', () => {
    const carry = carryOf(KNOWN);
    expect(answerLine(say, answerTo(carry, 'bending'), 'imperial')).toMatch(
      /^comes to \d+ psi; the data allows 863 psi/,
    );
    expect(answerLine(say, answerTo(carryOf({}), 'bending'), 'imperial')).toMatch(/^comes to \d+ psi; not claimed$/);
    expect(answerLine(say, answerTo(carryOf({}), 'sagLive'), 'imperial')).toBe('');
  });

  test('what is from memory says so, wherever it stands', () => {
    for (const { origin } of carryOf(KNOWN).steps.flatMap(({ terms }) => terms)) {
      if (origin.from !== 'data') continue;
      expect(carryWhence(say, origin).includes('FROM MEMORY')).toBe(origin.confidence === 'memory');
    }
  });

  test('a printed figure stands as it was printed', () => {
    const throats = BOOK.published.filter(({ what }) => what === 'throat');
    expect(throats.map((figure) => printedFigure(figure, '3 1/2 + in', 'imperial'))).toEqual([
      '5 in',
      '90 mm = 3 1/2 + in',
      '3.5 in',
    ]);
    const [count] = BOOK.published.filter(({ what }) => what === 'count');
    expect(count === undefined ? '' : printedFigure(count, '', 'metric')).toBe('3');
  });
});
