import { useEffect, useState } from 'react';
import { allPacked } from '../../lib/phone/packing.ts';
import { theStore } from '../../lib/phone/store.ts';
import { useOwn } from '../../lib/phone/use-own.ts';
import type { Here } from './found-here.ts';

/** What lies on this phone of a programme, with what was logged here since; `none` where nothing of it was packed. */
export function useHere(programme: string): Here | 'none' | undefined {
  const own = useOwn(programme);
  const [packed, setPacked] = useState<Omit<Here, 'own'> | 'none'>();
  useEffect(() => {
    let isGone = false;
    const find = async (): Promise<Omit<Here, 'own'> | 'none'> => {
      const { packs, walks } = await allPacked(await theStore());
      const pack = packs.find((one) => one.programme.handle === programme);
      return pack ? { pack, walks: walks.filter((walk) => walk.programme === programme) } : 'none';
    };
    find().then((one) => isGone || setPacked(one), () => isGone || setPacked('none'));
    return () => void (isGone = true);
  }, [programme]);
  return typeof packed === 'object' ? { ...packed, own } : packed;
}
