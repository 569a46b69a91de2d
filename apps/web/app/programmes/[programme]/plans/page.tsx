import { PlanInList } from '@sprigline/contract';
import { getMessages } from 'next-intl/server';
import { z } from 'zod';
import { pageOf } from '../../../../lib/page-address.ts';
import { readPart } from '../../../../lib/pages.ts';
import { titled } from '../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../ui/button-link.tsx';
import { ListPage } from '../../../../ui/list-page.tsx';
import { RowLink } from '../../../../ui/row-link.tsx';

interface PlansPageProps {
  readonly params: Promise<{ programme: string }>;
  readonly searchParams: Promise<{ after?: string }>;
}

export const generateMetadata = titled(({ plans }) => plans.title);

export default async function PlansPage({ params, searchParams }: PlansPageProps) {
  const { programme } = await params;
  const { after } = await searchParams;
  const [{ isDesk }, { items: plans, after: next }, { plans: said }] = await Promise.all([
    workplaceOf(programme), readPart(`${apiOf(programme, 'plans')}?${new URLSearchParams(after ? { after } : {})}`, z.array(PlanInList)), getMessages(),
  ]);
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
    >
      {next && <div className="mt-6"><ButtonLink look="quiet" href={`?${new URLSearchParams({ after: next })}`}>{said.more}</ButtonLink></div>}
    </ListPage>
  );
}
