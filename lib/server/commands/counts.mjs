import { existsSync, readFileSync } from 'node:fs';

/** @typedef {{ passed: number, failed: number, skipped: number }} Counts */

/** A runner that crashed, or that ran nothing at all, has failed whatever else it says.
 * @param {Counts} counts @param {number} exitCode @returns {Counts} */
function honest(counts, exitCode) {
  const ranNothing = counts.passed + counts.failed + counts.skipped === 0;
  const crashed = exitCode !== 0 && counts.failed === 0;
  return ranNothing || crashed ? { ...counts, failed: counts.failed + 1 } : counts;
}

/** @param {string} path */
function readReport(path) {
  if (!existsSync(path)) return {};
  try {
    return JSON.parse(readFileSync(path, 'utf8'));
  } catch {
    return {};
  }
}

/** What one check that either holds or does not counts for. @param {number} exitCode @returns {Counts} */
export function countsOfCheck(exitCode) {
  return { passed: exitCode === 0 ? 1 : 0, failed: exitCode === 0 ? 0 : 1, skipped: 0 };
}

/** Reads a vitest JSON report. @param {string} path @param {number} exitCode @returns {Counts} */
export function countsOfVitest(path, exitCode) {
  const report = readReport(path);
  return honest(
    {
      passed: report.numPassedTests ?? 0,
      failed: report.numFailedTests ?? 0,
      skipped: (report.numPendingTests ?? 0) + (report.numTodoTests ?? 0),
    },
    exitCode,
  );
}

/** Reads a playwright JSON report; a test that passed only at the second try has failed. @param {string} path @param {number} exitCode @returns {Counts} */
export function countsOfPlaywright(path, exitCode) {
  const { stats = {} } = readReport(path);
  return honest(
    { passed: stats.expected ?? 0, failed: (stats.unexpected ?? 0) + (stats.flaky ?? 0), skipped: stats.skipped ?? 0 },
    exitCode,
  );
}

/**
 * All counts together. Where nothing may be skipped, what was skipped has failed.
 * @param {Counts[]} all @param {{ skipsFail: boolean }} options @returns {Counts}
 */
export function totalOf(all, { skipsFail }) {
  const sum = { passed: 0, failed: 0, skipped: 0 };
  for (const counts of all) {
    sum.passed += counts.passed;
    sum.failed += counts.failed + (skipsFail ? counts.skipped : 0);
    sum.skipped += skipsFail ? 0 : counts.skipped;
  }
  return sum;
}

/** @param {Counts} counts */
export function summaryOf({ passed, failed, skipped }) {
  return `${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`;
}
