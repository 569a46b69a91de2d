import { expect, test } from 'vitest';
import { newId } from '../new-id.ts';
import { stickingIdOf } from '../sticking-id.ts';
import { stickingIdHere } from './sticking-id.ts';

test('a phone and the desk make the same id of a sticking', async () => {
  const [bundle, recipe] = [newId(), newId()];
  expect(await stickingIdHere(bundle, '2026-11-25', recipe)).toBe(stickingIdOf(bundle, '2026-11-25', recipe));
  expect(await stickingIdHere(bundle, '2026-11-25', undefined)).toBe(stickingIdOf(bundle, '2026-11-25', undefined));
});
