import type { FastifyRequest } from 'fastify';
import { expect, test } from 'vitest';
import { askedFrom, STAMP, stampFor } from './asked-from.ts';

const SECRET = 'only for tests, and thirty-two signs long';
const from = (ip: string, stamp?: string) => ({ ip, headers: stamp === undefined ? {} : { [STAMP]: stamp } }) as unknown as FastifyRequest;

test.each([
  ['192.0.2.7', '192.0.2.7'],
  ['::ffff:192.0.2.7', '192.0.2.7'],
  ['2001:db8:1:2:3:4:5:6', '2001:db8:1:2'],
  ['2001:db8:1:2:ffff::1', '2001:db8:1:2'],
  ['2001:db8::1', '2001:db8:0:0'],
  ['::1', '0:0:0:0'],
])('%s counts as %s: an IPv6 household is one', (ip, counted) => {
  expect(askedFrom(from(ip), SECRET)).toBe(counted);
});

test('a stamp of ours tells whose browser asked; one with another secret tells nothing', () => {
  const stamp = stampFor(from('192.0.2.44'), SECRET);
  expect(askedFrom(from('127.0.0.1', stamp), SECRET)).toBe('192.0.2.44');
  expect(askedFrom(from('127.0.0.1', stamp), `${SECRET}!`)).toBe('127.0.0.1');
  expect(askedFrom(from('127.0.0.1', '192.0.2.44'), SECRET)).toBe('127.0.0.1');
});
