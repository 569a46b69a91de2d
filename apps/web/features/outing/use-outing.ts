import { useEffect, useState } from 'react';
import { askFrom } from '../../lib/phone/ask.ts';
import { freshPack } from '../../lib/phone/fresh-pack.ts';
import { type Made, madeHere } from '../../lib/phone/made.ts';
import type { KeptPack } from '../../lib/phone/pack-shapes.ts';
import { theStore } from '../../lib/phone/store.ts';

export interface Outing {
  readonly pack: KeptPack;
  readonly made: Made;
}

/** What a trip chooses from, and what was made here; `none` when nothing of the programme is on this phone. */
export function useOuting(programme: string): { outing: Outing | 'none' | undefined; setMade: (made: Made) => void } {
  const [outing, setOuting] = useState<Outing | 'none'>();
  useEffect(() => {
    let isGone = false;
    const find = async (): Promise<Outing | 'none'> => {
      const store = await theStore();
      const pack = await freshPack(store, askFrom(store), programme, Date.now());
      // A pack of an earlier version holds no stands.
      if (pack?.stands === undefined) return 'none';
      return { pack, made: await madeHere(store, programme) };
    };
    find().then((one) => isGone || setOuting(one), () => isGone || setOuting('none'));
    return () => void (isGone = true);
  }, [programme]);
  return { outing, setMade: (made) => setOuting((now) => (now === undefined || now === 'none' ? now : { ...now, made })) };
}

/** Trees of a stand that can be cut: those packed, and those written down here since; each once. */
export function treesOf({ pack, made }: Outing, standId: string): readonly { readonly id: string; readonly label: string; readonly taxonId: string }[] {
  const packed = pack.donorTrees.filter((tree) => tree.standId === standId && tree.state !== 'dead');
  const known = new Set(pack.donorTrees.map(({ id }) => id));
  return [...made.donorTrees.filter((tree) => tree.standId === standId && !known.has(tree.id)), ...packed];
}

/** Labels that are in use in the whole programme, as far as this phone knows. */
export const labelsIn = ({ pack, made }: Outing): ReadonlySet<string> => new Set([...pack.donorTrees, ...made.donorTrees].map(({ label }) => label));
