import { getMessages } from 'next-intl/server';
import { addPlace } from '../../../../../features/place/add-place.action.ts';
import { FillingFields } from '../../../../../features/place/filling-fields.tsx';
import { mayHold, PlaceFields } from '../../../../../features/place/place-fields.tsx';
import { placeChoices } from '../../../../../lib/place-path.ts';
import { partnersOf, placesOf } from '../../../../../lib/lists.ts';
import { newId } from '../../../../../lib/new-id.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { titled } from '../../../../../lib/titled.ts';
import { workplaceOf } from '../../../../../lib/workplace.ts';
import { ChoiceField } from '../../../../../ui/form/choice-field.tsx';
import { FormPage } from '../../../../../ui/form/form-page.tsx';
import { RadioField } from '../../../../../ui/form/radio-field.tsx';
import { TextField } from '../../../../../ui/form/text-field.tsx';
import { underPrefix } from '../../../../../ui/form/under-prefix.ts';

interface NewPlacePageProps {
  readonly params: Promise<{ programme: string }>;
  readonly searchParams: Promise<{ in?: string }>;
}

const KINDS = ['house', 'frame', 'ground', 'bench', 'tray', 'partner'] as const;

export const generateMetadata = titled(({ places }) => places.addTitle);

export default async function NewPlacePage({ params, searchParams }: NewPlacePageProps) {
  const [{ programme }, { in: within }] = await Promise.all([params, searchParams]);
  const [{ places: said }, places, partners, { today }] = await Promise.all([getMessages(), placesOf(programme), partnersOf(programme), workplaceOf(programme)]);
  return (
    <FormPage
      trail={[{ href: pageOf(programme, 'places'), words: said.title }]}
      title={said.addTitle}
      action={addPlace.bind(null, programme)}
      labels={{ ...said.fields, ...underPrefix('filling/', said.fields) }}
      send={said.save}
      newId={newId()}
    >
      <RadioField name="kind" value={within ? 'tray' : 'bench'} choices={KINDS.map((kind) => ({ value: kind, words: said.kinds[kind] }))} />
      <ChoiceField name="parentId" isOptional value={within} hint={said.hints.parentId} choices={placeChoices(places, mayHold)} />
      <PlaceFields partners={partners} />
      <h2 className="mt-4 text-lg">{said.onlyTray}</h2>
      <TextField name="rows" keypad="numeric" isOptional hint={said.hints.rows} />
      <FillingFields prefix="filling/" fillingId={newId()} today={today} isNew />
    </FormPage>
  );
}
