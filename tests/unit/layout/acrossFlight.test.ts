import { beforeAll, describe, expect, test } from 'vitest';
import { acrossFlight, type Tightest, tightestAcross } from '../../../src/core/layout/acrossFlight';
import { planStair } from '../../../src/core/plan/planStair';
import { type Exact, inch, toMm } from '../../../src/core/units/exact';
import { loadAllPacks } from '../../fixtures/packs';
import { BOOK, type Changes, changed, inInches, LOFT, PAD, planOf } from '../../fixtures/stairs';

const across = (changes: Changes = {}) => acrossFlight(planOf(changed(PAD, changes)).layout);
const inches = (exact: Exact) => inInches(toMm(exact)).toFixed(4);

describe('riser 1 at both edges of a floor that falls 3/16 in over 48 in', () => {
  test('is lower on the left and taller on the right by half of what it falls', () => {
    const found = across();
    // 7.52902 less and more 3/32.
    expect(found && [found.left, found.right, found.spread].map(inches)).toEqual(['7.4353', '7.6228', '0.1875']);
    expect(found?.low).toBe('right');
  });

  test('turned round, the left is the tallest', () => {
    const found = across({ survey: { fallAcross: '-3/16 in' } });
    expect(found?.low).toBe('left');
    expect(found && inches(found.tallest)).toBe('7.6228');
  });

  test('goes by what a tread reaches between skirts', () => {
    const found = across({ survey: { wallboard: '1 in', skirt: '2 in' } });
    expect(found && inches(found.spread)).toBe(((42 * 3) / 16 / 48).toFixed(4));
  });

  test('is not asked on a level floor, nor without a width', () => {
    expect(acrossFlight(planOf(LOFT).layout)).toBeNull();
    expect(across({ survey: { widthFraming: undefined } })).toBeNull();
  });
});

describe('which rule is nearest to its limit, and at which edge', () => {
  const limits = (max: number | null, min: number | null, spread: number | null) => ({
    'riser.max': max === null ? null : inch(max),
    'riser.min': min === null ? null : inch(min),
    'variation.riser.max': spread === null ? null : inch(spread),
  });
  const nearest = (...of: Parameters<typeof limits>): Pick<Tightest, 'field' | 'edge'> | null => {
    const found = across();
    return found === null ? null : tightestAcross(found, limits(...of));
  };

  test.each([
    ['the tallest at the lower edge', 7.75, 4, 0.375, 'riser.max', 'right'],
    ['the shortest at the higher edge', 9, 7.4, 0.375, 'riser.min', 'left'],
    ['the spread from edge to edge', 7.75, 4, 0.25, 'variation.riser.max', 'both'],
  ])('%s', (_, max, min, spread, field, edge) => {
    expect(nearest(max, min, spread)).toMatchObject({ field, edge });
  });

  test('broken by more is nearer still', () => {
    const found = across();
    const broken = found && tightestAcross(found, limits(7.5, null, 0.1));
    expect(broken).toMatchObject({ field: 'riser.max' });
    expect(broken && inches(broken.margin)).toBe('-0.1228');
  });

  test('turned round, the shortest is at the right', () => {
    const turned = across({ survey: { fallAcross: '-3/16 in' } });
    expect(turned && tightestAcross(turned, limits(9, 7.4, 0.375))).toMatchObject({
      field: 'riser.min',
      edge: 'right',
    });
  });

  test('no figure, no answer', () => {
    expect(nearest(null, null, null)).toBeNull();
  });
});

beforeAll(loadAllPacks);

