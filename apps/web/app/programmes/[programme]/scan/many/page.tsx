import { NextIntlClientProvider } from 'next-intl';
import { getMessages, getTranslations } from 'next-intl/server';
import { ManyScreen } from '../../../../../features/scan/many-screen.tsx';
import { placesOf } from '../../../../../lib/lists.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { isAtSite, placeChoices } from '../../../../../lib/place-path.ts';
import { publicAddress } from '../../../../../lib/public-address.ts';
import { titled } from '../../../../../lib/titled.ts';
import { workplaceOf } from '../../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../../ui/button-link.tsx';
import { PageHeading } from '../../../../../ui/page-heading.tsx';
import { Trail } from '../../../../../ui/trail.tsx';

interface ManyPageProps {
  readonly params: Promise<{ programme: string }>;
  readonly searchParams: Promise<{ done?: string; sent?: string }>;
}

export const generateMetadata = titled(({ scan }) => scan.moving.title);

export default async function ManyPage({ params, searchParams }: ManyPageProps) {
  const [{ programme }, { done, sent }] = await Promise.all([params, searchParams]);
  const [workplace, all, address, { ui, scan, words, entries }, t] = await Promise.all([workplaceOf(programme), placesOf(programme), publicAddress(), getMessages(), getTranslations('scan.moving')]);
  const sites = new Set(all.filter(isAtSite).map(({ id }) => id));
  const places = placeChoices(all, ({ kind }) => kind !== 'partner').map((place) => ({ ...place, isSite: sites.has(place.value) }));
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'scan'), words: scan.title }]} />
      <PageHeading lead={scan.moving.lead}>{scan.moving.title}</PageHeading>
      {done && <p role="status" className="mb-6 max-w-prose rounded-md border-2 border-juniper bg-lichen p-4 font-semibold text-on-lichen">✓ {t('done', { n: Number(done) || 0 })}</p>}
      <noscript>
        <p className="mb-6">{scan.moving.noScript} <ButtonLink look="quiet" href={pageOf(programme, 'bench', 'moving')}>{scan.moving.toBench}</ButtonLink></p>
      </noscript>
      <NextIntlClientProvider messages={{ ui, scan, words, entries: { flags: entries.flags, doubts: entries.doubts } }}>
        <ManyScreen key={sent ?? 'first'} programme={programme} personId={workplace.me.personId} address={address} today={workplace.today} zone={workplace.zone} places={places} sent={sent} />
      </NextIntlClientProvider>
    </>
  );
}
