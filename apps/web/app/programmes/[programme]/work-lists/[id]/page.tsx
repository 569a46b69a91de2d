import '../../../../../features/work-list/sheet.css';
import { WorkList } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { SheetTable } from '../../../../../features/work-list/sheet-table.tsx';
import { sayDay, sayMoment, today } from '../../../../../lib/calendar.ts';
import { fieldAddress } from '../../../../../lib/field-address.ts';
import { nameIn, peopleOf, placesOf } from '../../../../../lib/lists.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { publicAddress } from '../../../../../lib/public-address.ts';
import { read } from '../../../../../lib/read.ts';
import { titled } from '../../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../../ui/button-link.tsx';
import { Caution } from '../../../../../ui/caution.tsx';
import { PageHeading } from '../../../../../ui/page-heading.tsx';
import { QrMark } from '../../../../../ui/qr-mark.tsx';
import { Trail } from '../../../../../ui/trail.tsx';

export const generateMetadata = titled(({ workLists }) => workLists.one);

export default async function WorkListPage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const [list, { name, zone }, people, places, { workLists: said, field }, t, address] = await Promise.all([
    read(apiOf(programme, 'work-lists', id), WorkList), workplaceOf(programme), peopleOf(programme), placesOf(programme), getMessages(), getTranslations('workLists'), publicAddress(),
  ]);
  const here = pageOf(programme, 'work-lists', id);
  const cautions: Readonly<Partial<Record<string, string>>> = said.cautions;
  const caution = cautions[list.kind];
  const { placeId, toPlaceId } = list.asked;
  const typed = list.lines.filter((line) => line.typed !== null).length;
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'work-lists'), words: said.title }]} />
      <PageHeading kind={<>{name}, {placeId === null ? said.everywhere : nameIn(places, placeId)}</>} act={<><ButtonLink href={`${here}/type`}>{said.typeBack}</ButtonLink><ButtonLink look="quiet" href={fieldAddress(programme, 'list', id)}>{field.takeAlong}</ButtonLink></>}>
        {said.kinds[list.kind]}
      </PageHeading>
      <div className="mb-6 flex flex-wrap items-start justify-between gap-4">
        <div className="grid gap-2">
          <p>{t('lines', { n: list.lines.length })}. {t('asOf', { moment: sayMoment(new Date().toISOString(), zone), by: nameIn(people, list.madeBy), day: sayDay(today(zone, new Date(list.madeAt))) })}</p>
          <p className="not-on-paper">{said.columns.typed}: {t('typedOf', { typed, n: list.lines.length })}</p>
          {toPlaceId !== null && <p>{t('to', { place: nameIn(places, toPlaceId) })}</p>}
          <p className="hidden print:block">{said.dayAndPeople}</p>
          <p className="not-on-paper flex flex-wrap gap-x-6 gap-y-1">
            {(['A4', 'Letter'] as const).map((paper) => <a key={paper} href={`${here}/pdf?paper=${paper.toLowerCase()}`} className="inline-flex min-h-8 items-center underline">{t('pdf', { paper })}</a>)}
            <a href={apiOf(programme, 'work-lists', id, 'lines.csv')} className="inline-flex min-h-8 items-center underline">{said.csv}</a>
          </p>
        </div>
        <QrMark says={`${address}${here}/type`} label={said.qr} />
      </div>
      {caution && <div className="mb-6"><Caution>{caution}</Caution></div>}
      <div className="work-sheet"><SheetTable programme={programme} list={list} /></div>
    </>
  );
}
