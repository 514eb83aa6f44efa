import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { solveFor, type Unknown } from '../../../src/core/choose/solveFor';
import { headroomWanted, tryLevers, trySolution } from '../../../src/core/choose/trySolution';
import type { JobText } from '../../../src/core/job/jobText';
import { compare, type Exact, inch, times, toMm } from '../../../src/core/units/exact';
import { anyStair, planOrSkip } from '../../fixtures/anyStair';
import { BOOK, bare, type Changes, changed, inInches, LOFT, planOf } from '../../fixtures/stairs';

const HEAD = inch(80);
const ALL: readonly Unknown[] = ['opening', 'headroom', 'run', 'floorDepth', 'risers'];
const solve = (unknown: Unknown, changes: Changes = {}, wanted: Exact = HEAD) =>
  solveFor(unknown, planOf(changed(LOFT, changes)).layout, wanted);
const inchesOf = (unknown: Unknown, changes: Changes = {}, wanted: Exact = HEAD) => {
  const { value } = solve(unknown, changes, wanted);
  return value === null ? null : inInches(toMm(value));
};
const why = (unknown: Unknown, changes: Changes = {}, wanted: Exact = HEAD) => {
  const solution = solve(unknown, changes, wanted);
  return solution.value === null ? solution.why : 'solved';
};

// The loft, worked by hand: R = 105.5625 / 14, G = 10, n = 1 1/8, Df = 13 1/4, hanger 3/4, lining 1/2, opening 126 in.
const R = 105.5625 / 14;

describe('one from the others, for 80 in', () => {
  test('the opening, framed', () => {
    expect(inchesOf('opening')).toBeCloseTo((93.25 * 10) / R + 1.125 + 0.75 + 0.5, 9);
  });

  test('the headroom', () => {
    expect(inchesOf('headroom')).toBeCloseTo(((126 - 1.25 - 1.125) * R) / 10 - 13.25, 9);
  });

  test('the run, the most', () => {
    expect(inchesOf('run')).toBeCloseTo(((126 - 1.25 - 1.125) * R) / 93.25, 9);
  });

  test('the depth of the floor, the most', () => {
    expect(inchesOf('floorDepth')).toBeCloseTo(((126 - 1.25 - 1.125) * R) / 10 - 80, 9);
  });

  test('the riser count, the most', () => {
    // R ≥ 93.25 × 10 / 123.625 = 7.5430, and 105.5625 / 7.5430 = 13.99.
    expect(toMm(solve('risers').value as Exact)).toBe(13);
    expect(toMm(solve('risers', {}, inch(79)).value as Exact)).toBe(14);
  });

  test('a whole top tread level with the floor takes a run off the opening', () => {
    const level = { stringer: { top: 'level-with-floor', hanger: undefined } } as const;
    // O = 126 − 1/2 − 3/4 − G, so (124.75 − G − 1.125) R ≥ 93.25 G.
    expect(inchesOf('run', level)).toBeCloseTo((123.625 * R) / (93.25 + R), 9);
  });
});

describe('what no value does', () => {
  test('a ceiling lower than the headroom', () => {
    const low = { survey: { floorDepth: '30 in' } };
    for (const unknown of ['opening', 'run', 'risers'] as const) expect(why(unknown, low)).toBe('ceiling');
    expect(why('floorDepth', {}, inch(200))).toBe('nothing');
  });

  test('an opening that ends under the top', () => {
    const short = { survey: { openingFraming: '2 in' } };
    expect(why('run', short)).toBe('opening');
    expect(why('risers', short)).toBe('opening');
  });

  test('what was not measured', () => {
    expect(why('run', { survey: { openingFraming: undefined } })).toBe('notMeasured');
    expect(why('opening', { survey: { floorDepth: undefined } })).toBe('notMeasured');
    expect(why('opening', { survey: { openingFraming: undefined } })).toBe('solved');
    expect(why('floorDepth', { survey: { floorDepth: undefined } })).toBe('solved');
  });

  test('on a floor that falls from where the tape stood, the same', () => {
    const falls = { fallAlong: '1/4 in', fallAlongOver: '12 in', readingFromHeader: '0 in' };
    expect(why('run', { survey: { ...falls, floorDepth: '60 in' } })).toBe('ceiling');
    expect(why('run', { survey: { ...falls, openingFraming: '2 in' } })).toBe('opening');
  });
});

