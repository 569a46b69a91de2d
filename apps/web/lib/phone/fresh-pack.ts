import type { Ask } from './ask.ts';
import type { KeptPack } from './pack-shapes.ts';
import { packOf, packProgramme } from './packing.ts';
import { soon } from './soon.ts';
import type { Store } from './store.ts';

/**
 * What holds wherever one walks: fetched anew where there is a signal, else as it lies here.
 * Whoever has it on the phone already is not held up by a weak one.
 *
 * @returns nothing when neither is to be had
 */
export async function freshPack(store: Store, ask: Ask, programme: string, now: number): Promise<KeptPack | undefined> {
  const fresh = packProgramme(store, ask, { programme, now });
  await soon(fresh, (await packOf(store, programme)) !== undefined);
  return packOf(store, programme);
}
