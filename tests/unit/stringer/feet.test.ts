import { expect, test } from 'vitest';
import { markLists, stringerChecks } from '../../../src/core/stringer/markList';
import { differingFeet, onFoot } from '../../../src/core/stringer/stringer';
import { DECK, inInches, PAD, planOf } from '../../fixtures/stairs';

test('one stringer stands for all where the floor is level across', () => {
  const { stringer } = planOf(DECK).layout;
  expect(stringer.feet).toEqual([stringer.master]);
  expect(differingFeet(stringer)).toEqual([]);
});

test('a stringer on one of its feet keeps its marks and has that foot', () => {
  const { stringer } = planOf(PAD).layout;
  const [left] = differingFeet(stringer);
  const own = onFoot(stringer, left ?? stringer.master);
  expect(own.marks).toBe(stringer.marks);
  expect(inInches(own.heel.firstRiserCut)).toBeCloseTo(6.4226, 4);
  expect(own.outline).toBe(left?.outline);
  expect(own.outline[0]?.y).toBeGreaterThan(stringer.outline[0]?.y ?? 0);
});

test('the walk along the board has a toe for each, named from the left', () => {
  const { layout, sheet } = planOf(PAD);
  const toes = markLists(layout, sheet).marks.filter(({ what }) => what === 'toe');
  expect(toes.map(({ id, step }) => [id, step])).toEqual([1, 2, 3, 4, 5].map((k) => [`toe-${k}`, k]));
  expect(toes.map(({ value }) => Number(inInches(value).toFixed(6)))).toEqual([6.4375, 6.4375, 6.5, 6.5625, 6.625]);
  expect(stringerChecks(layout, sheet).filter(({ what }) => what === 'check-toe')).toHaveLength(5);
  const level = planOf(DECK);
  expect(stringerChecks(level.layout, level.sheet).filter(({ what }) => what === 'check-toe')).toHaveLength(1);
});