test('for any stair, the value itself leaves the headroom, and one step beyond does not', () => {
  const seen = new Set<string>();
  fc.assert(
    fc.property(anyStair, fc.integer({ min: 70, max: 90 }), (job, wanted) => {
      const { layout } = planOrSkip(job);
      const least = inch(wanted);
      for (const unknown of ['opening', 'floorDepth', 'run', 'risers'] as const) {
        const solution = solveFor(unknown, layout, least);
        if (solution.value === null) continue;
        const step = inch(1 / 16);
        const tried = trySolution(job, 0, BOOK, solution);
        if (tried?.headroom == null) continue;
        seen.add(unknown);
        expect(tried.headroom, unknown).toBeGreaterThanOrEqual(toMm(least) - 1e-6);
        const counted = tried.changes.find(({ key }) => key === 'steps.risers')?.value ?? 'auto';
        const risers = unknown === 'run' && counted !== 'auto' ? layout.flight.risers : undefined;
        const beyond = planOfChange(job, unknown, solution.value, step, risers);
        if (beyond !== null) expect(beyond, unknown).toBeLessThan(toMm(least));
      }
    }),
    { numRuns: 300 },
  );
  expect([...seen].sort()).toEqual(['floorDepth', 'opening', 'risers', 'run']);
});

/** The headroom with a value one step worse than the solution; null where that is no stair, or makes no odds. */
function planOfChange(
  job: JobText,
  unknown: Unknown,
  value: Exact,
  step: Exact,
  risers: number | undefined,
): number | null {
  const mm = toMm(value);
  const worse = unknown === 'opening' ? mm - 2 * toMm(step) : mm + 2 * toMm(step);
  const [stair] = job.stairs as [JobText['stairs'][number]];
  const changes: Changes =
    unknown === 'risers'
      ? { steps: { ...stair.steps, risers: mm + 1 } }
      : unknown === 'run'
        ? { steps: { ...stair.steps, run: `${worse.toFixed(4)} mm`, ...(risers !== undefined && { risers }) } }
        : { survey: { [unknown === 'opening' ? 'openingFraming' : 'floorDepth']: `${worse.toFixed(4)} mm` } };
  if (worse <= 0) return null;
  try {
    return planOf(changed(job, changes)).layout.opening.headroom;
  } catch {
    return null;
  }
}

describe('taken into the job', () => {
  test('on the grid, on the safe side, with what it breaks', () => {
    const take = (unknown: Unknown) => trySolution(LOFT, 0, BOOK, solve(unknown));
    expect(take('opening')?.changes).toEqual([{ key: 'survey.openingFraming', value: '126 1/8 in' }]);
    expect(take('run')?.changes).toEqual([{ key: 'steps.run', value: '9 15/16 in' }]);
    expect(take('run')?.breaks).toContain('tread.min');
    expect(take('floorDepth')?.changes).toEqual([{ key: 'survey.floorDepth', value: '13 3/16 in' }]);
    expect(take('risers')).toMatchObject({ changes: [{ key: 'steps.risers', value: 13 }], taken: 13 });
    expect(take('risers')?.breaks).toContain('riser.max');
    expect(take('headroom')).toBeNull();
  });

  test('a value that stands on the grid is taken as it is', () => {
    const exact = changed(LOFT, { survey: { rise: '104.875 in', floorDepth: '10 in' } });
    // R = 105 / 14 = 7.5: (80 + 10) × 10 / 7.5 = 120, and 1 1/8, 3/4 and 1/2 on top.
    const solution = solveFor('opening', planOf(exact).layout, HEAD);
    expect(inInches(toMm(solution.value as Exact))).toBe(122.375);
    expect(trySolution(exact, 0, BOOK, solution)?.changes[0].value).toBe('122 3/8 in');
    expect(trySolution(exact, 0, BOOK, solution)?.headroom).toBeCloseTo(toMm(HEAD), 9);
  });

  test('nothing where there is no solution, and nothing where it leaves no stair', () => {
    expect(trySolution(LOFT, 0, BOOK, solve('run', { survey: { floorDepth: '30 in' } }))).toBeNull();
    const tiny = { unknown: 'run', value: times(inch(1 / 16), 3), is: 'most' } as const;
    expect(trySolution(LOFT, 0, BOOK, tiny)).toBeNull();
  });

  test('what is wanted is what the rules ask', () => {
    expect(compare(headroomWanted(planOf(LOFT)) as Exact, HEAD)).toBe(0);
  });
});

