import { useTranslations } from 'next-intl';
import { type ReactNode, Suspense } from 'react';
import { ago } from '../../lib/ago.ts';
import { fieldAddress } from '../../lib/field-address.ts';
import { pageOf } from '../../lib/page-address.ts';
import type { KeptPack, KeptWalk } from '../../lib/phone/pack-shapes.ts';
import { whenUsed } from '../../lib/when-used.ts';
import { buttonClass } from '../../ui/button-class.ts';
import { PageHeading } from '../../ui/page-heading.tsx';
import { InstallHint } from './install-hint.tsx';
import { usePacked } from './use-packed.ts';

const SoundSwitch = whenUsed(() => import('./sound-switch.tsx').then((file) => file.SoundSwitch));
const HomeNotices = whenUsed(() => import('./home-notices.tsx').then((file) => file.HomeNotices));

/** Older than that, a pack may leave out what others have done since. Milliseconds. */
const OLD_MS = 24 * 60 * 60 * 1000;

/** What lies on this phone: the walks, and the way to more. @param only one programme; all of them when left out */
export function FieldHome({ only, whoLogs, warning, storage }: { only?: string | undefined; whoLogs: (programme: string) => ReactNode; warning: ReactNode; storage: ReactNode }) {
  const t = useTranslations('field');
  const { packed } = usePacked();
  if (!packed) return <p role="status">{t('opening')}</p>;
  const packs = packed.packs.filter(({ programme }) => only === undefined || programme.handle === only);
  return (
    <>
      <PageHeading lead={t('lead')}>{t('title')}</PageHeading>
      {warning}
      <Suspense><HomeNotices /></Suspense>
      {packs.length === 0 && (
        <p className="mb-6 grid gap-3">
          {t(only ? 'none' : 'noProgramme')} <a href={only ? fieldAddress(only, 'pack') : '/'} className={buttonClass()}>{t(only ? 'more' : 'toProgrammes')}</a>
        </p>
      )}
      {packs.map((pack) => <OneProgramme key={pack.programme.id} pack={pack} whoLogs={whoLogs(pack.programme.handle)} walks={packed.walks.filter(({ programme }) => programme === pack.programme.handle)} />)}
      <InstallHint />
      {storage}
      <Suspense><SoundSwitch /></Suspense>
    </>
  );
}

function OneProgramme({ pack: { programme: { handle, name }, bundles = [] }, walks, whoLogs }: { pack: KeptPack; walks: readonly KeptWalk[]; whoLogs: ReactNode }) {
  const t = useTranslations('field');
  return (
    <section aria-label={name} className="mb-8">
      <h2 className="text-xl">{name}</h2>
      {whoLogs}
      {walks.length === 0 && <p className="mt-2 max-w-prose">{t('none')}</p>}
      <ul className="mt-3 grid gap-3" aria-label={t('walks')}>
        {walks.map((walk) => <WalkCard key={walk.id} walk={walk} />)}
      </ul>
      <div className="mt-4 grid gap-3 sm:flex sm:flex-wrap">
        {walks.length > 0 && <a href={fieldAddress(handle, 'scan')} className={buttonClass()}>{t('scan')}</a>}
        <a href={fieldAddress(handle, 'pack')} className={buttonClass(walks.length === 0 ? 'main' : 'quiet')}>{t('more')}</a>
        <a href={fieldAddress(handle, 'trip')} className={buttonClass('quiet')}>{t('trip')}</a>
        {bundles.length > 0 && <a href={fieldAddress(handle, 'stick')} className={buttonClass('quiet')}>{t('stick')}</a>}
        <a href={pageOf(handle)} className={buttonClass('quiet')}>{t('toDesk', { programme: name })}</a>
      </div>
    </section>
  );
}

function WalkCard({ walk: { programme, kind, id, name, packedAt, round } }: { walk: KeptWalk }) {
  const t = useTranslations('field');
  const when = t('ago', { ...ago(packedAt, Date.now()) });
  const n = round.stops.flatMap(({ batches }) => batches).length;
  return (
    <li>
      <a href={fieldAddress(programme, kind === 'places' ? 'round' : 'list', id)} className="flex min-h-16 flex-col justify-center rounded-md border-2 border-juniper bg-sheet px-4 py-2 no-underline hover:bg-lichen">
        <span className="text-lg font-semibold">{t('walk', { place: kind === 'places' ? name : t(`lists.${name as 'calling'}`) })}</span>
        <span className="text-sm text-ink-soft">{t('batches', { n })}, {t('packed', { when })}</span>
        {Date.now() - packedAt > OLD_MS && <span className="text-sm font-semibold">! {t('old', { when })}</span>}
      </a>
    </li>
  );
}
