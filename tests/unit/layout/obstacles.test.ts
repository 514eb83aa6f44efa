import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sortByDanger } from '../../../src/core/codes/findings';
import type { ObstacleText } from '../../../src/core/job/jobText';
import { planStair } from '../../../src/core/plan/planStair';
import { clearUnder, fixedOf, quickFigures } from '../../../src/core/search/quick';
import { toMm } from '../../../src/core/units/exact';
import { anyStair, planOrSkip } from '../../fixtures/anyStair';
import {
  answerOf,
  BOOK,
  type Changes,
  changed,
  faultsOf,
  inInches,
  LOFT,
  planOf,
  refusalOf,
} from '../../fixtures/stairs';

const BEAM: ObstacleText = { name: 'beam', near: '60 in', far: '66 in', height: '130 in' };
const under = (obstacle: Partial<ObstacleText> = {}, changes: Changes = {}) =>
  changed(LOFT, { ...changes, survey: { ...changes.survey, obstacles: [{ ...BEAM, ...obstacle }] } });
const clearance = (obstacle: Partial<ObstacleText> = {}) => planOf(under(obstacle)).layout.obstacles[0];
const finding = (job: Parameters<typeof planOf>[0], doubt: 'usual' | null = null) => {
  const plan = planStair(job, 0, BOOK, doubt);
  return plan.ok ? plan.value.findings.find(({ field }) => field === 'obstacle.1') : undefined;
};

// The loft: R = 105.5625 / 14, G = 10, n = 1 1/8, header 130 3/4 in from riser 1, lower floor 5/8 in to come.
const R = 105.5625 / 14;
const line = (x: number) => R + (R / 10) * (x + 1.125);

describe('clearance is plumb, at the worst place', () => {
  test('under a level beam that is the end towards the header, where the nosings are highest', () => {
    const found = clearance();
    expect(found?.at).toBe('near');
    expect(inInches(found?.worstX ?? 0)).toBeCloseTo(70.75, 9);
    expect(inInches(found?.clearance ?? 0)).toBeCloseTo(130 - 0.625 - line(70.75), 9);
    expect(found?.standsOn).toBe('flight');
  });

  test('under a ceiling that is lower at its far end it can be there', () => {
    const found = clearance({ heightFar: '120 in' });
    expect(found?.at).toBe('far');
    expect(inInches(found?.clearance ?? 0)).toBeCloseTo(120 - 0.625 - line(64.75), 9);
  });

  test('in front of the foot a person stands on the floor, and that is said', () => {
    const plan = planOf(under({ near: '150 in', far: '160 in', height: '90 in' }));
    expect(plan.layout.obstacles[0]).toMatchObject({ standsOn: 'lower', overFlight: false });
    expect(inInches(plan.layout.obstacles[0]?.clearance ?? 0)).toBeCloseTo(90 - 0.625, 9);
    expect(plan.notes).toContainEqual({ code: 'note.obstacleOutside', values: { number: 1 } });
  });

  test('behind the landing nosing a person stands on the upper floor', () => {
    const found = clearance({ near: '0 in', far: '1 in', height: '190 in' });
    expect(found?.standsOn).toBe('upper');
    expect(inInches(found?.clearance ?? 0)).toBeCloseTo(190 - 0.625 - 105.5625, 9);
  });

  test('a ceiling that climbs from there on is tightest over the landing nosing', () => {
    // Over the landing nosing, 1 7/8 in out: 190 in less 1 in for every 8.
    const found = clearance({ near: '0 in', far: '80 in', height: '190 in', heightFar: '180 in' });
    expect(found?.at).toBe('landing');
    expect(inInches(found?.worstX ?? 0)).toBeCloseTo(128.875, 9);
    expect(inInches(found?.clearance ?? 0)).toBeCloseTo(190 - 1.875 / 8 - 0.625 - 105.5625, 9);
  });

  test('a lamp has no width', () => {
    expect(clearance({ far: '60 in' })?.clearance).toBeCloseTo(clearance()?.clearance ?? 0, 9);
  });

  test('for any stair, nowhere under it is less, and the quick figure of the search is the same', () => {
    let seen = 0;
    fc.assert(
      fc.property(anyStair, fc.double({ min: 0, max: 1, noNaN: true }), (job, share) => {
        const { layout } = planOrSkip(job);
        const { flight } = layout;
        const quick = quickFigures(
          fixedOf(layout.job),
          flight.risers,
          flight.run,
          toMm(layout.job.stringer.stockDepth),
        );
        layout.obstacles.forEach(({ nearX, farX, nearY, farY, clearance: least }, at) => {
          seen += 1;
          const x = farX + share * (nearX - farX);
          const y = farY + share * (nearY - farY);
          const slope = flight.unitRise / flight.run;
          const stands = Math.min(flight.totalRise, Math.max(0, flight.unitRise + slope * (x + flight.nosing)));
          expect(y - stands).toBeGreaterThanOrEqual(least - 1e-6);
          expect(clearUnder(quick, at)).toBeCloseTo(least, 6);
        });
      }),
      { numRuns: 400 },
    );
    expect(seen).toBeGreaterThan(100);
  });
});

