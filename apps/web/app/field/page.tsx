import '../../features/round/round.css';
import type { Metadata } from 'next';
import { NextIntlClientProvider } from 'next-intl';
import { getMessages, getTranslations } from 'next-intl/server';
import { publicAddress } from '../../lib/public-address.ts';
import { FieldScreens } from './field-screens.tsx';

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations('field'))('title') };
}

/** The page that a phone keeps and opens without a signal. It holds words and scripts, and nothing of anybody: that lies in the browser's own store. */
export default async function FieldPage() {
  const [{ ui, words, round, entries, field, outbox, act, outing, trips, donorTrees, exactPlace, whoLogs, scan: { scanner, here } }, address] = await Promise.all([getMessages(), publicAddress()]);
  return (
    <NextIntlClientProvider messages={{ ui, words, round, entries, field, outbox, act, outing, trips, donorTrees, exactPlace, whoLogs, scan: { scanner, here } }}>
      <FieldScreens address={address} />
    </NextIntlClientProvider>
  );
}
