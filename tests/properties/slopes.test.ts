/** Floors that fall every way: against points alone, against the second road, and against level ones. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { answerStair } from '../../src/cli/layoutAnswer';
import { checkSheet } from '../../src/core/check/checkLayout';
import { exactSheet, printedSheet } from '../../src/core/check/printedSheet';
import { readStair } from '../../src/core/job/readStair';
import type { StairJob } from '../../src/core/job/stairJob';
import { acrossFlight } from '../../src/core/layout/acrossFlight';
import { planStair } from '../../src/core/plan/planStair';
import { fixedOf, quickFigures, shapeMargin } from '../../src/core/search/quick';
import { toMm } from '../../src/core/units/exact';
import { speakerFor } from '../../src/text/say';
import { BOOK } from '../fixtures/stairs';
import { holds, near, nearAll } from './measure';
import { jobOf, NM, type RandomSlope, type RandomStair, randomStair, slopedStair } from './randomStairs';
import { secondStair } from './secondStair';

const say = speakerFor('us');
const HEADROOM = 80 * 25.4;

function layoutOf(stair: RandomStair) {
  const plan = planStair(jobOf(stair), 0, BOOK);
  return plan.ok ? plan.value.layout : null;
}

test('a second calculation from points alone agrees to a nanometre, 2,000 stairs', () => {
  let laidOut = 0;
  fc.assert(
    fc.property(slopedStair, (stair) => {
      const second = secondStair(stair, HEADROOM);
      const plan = planStair(jobOf(stair), 0, BOOK);
      if (second.margin > 1e-5) {
        holds(plan.ok === second.possible, `${plan.ok ? 'laid out' : 'refused'}, against the second calculation`);
      }
      if (!plan.ok) return;
      laidOut += 1;
      const answer = answerStair(plan.value, say) as unknown as Record<string, unknown>;
      for (const [key, expected] of Object.entries(second.numbers)) {
        if (key.startsWith('width.')) continue;
        const found = answer[key];
        if (expected === null) holds(found === null, `${key} is ${String(found)}, not null`);
        else if (typeof expected === 'number') near(found as number, expected, key);
        else nearAll(found as number[], expected as number[], key);
      }
      nearAll(
        (answer['outline'] as [number, number][]).flat(),
        second.outline.flatMap(({ x, z }) => [x, z]),
        'outline',
      );
    }),
    { numRuns: 2_000 },
  );
  expect(laidOut).toBeGreaterThan(800);
}, 60_000);

test('each stringer has riser 1 that its own floor leaves: R, and what the floor falls to it', () => {
  fc.assert(
    fc.property(slopedStair, (stair) => {
      const layout = layoutOf(stair);
      fc.pre(layout !== null && stair.slope !== undefined);
      const { flight, stringer } = layout as NonNullable<typeof layout>;
      const on = stair.slope as RandomSlope;
      for (const { across, heel } of stringer.feet) {
        const falls = (across * on.across) / on.acrossOver;
        const behind = (flight.riserThickness * on.along) / on.alongOver;
        const floor = flight.seatHeight + behind - falls;
        near(heel.firstRiserCut, flight.unitRise - flight.treadThickness - floor, 'first cut');
      }
    }),
    { numRuns: 300 },
  );
});

test('the second road finds a slope that was forgotten or turned round, on the unrounded sheet', () => {
  let tried = 0;
  fc.assert(
    fc.property(slopedStair, fc.constantFrom('along', 'across'), fc.boolean(), (stair, way, forgotten) => {
      const on = stair.slope as RandomSlope;
      const other = { ...stair, slope: { ...on, [way]: forgotten ? 0 : -on[way] } };
      const [layout, real] = [layoutOf(other), layoutOf(stair)];
      fc.pre(layout !== null && real !== null && on[way] !== 0);
      const made = layout as NonNullable<typeof layout>;
      const asked = { ...made, job: (real as NonNullable<typeof real>).job };
      tried += 1;
      holds(checkSheet(asked, exactSheet(made)).length > 0, 'not found on the exact sheet');
    }),
    { numRuns: 400 },
  );
  expect(tried).toBeGreaterThan(50);
}, 60_000);

test('a floor that falls by nothing is a level floor', () => {
  fc.assert(
    fc.property(randomStair, fc.integer({ min: 1, max: 4000 }), (stair, over) => {
      const level = { along: 0, alongOver: over * NM, across: 0, acrossOver: over * NM, from: over * NM };
      const [plain, sloped] = [layoutOf(stair), layoutOf({ ...stair, slope: level })];
      expect(sloped === null).toBe(plain === null);
      if (plain === null || sloped === null) return;
      expect(printedSheet(sloped)).toEqual(printedSheet(plain));
      near(sloped.flight.totalRise, plain.flight.totalRise, 'rise');
    }),
    { numRuns: 300 },
  );
});

test('seen in a mirror, the feet are the same from the other side', () => {
  fc.assert(
    fc.property(slopedStair, (stair) => {
      const on = stair.slope as RandomSlope;
      const [one, other] = [layoutOf(stair), layoutOf({ ...stair, slope: { ...on, across: -on.across } })];
      expect(one === null).toBe(other === null);
      if (one === null || other === null) return;
      nearAll(
        one.stringer.feet.map(({ heel }) => heel.firstRiserCut),
        other.stringer.feet.map(({ heel }) => heel.firstRiserCut).reverse(),
        'toes',
      );
    }),
    { numRuns: 300 },
  );
});

test('the quick figures of the search are those of the layout, and where it leaves no stair they say so', () => {
  let laidOut = 0;
  fc.assert(
    fc.property(slopedStair, (stair) => {
      const job = readStair(jobOf(stair), 0);
      fc.pre(job.ok);
      const text = (job as { value: StairJob }).value;
      const quick = quickFigures(fixedOf(text), stair.risers, stair.nm.run / NM, stair.nm.depth / NM);
      const layout = layoutOf(stair);
      const margin = shapeMargin(quick);
      if (Math.abs(margin) > 1e-5) holds((layout !== null) === margin > 0, `margin ${margin}`);
      if (layout === null) return;
      laidOut += 1;
      const { stringer, flight, opening } = layout;
      const toes = stringer.feet.map(({ heel }) => heel.firstRiserCut);
      near(quick.totalRise, flight.totalRise, 'total rise');
      near(quick.firstRiserCut, stringer.heel.firstRiserCut, 'tallest toe');
      near(quick.shortestCut, Math.min(...toes), 'shortest toe');
      near(quick.seat, stringer.heel.seat, 'seat');
      near(quick.heelX, Math.max(...stringer.feet.map(({ heel }) => heel.heelX)), 'heel');
      near(quick.boardLength, stringer.boardLength, 'board');
      near(quick.contact as number, stringer.bearing.contact as number, 'contact');
      near(quick.headroom as number, opening.headroom as number, 'headroom');
      const across = acrossFlight(layout);
      near(quick.unitRise + quick.fixed.aside, across === null ? flight.unitRise : toMm(across.tallest), 'tallest');
    }),
    { numRuns: 500 },
  );
  expect(laidOut).toBeGreaterThan(200);
}, 60_000);
