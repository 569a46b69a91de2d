// How many passed and how many failed, from what each runner writes down.

/** @typedef {{ passed: number, failed: number }} Count */

/**
 * A file that cannot be loaded has no tests in it, and is a failure all the same.
 *
 * @param {{ numPassedTests: number, numFailedTests: number, testResults: ReadonlyArray<{ status: string, assertionResults: ReadonlyArray<{ status: string }> }> }} report vitest's
 * @returns {Count}
 */
export function countVitest({ numPassedTests, numFailedTests, testResults }) {
  const broken = testResults.filter(
    ({ status, assertionResults }) => status === 'failed' && !assertionResults.some((one) => one.status === 'failed'),
  );
  return { passed: numPassedTests, failed: numFailedTests + broken.length };
}

/**
 * One that passed only when tried again has failed.
 *
 * @param {{ stats: { expected: number, unexpected: number, flaky: number }, errors: readonly unknown[] }} report Playwright's
 * @returns {Count}
 */
export function countPlaywright({ stats, errors }) {
  return { passed: stats.expected, failed: stats.unexpected + stats.flaky + errors.length };
}

/**
 * A runner that ended badly without naming a failure has crashed, and that counts as one.
 *
 * @param {number | null} status what the process answered
 * @param {Count | undefined} count what it wrote down, if it came so far
 * @returns {Count}
 */
export function withCrash(status, count) {
  const { passed, failed } = count ?? { passed: 0, failed: 0 };
  const hasCrashed = (status !== 0 || count === undefined) && failed === 0;
  return { passed, failed: failed + (hasCrashed ? 1 : 0) };
}
