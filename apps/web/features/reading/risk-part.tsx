import type { DonorsAtRisk } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { pageOf } from '../../lib/page-address.ts';
import { RowLink } from '../../ui/row-link.tsx';
import { Section } from '../../ui/section.tsx';
import { HoldingsList } from './holdings-list.tsx';
import { queryOf } from './reading-address.ts';

/** As many as one takes in at a glance; asked for no more. */
export const AT_A_GLANCE = 6;

/** The donor trees nearest to their end, and the way to the others. */
export function RiskPart({ programme, reading: { donors, inAll, notTold }, chosen }: { programme: string; reading: DonorsAtRisk; chosen: Readonly<Record<string, string>> }) {
  const { readings: { atRisk: said } } = useMessages();
  const t = useTranslations('readings.atRisk');
  return (
    <Section heading={said.title} lead={said.lead}>
      {donors.length === 0 ? <p>{said.empty}</p> : <HoldingsList programme={programme} donors={donors} />}
      {notTold > 0 && <p className="mt-3 max-w-prose">{t('notTold', { n: notTold })}</p>}
      {inAll > donors.length && <p className="not-on-paper mt-3"><RowLink href={`${pageOf(programme, 'readings', 'donors-at-risk')}${queryOf(chosen)}`}>{t('all', { n: inAll })}</RowLink></p>}
    </Section>
  );
}