describe('against what is asked of it', () => {
  test('the headroom of the rules, with their section', () => {
    // 69 3/8 in are left: 129 3/8 − 61.735.
    expect(finding(under())).toMatchObject({ status: 'breaks', limit: 80, unit: 'in', section: 'R311.7.2' });
    expect(finding(under())?.actual).toBeCloseTo(129.375 - line(70.75), 9);
  });

  test('its own clearance in place of it, exactly met', () => {
    const own = (inches: string) =>
      finding(under({ height: '140 in', near: '130 3/4 in', far: '135 in', clearance: inches }));
    // At riser 1's face the line is R + R/10 × 1 1/8.
    expect(finding(under({ near: '143 in', far: '150 in', clearance: '129 3/8 in' }))?.status).toBe('meets');
    expect(finding(under({ near: '143 in', far: '150 in', clearance: '129 7/16 in' }))?.status).toBe('breaks');
    expect(own('120 in')).toMatchObject({ confidence: 'local', status: 'meets', limit: 120 });
  });

  test('in millimetres for a metric job', () => {
    const job = under({ clearance: '1900 mm' }, { units: 'metric' });
    expect(finding(job)).toMatchObject({ limit: 1900, unit: 'mm' });
  });

  test('what nobody asks anything of is not checked', () => {
    expect(finding(under({}, { rules: { pack: 'none-such' } }))).toMatchObject({ status: 'not-checked', unit: 'in' });
    const metric = under({}, { units: 'metric', rules: { pack: 'none-such' } });
    expect(finding(metric)).toMatchObject({ status: 'not-checked', unit: 'mm' });
  });

  test('stands among the dangers to the head', () => {
    const order = sortByDanger(planOf(under()).findings).map(({ field }) => field);
    expect(order.indexOf('obstacle.1')).toBeGreaterThan(order.indexOf('variation.riser.max'));
    expect(order.indexOf('obstacle.1')).toBeLessThan(order.indexOf('taste.twoRPlusG'));
  });

  test('too close to call names its height, its place and the rise', () => {
    const tight = `${129.375 - line(70.75)} in`;
    const close = finding(under({ clearance: tight.slice(0, 10).concat(' in').replace(' in in', ' in') }), 'usual');
    expect(close?.status).toBe('close');
    expect(close?.readAgain).toEqual(['survey.obstacles[0].height', 'survey.obstacles[0].near', 'survey.rise']);
    const far = under({ heightFar: '120 in', clearance: '62.1 in' });
    expect(finding(far, 'usual')?.readAgain.slice(0, 2)).toEqual([
      'survey.obstacles[0].heightFar',
      'survey.obstacles[0].far',
    ]);
    const floor = under({ near: '150 in', far: '160 in', height: '90 in', clearance: '89 3/8 in' });
    expect(finding(floor, 'usual')?.readAgain).toEqual(['survey.obstacles[0].height']);
  });
});

describe('what is refused', () => {
  test.each([
    [{ far: '59 in' }, 'stairs[0].survey.obstacles[0].far obstacle.order'],
    [{ near: '-1 in' }, 'stairs[0].survey.obstacles[0].near length.negative'],
    [{ height: '0 in' }, 'stairs[0].survey.obstacles[0].height value.notPositive'],
    [{ heightFar: '0 in' }, 'stairs[0].survey.obstacles[0].heightFar value.notPositive'],
    [{ clearance: '0 in' }, 'stairs[0].survey.obstacles[0].clearance value.notPositive'],
  ] as [Partial<ObstacleText>, string][])('%o', (obstacle, fault) => {
    expect(faultsOf(under(obstacle))).toEqual([fault]);
  });

  test('a key that is missing or unknown, by its place', () => {
    const without = changed(LOFT, { survey: { obstacles: [{ near: '1 in', far: '2 in' } as ObstacleText] } });
    expect(refusalOf(without)[0]).toContain('stairs[0].survey.obstacles[0].height');
    const odd = under({ hieght: '1 in' } as Partial<ObstacleText>);
    expect(refusalOf(odd)[0]).toContain('"height"');
  });
});

test('the command lists what is left under each, and where', () => {
  const [first] = answerOf(under()).obstacles;
  expect(inInches(first?.clearance ?? 0)).toBeCloseTo(129.375 - line(70.75), 9);
  expect(inInches(first?.at ?? 0)).toBeCloseTo(70.75, 9);
});
