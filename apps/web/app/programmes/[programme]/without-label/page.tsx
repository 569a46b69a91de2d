import { type LabelCandidate, LabelCandidates, Place } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { CommonFields } from '../../../../features/bench/common-fields.tsx';
import { JobForm } from '../../../../features/bench/job-form.tsx';
import { MixingWarning } from '../../../../features/bench/mixing-warning.tsx';
import { writeMixture } from '../../../../features/bench/write-job.action.ts';
import { CandidateCard } from '../../../../features/lost-label/candidate-card.tsx';
import { LostPlantForm, type LostPlantSearch } from '../../../../features/lost-label/lost-plant-form.tsx';
import { RowChoice } from '../../../../features/lost-label/row-choice.tsx';
import { freeLabels } from '../../../../lib/free-labels.ts';
import { placesOf, taxaOf } from '../../../../lib/lists.ts';
import { pageOf } from '../../../../lib/page-address.ts';
import { isInNursery, pathTo, placeChoices } from '../../../../lib/place-path.ts';
import { read } from '../../../../lib/read.ts';
import { trayNow } from '../../../../lib/tray-now.ts';
import { titled } from '../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../ui/button-link.tsx';
import { Empty } from '../../../../ui/empty.tsx';
import { PageHeading } from '../../../../ui/page-heading.tsx';
import { Section } from '../../../../ui/section.tsx';
import { Trail } from '../../../../ui/trail.tsx';

interface WithoutLabelPageProps {
  readonly params: Promise<{ programme: string }>;
  readonly searchParams: Promise<LostPlantSearch>;
}

/** So many lines of a mixture are still one form. */
const MIXED_AT_MOST = 12;

export const generateMetadata = titled(({ lostLabel }) => lostLabel.title);

export default async function WithoutLabelPage({ params, searchParams }: WithoutLabelPageProps) {
  const [{ programme }, asked] = await Promise.all([params, searchParams]);
  const [places, taxa, { lostLabel: said, scan }] = await Promise.all([placesOf(programme), taxaOf(programme), getMessages()]);
  const [, around] = asked.placeId ? pathTo(places, asked.placeId).reverse() : [];
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'scan'), words: scan.title }]} />
      <PageHeading lead={said.lead}>{said.title}</PageHeading>
      <LostPlantForm asked={asked} places={placeChoices(places)} taxa={taxa} />
      {asked.placeId && <Rows programme={programme} placeId={asked.placeId} row={rowOf(asked)} />}
      {asked.placeId && <Candidates programme={programme} placeId={asked.placeId} asked={asked} />}
      {around && <p className="not-on-paper mt-6"><ButtonLink look="quiet" href={`?${new URLSearchParams({ ...asked, row: '', lost: '', placeId: around.id })}`}>{said.around.replace('{place}', around.name)}</ButtonLink></p>}
    </>
  );
}

/** What cannot be a row says nothing, as an empty field does. */
const rowOf = ({ row }: LostPlantSearch): number | undefined => (/^[1-9]\d?$/.test(row?.trim() ?? '') ? Number(row) : undefined);

function queryOf(asked: LostPlantSearch): string {
  const { stage, taxonId, foliage, lost } = asked;
  const told = { stage, taxonId, row: rowOf(asked)?.toString(), foliage, lost: lost === 'row' ? lost : undefined };
  return String(new URLSearchParams(Object.entries(told).flatMap(([name, value]) => (value ? [[name, value]] : []))));
}

/** Of a tray, its rows to choose from. */
async function Rows({ programme, placeId, row }: { programme: string; placeId: string; row: number | undefined }) {
  const tray = await trayNow(programme, await read(apiOf(programme, 'places', placeId), Place));
  return tray ? <RowChoice programme={programme} placeId={placeId} tray={tray} row={row} /> : null;
}

async function Candidates({ programme, placeId, asked }: { programme: string; placeId: string; asked: LostPlantSearch }) {
  const [{ candidates, of }, { lostLabel: said }, t] = await Promise.all([read(`${apiOf(programme, 'places', placeId, 'candidates')}?${queryOf(asked)}`, LabelCandidates), getMessages(), getTranslations('lostLabel')]);
  // Plants of one stage only become one batch.
  const alike = candidates.filter(({ stage, held }) => stage === asked.stage && stage !== 'planted' && !held);
  return (
    <div id="candidates">
      <Section heading={said.candidates}>
        {candidates.length === 0 ? <Empty>{said.none}</Empty> : (
          <ul className="grid gap-3">
            {candidates.map((candidate) => <li key={candidate.id}><CandidateCard programme={programme} candidate={candidate} /></li>)}
          </ul>
        )}
        {of > candidates.length && <p className="mt-3">{t('more', { n: candidates.length, of })}</p>}
      </Section>
      {candidates.length > 1 && <CannotTell programme={programme} placeId={placeId} alike={alike.slice(0, MIXED_AT_MOST)} />}
    </div>
  );
}

/** Plants that nobody can tell apart become a mixed batch, which remembers what it may be of. */
async function CannotTell({ programme, placeId, alike }: { programme: string; placeId: string; alike: readonly LabelCandidate[] }) {
  const [places, labels, workplace, { lostLabel: said }] = await Promise.all([placesOf(programme), freeLabels(programme, 1), workplaceOf(programme), getMessages()]);
  const nursery = placeChoices(places, isInNursery);
  const here = nursery.filter(({ value }) => value === placeId);
  return (
    <details className="not-on-paper mt-10">
      <summary className="inline-flex min-h-14 cursor-pointer items-center text-xl font-semibold underline">{said.cannotTell}</summary>
      <div className="mt-4 grid gap-6">
        <p className="max-w-prose">{said.cannotTellLead}</p>
        {alike.length < 2 ? <p className="max-w-prose font-semibold">{said.stageFirst}</p> : (
          <>
            <MixingWarning />
            <JobForm
              job="mixing" action={writeMixture.bind(null, programme, alike.length)} batches={alike} choices={{ places: nursery, labels: [] }} workplace={workplace}
              common={<CommonFields job="mixing" places={[...here, ...nursery.filter(({ value }) => value !== placeId)]} label={labels[0]} />}
            />
          </>
        )}
      </div>
    </details>
  );
}
