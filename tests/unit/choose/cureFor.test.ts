import fc from 'fast-check';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { applyAlternative, compareLayouts } from '../../../src/core/choose/compareLayouts';
import { cureFor } from '../../../src/core/choose/cureFor';
import type { Finding } from '../../../src/core/codes/findings';
import type { JobText } from '../../../src/core/job/jobText';
import * as plans from '../../../src/core/plan/planStair';
import { anyStair, planOrSkip } from '../../fixtures/anyStair';
import { BOOK, type Changes, changed, inInches, LOFT, planOf, SLAB } from '../../fixtures/stairs';

afterEach(() => vi.restoreAllMocks());

function findingOn(job: JobText, field: string): Finding {
  const found = planOf(job).findings.find((finding) => finding.field === field);
  if (found === undefined) throw new Error(`nothing is said about ${field}`);
  return found;
}

const curesOf = (job: JobText, field: string) =>
  cureFor(job, 0, findingOn(job, field), BOOK).map(({ changes: [change] }) => `${change.key} ${change.value}`);

describe('headroom short by 1/32 in, the loft stair of our own', () => {
  test('every key that clears it, the least trouble first', () => {
    // 79.965 in at 126 in. Opening: 126.0458 in is needed, so the next eighth. Run: the pack's least is 10 in
    // already. Nosing: 79.965 + 0.75402 × 3/8 = 80.248. Risers: 13 would stand at 8.12 in, over 7 3/4 in.
    expect(curesOf(LOFT, 'headroom.min')).toEqual(['steps.nosing 3/4 in', 'survey.openingFraming 126 1/8 in']);
  });

  test('each says what it leads to', () => {
    const [nosing, opening] = cureFor(LOFT, 0, findingOn(LOFT, 'headroom.min'), BOOK);
    expect(inInches(nosing?.by ?? null)).toBeCloseTo(-3 / 8, 9);
    expect(inInches(nosing?.figures.headroom ?? null)).toBeCloseTo(79.965 + 0.7540179 * 0.375, 3);
    expect(inInches(opening?.by ?? null)).toBeCloseTo(1 / 8, 9);
    expect(inInches(opening?.figures.headroom ?? null)).toBeCloseTo(80.0597, 3);
    expect(opening?.stillBroken).toEqual([]);
  });

  test('a run above the least is shortened by as little as clears', () => {
    // At 10 1/4 in the opening must be 129.1377 in; at 126 in the run may be (126 − 2.375) × 7.540179 / 93.25 = 9.9963.
    const local = [{ field: 'tread.min', value: '9 in' }];
    const job = changed(LOFT, { steps: { run: '10 1/4 in' }, rules: { pack: 'irc-2021', local } });
    expect(curesOf(job, 'headroom.min')).toContain('steps.run 9 15/16 in');
  });
});

describe('too close to call', () => {
  // 126 1/16 in gives 80.0126 in of headroom, and the tape's own sixteenths can take that away.
  const job = changed(LOFT, { survey: { openingFraming: '126 1/16 in' } });
  const judged = (asked: JobText) => {
    const plan = plans.planStair(asked, 0, BOOK, 'usual');
    if (!plan.ok) throw new Error('does not plan');
    return plan.value.findings.find(({ field }) => field === 'headroom.min') as Finding;
  };

  test('a cure brings it into clear air, by no more than it takes', () => {
    expect(judged(job).status).toBe('close');
    const cures = cureFor(job, 0, judged(job), BOOK, 'usual');
    const opening = cures.find(({ changes: [change] }) => change.key === 'survey.openingFraming');
    expect(judged(applyAlternative(job, 0, opening ?? { changes: [] })).status).toBe('meets');
    const eighths = Number((126.0625 * 25.4 + (opening?.by ?? 0)) / (25.4 / 8));
    expect(eighths).toBeCloseTo(Math.round(eighths), 9);
    const shorter = changed(job, { survey: { openingFraming: `${Math.round(eighths) - 1}/8 in` } });
    expect(judged(shorter).status).toBe('close');
  });

  test('without a doubt it is in order', () => {
    expect(findingOn(job, 'headroom.min').status).toBe('meets');
  });

  test('neighbours are judged with the same doubt', () => {
    const chosen = compareLayouts(job, 0, BOOK, 'usual').find((one) => one.chosen);
    expect(chosen?.outcome?.counts.rule.close).toBeGreaterThan(0);
    expect(compareLayouts(job, 0, BOOK).every(({ outcome }) => (outcome?.counts.rule.close ?? 0) === 0)).toBe(true);
  });
});

