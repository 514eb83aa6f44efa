import { describe, expect, it } from 'vitest';
import { knownFields } from '../../../src/core/codes/fieldKinds';
import { judge } from '../../../src/core/codes/judge';
import type { Limit } from '../../../src/core/codes/rulePack';
import type { JobText } from '../../../src/core/job/jobText';
import { layoutStair } from '../../../src/core/layout/layoutStair';
import { movedFields } from '../../../src/core/search/bounds';
import { changesFor, stairWith } from '../../../src/core/search/candidate';
import { findConflict } from '../../../src/core/search/conflict';
import { planFound } from '../../../src/core/search/planFound';
import { rankLayouts } from '../../../src/core/search/rank';
import { readWishes, type WishTexts } from '../../../src/core/search/readWishes';
import { searchLayouts } from '../../../src/core/search/searchLayouts';
import { tryOpening, tryWay } from '../../../src/core/search/tryWay';
import { askSearch, type Search } from '../../../src/core/search/wishes';
import { inch, toInches, toMm } from '../../../src/core/units/exact';
import { BOOK, changed, LOFT, SLAB } from '../../fixtures/stairs';

function finish<T>(steps: Generator<undefined, T>): T {
  for (;;) {
    const { done, value } = steps.next();
    if (done === true) return value;
  }
}

function ask(job: JobText, texts: WishTexts = {}): Search {
  const read = readWishes(texts, job.units ?? 'imperial', BOOK);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const search = askSearch(job, 0, BOOK, read.value.wishes);
  if (!search.ok) throw new Error(JSON.stringify(search.problems));
  return search.value;
}

const found = (search: Search) => finish(searchLayouts(search)).found.map(({ id }) => id);

/**
 * 14 risers of 7 3/4 in and 13 runs of 10 in stand exactly on both limits of the model code (R311.7.5.1 and
 * R311.7.5.2), and a floor of 130 1/2 in to the header has room for just these and the hanger board.
 */
const ON_BOTH_LIMITS = changed(LOFT, {
  survey: { rise: '108 1/2 in', lowerToAdd: '0 in', upperToAdd: '0 in', openingFraming: undefined },
  stringer: { hanger: '1/2 in' },
});

const BASE = { unit: 'in', section: '', source: '', confidence: 'local' } as const;

describe('a survey that allows exactly one layout', () => {
  it('has that one and no other', () => {
    expect(found(ask(ON_BOTH_LIMITS, { run: '130 1/2 in' }))).toEqual(['hanger-is-riser 14 160']);
  });

  it('has a second top with a quarter of an inch more, and a second run only with a sixteenth for each step', () => {
    expect(found(ask(ON_BOTH_LIMITS, { run: '130 3/4 in' }))).toEqual([
      'hanger-is-riser 14 160',
      'header-behind-riser 14 160',
    ]);
    expect(found(ask(ON_BOTH_LIMITS, { run: '131 5/16 in' }))).toContain('hanger-is-riser 14 161');
    expect(found(ask(ON_BOTH_LIMITS, { run: '131.3124 in' }))).not.toContain('hanger-is-riser 14 161');
  });

  it('has none with a rise a thousandth of an inch higher, and none with the floor that much shorter', () => {
    const higher = changed(ON_BOTH_LIMITS, { survey: { rise: '108.501 in' } });
    expect(found(ask(higher, { run: '130 1/2 in' }))).toEqual([]);
    expect(found(ask(ON_BOTH_LIMITS, { run: '130.499 in' }))).toEqual([]);
  });

  it('keeps a headroom that is exactly what is asked, and not a hair more', () => {
    // 14 of 7 1/2 in by 10 in, nosing 1 in: under an opening of 124 in the line stands at 7.5 + 0.75 × (7.25 + 1).
    const level = changed(LOFT, {
      survey: {
        rise: '105 in',
        lowerToAdd: '0 in',
        upperToAdd: '0 in',
        floorDepth: '12 in',
        openingFraming: '124 in',
        headerLining: '1/2 in',
      },
      steps: { nosing: '1 in' },
    });
    const headroom = 105 - 12 - (7.5 + 0.75 * (130.75 - 124 + 0.5 + 1));
    expect(headroom).toBe(79.3125);
    const local = (value: string) => changed(level, { rules: { local: [{ field: 'headroom.min', value }] } });
    expect(found(ask(local('79 5/16 in')))).toContain('hanger-is-riser 14 160');
    expect(found(ask(local('79.3126 in')))).not.toContain('hanger-is-riser 14 160');
    expect(found(ask(local('70 in'), { headroom: '79 5/16 in' }))).toContain('hanger-is-riser 14 160');
    expect(found(ask(local('70 in'), { headroom: '79.3126 in' }))).not.toContain('hanger-is-riser 14 160');
  });
});

