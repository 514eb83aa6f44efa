import { describe, expect, test } from 'vitest';
import { answerOf, type Changes, changed, DECK, inInches, LOFT, planOf, SLAB } from '../../fixtures/stairs';

const width = (changes: Changes) => answerOf(changed(LOFT, changes)).width;

describe('between two walls', () => {
  test('worked example of our own, not published', () => {
    const stack = width({ stringer: { spacingMax: '18 in' } });
    expect(stack).not.toBeNull();
    expect(inInches(stack?.finished ?? null)).toBeCloseTo(38.5, 12);
    expect(inInches(stack?.betweenSkirts ?? null)).toBeCloseTo(37, 12);
    expect(inInches(stack?.treadLength ?? null)).toBeCloseTo(36.9375, 12);
    expect(inInches(stack?.spacing ?? null)).toBeCloseTo(17.5, 12);
    expect(stack?.stringers).toBe(3);
    const { width: whole } = planOf(LOFT).layout;
    expect(inInches(whole?.treadOverhang ?? null)).toBeCloseTo(0.25, 12);
  });

  test.each([
    ['17 1/2 in', 3],
    ['17 31/64 in', 4],
    ['35 in', 2],
    ['34 63/64 in', 3],
    ['400 in', 2],
  ])('a spacing of at most %s takes %d stringers', (spacingMax, stringers) => {
    expect(width({ stringer: { spacingMax } })?.stringers).toBe(stringers);
  });

  test('a count that was chosen stays', () => {
    const stack = width({ stringer: { count: 5 } });
    expect(stack?.stringers).toBe(5);
    expect(inInches(stack?.spacing ?? null)).toBeCloseTo(35 / 4, 12);
  });

  test('metric treads have 1.5 mm of play', () => {
    const stack = answerOf(changed(SLAB, { survey: { widthFraming: '1000 mm' } })).width;
    expect(stack?.betweenSkirts).toBe(1000 - 25 - 36);
    expect(stack?.treadLength).toBe(1000 - 25 - 36 - 1.5);
  });

  test.each(['0 in', '4 in', '2 1/2 in', '2 9/16 in', '4 1/2 in'])(
    '%s between walls leaves no stair',
    (widthFraming) => {
      expect(width({ survey: { widthFraming } })).toBeNull();
    },
  );

  test('thin skirts and wide spacers leave room for treads but none for two stringers', () => {
    expect(width({ survey: { widthFraming: '9 1/2 in', spacer: '4 in' } })).toBeNull();
    expect(width({ survey: { widthFraming: '9 5/8 in', spacer: '4 in' } })).not.toBeNull();
  });

  test('without walls there is no stack', () => {
    expect(answerOf(DECK).width).toBeNull();
  });
});
