import { expect, test } from 'vitest';
import { refuseOldNode } from './node-version.mjs';

test.each(['20.19.0', '20.20.2', '22.0.0', '24.1.0'])('%s will do', (version) => {
  expect(refuseOldNode(version)).toBeUndefined();
});

test.each(['20.18.3', '18.20.0', '8.0.0'])('%s is too old, and the person is told what to do', (version) => {
  expect(refuseOldNode(version)).toMatch(/needs Node\.js 20\.19 or later.*nodejs\.org/);
});