describe('a survey that allows none', () => {
  it('names the three that conflict, and what each would have to become', () => {
    const search = ask(ON_BOTH_LIMITS, { run: '130 7/16 in' });
    expect(found(search)).toEqual([]);
    const conflict = finish(findConflict(search));
    if (conflict === null) throw new Error('there is a layout');
    const names = conflict.bounds.map((at) => conflict.sifter.bounds[at]?.id);
    expect(new Set(names)).toEqual(new Set(['riser.max', 'tread.min', 'wish.run']));
    expect(names).toHaveLength(3);
    const asked = { job: ON_BOTH_LIMITS, index: 0, book: BOOK, search };
    const becoming = conflict.ways.map((way) => {
      const tried = tryWay(asked, conflict, way);
      return tried?.changes.map(({ bound, becomes }) => [bound.id, becomes]);
    });
    // 13 risers are 8.346 in each; 13 runs in 129 15/16 in are 9.995 in; and 130 1/2 in is what it takes.
    expect(becoming).toEqual(
      conflict.bounds.map((at) => {
        const id = conflict.sifter.bounds[at]?.id;
        if (id === 'riser.max') return [['riser.max', 8.375]];
        return id === 'tread.min' ? [['tread.min', 9.9375]] : [['wish.run', expect.closeTo(130.5 * 25.4, 6)]];
      }),
    );
    expect(tryOpening(asked, conflict)).toBeNull();
  });

  it('finds the opening that would do', () => {
    const short = changed(LOFT, { survey: { openingFraming: '120 in' } });
    const search = ask(short);
    const conflict = finish(findConflict(search));
    if (conflict === null) throw new Error('there is a layout');
    const tried = tryOpening({ job: short, index: 0, book: BOOK, search }, conflict);
    if (tried === null) throw new Error('no opening will do');
    const framed = toMm(toInches(tried.opening));
    const withOpening = (inches: number) => changed(LOFT, { survey: { openingFraming: `${inches} in` } });
    expect(found(ask(withOpening(framed)))).not.toEqual([]);
    expect(found(ask(withOpening(framed - 1 / 8)))).toEqual([]);
  });

  it('says that one rule alone stands in the way where no layout can turn it', () => {
    const job = changed(LOFT, { survey: { openingFraming: undefined }, steps: { nosing: '2 in' } });
    const search = ask(job);
    const conflict = finish(findConflict(search));
    expect(conflict?.bounds.map((at) => conflict.sifter.bounds[at]?.id)).toEqual(['nosing.max']);
    const [way] = conflict?.ways ?? [];
    if (conflict == null || way === undefined) throw new Error('no way');
    const tried = tryWay({ job, index: 0, book: BOOK, search }, conflict, way);
    expect(tried?.changes.map(({ becomes }) => becomes)).toEqual([2]);
  });

  it('has no bounds to name where no board leaves a stringer at all', () => {
    const search = ask(changed(LOFT, { stringer: { stockDepth: '2 in' } }));
    expect(found(search)).toEqual([]);
    expect(finish(findConflict(search))).toMatchObject({ bounds: [], ways: [], opening: null });
  });
});

