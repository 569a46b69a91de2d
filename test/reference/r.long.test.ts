import { afterAll, beforeAll, describe, test } from 'vitest';
import { type R, startR } from './r.ts';
import { WITNESSES } from './witnesses.ts';

/** Another one each time; a failure names it. */
const seed = Date.now() % 2 ** 31;

let r: R;
beforeAll(async () => {
  r = await startR();
}, 60_000);
afterAll(() => r.stop());

describe(`R agrees on two hundred random inputs, seed ${seed}`, () => {
  test.each(WITNESSES)('with $what', async ({ agrees }) => agrees(r, 200, seed));
});
