import { useMessages, useTranslations } from 'next-intl';
import { useState } from 'react';
import { newId } from '../../lib/new-id.ts';
import { authorHere, keepHere } from '../../lib/phone/device.ts';
import type { SmallPhoto } from '../../lib/phone/photo-work.ts';
import { type Made, type MadeTrip, rememberMade } from '../../lib/phone/made.ts';
import { sealPlace } from '../../lib/phone/seal.ts';
import { theStore } from '../../lib/phone/store.ts';
import { Caution } from '../../ui/caution.tsx';
import { choicesFrom } from '../../ui/form/choices.ts';
import { ChoiceField } from '../../ui/form/choice-field.tsx';
import { NumberPad } from '../../ui/form/number-pad.tsx';
import { RadioField } from '../../ui/form/radio-field.tsx';
import { TextField } from '../../ui/form/text-field.tsx';
import { PhotoPicker } from '../../ui/photo-picker.tsx';
import { NEW_TREE, type TreeTold, treeSaid } from './outing-said.ts';
import { treeWork } from './outing-work.ts';
import { PlaceFields } from './place-fields.tsx';
import { ToldForm } from './told-form.tsx';
import { labelsIn, type Outing, treesOf } from './use-outing.ts';

interface TreeFormProps {
  readonly programme: string;
  readonly outing: Outing;
  readonly trip: MadeTrip;
  /** Whose label was scanned. */
  readonly treeId: string | undefined;
  /** Told once it is on disk, and its place sealed. */
  readonly kept: (made: Made, label: string, isPlaced: boolean) => void;
}

/** One tree of a trip: which one, what was cut of it, where it stands. */
export function TreeForm({ programme, outing, trip, treeId, kept }: TreeFormProps) {
  const trips = useMessages().trips;
  const labels = useLabels();
  const t = useTranslations('outing');
  const trees = treesOf(outing, trip.standId);
  const [isNew, setNew] = useState(trees.length === 0);
  const [photos, setPhotos] = useState<readonly SmallPhoto[]>([]);

  async function keep(form: FormData) {
    const { told, faults } = treeSaid(form, trip, labelsIn(outing), photos.length > 0);
    if (faults.length > 0) return faults;
    const { made, label } = await keepTree({ programme, outing, trip, told, photos });
    kept(made, label, told.place !== undefined);
    return [];
  }

  return (
    <ToldForm labels={labels} send={t('keep')} keep={keep}>
      <ChoiceField name="donorTreeId" value={trees.length === 0 ? NEW_TREE : trees.find(({ id }) => id === treeId)?.id} choose={(chosen) => setNew(chosen === NEW_TREE)} choices={[{ value: NEW_TREE, words: t('newTree') }, ...trees.map(({ id, label }) => ({ value: id, words: label }))]} />
      {isNew && <NewTreeFields taxa={outing.pack.taxa} />}
      <Caution>{trips.caution}</Caution>
      <NumberPad name="cuttings" hint={t('cuttingsHint')} />
      <RadioField name="shoot" isOptional choices={choicesFrom(trips.shoot)} />
      <RadioField name="foliage" isOptional choices={choicesFrom(trips.foliage)} />
      <RadioField name="base" isOptional choices={choicesFrom(trips.base)} />
      <TextField name="heightM" keypad="decimal" isOptional />
      <TextField name="lengthCm" keypad="decimal" isOptional />
      <PhotoPicker photos={photos} change={setPhotos} />
      <p className="text-sm text-ink-soft">{t('photosHint')}</p>
      <PlaceFields />
    </ToldForm>
  );
}

function NewTreeFields({ taxa }: { taxa: Outing['pack']['taxa'] }) {
  const said = useMessages().donorTrees;
  const species = taxa.map(({ id, commonName, scientificName }) => ({ value: id, words: commonName ? `${commonName} (${scientificName})` : scientificName }));
  return (
    <>
      <TextField name="label" hint={said.hints.label} />
      <ChoiceField name="taxonId" value={taxa.length === 1 ? taxa[0]?.id : undefined} choices={species} />
      <ChoiceField name="ageClass" isOptional choices={choicesFrom(said.ageClass)} />
      <TextField name="estimatedAgeYears" keypad="numeric" isOptional />
      <RadioField name="sex" value="unknown" choices={choicesFrom(said.sex)} />
    </>
  );
}

function useLabels(): Readonly<Record<string, string>> {
  const { trips, donorTrees, exactPlace } = useMessages();
  const places = Object.fromEntries(Object.entries(exactPlace.fields).map(([name, words]) => [`place/${name}`, words]));
  return { ...donorTrees.fields, ...trips.fields, ...places };
}

interface ToKeepTree {
  readonly programme: string;
  readonly outing: Outing;
  readonly trip: MadeTrip;
  readonly told: TreeTold;
  readonly photos: readonly SmallPhoto[];
}

/** Seals first: the place as measured goes into nothing that is kept. */
async function keepTree({ programme, outing, trip, told, photos }: ToKeepTree): Promise<{ made: Made; label: string }> {
  const donorTreeId = told.donorTreeId ?? newId();
  const known = treesOf(outing, trip.standId).find(({ id }) => id === donorTreeId);
  const label = told.tree?.label ?? known?.label ?? '';
  const taxonId = told.tree?.taxonId ?? known?.taxonId ?? '';
  const { seal, programme: { id: programmeId } } = outing.pack;
  const place = told.place && { ...(await sealPlace(told.place, seal, { programmeId, donorTreeId })), id: newId() };
  const bundle = told.bundle && { ...told.bundle, id: newId() };
  const { personId: takenBy } = await authorHere(await theStore(), programme);
  await keepHere(programme, treeWork(programme, { tripId: trip.id, donorTreeId, label, tree: told.tree, bundle, place, photos, takenOn: trip.wentOn, takenBy }));
  const { standId, wentOn } = trip;
  const made = await rememberMade(await theStore(), programme, {
    donorTrees: told.tree ? [{ id: donorTreeId, label, standId, taxonId }] : [],
    bundles: bundle ? [{ id: bundle.id, tripId: trip.id, donorTreeId, label, standId, taxonId, cuttings: bundle.cuttings, wentOn }] : [],
  });
  return { made, label };
}
