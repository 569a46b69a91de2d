import { Round } from '@sprigline/contract';
import type { Metadata } from 'next';
import { getTranslations } from 'next-intl/server';
import { stopsOf } from '../../../../../../features/round/stop.ts';
import { ToField } from '../../../../../../features/round/to-field.tsx';
import { fieldAddress } from '../../../../../../lib/field-address.ts';
import { pageOf } from '../../../../../../lib/page-address.ts';
import { read } from '../../../../../../lib/read.ts';
import { apiOf } from '../../../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../../../ui/button-link.tsx';
import { Empty } from '../../../../../../ui/empty.tsx';
import { LinkList } from '../../../../../../ui/link-list.tsx';
import { PageHeading } from '../../../../../../ui/page-heading.tsx';

interface RoundPageProps {
  readonly params: Promise<{ programme: string; id: string }>;
}

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations('round'))('kind') };
}

/** The door to a round: it is walked on the phone itself. Without script each batch has a plain form. */
export default async function RoundPage({ params }: RoundPageProps) {
  const { programme, id } = await params;
  const [round, t] = await Promise.all([read(apiOf(programme, 'places', id, 'round'), Round), getTranslations('round')]);
  const stops = stopsOf(round);
  const heading = <PageHeading kind={t('kind')}>{t('title', { place: round.place.name })}</PageHeading>;
  if (stops.length === 0) return <>{heading}<Empty act={<ButtonLink href={pageOf(programme, 'places')}>{t('choosePlace')}</ButtonLink>}>{t('empty')}</Empty></>;
  return (
    <>
      {heading}
      <ToField href={fieldAddress(programme, 'round', id)} words={t('opening')} />
      <noscript>
        <p>{t('noScript')}</p>
        <LinkList links={stops.map(({ batchId, label, place, donor }) => ({ href: pageOf(programme, 'batches', batchId, 'count'), words: [label, donor, place].filter(Boolean).join(', ') }))} none={t('empty')} />
      </noscript>
    </>
  );
}
