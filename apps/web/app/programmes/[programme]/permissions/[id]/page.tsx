import { Permission, TripInList } from '@sprigline/contract';
import { getMessages } from 'next-intl/server';
import { z } from 'zod';
import { GivenBack } from '../../../../../features/permission/given-back.tsx';
import { PermissionTime } from '../../../../../features/permission/permission-time.tsx';
import { PermissionTrips } from '../../../../../features/permission/permission-trips.tsx';
import { PermissionUse } from '../../../../../features/permission/permission-use.tsx';
import { nameIn, standsOf, taxaOf, taxonName } from '../../../../../lib/lists.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { read } from '../../../../../lib/read.ts';
import { titled } from '../../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../../ui/button-link.tsx';
import { Caution } from '../../../../../ui/caution.tsx';
import { Facts } from '../../../../../ui/facts.tsx';
import { PageHeading } from '../../../../../ui/page-heading.tsx';
import { Trail } from '../../../../../ui/trail.tsx';

export const generateMetadata = titled(({ permissions }) => permissions.kind);

export default async function PermissionPage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const [permission, trips, stands, taxa, { isDesk, today }, { permissions: said }] = await Promise.all([
    read(apiOf(programme, 'permissions', id), Permission), read(`${apiOf(programme, 'trips')}?permissionId=${id}&limit=200`, z.array(TripInList)), standsOf(programme), taxaOf(programme), workplaceOf(programme), getMessages(),
  ]);
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'permissions'), words: said.title }]} />
      <PageHeading kind={said.kind} act={isDesk && <ButtonLink look="quiet" href={pageOf(programme, 'permissions', id, 'edit')}>{said.change}</ButtonLink>}>
        {permission.land}
      </PageHeading>
      <Facts
        facts={[
          { term: said.fields.grantedBy, says: permission.grantedBy },
          { term: said.fields.standId, says: permission.standId && nameIn(stands, permission.standId) },
          { term: said.fields.taxonIds, says: permission.taxonIds.map((taxonId) => taxonName(taxa, taxonId)).join(', ') || null },
          { term: said.used, says: <PermissionUse permission={permission} /> },
          { term: said.valid, says: <PermissionTime permission={permission} today={today} /> },
          { term: said.fields.terms, says: permission.terms },
          { term: said.fields.document, says: permission.document },
          { term: said.givenBack, says: <GivenBack permission={permission} /> },
        ]}
      />
      <div className="mt-8"><Caution>{said.caution}</Caution></div>
      <div className="mt-10"><PermissionTrips programme={programme} trips={trips} stands={stands} /></div>
    </>
  );
}
