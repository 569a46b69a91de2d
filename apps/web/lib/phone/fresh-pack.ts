import type { Pack } from '@sprigline/contract';
import { type Ask, apiPath, WAITED_FOR_MS } from './ask.ts';
import type { KeptPack } from './pack-shapes.ts';
import { packOf } from './packing.ts';
import type { Store } from './store.ts';

/**
 * What holds wherever one walks: fetched anew where there is a signal, else as it lies here.
 *
 * @returns nothing when neither is to be had
 */
export async function freshPack(store: Store, ask: Ask, programme: string, now: number): Promise<KeptPack | undefined> {
  const answer = await ask(apiPath(programme, 'pack'), { patienceMs: WAITED_FOR_MS }).catch(() => undefined);
  if (answer?.status !== 200) return packOf(store, programme);
  const pack: KeptPack = { ...(answer.body as Pack), packedAt: now };
  // A full phone goes on with what it has just heard.
  await store.put('packs', pack, programme).catch(() => undefined);
  return pack;
}
