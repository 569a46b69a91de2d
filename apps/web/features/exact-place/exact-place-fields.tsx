import type { ExactPlace } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { ProseField } from '../../ui/form/prose-field.tsx';
import { TextField } from '../../ui/form/text-field.tsx';

export function ExactPlaceFields({ place }: { place: ExactPlace | undefined }) {
  const { hints } = useMessages().exactPlace;
  return (
    <>
      {/* Not the keypad for numbers: on some phones it has no minus. */}
      <TextField name="latitude" value={place?.latitude} hint={hints.latitude} />
      <TextField name="longitude" value={place?.longitude} hint={hints.longitude} />
      <TextField name="uncertaintyM" keypad="numeric" isOptional value={place?.uncertaintyM} hint={hints.uncertaintyM} />
      <TextField name="elevationM" isOptional value={place?.elevationM} />
      <ProseField name="directions" isOptional value={place?.directions} hint={hints.directions} />
    </>
  );
}
