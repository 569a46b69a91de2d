import { DonorTree, Stand } from '@sprigline/contract';
import { getMessages } from 'next-intl/server';
import { z } from 'zod';
import { nameIn, partnersOf, taxaOf } from '../../../../../lib/lists.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { read } from '../../../../../lib/read.ts';
import { titled } from '../../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../../lib/workplace.ts';
import { DonorTreeTable } from '../../../../../features/donor-tree/donor-tree-table.tsx';
import { ExactPlaceFacts } from '../../../../../features/exact-place/exact-place-facts.tsx';
import { ButtonLink } from '../../../../../ui/button-link.tsx';
import { Cell } from '../../../../../ui/cell.tsx';
import { Empty } from '../../../../../ui/empty.tsx';
import { Facts } from '../../../../../ui/facts.tsx';
import { PageHeading } from '../../../../../ui/page-heading.tsx';
import { Section } from '../../../../../ui/section.tsx';
import { Trail } from '../../../../../ui/trail.tsx';

export const generateMetadata = titled(({ stands }) => stands.kind);

export default async function StandPage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const [stand, trees, partners, taxa, { isDesk, role }, { stands: said, words }] = await Promise.all([
    read(apiOf(programme, 'stands', id), Stand),
    read(`${apiOf(programme, 'donor-trees')}?standId=${encodeURIComponent(id)}&limit=200`, z.array(DonorTree)),
    partnersOf(programme), taxaOf(programme), workplaceOf(programme), getMessages(),
  ]);
  const isPartner = role === 'partner';
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'stands'), words: said.title }]} />
      <PageHeading
        kind={said.kind}
        act={<><ButtonLink look="quiet" href={isPartner ? pageOf(programme, 'readings', 'stands', id) : `${pageOf(programme, 'readings')}?standId=${id}`}>{said.reading}</ButtonLink>{isDesk && <ButtonLink look="quiet" href={pageOf(programme, 'stands', id, 'edit')}>{said.change}</ButtonLink>}</>}
      >
        {stand.name}
      </PageHeading>
      <div className="mb-12">
        <Facts
          facts={[
            ...(isPartner ? [] : [{ term: said.fields.partnerId, says: stand.partnerId && nameIn(partners, stand.partnerId) }]),
            { term: said.fields.sensitivity, says: words.sensitivity[`${stand.sensitivity as 0}`] },
            { term: said.cell, says: <Cell cell={stand.cell} /> },
            ...(isPartner ? [] : [{ term: said.fields.note, says: stand.note }]),
          ]}
        />
      </div>
      {!isPartner && <ExactPlaceFacts programme={programme} noun="stands" id={id} isDesk={isDesk} />}
      <Section heading={said.trees}>
        {trees.length === 0 ? (
          <Empty act={!isPartner && <ButtonLink href={`${pageOf(programme, 'donor-trees', 'new')}?standId=${id}`}>{said.addTree}</ButtonLink>}>{said.noTrees}</Empty>
        ) : (
          <DonorTreeTable programme={programme} trees={trees} taxa={taxa} caption={said.trees} />
        )}
      </Section>
    </>
  );
}
