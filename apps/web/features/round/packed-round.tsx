'use client';

import { useTranslations } from 'next-intl';
import { type ReactNode, useEffect, useState } from 'react';
import { today } from '../../lib/calendar.ts';
import { askFrom } from '../../lib/phone/ask.ts';
import { authorHere } from '../../lib/phone/device.ts';
import type { Author } from '../../lib/phone/outbox-item.ts';
import type { KeptPack, KeptWalk, WalkKind } from '../../lib/phone/pack-shapes.ts';
import { type NotPacked, packOf, packWalk, walkOf } from '../../lib/phone/packing.ts';
import { soon } from '../../lib/phone/soon.ts';
import { type Store, theStore } from '../../lib/phone/store.ts';
import { workdaysIn } from '../../lib/phone/workdays-in.ts';
import { draftKey } from '../../lib/round-drafts.ts';
import { rememberedWorkday } from '../../lib/workday-cookie.ts';
import { PageHeading } from '../../ui/page-heading.tsx';
import { bringBackDraft } from './draft.ts';
import { RoundScreen } from './round-screen.tsx';
import { stopsOf } from './stop.ts';
import { keepTyping, typingKey } from './typing.ts';

interface PackedRoundProps {
  readonly programme: string;
  readonly kind: WalkKind;
  /** Of the place or of the list. */
  readonly id: string;
  /** To begin with, such as one whose label was scanned; only on a walk of today. */
  readonly batchId?: string | undefined;
  readonly homeHref: string;
  readonly scanHref: string;
  /** Where something is done to a batch besides counting it. */
  readonly actHref: (batchId: string) => string;
  /** Stands under the walk, before one begins. */
  readonly below: ReactNode;
}

type Found = { readonly pack: KeptPack; readonly walk: KeptWalk; readonly author: Author } | NotPacked | undefined;

/** A round with what is on this phone: packed anew if there is a signal, as it was packed if there is none. */
export function PackedRound(props: PackedRoundProps) {
  const t = useTranslations('round');
  const field = useTranslations('field');
  const lists = useTranslations('field.lists');
  const found = usePacked(props);
  if (found === undefined) return <p role="status">{field('opening')}</p>;
  if (typeof found === 'string') {
    return (
      <>
        <PageHeading kind={t('kind')}>{t('kind')}</PageHeading>
        <p role="alert" className="max-w-prose">{found === 'unheard' ? field('unknown') : field(`notPacked.${found}`)}</p>
        <p className="mt-4"><a href={props.homeHref} className="inline-flex min-h-14 items-center underline">{t('toField')}</a></p>
      </>
    );
  }
  const { pack, walk, author } = found;
  const { zone } = pack.programme;
  return (
    <RoundScreen
      programme={props.programme}
      placeId={walk.id}
      placeName={walk.kind === 'work-lists' ? lists(walk.name as 'calling') : walk.name}
      personId={author.personId}
      me={author.name}
      zone={zone}
      today={today(zone)}
      stops={stopsOf(walk.round)}
      taps={walk.round.taps}
      noEntryBefore={walk.round.noEntryBefore}
      people={pack.people.filter(({ id }) => id !== author.personId)}
      workdays={{ choices: workdaysIn(pack), remembered: rememberedWorkday() }}
      books={walk.books}
      batchId={props.batchId}
      homeHref={props.homeHref}
      scanHref={props.scanHref}
      actHref={props.actHref}
      below={props.below}
    />
  );
}

function usePacked({ programme, kind, id }: PackedRoundProps): Found {
  const [found, setFound] = useState<Found>();
  useEffect(() => {
    let isGone = false;
    const find = async (): Promise<Found> => {
      const store = await theStore();
      const fresh = navigator.onLine === false ? 'unheard' : await packedAnew(store, { programme, kind, id });
      const [pack, walk] = await Promise.all([packOf(store, programme), walkOf(store, { programme, id })]);
      if (!pack || !walk) return typeof fresh === 'string' ? fresh : 'unheard';
      const author = await authorHere(store, programme);
      const forgotten = await bringBackDraft(store, window.localStorage, draftKey(programme, id, author.personId)).catch(() => []);
      for (const batchId of forgotten) keepTyping(window.localStorage, typingKey(`${programme}/${id}/${author.personId}`, batchId), undefined, Date.now());
      return { pack, walk, author };
    };
    find().then((one) => isGone || setFound(one), () => isGone || setFound('full'));
    return () => void (isGone = true);
  }, [programme, kind, id]);
  return found;
}

/** Whoever has it on the phone already is not held up by a weak signal; without it there is nothing to walk. */
async function packedAnew(store: Store, walk: Pick<PackedRoundProps, 'programme' | 'kind' | 'id'>): Promise<KeptWalk | NotPacked | undefined> {
  const fresh = packWalk(store, askFrom(store), { ...walk, now: Date.now() });
  return soon(fresh, (await walkOf(store, walk)) !== undefined);
}
