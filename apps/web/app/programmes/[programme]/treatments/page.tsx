import { Treatments } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { TreatmentFilter } from '../../../../features/treatment/treatment-filter.tsx';
import { treatmentAddress, treatmentQuery, type TreatmentSearch } from '../../../../features/treatment/treatment-query.ts';
import { TreatmentTable } from '../../../../features/treatment/treatment-table.tsx';
import { sayDay } from '../../../../lib/calendar.ts';
import { placesOf } from '../../../../lib/lists.ts';
import { pageOf } from '../../../../lib/page-address.ts';
import { placeChoices } from '../../../../lib/place-path.ts';
import { read } from '../../../../lib/read.ts';
import { titled } from '../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../lib/workplace.ts';
import { buttonClass } from '../../../../ui/button-class.ts';
import { ButtonLink } from '../../../../ui/button-link.tsx';
import { Empty } from '../../../../ui/empty.tsx';
import { PageHeading } from '../../../../ui/page-heading.tsx';

interface TreatmentsPageProps {
  readonly params: Promise<{ programme: string }>;
  readonly searchParams: Promise<TreatmentSearch>;
}

export const generateMetadata = titled(({ treatments }) => treatments.title);

/** What was done, with an as-of day; sprays alone are the record that an inspector asks for. */
export default async function TreatmentsPage({ params, searchParams }: TreatmentsPageProps) {
  const [{ programme }, search] = await Promise.all([params, searchParams]);
  const asked = treatmentQuery(search);
  const [{ asOf, from, until, treatments }, workplace, places, { treatments: said }, t] = await Promise.all([
    read(`${apiOf(programme, 'treatments')}?${asked}`, Treatments), workplaceOf(programme), placesOf(programme), getMessages(), getTranslations('treatments'),
  ]);
  const title = asked.get('what') === 'spray' ? said.spraysTitle : said.title;
  const address = treatmentAddress(asked);
  const pdf = `${pageOf(programme, 'treatments', 'pdf')}?${address}`;
  const placeId = asked.get('placeId');
  return (
    <>
      <PageHeading lead={said.lead} act={<ButtonLink href={`${pageOf(programme, 'treatments', 'new')}${placeId ? `?placeId=${placeId}` : ''}`}>{said.add}</ButtonLink>}>{title}</PageHeading>
      <TreatmentFilter asked={asked} from={from} until={until} places={placeChoices(places)} />
      <p className="mb-4 text-ink-soft">{t('asOf', { programme: workplace.name, from: sayDay(from), until: sayDay(until), day: sayDay(asOf) })}</p>
      {treatments.length === 0 ? <Empty>{said.empty}</Empty> : <TreatmentTable title={title} treatments={treatments} />}
      <nav aria-label={said.paper} className="not-on-paper mt-6 flex flex-wrap gap-3">
        <a className={buttonClass('quiet')} href={pdf}>{said.pdfA4}</a>
        <a className={buttonClass('quiet')} href={`${pdf}&paper=letter`}>{said.pdfLetter}</a>
        <a className={buttonClass('quiet')} href={`${apiOf(programme, 'treatments.csv')}?${asked}`} download>{said.csv}</a>
      </nav>
    </>
  );
}
