// @ts-check
// Reads from a runner's own report how many tests passed, failed and were left out.
import fs from 'node:fs';

/** @typedef {{ passed: number, failed: number, skipped: number }} Count */

/**
 * A runner that ended badly without a failed test (a fault outside a test, a report that is not there) counts
 * as one failure, and so does a run without any test.
 * @param {'vitest' | 'playwright' | null} runner @param {string} file its report @param {boolean} good its ending
 * @returns {Count}
 */
export function countTests(runner, file, good) {
  if (runner === null) return { passed: good ? 1 : 0, failed: good ? 0 : 1, skipped: 0 };
  const report = readJson(file);
  if (report === null) return { passed: 0, failed: 1, skipped: 0 };
  const count = runner === 'vitest' ? ofVitest(report) : ofPlaywright(report);
  const nothing = count.passed + count.failed === 0;
  if ((!good || nothing) && count.failed === 0) count.failed = 1;
  return count;
}

/** @param {string} file @returns {any} the report, whose shape is the runner's, or null */
function readJson(file) {
  try {
    return JSON.parse(fs.readFileSync(file, 'utf8'));
  } catch {
    return null;
  }
}

/** @param {any} report @returns {Count} */
function ofVitest(report) {
  /** @type {{ status: string, assertionResults: { status: string }[] }[]} */
  const files = report.testResults;
  const count = { passed: 0, failed: 0, skipped: 0 };
  for (const { status, assertionResults } of files) {
    const failed = assertionResults.filter((test) => test.status === 'failed').length;
    count.passed += assertionResults.filter((test) => test.status === 'passed').length;
    count.skipped += assertionResults.filter((test) => !['passed', 'failed'].includes(test.status)).length;
    // A file that does not load has no tests to fail.
    count.failed += failed === 0 && status === 'failed' ? 1 : failed;
  }
  return count;
}

/** @param {any} report @returns {Count} */
function ofPlaywright(report) {
  const { expected, unexpected, flaky, skipped } = report.stats;
  const errors = report.errors.length;
  // A test that passes only sometimes has failed.
  return { passed: expected, failed: unexpected + flaky + errors, skipped };
}
