import { Batch } from '@sprigline/contract';
import { NextIntlClientProvider } from 'next-intl';
import { getMessages, getTranslations } from 'next-intl/server';
import { notFound } from 'next/navigation';
import { RelabelScreen } from '../../../../../../features/scan/relabel-screen.tsx';
import { pageOf } from '../../../../../../lib/page-address.ts';
import { publicAddress } from '../../../../../../lib/public-address.ts';
import { read } from '../../../../../../lib/read.ts';
import { titled } from '../../../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../../../lib/workplace.ts';
import { PageHeading } from '../../../../../../ui/page-heading.tsx';
import { Trail } from '../../../../../../ui/trail.tsx';

export const generateMetadata = titled(({ scan }) => scan.relabel.title);

/** A faded or lost label is replaced; the old one leads here as well, for as long as it lasts. */
export default async function RelabelPage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const [batch, { role }, address, { ui, scan, batches }, t] = await Promise.all([
    read(apiOf(programme, 'batches', id), Batch), workplaceOf(programme), publicAddress(), getMessages(), getTranslations('scan.relabel'),
  ]);
  if (role === 'partner') notFound();
  const name = batch.label ?? `…${id.slice(-6)}`;
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'batches'), words: batches.title }, { href: pageOf(programme, 'batches', id), words: name }]} />
      <PageHeading lead={scan.relabel.lead}>{t('of', { label: name })}</PageHeading>
      <NextIntlClientProvider messages={{ ui, scan }}>
        <RelabelScreen programme={programme} batchId={id} address={address} />
      </NextIntlClientProvider>
    </>
  );
}
