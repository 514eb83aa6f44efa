import { describe, expect, it } from 'vitest';
import { countCoverage, countPlaywright, countSingle, countVitest, lastLine, outcome, sum } from './counting.mjs';

const file = (status, ...tests) => ({
  name: 'a.test.ts',
  status,
  message: 'cannot be read',
  assertionResults: tests.map((test) => ({ status: test })),
});

describe('counting what vitest reports', () => {
  it('counts passed, failed and skipped tests', () => {
    const report = { testResults: [file('failed', 'passed', 'failed', 'skipped'), file('passed', 'passed', 'todo')] };
    expect(countVitest(report, 1)).toEqual(outcome(2, 1, 2));
  });

  it('counts a file that cannot be loaded as a failure', () => {
    const counted = countVitest({ testResults: [file('failed'), file('passed', 'passed')] }, 1);
    expect(counted).toMatchObject({ passed: 1, failed: 1 });
    expect(counted.faults[0]).toContain('a.test.ts');
  });

  it.each([
    ['no report', undefined, 1],
    ['no test at all', { testResults: [] }, 0],
    ['an error outside of any test', { testResults: [file('passed', 'passed')] }, 1],
  ])('counts %s as a failure', (_, report, status) => {
    expect(countVitest(report, status).failed).toBe(1);
  });

  it('passes a clean run', () => {
    expect(countVitest({ testResults: [file('passed', 'passed', 'passed')] }, 0)).toEqual(outcome(2, 0));
  });
});

describe('counting what playwright reports', () => {
  it('counts an unsteady test as failed', () => {
    expect(countPlaywright({ stats: { expected: 3, unexpected: 1, flaky: 1, skipped: 2 } }, 1)).toEqual(
      outcome(3, 2, 2),
    );
  });

  it('counts an error outside of any test', () => {
    const counted = countPlaywright({ stats: { expected: 0 }, errors: [{ message: 'no server' }] }, 1);
    expect(counted).toEqual(outcome(0, 1, 0, ['no server']));
  });

  it.each([
    ['no report', undefined, 1],
    ['no test at all', { stats: {} }, 0],
    ['a bad end', { stats: { expected: 4 } }, 1],
  ])('counts %s as a failure', (_, report, status) => {
    expect(countPlaywright(report, status).failed).toBe(1);
  });
});

describe('counting the rest', () => {
  it('takes a static layer as one question', () => {
    expect(countSingle({ status: 0 })).toEqual(outcome(1, 0));
    expect(countSingle({ status: 2 })).toEqual(outcome(0, 1));
    expect(countSingle({ status: null })).toEqual(outcome(0, 1));
  });

  const covered = (...times) => ({
    'a.ts': {
      path: '/top/a.ts',
      branchMap: { 0: { type: 'if', loc: { start: { line: 7 } }, locations: [{ start: { line: 7 } }, {}] } },
      b: { 0: times },
    },
  });

  it('names each branch that no test takes', () => {
    expect(countCoverage(covered(1, 1), '/top/')).toEqual(outcome(1, 0));
    expect(countCoverage(covered(1, 0), '/top/').faults).toEqual(['a.ts: no test takes every way at line 7']);
    expect(countCoverage(undefined).failed).toBe(1);
  });

  it('adds up and words the last line', () => {
    const whole = sum([outcome(2, 0), outcome(3, 1, 0), outcome(1, 0)]);
    expect(lastLine(whole)).toBe('tests: 6 passed, 1 failed');
    expect(lastLine(outcome(6, 0, 2))).toBe('tests: 6 passed, 0 failed, 2 skipped');
  });
});