describe('levers', () => {
  test('each with its effect, tried', () => {
    const levers = tryLevers(LOFT, 0, BOOK, planOf(LOFT));
    expect(levers.map(({ change }) => change.key)).toEqual([
      'steps.run',
      'steps.nosing',
      'steps.risers',
      'survey.openingFraming',
      'survey.floorDepth',
    ]);
    const gains = levers.map(({ headroom }) => inInches(headroom));
    expect(gains[0]).toBeCloseTo(123.625 * (R / 9.75 - R / 10), 9);
    expect(gains[1]).toBeCloseTo((0.25 * R) / 10, 9);
    expect(gains[2]).toBeCloseTo((123.625 * (105.5625 / 13 - R)) / 10, 9);
    expect(gains[3]).toBeCloseTo(R / 10, 9);
    expect(gains[4]).toBeCloseTo(1, 9);
    expect(levers.every(({ overhead }) => overhead === null)).toBe(true);
  });

  test('under what hangs overhead too; what was not measured is no lever', () => {
    const beam = { near: '60 in', far: '66 in', height: '150 in' };
    const survey = { obstacles: [beam], openingFraming: undefined, floorDepth: undefined };
    const job = changed(LOFT, { survey });
    const levers = tryLevers(job, 0, BOOK, planOf(job));
    expect(levers.map(({ change }) => change.key)).toEqual(['steps.run', 'steps.nosing', 'steps.risers']);
    expect(levers[0]?.headroom).toBeNull();
    expect(inInches(levers[1]?.overhead ?? 0)).toBeCloseTo((0.25 * R) / 10, 9);
  });

  test('in millimetres, and none where it leaves no stair', () => {
    const two = changed(LOFT, {
      units: 'metric',
      survey: { rise: '16 in' },
      steps: { risers: 2 },
      stringer: { kicker: undefined },
    });
    expect(tryLevers(two, 0, BOOK, planOf(two)).map(({ by }) => by)).toEqual([-5, -5, 25, -25]);
  });
});

test('all five are asked for by name', () => {
  expect(ALL.map((unknown) => solve(unknown).unknown)).toEqual(ALL);
});

test('another run on a floor that falls keeps the number of risers, which the rules would count anew', () => {
  const job = changed(bare('imperial', '123 5/16 in'), {
    survey: {
      readingFromHeader: '0 in',
      fallAlong: '1/16 in',
      fallAlongOver: '23 5/8 in',
      lowerToAdd: '0 in',
      upperToAdd: '0 in',
      floorDepth: '7 7/8 in',
      openingFraming: '174 3/4 in',
      headerLining: '0 in',
    },
    steps: { nosing: '0 in', treadThickness: '3/4 in' },
  });
  const { layout } = planOf(job);
  const tried = trySolution(job, 0, BOOK, solveFor('run', layout, inch(70)));
  expect(tried?.changes).toContainEqual({ key: 'steps.risers', value: layout.flight.risers });
  expect(inInches(tried?.headroom ?? null)).toBeGreaterThanOrEqual(70 - 1e-9);
});