describe('what the rules say of it', () => {
  const finding = (field: string, changes: Changes = {}, doubt: 'usual' | null = null) => {
    const plan = planStair(changed(PAD, changes), 0, BOOK, doubt);
    return plan.ok ? plan.value.findings.find((each) => each.field === field) : undefined;
  };
  const local = (field: string, value: string): Changes => ({ rules: { pack: 'irc-2021', local: [{ field, value }] } });

  test('the tallest riser is the one at the lower edge', () => {
    expect(finding('riser.max')?.actual).toBeCloseTo(7.622768, 5);
    expect(finding('riser.max', local('riser.max', '7 5/8 in'))?.status).toBe('meets');
    expect(finding('riser.max', local('riser.max', '7.6 in'))?.status).toBe('breaks');
  });

  test('the shortest is the one at the higher edge', () => {
    expect(finding('riser.min', local('riser.min', '7.43 in'))?.status).toBe('meets');
    expect(finding('riser.min', local('riser.min', '7.44 in'))?.status).toBe('breaks');
  });

  test('risers vary by all that it falls; exactly on the limit meets it', () => {
    expect(finding('variation.riser.max')).toMatchObject({ actual: 0.1875, status: 'meets' });
    expect(finding('variation.riser.max', local('variation.riser.max', '3/16 in'))?.status).toBe('meets');
    expect(finding('variation.riser.max', local('variation.riser.max', '11/64 in'))?.status).toBe('breaks');
  });

  test('against its neighbour, and against what was planned, riser 1 differs by half of it', () => {
    for (const field of ['variation.riser.adjacent.max', 'variation.riser.nominal.max']) {
      expect(finding(field, local(field, '3/32 in'))).toMatchObject({ actual: 0.09375, status: 'meets' });
      expect(finding(field, local(field, '1/16 in'))?.status).toBe('breaks');
    }
  });

  test('without a width it is not judged', () => {
    const blind = { survey: { widthFraming: undefined } };
    expect(finding('variation.riser.max', blind)?.status).toBe('not-checked');
    const uniform = { rules: { pack: 'ada-2010' }, ...blind };
    expect(finding('variation.riser.max', uniform)?.status).toBe('not-checked');
  });

  test('where all must be alike and no number is given, what comes out is listed as cut, and not judged', () => {
    const found = finding('variation.riser.max', { rules: { pack: 'ada-2010' } });
    expect(found).toMatchObject({ status: 'not-checked', actual: null });
    expect(finding('asCut.spread', { rules: { pack: 'ada-2010' } })?.actual).toBeGreaterThan(0.1);
    expect(finding('variation.tread.max', { rules: { pack: 'ada-2010' } })).toMatchObject({
      status: 'meets',
      actual: 0,
    });
  });

  test('the tape’s doubt names what was read across', () => {
    const close = finding('variation.riser.max', local('variation.riser.max', '1/4 in'), 'usual');
    expect(close?.status).toBe('close');
    expect(close?.readAgain).toEqual(['survey.fallAcross', 'survey.widthFraming']);
    const clear = finding('variation.riser.max', {}, 'usual');
    expect(clear?.status).toBe('meets');
  });

  test('turned round, the doubt weighs as much', () => {
    const turned = { ...local('variation.riser.max', '1/4 in'), survey: { fallAcross: '-3/16 in' } };
    expect(finding('variation.riser.max', turned, 'usual')?.status).toBe('close');
  });

  test('a rise that comes of a slope names the slope and where the tape stood', () => {
    const close = finding('riser.max', local('riser.max', '7 5/8 in'), 'usual');
    expect(close?.status).toBe('close');
    // 63 3/4 in over 12, shared by seven, weighs more than the rise itself.
    expect(close?.readAgain.slice(0, 3)).toEqual(['survey.fallAlong', 'survey.fallAcross', 'survey.rise']);
    expect(close?.readAgain).toContain('survey.readingFromHeader');
  });

  test('as cut, the spread is over all stringers', () => {
    const { layout, findings } = planOf(PAD);
    const all = layout.stringer.feet.flatMap(({ asCut }) => asCut.risers);
    const found = findings.find(({ field }) => field === 'asCut.spread');
    expect(found?.actual).toBeCloseTo(inInches(Math.max(...all) - Math.min(...all)), 9);
    expect(found?.actual).toBeGreaterThan(inInches(layout.stringer.asCut.spread));
  });

  test('a kicker is judged on the shortest toe', () => {
    const kicker = { width: '3 1/2 in', height: '3 1/2 in' };
    // 6.4226 − 3 1/2 = 2.92 at the left, 6.6042 − 3 1/2 = 3.10 at the right.
    const found = finding('kicker.toe', { stringer: { kicker } });
    expect(found).toMatchObject({ status: 'breaks' });
    expect(found?.actual).toBeCloseTo(2.9226, 4);
  });
});
