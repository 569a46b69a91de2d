import { BatchInList, type Stage } from '@sprigline/contract';
import type { Metadata } from 'next';
import { getMessages, getTranslations } from 'next-intl/server';
import { notFound } from 'next/navigation';
import { z } from 'zod';
import { BenchFilter, type BenchSearch } from '../../../../../features/bench/bench-filter.tsx';
import { CommonFields } from '../../../../../features/bench/common-fields.tsx';
import { JobForm } from '../../../../../features/bench/job-form.tsx';
import { MixingWarning } from '../../../../../features/bench/mixing-warning.tsx';
import { PlaceFirst } from '../../../../../features/bench/place-first.tsx';
import { placesOfBatches } from '../../../../../features/bench/places-of-batches.ts';
import { isJob, type Job, STAGES_OF } from '../../../../../features/bench/jobs.ts';
import { TagPreview } from '../../../../../features/bench/tag-preview.tsx';
import { writeJob, writeMixture, writePlanting } from '../../../../../features/bench/write-job.action.ts';
import type { FormAction } from '../../../../../lib/form-state.ts';
import { freeLabels } from '../../../../../lib/free-labels.ts';
import { placesOf } from '../../../../../lib/lists.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { isAtSite, isInNursery, placeChoices } from '../../../../../lib/place-path.ts';
import { read } from '../../../../../lib/read.ts';
import { apiOf, workplaceOf } from '../../../../../lib/workplace.ts';
import { Caution } from '../../../../../ui/caution.tsx';
import { Empty } from '../../../../../ui/empty.tsx';
import { PageHeading } from '../../../../../ui/page-heading.tsx';
import { Trail } from '../../../../../ui/trail.tsx';

interface JobPageProps {
  readonly params: Promise<{ programme: string; job: string }>;
  readonly searchParams: Promise<BenchSearch>;
}

/** So many lines a page is still a page. */
const MOST = 60;
/** And so many are still one for a thumb. */
const MOST_ON_A_PHONE = 8;
/** So many are read, to know where they stand. */
const LOOKED_AT = 200;

export async function generateMetadata({ params }: JobPageProps): Promise<Metadata> {
  const { job } = await params;
  return { title: isJob(job) ? (await getTranslations('bench'))(`jobs.${job}`) : undefined };
}

export default async function JobPage({ params, searchParams }: JobPageProps) {
  const [{ programme, job }, asked] = await Promise.all([params, searchParams]);
  if (!isJob(job)) notFound();
  const stages = STAGES_OF[job];
  const stage = stages.find((one) => one === asked.stage) ?? stages[0] ?? 'cutting';
  const [all, places, labels, workplace, { bench: said, refusals }, t] = await Promise.all([
    batchesOf(programme, stage, asked), placesOf(programme), freeLabels(programme, MOST), workplaceOf(programme), getMessages(), getTranslations('bench'),
  ]);
  const batches = all.slice(0, MOST);
  const action = actionOf(job, programme, batches.length, asked, stage);
  const nursery = placeChoices(places, isInNursery);
  const here = placesOfBatches(all, places);
  // At the desk the whole list is one page; on a phone one says first where one stands.
  const isPlaceFirst = !asked.placeId && asked.all !== 'yes' && batches.length > MOST_ON_A_PHONE && here.length > 1;
  const toPlace = (placeId?: string) => `?${new URLSearchParams({ stage, ...(asked.rooted ? { rooted: asked.rooted } : {}), ...(placeId ? { placeId } : { all: 'yes' }) })}`;
  const cautions = said.caution as Readonly<Partial<Record<Job, string>>>;
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'bench'), words: said.title }]} />
      <PageHeading lead={said.leads[job]}>{said.titles[job]}</PageHeading>
      {asked.done && <p role="status" className="mb-6 font-semibold">{t(job === 'planting' ? 'planted' : 'done', { n: Number(asked.done) || 0 })}</p>}
      <BenchFilter asked={asked} stage={stage} stages={stages} places={nursery} />
      {isPlaceFirst && <PlaceFirst places={here} toPlace={toPlace} isPart={all.length === LOOKED_AT} />}
      {batches.length === 0 ? (
        <Empty>{said.none}</Empty>
      ) : (
        <div className={`grid gap-6 ${isPlaceFirst ? 'max-lg:hidden' : ''}`}>
          {job === 'mixing' && <MixingWarning />}
          {cautions[job] && <Caution>{cautions[job]}</Caution>}
          <JobForm
            job={job}
            action={action}
            batches={batches}
            choices={{ places: nursery, labels: job === 'potting' ? labels : [] }}
            workplace={workplace}
            common={<CommonFields job={job} places={job === 'planting' ? placeChoices(places, isAtSite) : nursery} label={labels[0]} />}
            after={job === 'planting' && <TagPreview lines={batches.length} names={Object.fromEntries(batches.map(({ id, label }) => [id, label ?? `…${id.slice(-6)}`]))} refusals={Object.fromEntries(Object.entries(refusals).filter(([code]) => code.startsWith('planting/')))} />}
          />
          {all.length > MOST && <p className="text-ink-soft">{t('more', { n: MOST })}</p>}
        </div>
      )}
    </>
  );
}

async function batchesOf(programme: string, stage: Stage, { placeId, rooted }: BenchSearch): Promise<BatchInList[]> {
  const query = new URLSearchParams({ state: 'alive', stage, limit: String(LOOKED_AT), ...(placeId ? { placeId } : {}) });
  const all = await read(`${apiOf(programme, 'batches')}?${query}`, z.array(BatchInList));
  return rooted === 'yes' && stage === 'cutting' ? all.filter(({ rootedNow }) => rootedNow !== null && rootedNow > 0) : all;
}

function actionOf(job: Job, programme: string, lines: number, { placeId, rooted }: BenchSearch, stage: Stage): FormAction {
  if (job === 'mixing') return writeMixture.bind(null, programme, lines);
  if (job === 'planting') return writePlanting.bind(null, programme, lines);
  const back = new URLSearchParams({ stage, ...(placeId ? { placeId } : {}), ...(rooted ? { rooted } : {}) });
  return writeJob.bind(null, programme, job, lines, `${pageOf(programme, 'bench', job)}?${back}`);
}
