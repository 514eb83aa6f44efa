/**
 * Too close to call: only where the tape's doubt is handed in, only where it can turn the answer, and
 * with the readings that would settle it. The weights are held against stairs laid out anew with one
 * reading moved.
 */
import { describe, expect, test } from 'vitest';
import type { Finding } from '../../../src/core/codes/findings';
import {
  headroom,
  type Measure,
  stockDepth,
  stockThickness,
  stringerSpacing,
  throat,
  totalRise,
  twoRisesAndRun,
  USUAL_TAPE_DOUBT,
  unitRise,
  width,
} from '../../../src/core/codes/measures';
import type { JobText } from '../../../src/core/job/jobText';
import type { StairLayout } from '../../../src/core/layout/layoutStair';
import { planStair } from '../../../src/core/plan/planStair';
import { type Exact, inch, toMm, whole } from '../../../src/core/units/exact';
import { BOOK, bare, type Changes, changed, DECK, LOFT, planOf, SLAB } from '../../fixtures/stairs';

function findingsOn(job: JobText, doubt?: Exact | 'usual' | null): readonly Finding[] {
  const plan = planStair(job, 0, BOOK, doubt);
  if (!plan.ok) throw new Error(JSON.stringify(plan.problems));
  return plan.value.findings;
}

const of = (findings: readonly Finding[], field: string): Finding | undefined =>
  findings.find((finding) => finding.field === field);

/** 14 risers of 7 1/2 in on level floors, with everything read. */
const READ = changed(LOFT, {
  survey: { rise: '105 in', lowerToAdd: '0 in', upperToAdd: '0 in', footBelowReading: '1/4 in' },
  steps: { riserThickness: '0 in' },
});

describe('the weight of a reading is what a stair laid out with that reading moved shows', () => {
  const measures: Readonly<Record<string, (layout: StairLayout) => Measure | null>> = {
    headroom,
    width,
    totalRise,
    unitRise,
    twoRisesAndRun,
    throat,
    stringerSpacing,
    stockDepth,
    stockThickness,
  };
  const STEP = 0.001;
  const jobs: Readonly<Record<string, JobText>> = {
    loft: READ,
    'a level top': changed(READ, { stringer: { top: 'level-with-floor', hanger: undefined } }),
    slab: changed(SLAB, { survey: { openingFraming: '2900 mm', widthFraming: '1000 mm' } }),
    'a low edge past the first nosing': changed(READ, { survey: { openingFraming: '150 in' } }),
  };
  const moved = (job: JobText, key: string, by: number): JobText => {
    const [part, name] = key.split('.') as ['survey' | 'stringer', string];
    const { job: stair } = planOf(job).layout;
    const text = `${(toMm((stair[part] as unknown as Record<string, Exact>)[name] as Exact) + by).toFixed(6)} mm`;
    return changed(job, { [part]: { [name]: text } });
  };

  test.each(Object.keys(jobs).flatMap((job) => Object.keys(measures).map((measure) => [job, measure] as const)))(
    '%s: %s',
    (name, what) => {
      const job = jobs[name] as JobText;
      const measure = measures[what] as (layout: StairLayout) => Measure | null;
      const found = measure(planOf(job).layout);
      expect(found).not.toBeNull();
      for (const key of [
        'survey.rise',
        'survey.footBelowReading',
        'survey.openingFraming',
        'survey.floorDepth',
        'survey.widthFraming',
        'stringer.stockDepth',
        'stringer.stockThickness',
      ]) {
        const { defaults } = planOf(job).layout.job;
        if (defaults.some((used) => used.key === key)) continue;
        const at = (by: number) => toMm((measure(planOf(moved(job, key, by)).layout) as Measure).exact);
        const slope = (at(STEP) - at(-STEP)) / (2 * STEP);
        const weight = found?.readings.find((reading) => reading.key === key)?.weight;
        // The thickness of the stock is no tape reading of the spacing: it is what boards are.
        if (what === 'stringerSpacing' && key === 'stringer.stockThickness') continue;
        expect(weight === undefined ? 0 : toMm(weight), key).toBeCloseTo(slope, 6);
      }
    },
  );

  test('what was not surveyed is not measured', () => {
    const { layout } = planOf(bare('imperial', '105 in'));
    expect([headroom(layout), width(layout), stringerSpacing(layout)]).toEqual([null, null, null]);
    // What the program filled in was read by nobody.
    expect(stockDepth(layout).readings).toEqual([]);
    expect(totalRise(layout).readings.map(({ key }) => key)).toEqual(['survey.rise']);
  });
});

