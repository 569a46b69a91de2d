import { Place } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { FillingFields } from '../../../../../../features/place/filling-fields.tsx';
import { fillTray } from '../../../../../../features/place/fill-tray.action.ts';
import { placesOf } from '../../../../../../lib/lists.ts';
import { newId } from '../../../../../../lib/new-id.ts';
import { pageOf } from '../../../../../../lib/page-address.ts';
import { read } from '../../../../../../lib/read.ts';
import { titled } from '../../../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../../../lib/workplace.ts';
import { Caution } from '../../../../../../ui/caution.tsx';
import { FormPage } from '../../../../../../ui/form/form-page.tsx';
import { RowLink } from '../../../../../../ui/row-link.tsx';

export const generateMetadata = titled(({ places }) => places.fill);

export default async function FillTrayPage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const [place, places, { today }, { places: said }, t] = await Promise.all([
    read(apiOf(programme, 'places', id), Place), placesOf(programme), workplaceOf(programme), getMessages(), getTranslations('places'),
  ]);
  const plants = places.find((one) => one.id === id)?.plantsWithin ?? 0;
  return (
    <FormPage
      trail={[{ href: pageOf(programme, 'places'), words: said.title }, { href: pageOf(programme, 'places', id), words: place.name }]}
      title={t('fillTitle', { name: place.name })}
      lead={plants > 0 && <>{t('fillHolds', { n: plants })} <RowLink href={pageOf(programme, 'places', id)}>{said.batches}</RowLink></>}
      action={fillTray.bind(null, programme, id)}
      labels={said.fields}
      send={said.fillSend}
    >
      <FillingFields fillingId={newId()} today={today} />
      <Caution>{said.caution}</Caution>
    </FormPage>
  );
}
