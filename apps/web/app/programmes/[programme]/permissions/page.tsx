import { Permission } from '@sprigline/contract';
import { getMessages } from 'next-intl/server';
import { z } from 'zod';
import { PermissionTime } from '../../../../features/permission/permission-time.tsx';
import { PermissionUse } from '../../../../features/permission/permission-use.tsx';
import { nameIn, standsOf } from '../../../../lib/lists.ts';
import { pageOf } from '../../../../lib/page-address.ts';
import { read } from '../../../../lib/read.ts';
import { titled } from '../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../lib/workplace.ts';
import { ListPage } from '../../../../ui/list-page.tsx';
import { RowLink } from '../../../../ui/row-link.tsx';

export const generateMetadata = titled(({ permissions }) => permissions.title);

export default async function PermissionsPage({ params }: { params: Promise<{ programme: string }> }) {
  const { programme } = await params;
  const [{ isDesk, today }, permissions, stands, { permissions: said }] = await Promise.all([
    workplaceOf(programme), read(apiOf(programme, 'permissions'), z.array(Permission)), standsOf(programme), getMessages(),
  ]);
  return (
    <ListPage
      title={said.title}
      lead={said.lead}
      empty={said.empty}
      add={isDesk ? { href: pageOf(programme, 'permissions', 'new'), words: said.add } : undefined}
      rows={permissions}
      keyOf={({ id }) => id}
      columns={[
        { head: said.fields.land, cell: ({ id, land }) => <RowLink href={pageOf(programme, 'permissions', id)}>{land}</RowLink> },
        { head: said.fields.grantedBy, cell: ({ grantedBy }) => grantedBy },
        { head: said.fields.standId, cell: ({ standId }) => standId && nameIn(stands, standId) },
        { head: said.valid, cell: (permission) => <PermissionTime permission={permission} today={today} /> },
        { head: said.used, cell: (permission) => <PermissionUse permission={permission} /> },
      ]}
    />
  );
}
