import type { Ours } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { pageOf } from '../../lib/page-address.ts';
import { ButtonLink } from '../../ui/button-link.tsx';
import { Section } from '../../ui/section.tsx';
import { Species } from '../../ui/species.tsx';
import { Table } from '../../ui/table.tsx';

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
        {sites.map(({ id, name, species }) => (
          <div key={id} className="mb-6">
            {species.length === 0 ? <p><strong>{name}</strong>: {said.nothingPlanted}</p> : (
              <Table
                caption={name}
                keyOf={({ taxonId }) => taxonId ?? ''}
                rows={species}
                columns={[
                  { head: said.siteHead.species, cell: ({ taxon, commonName }) => (taxon === null ? said.severalSpecies : commonName ?? <Species name={taxon} />) },
                  { head: said.siteHead.planted, isNumber: true, cell: ({ planted }) => planted },
                  { head: said.siteHead.alive, isNumber: true, cell: ({ alive }) => alive },
                  { head: said.siteHead.notFound, isNumber: true, cell: ({ notFound }) => notFound },
                  { head: said.siteHead.died, isNumber: true, cell: ({ died, thrownOut }) => died + thrownOut },
                  { head: said.siteHead.missing, isNumber: true, cell: ({ unaccounted }) => unaccounted },
                  { head: said.siteHead.donorTrees, isNumber: true, cell: ({ donorTrees }) => donorTrees },
                  { head: said.siteHead.lastSeen, cell: ({ lastSeenOn }) => (lastSeenOn ? sayDay(lastSeenOn) : said.neverSeen) },
                ]}
              />
            )}
          </div>
        ))}
      </Section>
      <Section heading={said.stands}>
        {stands.length === 0 ? <p>{said.noStands}</p> : (
          <Table
            caption={said.stands}
            isCaptionHidden
            keyOf={({ id }) => id}
            rows={stands}
            columns={[
              { head: said.standHead.stand, cell: ({ name }) => name },
              { head: said.standHead.donorTrees, isNumber: true, cell: ({ donorTrees }) => donorTrees },
              { head: said.standHead.stuck, isNumber: true, cell: ({ stuck }) => stuck },
              ...STAGES.map((stage) => ({ head: said.standHead[stage], isNumber: true, cell: ({ plantsByStage }: Ours['stands'][number]) => plantsByStage[stage] ?? 0 })),
            ]}
          />
        )}
      </Section>
      <Section heading={said.hands}>
        <p className="mb-4">{t('handsSay', { plants: hands.plants, unconfirmed: hands.unconfirmed })}</p>
        <ButtonLink look="quiet" href={pageOf(programme, 'batches')}>{said.toBatches}</ButtonLink>
      </Section>
    </>
  );
}
