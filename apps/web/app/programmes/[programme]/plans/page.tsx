import { PlanInList } from '@sprigline/contract';
import { getMessages } from 'next-intl/server';
import { z } from 'zod';
import { pageOf } from '../../../../lib/page-address.ts';
import { read } from '../../../../lib/read.ts';
import { titled } from '../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../lib/workplace.ts';
import { ListPage } from '../../../../ui/list-page.tsx';
import { RowLink } from '../../../../ui/row-link.tsx';

export const generateMetadata = titled(({ plans }) => plans.title);

export default async function PlansPage({ params }: { params: Promise<{ programme: string }> }) {
  const { programme } = await params;
  const [{ isDesk }, plans, { plans: said }] = await Promise.all([workplaceOf(programme), read(apiOf(programme, 'plans'), z.array(PlanInList)), getMessages()]);
  return (
    <ListPage
      title={said.title} lead={said.lead} empty={said.empty}
      add={isDesk ? { href: pageOf(programme, 'plans', 'new'), words: said.add } : undefined}
      rows={plans} keyOf={({ id }) => id}
      columns={[
        { head: said.kind, cell: ({ id, name }) => <RowLink href={pageOf(programme, 'plans', id)}>{name}</RowLink> },
        { head: said.season, cell: ({ seasonName }) => seasonName },
        { head: said.targets, isNumber: true, cell: ({ targets }) => targets },
        { head: said.wanted, isNumber: true, cell: ({ plants }) => plants },
        { head: said.toStick, isNumber: true, cell: ({ cuttings }) => cuttings },
      ]}
    />
  );
}
