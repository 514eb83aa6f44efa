/**
 * Turns what the runners report into numbers. A runner that ended badly without naming a failed
 * test, or that found no test where some are expected, is one failure: silence is no success.
 */

/** What a layer came to; `faults` are sentences for the reader. */
export function outcome(passed, failed, skipped = 0, faults = []) {
  return { passed, failed, skipped, faults };
}

/** A layer that is one question with one answer: types, lint, build. */
export function countSingle({ status }) {
  return status === 0 ? outcome(1, 0) : outcome(0, 1);
}

/** @param report what vitest's json reporter wrote; undefined if it wrote nothing */
export function countVitest(report, status) {
  if (!report) return outcome(0, 1, 0, [`The test runner broke off (exit status ${status}) and reported nothing.`]);
  const files = report.testResults ?? [];
  const tests = files.flatMap((file) => file.assertionResults);
  const brokenFiles = files.filter((file) => file.status === 'failed' && !file.assertionResults.some(hasFailed));
  const passed = tests.filter((test) => test.status === 'passed').length;
  const failed = tests.filter(hasFailed).length + brokenFiles.length;
  const skipped = tests.length - passed - tests.filter(hasFailed).length;
  const faults = brokenFiles.map((file) => `${file.name} could not be run: ${file.message}`);
  return withoutSilence(outcome(passed, failed, skipped, faults), status);
}

function hasFailed(test) {
  return test.status === 'failed';
}

/** @param report what playwright's json reporter wrote; undefined if it wrote nothing */
export function countPlaywright(report, status) {
  if (!report) return outcome(0, 1, 0, [`The browser tests broke off (exit status ${status}) and reported nothing.`]);
  const { expected = 0, unexpected = 0, flaky = 0, skipped = 0 } = report.stats ?? {};
  const errors = report.errors ?? [];
  const faults = errors.map((error) => error.message ?? String(error));
  // A test that passes only now and then is no test.
  return withoutSilence(outcome(expected, unexpected + flaky + errors.length, skipped, faults), status);
}

function withoutSilence(counted, status) {
  const { passed, failed, skipped, faults } = counted;
  if (failed > 0) return counted;
  if (passed + skipped === 0) return outcome(0, 1, 0, [...faults, 'No test was found where tests are expected.']);
  if (status === 0) return counted;
  return outcome(passed, 1, skipped, [...faults, `The runner ended with status ${status} though no test failed.`]);
}

/**
 * @param report a coverage report by file, each with `branchMap` (where) and `b` (how often)
 * @param root what the paths in it begin with
 * @returns one failure if any branch was never taken, with the lines
 */
export function countCoverage(report, root = '') {
  if (!report) return outcome(0, 1, 0, ['No coverage was reported.']);
  const faults = Object.values(report).flatMap((file) => {
    const lines = [...new Set(linesMissed(file))].sort((a, b) => a - b);
    return lines.length === 0
      ? []
      : [`${file.path.replace(root, '')}: no test takes every way at line ${lines.join(', ')}`];
  });
  return faults.length === 0 ? outcome(1, 0) : outcome(0, 1, 0, faults);
}

function linesMissed({ branchMap, b }) {
  return Object.entries(branchMap).flatMap(([id, { loc, locations }]) =>
    b[id].flatMap((times, way) => (times > 0 ? [] : [locations[way]?.start?.line ?? loc.start.line])),
  );
}

export function sum(outcomes) {
  const total = (key) => outcomes.reduce((so, one) => so + one[key], 0);
  return outcome(total('passed'), total('failed'), total('skipped'));
}

/** The last line of a run. */
export function lastLine({ passed, failed, skipped }) {
  return `tests: ${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`;
}
