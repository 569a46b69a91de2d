import { expect, test } from 'vitest';
import { securityHeaders } from './security-headers.ts';

const scriptsOf = (isDevelopment: boolean) => securityHeaders('/', 'nonce', isDevelopment)['content-security-policy'].split('; ').find((one) => one.startsWith('script-src')) ?? '';

test('scripts of this page run, WebAssembly is compiled, and text never becomes script', () => {
  expect(scriptsOf(false).split(' ')).toEqual(['script-src', "'self'", "'nonce-nonce'", "'strict-dynamic'", "'wasm-unsafe-eval'"]);
  expect(scriptsOf(true)).toContain("'unsafe-eval'");
});

test('nothing is asked of, or sent to, another server', () => {
  expect(securityHeaders('/', 'nonce', false)['content-security-policy']).not.toMatch(/https?:|\*/);
});