describe('taking one', () => {
  it('writes the keys that change, and takes out those that mean nothing with another top', () => {
    const search = ask(LOFT, { depths: '11 1/4 in, 14 in' });
    const keys = (top: Search['wishes']['tops'][number], depth: number) =>
      changesFor(LOFT, 0, search.job, { top, risers: 15, steps: 161, depth: inch(depth) });
    expect(keys('hanger-is-riser', 11.25)).toEqual([
      { key: 'steps.risers', value: 15 },
      { key: 'steps.run', value: '10 1/16 in' },
    ]);
    expect(keys('level-with-floor', 14).slice(2)).toEqual([
      { key: 'stringer.stockDepth', value: '14 in' },
      { key: 'stringer.top', value: 'level-with-floor' },
      { key: 'stringer.hanger', value: undefined },
    ]);
    expect(keys('hanger-behind-riser', 11.25).at(-1)).toEqual({ key: 'stringer.top', value: 'hanger-behind-riser' });
  });

  it('takes the shallowest board that will do', () => {
    // A pack that asks for a throat of 90 mm: a shallow board has it only under small notches.
    const deep = changed(SLAB, {
      rules: { pack: 'irc-2021', local: [{ field: 'stringer.effectiveDepth.min', value: '90 mm' }] },
    });
    const search = ask(deep, { depths: '220 mm, 245 mm, 290 mm' });
    const depths = finish(searchLayouts(search)).found.map((one) => [toMm(one.depth), one.quick.throat] as const);
    expect(new Set(depths.map(([depth]) => depth))).toEqual(new Set([220, 245, 290]));
    for (const [depth, throat] of depths) {
      expect(throat).toBeGreaterThanOrEqual(90);
      if (depth !== 220) expect(throat - (depth === 290 ? 45 : 25)).toBeLessThan(90);
    }
  });

  it('is planned with the figures and cautions that it will have', () => {
    const long = changed(LOFT, { survey: { openingFraming: '128 in' } });
    const search = ask(long, { headroom: '80 1/2 in' });
    const read = readWishes({}, 'imperial', BOOK);
    if (!read.ok) throw new Error('no wishes');
    const [best] = finish(rankLayouts(search, finish(searchLayouts(search)), read.value.order));
    if (best === undefined) throw new Error('nothing found');
    const planned = planFound(long, 0, BOOK, search, best.found, 'usual');
    expect(planned?.keys).toEqual([]);
    expect(planned?.figures.risers).toBe(14);
    // For half an inch of headroom more than the rule's: as much more opening as the stair is shallow.
    const more = ((0.5 * 10) / (105.5625 / 14)) * 25.4;
    const usual = planFound(long, 0, BOOK, ask(long), best.found)?.figures.openingNeeded as number;
    expect((planned?.figures.openingNeeded as number) - usual).toBeCloseTo(more, 6);
  });
});

describe('wishes', () => {
  const problems = (texts: WishTexts) => {
    const read = readWishes(texts, 'imperial', BOOK);
    return read.ok ? [] : read.problems.map(({ place, code }) => `${place} ${code}`);
  };

  it('are refused one by one, each with its reason', () => {
    expect(problems({ run: '130', headroom: '0 in', depths: '9 1/4 in, x', tops: 'hung', by: 'price' })).toEqual([
      'run length.noUnit',
      'headroom value.notPositive',
      'depths length.unread',
      'tops wish.choice',
      'by wish.choice',
    ]);
    expect(problems({ by: 'stride, pitch, throat, board, headroom' })).toEqual(['by wish.tooMany']);
    expect(problems({ run: ' ', tops: '' })).toEqual([]);
  });

  it('are what is usual where nothing is said', () => {
    const read = readWishes({ longest: '13 ft' }, 'imperial', BOOK);
    if (!read.ok) throw new Error('refused');
    expect(read.value.order).toMatchObject({ criteria: ['cautions', 'stride', 'headroom'], stride: 24.5 * 25.4 });
    expect(read.value.wishes.stockLengths.map((mm) => Math.round(mm / 304.8))).toEqual([8, 10, 12, 13]);
  });
});

describe('what is asked only once', () => {
  const rest = knownFields().filter((field) => !movedFields().includes(field));

  it.each(rest)('%s is turned by no riser count, run, top or board', (field) => {
    const search = ask(changed(LOFT, { survey: { widthFraming: '39 1/2 in' } }), { depths: '10 in, 14 in' });
    const { rules, job, limits } = search;
    for (const value of [-1, 0.5, 1, 3, 14, 36, 80, 120, 200]) {
      const limit = { ...BASE, field, value, exact: inch(value) } satisfies Limit;
      const answers = new Set<boolean>();
      for (const top of search.wishes.tops) {
        for (const [risers, steps, depth] of [
          [10, 128, 14],
          [14, 160, 10],
          [15, 200, 14],
          [20, 160, 10],
        ] as const) {
          const layout = layoutStair(stairWith(job, { top, risers, steps, depth: inch(depth) }), limits);
          if (layout.ok) answers.add(judge(layout.value, limit, rules).status === 'breaks');
        }
      }
      expect(answers.size).toBe(1);
    }
  });
});
