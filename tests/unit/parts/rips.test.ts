import { describe, expect, test } from 'vitest';
import { answerOf, type Changes, changed, inInches, LOFT, planOf, SLAB } from '../../fixtures/stairs';

const R = 105.5625 / 14;
const P_HANGER = 7.115;
const P_BEHIND = 6.5495;
const rips = (changes: Changes) => {
  const answer = answerOf(changed(LOFT, changes));
  const inches = (mm: number | null) => (mm === null ? null : inInches(mm));
  return {
    tread: inInches(answer.treadDepth),
    last: inInches(answer.lastTreadDepth),
    first: inches(answer.riserHeights[0] ?? null),
    second: inches(answer.riserHeights[1] ?? null),
    count: answer.riserHeights.length,
    opening: inches(answer.riserOpening),
    top: inches(answer.topRiserBoard),
    hanger: inches(answer.hangerHeight),
  };
};

const J2 = { joint: 'riser-on-tread' } as const;
const OPEN = { riserThickness: '0 in' } as const;
const LEVEL = { top: 'level-with-floor', hanger: undefined, topTreadRun: '3 1/2 in' } as const;
const HEADER = { top: 'header-behind-riser', hanger: undefined } as const;
const BEHIND = { top: 'hanger-behind-riser' } as const;

describe('rips by joint and top', () => {
  test.each<
    [string, Changes, number, number, number | null, number | null, number, number | null, number | null, number | null]
  >([
    [
      'riser behind the tread, hanger is riser',
      {},
      11.125,
      11.125,
      7.102679,
      R,
      13,
      null,
      null,
      R + 1.0625 - 0.75 + P_HANGER,
    ],
    [
      'riser behind the tread, header',
      { stringer: HEADER },
      11.125,
      11.125,
      7.102679,
      R,
      13,
      null,
      R + 1.0625 - 0.75,
      null,
    ],
    [
      'riser behind the tread, hanger behind',
      { stringer: BEHIND },
      11.125,
      11.125,
      7.102679,
      R,
      13,
      null,
      R + 1.0625 - 0.75,
      R + 1.0625 - 0.75 + P_BEHIND,
    ],
    ['riser behind the tread, level', { stringer: LEVEL }, 11.125, 5.375, 7.102679, R, 14, null, null, null],
    [
      'riser on the tread, hanger is riser',
      { steps: J2 },
      11.875,
      11.125,
      7.102679,
      R - 1.0625,
      13,
      null,
      null,
      R + 1.0625 - 0.75 + P_HANGER,
    ],
    [
      'riser on the tread, header',
      { steps: J2, stringer: HEADER },
      11.875,
      11.875,
      7.102679,
      R - 1.0625,
      13,
      null,
      R - 0.75,
      null,
    ],
    [
      'riser on the tread, hanger behind',
      { steps: J2, stringer: BEHIND },
      11.875,
      11.875,
      7.102679,
      R - 1.0625,
      13,
      null,
      R - 0.75,
      R + 1.0625 - 0.75 + P_BEHIND,
    ],
    [
      'riser on the tread, level',
      { steps: J2, stringer: LEVEL },
      11.875,
      5.375,
      7.102679,
      R - 1.0625,
      14,
      null,
      null,
      null,
    ],
    ['open, header', { steps: OPEN, stringer: HEADER }, 11.125, 11.125, null, null, 0, R - 1.0625, null, null],
    [
      'open, hanger behind',
      { steps: OPEN, stringer: BEHIND },
      11.125,
      11.125,
      null,
      null,
      0,
      R - 1.0625,
      null,
      R + 1.0625 - 0.75 + P_BEHIND,
    ],
    ['open, level', { steps: OPEN, stringer: LEVEL }, 11.125, 4.625, null, null, 0, R - 1.0625, null, null],
  ])('%s', (_, changes, tread, last, first, second, count, opening, top, hanger) => {
    const found = rips(changes);
    const near = (a: number | null, b: number | null) =>
      b === null ? expect(a).toBeNull() : expect(Math.abs((a as number) - b)).toBeLessThan(0.0001);
    near(found.tread, tread);
    near(found.last, last);
    near(found.first, first);
    near(found.second, second);
    expect(found.count).toBe(count);
    near(found.opening, opening);
    near(found.top, top);
    near(found.hanger, hanger);
  });

  test('the first riser board stands on what it will stand on', () => {
    const before = rips({ survey: { lowerLaid: 'before-stairs' } });
    expect(before.first).toBeCloseTo(R - 1.0625, 9);
  });

  test('open risers under a hanger that is the riser', () => {
    expect(rips({ steps: OPEN }).last).toBeCloseTo(11.125, 9);
  });
});

describe('as a saw is set: down, so that the stringer carries the tread', () => {
  test('loft, a worked example of our own, not published', () => {
    const { sheet } = planOf(LOFT);
    expect(sheet.riserRips.map(inInches).slice(0, 3)).toEqual([7.0625, 7.5, 7.5]);
    expect(inInches(sheet.treadRip)).toBe(11.125);
    expect(Math.abs(inInches(sheet.hangerRip) - 14.9375)).toBeLessThan(1e-9);
  });

  test('slab, a worked example of our own, not published', () => {
    const { sheet } = planOf(SLAB);
    expect([sheet.riserRips[0], sheet.riserRips[1], sheet.treadRip]).toEqual([176, 193, 265]);
    expect(sheet.topRiserRip).toBe(207);
  });
});
