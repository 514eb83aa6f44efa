import fc from 'fast-check';
import { describe, test } from 'vitest';
import type { StairAnswer } from '../fixtures/stairs';
import { answered, holds, near, nearAll } from './measure';
import { type Lengths, NM, type RandomStair, randomStair } from './randomStairs';

const RUNS = { numRuns: 400 };
const delta = fc.integer({ min: -8 * NM, max: 8 * NM });

function changed(stair: RandomStair, nm: Partial<Lengths>, other: Partial<RandomStair> = {}): RandomStair {
  return { ...stair, ...other, nm: { ...stair.nm, ...nm } };
}

const STRINGER = [
  'unitRise',
  'run',
  'treads',
  'stepLength',
  'pitchDegrees',
  'notchDepth',
  'gaugeLine',
  'throat',
  'firstRiserCut',
  'drop',
  'seat',
  'plumbCut',
  'lastLevelCut',
  'topBelowFinish',
  'topBelowSubfloor',
  'stringerEnd',
  'boardLength',
  'firstMark',
  'diagonal',
  'marks',
  'cornerMarks',
  'outline',
  'finishedTops',
  'asCut',
  'stockLength',
] as const;

/** The same number, list or nothing, to a nanometre. */
function same(a: StairAnswer, b: StairAnswer, keys: readonly (keyof StairAnswer)[], scale = 1): void {
  for (const key of keys) alike(b[key], a[key], key, scale);
}

function alike(found: unknown, expected: unknown, what: string, scale: number, within = 1e-6 * scale): void {
  if (typeof expected === 'number') near(found as number, expected * scale, what, within);
  else if (Array.isArray(expected)) {
    holds((found as unknown[]).length === expected.length, `${what}: another length`);
    for (const [i, each] of expected.entries()) alike((found as unknown[])[i], each, `${what} ${i}`, scale, within);
  } else if (expected !== null && typeof expected === 'object') {
    for (const [key, each] of Object.entries(expected)) {
      alike((found as Record<string, unknown>)[key], each, `${what}.${key}`, scale, within);
    }
  } else holds(found === expected, `${what}: ${String(found)}, not ${String(expected)}`);
}

function check(name: string, property: (stair: RandomStair, by: number) => void): void {
  test(name, () => fc.assert(fc.property(randomStair, delta, property), RUNS), 30_000);
}

