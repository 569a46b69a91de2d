import { useTranslations } from 'next-intl';
import { useEffect, useState } from 'react';
import type { Pack } from '@sprigline/contract';
import { ago } from '../../lib/ago.ts';
import { fieldAddress } from '../../lib/field-address.ts';
import { apiPath, askFrom } from '../../lib/phone/ask.ts';
import { type NotPacked, packOf, packWalk } from '../../lib/phone/packing.ts';
import { soon } from '../../lib/phone/soon.ts';
import { theStore } from '../../lib/phone/store.ts';
import { buttonClass } from '../../ui/button-class.ts';
import { Flag } from '../../ui/flag.tsx';
import { PageHeading } from '../../ui/page-heading.tsx';
import { usePacked } from './use-packed.ts';
import { type PlaceToPack, placesToPack } from './places-to-pack.ts';

/** Takes places along, one tap each. */
export function PackPlaces({ programme }: { programme: string }) {
  const t = useTranslations('field');
  const { packed, look } = usePacked();
  const places = usePlaces(programme);
  const [busy, setBusy] = useState<string>();
  const [problem, setProblem] = useState<NotPacked>();

  async function pack(placeId: string): Promise<void> {
    setBusy(placeId);
    setProblem(undefined);
    const store = await theStore();
    const done = await packWalk(store, askFrom(store), { programme, kind: 'places', id: placeId, now: Date.now() });
    if (typeof done === 'string') setProblem(done);
    setBusy(undefined);
    look();
  }

  return (
    <>
      <p><a href={fieldAddress()} className="inline-flex min-h-14 items-center underline">{t('title')}</a></p>
      <PageHeading lead={t('moreLead')}>{t('more')}</PageHeading>
      <div role="status" className="empty:hidden">
        {busy !== undefined && <p className="mb-3">{t('packing')}</p>}
      </div>
      {problem && (
        <div role="alert" className="mb-4 rounded-md border-2 border-rust bg-rust-wash p-3 font-semibold text-rust">
          {t(`notPacked.${problem}`)} {problem === 'signedOut' && <a href={`/sign-in?next=${encodeURIComponent('/field')}`} className="inline-flex min-h-14 items-center underline">{t('signIn')}</a>}
        </div>
      )}
      <ul className="grid gap-2">
        {places?.map((place) => {
          const walk = packed?.walks.find((one) => one.programme === programme && one.id === place.id);
          return <PlaceLine key={place.id} place={place} packedAt={walk?.packedAt} isBusy={busy === place.id} pack={() => void pack(place.id)} />;
        })}
      </ul>
      {places?.length === 0 && <p className="max-w-prose">{t('notPacked.unheard')}</p>}
    </>
  );
}

function PlaceLine({ place: { name, depth, batches }, packedAt, isBusy, pack }: { place: PlaceToPack; packedAt: number | undefined; isBusy: boolean; pack: () => void }) {
  const t = useTranslations('field');
  return (
    <li style={{ marginInlineStart: `${Math.min(depth, 3)}rem` }} className="flex items-center justify-between gap-3 rounded-md border border-line bg-sheet px-3 py-2">
      <span className="min-w-0 wrap-anywhere">
        <strong>{name}</strong> <span className="block text-sm text-ink-soft">{t('batches', { n: batches })}</span>
        {packedAt !== undefined && <span className="block"><Flag tone="good">{t('packed', { when: t('ago', { ...ago(packedAt, Date.now()) }) })}</Flag></span>}
      </span>
      <button type="button" onClick={pack} aria-disabled={isBusy} className={buttonClass(packedAt === undefined ? 'main' : 'quiet')}>
        <span>{isBusy ? t('packing') : t.rich(packedAt === undefined ? 'pack' : 'packAgain', { place: name, unseen: (words) => <span className="sr-only">{words}</span> })}</span>
      </button>
    </li>
  );
}

/** From the programme itself where there is a signal, else as they were packed; none when nobody knows. */
function usePlaces(programme: string): readonly PlaceToPack[] | undefined {
  const [places, setPlaces] = useState<readonly PlaceToPack[]>();
  useEffect(() => {
    const find = async (): Promise<readonly PlaceToPack[]> => {
      const store = await theStore();
      const kept = await packOf(store, programme);
      const asked = askFrom(store)(apiPath(programme, 'pack')).catch(() => undefined);
      const fresh = await soon(asked, kept !== undefined);
      const pack = fresh?.status === 200 ? (fresh.body as Pack) : kept;
      return placesToPack(pack?.places ?? []);
    };
    find().then(setPlaces, () => setPlaces([]));
  }, [programme]);
  return places;
}
