import type { Partner, Permission, PlantRequest, Stand, Taxon } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { nameIn, taxonName } from '../../lib/lists.ts';
import { pageOf } from '../../lib/page-address.ts';
import { Facts } from '../../ui/facts.tsx';
import { RowLink } from '../../ui/row-link.tsx';
import { RequestState } from './request-state.tsx';
import { whoAsks } from './who-asks.ts';

interface RequestFactsProps {
  readonly programme: string;
  readonly request: PlantRequest;
  readonly partners: readonly Partner[];
  readonly taxa: readonly Taxon[];
  readonly stands: readonly Stand[];
  readonly sites: readonly { readonly value: string; readonly words: string }[];
  readonly permissions: readonly Permission[];
}

export function RequestFacts({ programme, request, partners, taxa, stands, sites, permissions }: RequestFactsProps) {
  const { requests: said, words } = useMessages();
  const t = useTranslations('requests');
  const permission = permissions.find(({ id }) => id === request.permissionId);
  return (
    <Facts
      facts={[
        { term: said.who, says: whoAsks(request, partners) },
        { term: said.what, says: t('whatLine', { n: request.plants, species: taxonName(taxa, request.taxonId), stage: words.stage[request.stage] }) },
        { term: said.fields.mostPerDonor, says: request.mostPerDonor ?? said.noLimit },
        { term: said.fields.standIds, says: request.standIds.map((id) => nameIn(stands, id)).join(', ') || said.anyStand },
        { term: said.state, says: <RequestState state={request.state} /> },
        { term: said.fields.askedOn, says: sayDay(request.askedOn) },
        { term: said.fields.wantedOn, says: request.wantedOn && sayDay(request.wantedOn) },
        { term: said.goTo, says: sites.find(({ value }) => value === request.placeId)?.words ?? said.handedOver },
        ...(permission ? [{ term: said.fields.permissionId, says: <RowLink href={pageOf(programme, 'permissions', permission.id)}>{permission.land}</RowLink> }] : []),
        { term: said.fields.note, says: request.note && <span className="whitespace-pre-line">{request.note}</span> },
      ]}
    />
  );
}