describe('an answer is too close to call', () => {
  test('only for who asks', () => {
    for (const job of [LOFT, READ, DECK, SLAB]) {
      expect(findingsOn(job).filter(({ status }) => status === 'close')).toEqual([]);
      expect(findingsOn(job)).toEqual(findingsOn(job, null));
      expect(findingsOn(job)).toEqual(findingsOn(job, whole(0)));
    }
  });

  test('headroom that misses by 0.035 in: which readings to take again, the one that counts most first', () => {
    const headroomOf = (doubt?: Exact | 'usual') => of(findingsOn(LOFT, doubt), 'headroom.min');
    expect(headroomOf()).toMatchObject({ status: 'breaks', readAgain: [] });
    const close = headroomOf('usual');
    expect(close).toMatchObject({
      status: 'close',
      limit: 80,
      readAgain: ['survey.floorDepth', 'survey.rise', 'survey.openingFraming'],
    });
    expect(close?.actual).toBeCloseTo(79.965, 3);
    // 1 for the floor, 0.883 for the rise, 0.754 for the opening: 0.0345 in is reached by a doubt of 0.0131.
    expect(headroomOf(inch(0.013))?.status).toBe('breaks');
    expect(headroomOf(inch(0.0132))?.status).toBe('close');
  });

  const level: Changes['survey'] = { lowerToAdd: '0 in', upperToAdd: '0 in' };
  const doubt = inch(1 / 16);

  test.each<[string, Changes, string[]]>([
    // 14 × 7 3/4 = 108 1/2: the tape's 1/16 is as much on the rise as on 14 risers.
    ['riser.max', { survey: { ...level, rise: '108 1/2 in' } }, ['survey.rise']],
    ['riser.max', { survey: { ...level, rise: '108 9/16 in' } }, ['survey.rise']],
    [
      'riser.max',
      { survey: { ...level, rise: '108 7/16 in', footBelowReading: '1/16 in' } },
      ['survey.rise', 'survey.footBelowReading'],
    ],
    ['width.min', { survey: { widthFraming: '37 in' } }, ['survey.widthFraming']],
    ['width.min', { survey: { widthFraming: '36 15/16 in' } }, ['survey.widthFraming']],
    ['flight.maxVerticalRise', { survey: { ...level, rise: '151 in' }, steps: { risers: 20 } }, ['survey.rise']],
    [
      'openRiser.maxSphere',
      { survey: { ...level, rise: '105 in' }, steps: { riserThickness: '0 in', treadThickness: '3 1/2 in' } },
      ['survey.rise'],
    ],
  ])('%s %j', (field, changes, readAgain) => {
    const job = changed(LOFT, { steps: { risers: 14 }, ...changes });
    expect(of(findingsOn(job, doubt), field)).toMatchObject({ status: 'close', readAgain });
    expect(of(findingsOn(job), field)?.status).not.toBe('close');
  });

  test.each<[string, Changes, string]>([
    ['riser.max', { survey: { ...level, rise: '108 3/8 in' } }, 'meets'],
    ['riser.max', { survey: { ...level, rise: '108 5/8 in' } }, 'breaks'],
    ['width.min', { survey: { widthFraming: '37 1/8 in' } }, 'meets'],
    ['width.min', { survey: { widthFraming: '36 7/8 in' } }, 'breaks'],
    // What was chosen is no reading: a run exactly on its limit is on it.
    ['tread.min', { steps: { run: '10 in' } }, 'meets'],
    ['nosing.max', { steps: { nosing: '1 1/4 in' } }, 'meets'],
    ['variation.riser.max', {}, 'meets'],
  ])('and %s %j is not: %s', (field, changes, status) => {
    const job = changed(LOFT, { ...changes, steps: { risers: 14, ...changes.steps } });
    expect(of(findingsOn(job, doubt), field)).toMatchObject({ status, readAgain: [] });
  });

  test('whether something is asked for at all can be too close as well', () => {
    const low = (rise: string) =>
      changed(LOFT, { survey: { ...level, rise }, steps: { risers: 4 }, stringer: { kicker: undefined } });
    const guard = (rise: string) => of(findingsOn(low(rise), doubt), 'guard.requiredAboveDrop');
    expect(guard('30 in')).toMatchObject({ status: 'close', readAgain: ['survey.rise'] });
    expect(guard('30 1/16 in')?.status).toBe('close');
    expect(guard('29 15/16 in')?.status).toBe('meets');
    expect(guard('30 1/8 in')?.status).toBe('not-checked');
  });

  test('an opening that stays under the free height, by less than the tape can tell', () => {
    // Four risers: the highest opening ends at three risers less the tread, 22 1/4 in.
    const low = changed(LOFT, {
      survey: { ...level, rise: '31 in' },
      steps: { risers: 4, riserThickness: '0 in', treadThickness: '1 in' },
      stringer: { kicker: undefined },
      rules: { pack: 'irc-2021', local: [{ field: 'openRiser.freeBelowHeight', value: '22 1/4 in' }] },
    });
    expect(of(findingsOn(low), 'openRiser.maxSphere')?.status).toBe('meets');
    expect(of(findingsOn(low, doubt), 'openRiser.maxSphere')?.status).toBe('close');
  });

  test('the usual doubt is 1/16 in, or 1 mm', () => {
    expect(toMm(USUAL_TAPE_DOUBT.imperial)).toBe(1.5875);
    expect(toMm(USUAL_TAPE_DOUBT.metric)).toBe(1);
    const width900 = (framing: string) =>
      changed(SLAB, {
        survey: { wallboard: '0 mm', widthFraming: framing },
        rules: { local: [{ field: 'width.min', value: '900 mm' }] },
      });
    expect(of(findingsOn(width900('900.999999 mm'), 'usual'), 'width.min')?.status).toBe('close');
    expect(of(findingsOn(width900('901 mm'), 'usual'), 'width.min')?.status).toBe('meets');
  });
});
