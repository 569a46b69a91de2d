import { useCallback, useEffect, useState } from 'react';
import type { KeptPack, KeptWalk } from '../../lib/phone/pack-shapes.ts';
import { allPacked } from '../../lib/phone/packing.ts';
import { theStore } from '../../lib/phone/store.ts';

export interface Packed {
  readonly packs: readonly KeptPack[];
  readonly walks: readonly KeptWalk[];
}

/** What lies on this phone, and how to look again. */
export function usePacked(): { packed: Packed | undefined; look: () => void } {
  const [packed, setPacked] = useState<Packed>();
  const look = useCallback(() => {
    theStore().then(allPacked).then(setPacked, () => setPacked({ packs: [], walks: [] }));
  }, []);
  useEffect(look, [look]);
  return { packed, look };
}