describe('other findings', () => {
  const cases: readonly [string, Changes, string, readonly string[]][] = [
    ['a riser over its limit', { steps: { risers: 13 } }, 'riser.max', []],
    [
      'a riser over its limit under a long opening',
      { steps: { risers: 13 }, survey: { openingFraming: '150 in' } },
      'riser.max',
      ['steps.risers 14'],
    ],
    [
      'two risers more where one is not enough',
      { steps: { risers: 12 }, survey: { openingFraming: '150 in' } },
      'riser.max',
      ['steps.risers 14'],
    ],
    [
      'a run under its least',
      { steps: { run: '9 13/16 in' }, survey: { openingFraming: '150 in' } },
      'tread.min',
      ['steps.run 10 in'],
    ],
    [
      'a run off the tape, the next reading up',
      { steps: { run: '9.99 in' }, survey: { openingFraming: '150 in' } },
      'tread.min',
      ['steps.run 10 in'],
    ],
    ['a nosing over its limit', { steps: { nosing: '1 3/8 in' } }, 'nosing.max', ['steps.nosing 1 1/4 in']],
    ['a width that no such key can change', { survey: { widthFraming: '36 in' } }, 'width.min', []],
  ];

  test.each(cases)('%s', (_, changes, field, expected) => {
    const cures = curesOf(changed(LOFT, changes), field);
    if (field === 'nosing.max') expect(cures).toEqual(expect.arrayContaining([...expected]));
    else expect(cures).toEqual(expected);
  });

  test('a band is entered at its near edge', () => {
    // 2R + G = 2 × 7.540179 + 12 = 27.08; at most 25 asks for 9.9196 in: 9 7/8, where the least run is lowered to 9.
    const local = [{ field: 'tread.min', value: '9 in' }];
    const job = changed(LOFT, {
      steps: { run: '12 in' },
      survey: { openingFraming: '150 in' },
      rules: { pack: 'irc-2021', local },
    });
    expect(curesOf(job, 'taste.twoRPlusG')).toContain('steps.run 9 7/8 in');
  });

  test('in millimetres the run moves by whole ones', () => {
    // Notch depth 152.06 of 235 mm leaves 82.94; 88.9 is wanted. A shorter run gives a longer plumb cut, so
    // that half of it must still find header: with a beam of 240 mm it does not, and that is no cure.
    const shallow = changed(SLAB, { stringer: { stockDepth: '235 mm' }, rules: { pack: 'none' } });
    expect(curesOf(shallow, 'throat').join()).not.toContain('steps.run');
    const job = changed(shallow, { survey: { headerDepth: '300 mm' } });
    const [cure] = cureFor(job, 0, findingOn(job, 'throat'), BOOK).filter(
      ({ changes: [change] }) => change.key === 'steps.run',
    );
    expect(cure?.changes[0].value).toMatch(/^\d+ mm$/);
    const shorter = changed(job, { steps: { run: String(cure?.changes[0].value) } });
    const longer = changed(job, { steps: { run: `${Number.parseInt(String(cure?.changes[0].value), 10) + 1} mm` } });
    expect(findingOn(shorter, 'throat').status).toBe('meets');
    expect(findingOn(longer, 'throat').status).toBe('breaks');
  });

  test.each<[string, string]>([
    ['in order', 'tread.min'],
    ['not judged', 'landing.minDepth'],
  ])('what is %s needs no cure', (_, field) => {
    expect(curesOf(LOFT, field)).toEqual([]);
  });

  test('a stair that does not lay out has none', () => {
    const finding = findingOn(LOFT, 'headroom.min');
    expect(cureFor(changed(LOFT, { survey: { rise: '0 in' } }), 0, finding, BOOK)).toEqual([]);
  });

  test('a finding of another stair, which this one does not know, has none', () => {
    const finding: Finding = { ...findingOn(LOFT, 'headroom.min'), field: 'of.another' };
    expect(cureFor(LOFT, 0, finding, BOOK)).toEqual([]);
  });
});

const broken = ({ findings }: plans.JudgedPlan, kinds: readonly string[]) =>
  new Set(findings.filter(({ status, kind }) => status === 'breaks' && kinds.includes(kind)).map(({ field }) => field));

test('for any stair and any broken finding: proven, nothing new broken, in few plans', () => {
  const planStair = vi.spyOn(plans, 'planStair');
  fc.assert(
    fc.property(anyStair, fc.constantFrom(null, 'usual' as const), (job, doubt) => {
      const before = planOrSkip(job, doubt);
      for (const finding of before.findings.filter(({ status }) => status === 'breaks' || status === 'close')) {
        planStair.mockClear();
        const cures = cureFor(job, 0, finding, BOOK, doubt);
        expect(planStair.mock.calls.length).toBeLessThan(30);
        for (const cure of cures) {
          const after = planOrSkip(applyAlternative(job, 0, cure), doubt);
          const answers = after.findings.filter(({ field, kind }) => field === finding.field && kind === finding.kind);
          expect(answers.map(({ status }) => status)).toEqual(answers.map(() => 'meets'));
          const fresh = [...broken(after, ['rule', 'build'])].filter(
            (field) => !broken(before, ['rule', 'build']).has(field),
          );
          expect(fresh).toEqual([]);
        }
      }
    }),
    { numRuns: 25 },
  );
}, 30_000);

test('no nearer run on the grid would have cleared it', () => {
  const near = (job: JobText, finding: Finding, run: string) =>
    planOf(changed(job, { steps: { run } })).findings.find(
      ({ field, kind }) => field === finding.field && kind === finding.kind,
    )?.status === 'meets';
  fc.assert(
    fc.property(anyStair, (job) => {
      const before = planOrSkip(job);
      const metric = before.layout.job.units === 'metric';
      const grid = metric ? 1 : 25.4 / 16;
      const { run } = before.layout.flight;
      for (const finding of before.findings.filter(({ status }) => status === 'breaks')) {
        for (const { changes, by } of cureFor(job, 0, finding, BOOK)) {
          if (changes[0].key !== 'steps.run') continue;
          const target = Math.round((run + by) / grid);
          const way = Math.sign(by);
          for (let k = target - way; (k * grid - run) * way > 1e-9; k -= way) {
            expect(near(job, finding, metric ? `${k} mm` : `${k}/16 in`), `${finding.field} ${k}`).toBe(false);
          }
        }
      }
    }),
    { numRuns: 20 },
  );
}, 30_000);