describe('one thing changes, and only what depends on it', () => {
  check('another nosing changes no number of the stringer', (stair, by) => {
    const before = answered(stair);
    const after = answered(changed(stair, { nosing: Math.max(0, stair.nm.nosing + by) }));
    same(before, after, STRINGER);
    near(after.treadDepth - before.treadDepth, (Math.max(0, stair.nm.nosing + by) - stair.nm.nosing) / NM, 'tread');
  });

  check('more floor to come after the stair: H loses it, and h1 gains it less its share', (stair, by) => {
    const after = { ...stair, laidAfter: true };
    const [a, b] = [answered(after), answered(changed(after, { lower: stair.nm.lower + by }))];
    const mm = by / NM;
    near(b.totalRise - a.totalRise, -mm, 'H');
    near(b.firstRiserCut - a.firstRiserCut, mm - mm / stair.risers, 'h1');
    near(b.drop - a.drop, -mm, 'drop');
  });

  check('more floor before the stair: H loses it, and h1 only its share', (stair, by) => {
    const before = { ...stair, laidAfter: false };
    const [a, b] = [answered(before), answered(changed(before, { lower: stair.nm.lower + by }))];
    near(b.totalRise - a.totalRise, -by / NM, 'H');
    near(b.firstRiserCut - a.firstRiserCut, -by / NM / stair.risers, 'h1');
    near(b.drop, a.drop, 'drop');
  });

  check('more floor above: H gains it', (stair, by) => {
    const [a, b] = [answered(stair), answered(changed(stair, { upper: stair.nm.upper + by }))];
    near(b.totalRise - a.totalRise, by / NM, 'H');
    near(b.topBelowSubfloor - a.topBelowSubfloor, b.topBelowFinish - a.topBelowFinish - by / NM, 'header mark');
  });

  check('a thicker tread lowers every level cut and nothing between them', (stair, by) => {
    const tread = Math.max(NM, stair.nm.tread + by);
    const mm = (tread - stair.nm.tread) / NM;
    const [a, b] = [answered(stair), answered(changed(stair, { tread }))];
    near(b.firstRiserCut - a.firstRiserCut, -mm, 'h1');
    near(b.topBelowFinish - a.topBelowFinish, mm, 'header mark');
    same(a, b, [
      'unitRise',
      'run',
      'stepLength',
      'throat',
      'notchDepth',
      'plumbCut',
      'lastLevelCut',
      'marks',
      'cornerMarks',
      'stringerEnd',
      'headerFace',
      'treadDepth',
    ]);
    near(b.boardLength - a.boardLength, (-mm * a.unitRise) / a.stepLength, 'board length');
    near(b.seat - a.seat, (mm * a.run) / a.unitRise, 'seat');
  });

  check('a thicker riser board moves the stringer back and changes its body not at all', (stair, by) => {
    const riser = Math.max(NM, Math.min(stair.nm.riser + by, Math.floor(stair.nm.run / 4)));
    const behind = changed(stair, { riser: Math.max(stair.nm.riser, NM), hanger: 0 }, { top: 'header-behind-riser' });
    const [a, b] = [answered(behind), answered(changed(behind, { riser }))];
    same(a, b, [
      'unitRise',
      'throat',
      'firstRiserCut',
      'seat',
      'plumbCut',
      'lastLevelCut',
      'marks',
      'cornerMarks',
      'boardLength',
    ]);
    near(b.stringerEnd - a.stringerEnd, (riser - behind.nm.riser) / NM, 'end');
  });

  check('a board behind the riser alters the header face and the hanger alone', (stair) => {
    const plain = changed(stair, { hanger: 0 }, { top: 'header-behind-riser' });
    const backed = changed(stair, {}, { top: 'hanger-behind-riser' });
    const [a, b] = [answered(plain), answered(backed)];
    same(a, b, [
      ...STRINGER,
      'treadDepth',
      'lastTreadDepth',
      'riserHeights',
      'topRiserBoard',
      'headerContact',
      'headerDepthNeeded',
      'width',
    ]);
    near(b.headerFace - a.headerFace, stair.nm.hanger / NM, 'header face');
    holds(a.hangerHeight === null && b.hangerHeight !== null, 'the hanger');
  });

  check('level with the floor is the hung stringer and one more notch', (stair) => {
    const level = changed(stair, { topTread: stair.nm.run, hanger: 0 }, { top: 'level-with-floor' });
    const hung = changed(stair, { hanger: 0 }, { top: 'header-behind-riser' });
    const [a, b] = [answered(hung), answered(level)];
    same(a, b, ['unitRise', 'firstRiserCut', 'seat', 'throat', 'plumbCut', 'lastLevelCut', 'firstMark']);
    nearAll(b.marks.slice(0, -1), a.marks, 'marks');
    nearAll(b.cornerMarks.slice(0, -1), a.cornerMarks, 'corners');
    near(b.boardLength - a.boardLength, a.stepLength, 'one step longer');
    near(b.stringerEnd - a.stringerEnd, a.run, 'one run further');
    near(a.topBelowFinish - b.topBelowFinish, a.unitRise, 'one rise higher');
    holds(b.treads === a.treads + 1, 'one tread more');
  });

  check('the hanger as riser takes its thickness out of the last cut', (stair) => {
    const hung = changed(stair, { hanger: 0 }, { top: 'header-behind-riser' });
    const [a, b] = [answered(hung), answered({ ...stair, top: 'hanger-is-riser' })];
    const riser = stair.nm.riser / NM;
    near(a.lastLevelCut - b.lastLevelCut, riser, 'last cut');
    near(b.plumbCut - a.plumbCut, (riser * a.unitRise) / a.run, 'plumb cut');
    same(a, b, ['firstRiserCut', 'seat', 'marks', 'cornerMarks', 'topBelowFinish']);
  });

  check('a kicker changes the outline alone', (stair) => {
    const { outline: _a, findings: _b, ...without } = answered({ ...stair, kicker: false });
    const { outline: _c, findings: _d, ...kicked } = answered({ ...stair, kicker: true });
    same(without as StairAnswer, kicked as StairAnswer, Object.keys(without) as (keyof StairAnswer)[]);
  });

  check('the joint changes boards, not the stringer', (stair) => {
    const [a, b] = [
      answered({ ...stair, joint: 'tread-butts-riser' }),
      answered({ ...stair, joint: 'riser-on-tread' }),
    ];
    same(a, b, [...STRINGER, 'headerFace', 'hangerHeight', 'headroom', 'riserOpening']);
    near(b.treadDepth - a.treadDepth, stair.nm.riser / NM, 'tread');
  });

  check('a floor that is lower at the foot is a longer reading', (stair, by) => {
    const lower = changed(stair, { foot: stair.nm.foot + by });
    const longer = changed(stair, { rise: stair.nm.rise + by });
    same(answered(lower), answered(longer), [...STRINGER, 'headerFace', 'headroom', 'openingNeeded', 'riserHeights']);
  });
});

describe('the same stair, larger and in another language', () => {
  test('twice and three times as large, lengths grow and angles stay', () => {
    const times = (nm: Lengths, k: number) =>
      Object.fromEntries(Object.entries(nm).map(([key, each]) => [key, each * k])) as unknown as Lengths;
    const lengths = [
      ...STRINGER.filter((key) => !['treads', 'pitchDegrees', 'stockLength'].includes(key)),
      'totalRise',
      'totalRun',
      'twoRisePlusRun',
      'headerFace',
      'treadDepth',
      'lastTreadDepth',
      'riserHeights',
      'riserOpening',
      'topRiserBoard',
      'hangerHeight',
      'headroom',
      'headerContact',
      'headerDepthNeeded',
    ] as const;
    fc.assert(
      fc.property(randomStair, fc.constantFrom(2, 3, 10), (stair, k) => {
        // Ten times the finest marks are still marks; ten times the coarsest are refused.
        const fine = { ...stair.nm, markStep: 396_875 };
        const [a, b] = [answered(changed(stair, fine)), answered(changed(stair, times(fine, k)))];
        same(a, b, lengths, k);
        same(a, b, ['risers', 'treads', 'pitchDegrees']);
      }),
      RUNS,
    );
  }, 30_000);

  test('in inches and in millimetres it is one stair, to 1e-9', () => {
    const shown = ['stockLength', 'findings', 'notes', 'defaults', 'width'];
    fc.assert(
      fc.property(randomStair, fc.nat({ max: 50 }), (stair, notation) => {
        const a = answered({ ...stair, units: 'imperial' });
        const b = answered({ ...stair, units: 'metric', notation });
        for (const key of Object.keys(a) as (keyof StairAnswer)[]) {
          if (!shown.includes(key)) alike(b[key], a[key], key, 1, 1e-9);
        }
      }),
      RUNS,
    );
  }, 30_000);
});
