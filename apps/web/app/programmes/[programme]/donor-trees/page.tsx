import { DonorTree } from '@sprigline/contract';
import { getMessages } from 'next-intl/server';
import { z } from 'zod';
import { DonorTreeTable } from '../../../../features/donor-tree/donor-tree-table.tsx';
import { LabelPart } from '../../../../features/donor-tree/label-part.tsx';
import { standsOf, taxaOf } from '../../../../lib/lists.ts';
import { pageOf } from '../../../../lib/page-address.ts';
import { readPart } from '../../../../lib/pages.ts';
import { titled } from '../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../ui/button-link.tsx';
import { Empty } from '../../../../ui/empty.tsx';
import { Narrow } from '../../../../ui/narrow.tsx';
import { PageHeading } from '../../../../ui/page-heading.tsx';

interface DonorTreesPageProps {
  readonly params: Promise<{ programme: string }>;
  readonly searchParams: Promise<{ standId?: string; label?: string; after?: string }>;
}

export const generateMetadata = titled(({ donorTrees }) => donorTrees.title);

export default async function DonorTreesPage({ params, searchParams }: DonorTreesPageProps) {
  const { programme } = await params;
  const { standId, label, after } = await searchParams;
  const asked = { ...(standId ? { standId } : {}), ...(label?.trim() ? { label: label.trim().slice(0, 200) } : {}) };
  const query = new URLSearchParams({ limit: '100', ...asked, ...(after ? { after } : {}) });
  const [{ role }, { items: trees, after: next }, stands, taxa, { donorTrees: said }] = await Promise.all([
    workplaceOf(programme), readPart(`${apiOf(programme, 'donor-trees')}?${query}`, z.array(DonorTree)), standsOf(programme), taxaOf(programme), getMessages(),
  ]);
  const add = role !== 'partner' && <ButtonLink href={pageOf(programme, 'donor-trees', 'new')}>{said.add}</ButtonLink>;
  const more = new URLSearchParams({ ...asked, after: next ?? '' });
  return (
    <>
      <PageHeading lead={said.lead} act={add}>{said.title}</PageHeading>
      <Narrow name="standId" label={said.fields.standId} all={said.all} show={said.show} chosen={standId} choices={stands}>
        <LabelPart label={said.findLabel} asked={asked.label} />
      </Narrow>
      {trees.length === 0 ? <Empty>{asked.label ? said.noneSo : said.empty}</Empty> : <DonorTreeTable programme={programme} trees={trees} taxa={taxa} stands={stands} caption={said.title} />}
      {next && <div className="mt-6"><ButtonLink look="quiet" href={`?${more}`}>{said.more}</ButtonLink></div>}
    </>
  );
}
