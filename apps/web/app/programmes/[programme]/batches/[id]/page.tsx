import { Batch, LeaveOrCall, SecondOpinion } from '@sprigline/contract';
import type { Metadata } from 'next';
import { getMessages } from 'next-intl/server';
import { BatchActs } from '../../../../../features/batch/batch-acts.tsx';
import { LineageNotice } from '../../../../../features/batch/lineage-notice.tsx';
import { BatchFacts } from '../../../../../features/batch/batch-facts.tsx';
import { BatchForPartner } from '../../../../../features/batch/batch-for-partner.tsx';
import { BatchFlags } from '../../../../../features/batch/batch-flags.tsx';
import { FamilyLine } from '../../../../../features/batch/family-line.tsx';
import { History } from '../../../../../features/batch/history.tsx';
import { labelOf } from '../../../../../features/batch/line-nodes.ts';
import { Exposure, Stays } from '../../../../../features/batch/stays.tsx';
import { PhotoSection } from '../../../../../features/photo/photo-section.tsx';
import { SecondOpinionPart } from '../../../../../features/second-opinion/second-opinion-part.tsx';
import { TrayOutlook } from '../../../../../features/leave-or-call/tray-outlook.tsx';
import { placesOf } from '../../../../../lib/lists.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { readIfAllowed } from '../../../../../lib/read-if-allowed.ts';
import { read } from '../../../../../lib/read.ts';
import { apiOf, workplaceOf } from '../../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../../ui/button-link.tsx';
import { PageHeading } from '../../../../../ui/page-heading.tsx';
import { Tag } from '../../../../../ui/tag.tsx';
import { Trail } from '../../../../../ui/trail.tsx';

interface BatchPageProps {
  readonly params: Promise<{ programme: string; id: string }>;
  readonly searchParams: Promise<{ wrote?: string; photos?: string; takeDown?: string }>;
}

const batchOf = (programme: string, id: string) => read(apiOf(programme, 'batches', id), Batch);

export async function generateMetadata({ params }: Pick<BatchPageProps, 'params'>): Promise<Metadata> {
  const { programme, id } = await params;
  return { title: labelOf(await batchOf(programme, id)) };
}

export default async function BatchPage({ params, searchParams }: BatchPageProps) {
  const [{ programme, id }, { wrote, ...asked }] = await Promise.all([params, searchParams]);
  const [batch, workplace, { batches: said, trace }] = await Promise.all([batchOf(programme, id), workplaceOf(programme), getMessages()]);
  const isPartner = workplace.role === 'partner';
  const { sticking } = batch.line;
  const isCutting = batch.stage === 'cutting';
  const [places, opinion, outlook] = isPartner ? [[], undefined, undefined] : await Promise.all([
    placesOf(programme),
    sticking && isCutting ? readIfAllowed(apiOf(programme, 'stickings', sticking.id, 'second-opinion'), SecondOpinion) : undefined,
    isCutting && batch.balance > 0 ? read(`${apiOf(programme, 'readings', 'leave-or-call')}?batchId=${id}`, LeaveOrCall) : undefined,
  ]);
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'batches'), words: said.title }]} />
      <PageHeading kind={said.kind} lead={<BatchFlags batch={batch} />} act={!isPartner && <ButtonLink look="quiet" href={`${pageOf(programme, 'trace')}?batchId=${id}`}>{trace.trace}</ButtonLink>}>
        <Tag>{labelOf(batch)}</Tag>
      </PageHeading>
      {isPartner ? <BatchForPartner programme={programme} batch={batch} rootedMeans={workplace.rootedMeans} wrote={wrote} /> : (
        <>
          <BatchActs programme={programme} batch={batch} />
          <FamilyLine programme={programme} batch={batch} />
          <LineageNotice programme={programme} batch={batch} isDesk={workplace.isDesk} />
          <BatchFacts programme={programme} batch={batch} rootedMeans={workplace.rootedMeans} />
          {opinion && <SecondOpinionPart opinion={opinion.body} isFolded />}
          {outlook && <TrayOutlook programme={programme} reading={outlook} />}
          <PhotoSection programme={programme} subject={{ noun: 'batches', id }} of={labelOf(batch)} isDesk={workplace.isDesk} today={workplace.today} asked={asked} />
          <History programme={programme} batch={batch} zone={workplace.zone} places={places} />
          <Stays stays={batch.stays} />
          <Exposure exposure={batch.exposure} />
        </>
      )}
    </>
  );
}
