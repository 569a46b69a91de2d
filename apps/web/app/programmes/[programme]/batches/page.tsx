import { BatchInList } from '@sprigline/contract';
import type { Metadata } from 'next';
import { getMessages, getTranslations } from 'next-intl/server';
import { redirect } from 'next/navigation';
import type { Route } from 'next';
import { z } from 'zod';
import { addressOf, askedOf, type BatchSearch, queryOf } from '../../../../features/batch/batch-query.ts';
import { BatchTable } from '../../../../features/batch/batch-table.tsx';
import { FilterForm } from '../../../../features/batch/filter-form.tsx';
import { FindForm } from '../../../../features/batch/find-form.tsx';
import { PartnerWays } from '../../../../features/batch/partner-ways.tsx';
import { batchWithLabel } from '../../../../lib/batch-with-label.ts';
import { atSite, placesOf, sitesOf, standsOf } from '../../../../lib/lists.ts';
import { pageOf } from '../../../../lib/page-address.ts';
import { placeChoices } from '../../../../lib/place-path.ts';
import { readPart } from '../../../../lib/pages.ts';
import { apiOf, workplaceOf } from '../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../ui/button-link.tsx';
import { Empty } from '../../../../ui/empty.tsx';
import { PageHeading } from '../../../../ui/page-heading.tsx';

interface BatchesPageProps {
  readonly params: Promise<{ programme: string }>;
  readonly searchParams: Promise<BatchSearch>;
}

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations('batches'))('title') };
}

export default async function BatchesPage({ params, searchParams }: BatchesPageProps) {
  const { programme } = await params;
  const search = await searchParams;
  const { role, isDesk } = await workplaceOf(programme);
  const isPartner = role === 'partner';
  const found = search.label ? await batchWithLabel(programme, search.label) : undefined;
  if (found) redirect(pageOf(programme, 'batches', found) as Route);

  const asked = askedOf(search);
  const [{ items, after }, stands, places, sites, { batches: said }] = await Promise.all([
    readPart(`${apiOf(programme, 'batches')}?${queryOf(asked, search.after)}`, z.array(BatchInList)),
    isPartner ? [] : standsOf(programme), isPartner ? [] : placesOf(programme), isPartner && asked.placeId ? sitesOf(programme) : [], getMessages(),
  ]);
  const paths = placeChoices(places);
  return (
    <>
      <PageHeading lead={isPartner ? said.ofOurs.lead : said.lead} act={isDesk && <><ButtonLink href={pageOf(programme, 'stick')}>{said.stick}</ButtonLink><ButtonLink look="quiet" href={pageOf(programme, 'stick', 'opening')}>{said.opening}</ButtonLink></>}>
        {said.title}
      </PageHeading>
      <FindForm label={search.label} />
      {isPartner ? <PartnerWays programme={programme} asked={asked} at={atSite(sites, asked.placeId)?.name} /> : <FilterForm asked={asked} stands={stands} places={paths} />}
      {items.length === 0 ? <Empty>{isPartner ? said.ofOurs.empty : said.empty}</Empty> : <BatchTable programme={programme} batches={items} paths={new Map(paths.map(({ value, words }) => [value, words]))} isForPartner={isPartner} />}
      {after && <div className="mt-6"><ButtonLink look="quiet" href={addressOf(asked, after)}>{said.more}</ButtonLink></div>}
    </>
  );
}
