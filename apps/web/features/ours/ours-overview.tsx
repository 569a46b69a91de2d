import type { Ours } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { pageOf } from '../../lib/page-address.ts';
import { ButtonLink } from '../../ui/button-link.tsx';
import { RowLink } from '../../ui/row-link.tsx';
import { Section } from '../../ui/section.tsx';
import { Table } from '../../ui/table.tsx';
import { SiteNumbers } from './site-numbers.tsx';

const STAGES = ['cutting', 'liner', 'potted', 'planted'] as const;

/** A partner's first screen: what comes of their stands, how their sites stand, what is in their hands. */
export function OursOverview({ programme, ours }: { programme: string; ours: Ours }) {
  const said = useMessages().ours;
  const t = useTranslations('ours');
  const { stands, sites, hands, partner, asOf } = ours;
  return (
    <>
      <p className="mb-8 text-ink-soft">{t('asOf', { day: sayDay(asOf) })} {partner.until && t('ends', { day: sayDay(partner.until) })}</p>
      <Section heading={said.sites}>
        {sites.length === 0 && <p>{said.noSites}</p>}
        {sites.map((site) => (
          <div key={site.id} className="mb-6">
            {site.species.length === 0 ? <p><strong>{site.name}</strong>: {said.nothingPlanted}</p> : <SiteNumbers site={site} />}
            <p className="not-on-paper mt-2"><RowLink href={pageOf(programme, 'sites', site.id)}>{t('toSite', { name: site.name })}</RowLink></p>
          </div>
        ))}
      </Section>
      <Section heading={said.stands}>
        {stands.length === 0 ? <p>{said.noStands}</p> : (
          <Table
            caption={said.stands}
            isCaptionHidden
            isStacked
            keyOf={({ id }) => id}
            rows={stands}
            columns={[
              { head: said.standHead.stand, cell: ({ id, name }) => <RowLink href={pageOf(programme, 'stands', id)}>{name}</RowLink> },
              { head: said.standHead.donorTrees, isNumber: true, cell: ({ donorTrees }) => donorTrees },
              { head: said.standHead.stuck, isNumber: true, cell: ({ stuck }) => stuck },
              ...STAGES.map((stage) => ({ head: said.standHead[stage], isNumber: true, cell: ({ plantsByStage }: Ours['stands'][number]) => plantsByStage[stage] ?? 0 })),
            ]}
          />
        )}
      </Section>
      <Section heading={said.hands}>
        <p className="mb-4">{t('handsSay', { plants: hands.plants, unconfirmed: hands.unconfirmed })}</p>
        <ButtonLink look="quiet" href={`${pageOf(programme, 'batches')}?relation=hands`}>{said.toBatches}</ButtonLink>
      </Section>
    </>
  );
}
