import type { Ours } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { Species } from '../../ui/species.tsx';
import { Table } from '../../ui/table.tsx';

/** What was planted at one site of a partner's, and how it fares, species by species. */
export function SiteNumbers({ site: { name, species } }: { site: Ours['sites'][number] }) {
  const { ours: said } = useMessages();
  return (
    <Table
      caption={name}
      isStacked
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
  );
}
