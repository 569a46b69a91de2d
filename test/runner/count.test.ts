import { expect, test } from 'vitest';
import { countPlaywright, countVitest, withCrash } from './count.mjs';

const result = (status: string, ...assertions: string[]) => ({ status, assertionResults: assertions.map((one) => ({ status: one })) });

test('passed and failed tests are counted as the runner counts them', () => {
  const report = { numPassedTests: 7, numFailedTests: 1, testResults: [result('passed', 'passed'), result('failed', 'failed', 'passed')] };

  expect(countVitest(report)).toEqual({ passed: 7, failed: 1 });
});

test('a file that cannot be loaded is a failure, though it has no tests', () => {
  expect(countVitest({ numPassedTests: 7, numFailedTests: 0, testResults: [result('failed')] })).toEqual({ passed: 7, failed: 1 });
});

test('a journey that passed only the second time has failed', () => {
  expect(countPlaywright({ stats: { expected: 3, unexpected: 1, flaky: 1 }, errors: [] })).toEqual({ passed: 3, failed: 2 });
});

test('a runner that crashes counts as one failure', () => {
  expect(withCrash(1, undefined)).toEqual({ passed: 0, failed: 1 });
  expect(withCrash(0, undefined)).toEqual({ passed: 0, failed: 1 });
  expect(withCrash(null, { passed: 3, failed: 0 })).toEqual({ passed: 3, failed: 1 });
});

test('a failure that was counted is not counted again', () => {
  expect(withCrash(1, { passed: 3, failed: 2 })).toEqual({ passed: 3, failed: 2 });
  expect(withCrash(0, { passed: 3, failed: 0 })).toEqual({ passed: 3, failed: 0 });
});
