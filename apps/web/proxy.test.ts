import { NextRequest } from 'next/server';
import { afterEach, expect, test, vi } from 'vitest';
import { proxy } from './proxy.ts';

const policyOf = (path: string): string | null => proxy(new NextRequest(`http://localhost:3000${path}`)).headers.get('referrer-policy');

test.each([
  ['/shared-plan/abc', 'no-referrer'],
  ['/reset/abc', 'strict-origin'], ['/invitation/abc', 'strict-origin'], ['/set-up/abc?again=yes', 'strict-origin'],
  ['/', 'same-origin'], ['/sign-in', 'same-origin'], ['/programmes/harrowdale/plans', 'same-origin'], ['/programmes/reset/plans', 'same-origin'],
])('of %s other pages are told what %s tells', (path, policy) => expect(policyOf(path)).toBe(policy));

afterEach(() => vi.unstubAllEnvs());

test('OFFLINE=off answers with a worker that goes, where else the worker is; nothing else changes', () => {
  const rewrittenTo = (path: string): string | null => proxy(new NextRequest(`http://localhost:3000${path}`)).headers.get('x-middleware-rewrite');
  expect(rewrittenTo('/sw.js')).toBeNull();
  vi.stubEnv('OFFLINE', 'off');
  expect([rewrittenTo('/sw.js'), rewrittenTo('/field')]).toEqual(['http://localhost:3000/no-worker.js', null]);
  vi.stubEnv('OFFLINE', 'on');
  expect(rewrittenTo('/sw.js')).toBeNull();
});
