import { expect, test } from 'vitest';
import { type Danger, dangerOf, sortByDanger } from '../../../src/core/codes/findings';
import { LOFT, planOf } from '../../fixtures/stairs';

test.each<[string, 'rule' | 'build' | 'taste', Danger]>([
  ['guard.requiredAboveDrop', 'rule', 'falls'],
  ['openRiser.maxSphere', 'rule', 'falls'],
  ['riser.max', 'rule', 'falls'],
  ['headerContact', 'build', 'falls'],
  ['throat', 'build', 'falls'],
  ['variation.riser.max', 'rule', 'uneven'],
  ['asCut.spread', 'build', 'uneven'],
  ['headroom.min', 'rule', 'head'],
  ['handrail.height.min', 'rule', 'hand'],
  ['width.min', 'rule', 'hand'],
  ['scope', 'rule', 'other'],
  ['taste.rPlusG', 'taste', 'taste'],
  ['twoRPlusG.max', 'taste', 'taste'],
  ['twoRPlusG.max', 'rule', 'falls'],
])('%s, a matter of %s: %s', (field, kind, danger) => {
  expect(dangerOf({ field, kind })).toBe(danger);
});

test('the worst first; what is equally bad keeps its order, and nothing is lost', () => {
  const { findings } = planOf(LOFT);
  const sorted = sortByDanger(findings);
  const order: Danger[] = ['falls', 'uneven', 'head', 'hand', 'other', 'taste'];
  const ranks = sorted.map((finding) => order.indexOf(dangerOf(finding)));
  expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
  expect(new Set(sorted)).toEqual(new Set(findings));
  const among = (list: readonly (typeof findings)[number][]) => list.filter((one) => dangerOf(one) === 'falls');
  expect(among(sorted)).toEqual(among(findings));
});
