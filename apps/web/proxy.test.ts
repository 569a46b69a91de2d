import { NextRequest } from 'next/server';
import { expect, test } from 'vitest';
import { proxy } from './proxy.ts';

const policyOf = (path: string): string | null => proxy(new NextRequest(`http://localhost:3000${path}`)).headers.get('referrer-policy');

test.each([
  ['/shared-plan/abc', 'no-referrer'],
  ['/reset/abc', 'strict-origin'], ['/invitation/abc', 'strict-origin'], ['/set-up/abc?again=yes', 'strict-origin'],
  ['/', 'same-origin'], ['/sign-in', 'same-origin'], ['/programmes/harrowdale/plans', 'same-origin'], ['/programmes/reset/plans', 'same-origin'],
])('of %s other pages are told what %s tells', (path, policy) => expect(policyOf(path)).toBe(policy));
