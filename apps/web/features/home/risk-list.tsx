import { DonorsAtRisk } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { pageOf } from '../../lib/page-address.ts';
import { readIfAllowed } from '../../lib/read-if-allowed.ts';
import { apiOf } from '../../lib/workplace.ts';
import { Flag } from '../../ui/flag.tsx';
import { RowLink } from '../../ui/row-link.tsx';
import { Section } from '../../ui/section.tsx';
import { Table } from '../../ui/table.tsx';
import { Donor } from './donor.tsx';

/** As many as fit a glance; the reading page has them all. */
const AT_A_GLANCE = 5;

/** Donor trees whose line may end here, the nearest to it first. */
export async function RiskList({ programme }: { programme: string }) {
  const [answer, { home: said }, t] = await Promise.all([
    readIfAllowed(`${apiOf(programme, 'readings', 'donors-at-risk')}?limit=${AT_A_GLANCE}`, DonorsAtRisk), getMessages(), getTranslations('home'),
  ]);
  if (!answer) return null;
  const { donors, inAll } = answer.body;
  if (donors.length === 0) return <Section heading={said.risk}><p className="text-ink-soft">{said.noRisk}</p></Section>;
  return (
    <Section heading={said.risk} lead={said.riskLead}>
      <Table
        isStacked
        caption={said.risk}
        isCaptionHidden
        rows={donors}
        keyOf={({ donorId }) => donorId}
        columns={[
          { head: said.donor, cell: (donor) => <Donor programme={programme} donor={donor} /> },
          { head: said.stand, cell: ({ stand }) => stand },
          { head: said.rootedLeft, isNumber: true, cell: ({ rootedNow }) => rootedNow ?? said.notTold },
          { head: said.why, cell: ({ risks }) => <span className="flex flex-wrap gap-1">{risks.map((risk) => <Flag key={risk} tone={risk === 'last-copies' ? 'grave' : 'look'}>{said.risks[risk]}</Flag>)}</span> },
        ]}
      />
      {inAll > donors.length && <p className="mt-3"><RowLink href={pageOf(programme, 'readings', 'donors-at-risk')}>{t('allAtRisk', { n: inAll })}</RowLink></p>}
    </Section>
  );
}
