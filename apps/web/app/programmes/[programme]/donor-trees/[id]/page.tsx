import { DonorTree } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { DescentSection } from '../../../../../features/donor-tree/descent-section.tsx';
import { DonorTreeFacts } from '../../../../../features/donor-tree/donor-tree-facts.tsx';
import { CloneSection } from '../../../../../features/origin/clone-section.tsx';
import { SightingSection } from '../../../../../features/origin/sighting-section.tsx';
import { ExactPlaceFacts } from '../../../../../features/exact-place/exact-place-facts.tsx';
import { PhotoSection } from '../../../../../features/photo/photo-section.tsx';
import { nameIn, standsOf, taxaOf } from '../../../../../lib/lists.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { read } from '../../../../../lib/read.ts';
import { titled } from '../../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../../ui/button-link.tsx';
import { PageHeading } from '../../../../../ui/page-heading.tsx';
import { Tag } from '../../../../../ui/tag.tsx';
import { Trail } from '../../../../../ui/trail.tsx';

export const generateMetadata = titled(({ donorTrees }) => donorTrees.one);

interface DonorTreePageProps {
  readonly params: Promise<{ programme: string; id: string }>;
  readonly searchParams: Promise<{ photos?: string; takeDown?: string }>;
}

export default async function DonorTreePage({ params, searchParams }: DonorTreePageProps) {
  const [{ programme, id }, asked] = await Promise.all([params, searchParams]);
  const [tree, stands, taxa, { isDesk, role, today }, { donorTrees: said, trace }, t] = await Promise.all([
    read(apiOf(programme, 'donor-trees', id), DonorTree), standsOf(programme), taxaOf(programme), workplaceOf(programme), getMessages(), getTranslations('donorTrees'),
  ]);
  const isPartner = role === 'partner';
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'donor-trees'), words: said.title }, { href: pageOf(programme, 'stands', tree.standId), words: nameIn(stands, tree.standId) }]} />
      <PageHeading
        kind={t('kind', { stand: nameIn(stands, tree.standId) })}
        act={!isPartner && (
          <>
            <ButtonLink look="quiet" href={`${pageOf(programme, 'trace')}?donorTreeId=${id}`}>{trace.trace}</ButtonLink>
            {isDesk && <ButtonLink look="quiet" href={pageOf(programme, 'donor-trees', id, 'edit')}>{said.change}</ButtonLink>}
          </>
        )}
      >
        <Tag>{tree.label}</Tag>
      </PageHeading>
      <div className="mb-12">
        <DonorTreeFacts programme={programme} tree={tree} stands={stands} taxa={taxa} hasNote={!isPartner} />
      </div>
      <DescentSection programme={programme} treeId={id} toPlace={(placeId) => (isPartner ? `${pageOf(programme, 'batches')}?placeId=${placeId}` : pageOf(programme, 'places', placeId))} />
      {!isPartner && (
        <>
          <PhotoSection programme={programme} subject={{ noun: 'donor-trees', id }} of={tree.label} isDesk={isDesk} today={today} asked={asked} />
          <CloneSection programme={programme} treeId={id} isDesk={isDesk} />
          <SightingSection programme={programme} treeId={id} />
          <ExactPlaceFacts programme={programme} noun="donor-trees" id={id} isDesk={isDesk} />
        </>
      )}
    </>
  );
}
