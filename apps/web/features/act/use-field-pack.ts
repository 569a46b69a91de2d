import { useEffect, useMemo, useState } from 'react';
import { today } from '../../lib/calendar.ts';
import type { EntryToSend } from '../../lib/entry-to-send.ts';
import { askFrom } from '../../lib/phone/ask.ts';
import { authorHere } from '../../lib/phone/device.ts';
import { freshPack } from '../../lib/phone/fresh-pack.ts';
import { type LastUsed, lastUsed } from '../../lib/phone/last-used.ts';
import type { Author } from '../../lib/phone/outbox-item.ts';
import type { KeptPack, KeptWalk } from '../../lib/phone/pack-shapes.ts';
import { allPacked } from '../../lib/phone/packing.ts';
import { theStore } from '../../lib/phone/store.ts';
import { type OwnItem, standing, useOwn } from '../../lib/phone/use-own.ts';

export interface FieldPack {
  readonly pack: KeptPack;
  /** The walk that one came from. */
  readonly walk: KeptWalk | undefined;
  /** All that are packed of the programme. */
  readonly walks: readonly KeptWalk[];
  readonly author: Author;
  readonly last: LastUsed;
  readonly today: string;
}

/** A pack with what was logged here since. */
export interface FieldPackNow extends FieldPack {
  readonly own: readonly OwnItem[];
  /** Entries that the books have or will have. */
  readonly entries: readonly EntryToSend[];
}

interface Asked {
  readonly programme: string;
  /** Of the place or of the printed list that is walked. */
  readonly walkId?: string | undefined;
  /** Ask for it anew if there is a signal. */
  readonly isFresh?: boolean;
}

/** What these screens need from this phone; `unknown` where it was never packed. */
export function useFieldPack({ programme, walkId, isFresh = false }: Asked): FieldPackNow | 'unknown' | undefined {
  const [found, setFound] = useState<FieldPack | 'unknown'>();
  const own = useOwn(programme);

  useEffect(() => {
    let isGone = false;
    const find = async (): Promise<FieldPack | 'unknown'> => {
      const store = await theStore();
      if (isFresh && navigator.onLine) await freshPack(store, askFrom(store), programme, Date.now());
      const [packed, last] = await Promise.all([allPacked(store), lastUsed(store, programme)]);
      const pack = packed.packs.find((one) => one.programme.handle === programme);
      const walks = packed.walks.filter((one) => one.programme === programme);
      const walk = walks.find(({ id }) => id === walkId);
      if (!pack || (walkId !== undefined && !walk)) return 'unknown';
      return { pack, walk, walks, last, author: await authorHere(store, programme), today: today(pack.programme.zone) };
    };
    find().then((one) => isGone || setFound(one), () => isGone || setFound('unknown'));
    return () => void (isGone = true);
  }, [programme, walkId, isFresh]);

  return useMemo(() => (typeof found === 'object' ? { ...found, own, entries: standing(own) } : found), [found, own]);
}
